/** The owner's word on one job as it stands, and what planning makes of it. Pure; knows no text. */
import type { Decision, PlanState, Stands } from "../../core/record/index.js";

type Said = Pick<PlanState, "decisions">;

/** Every word that stands on a job (`job@place`), oldest first; several are several people's. */
export const wordsOn = ({ decisions }: Said, id: string): readonly Stands<Decision>[] => decisions.get(id) ?? [];

/** What two people would have to agree about: the word, and by when. */
const wish = ({ word, by, odometer }: Decision): string =>
  [word, by, odometer?.value, odometer?.unit].map((part) => part ?? "").join(" ");

/** Whether people wish different things of one job: then nobody's word counts until they agree. */
export const doDiffer = (standing: readonly Stands<Decision>[]): boolean =>
  new Set(standing.map(({ value }) => wish(value))).size > 1;

/** The one word all agree about; undefined where nobody has decided, or people differ. */
export function agreedWord(said: Said, id: string): Stands<Decision> | undefined {
  const standing = wordsOn(said, id);
  return doDiffer(standing) ? undefined : standing.at(-1);
}

export const isDeclined = (said: Said, id: string): boolean => agreedWord(said, id)?.value.word === "no";

/** `yes-now` is wanted whatever the budget; everything else the plan decides, or whoever plans. */
export const isWantedNow = (said: Said, id: string): boolean => agreedWord(said, id)?.value.word === "yes-now";
