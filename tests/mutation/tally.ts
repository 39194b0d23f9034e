/** What a round of mutations gives: how many, how many were caught, which survived. Knows nothing of what is mutated. */

/** One small change, told as `where: what`. */
export interface Survivor {
  readonly where: string;
  readonly what: string;
}
export interface Tally {
  readonly of: string;
  readonly mutated: number;
  readonly survivors: readonly Survivor[];
}

const TENTH = 0.1;
/** One step up and one down: a tenth of the figure; nought has no tenth of its own. */
export const steps = (figure: number): readonly [up: number, down: number] => {
  const step = TENTH * (Math.abs(figure) || 1);
  return [tidy(figure + step), tidy(figure - step)];
};
/** The same for a number that counts: never less than one. */
export const wholeSteps = (count: number): readonly [up: number, down: number] => {
  const step = Math.max(1, Math.round(TENTH * Math.abs(count)));
  return [count + step, count - step];
};
/** Without the tail of a binary fraction. */
const tidy = (figure: number): number => Number(figure.toPrecision(12));

/** The table and the survivors, as lines. */
export function told(tallies: readonly Tally[]): readonly string[] {
  const rows = tallies.map(({ of, mutated, survivors }) => [of, mutated, mutated - survivors.length, survivors.length]);
  const wide = Math.max(...tallies.map(({ of }) => of.length), 8);
  const line = (cells: readonly (string | number)[]) =>
    cells.map((cell, i) => (i === 0 ? String(cell).padEnd(wide) : String(cell).padStart(9))).join(" ");
  return [
    line(["", "mutated", "caught", "survived"]),
    ...rows.map(line),
    ...tallies.flatMap(({ of, survivors }) =>
      survivors.length === 0 ? [] : ["", `${of}: survivors`, ...survivors.map((one) => `  ${one.where}: ${one.what}`)],
    ),
  ];
}
