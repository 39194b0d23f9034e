/**
 * Choices within a budget: our search beside the HiGHS solver on the same drawn choices, in turns. The solver is asked
 * for the worth alone; ours also finds the least cost among equals. Judges nothing.
 */
import loadHighs from "highs";
import { type ChoiceProblem, choose } from "../../src/core/plan/index.js";
import { type CaseKind, choiceCase } from "../support/choice-cases.js";
import { mostWorthText, PROVEN } from "../support/choice-highs.js";
import { type BenchRow, percentile } from "./row.js";

const plain = { values: "plain", hasTies: false, hasMandatory: true } as const;
const KINDS: readonly (CaseKind & { readonly count: number })[] = [
  { ...plain, jobs: 10, states: 5, isGraph: false, count: 60 },
  { ...plain, jobs: 10, states: 6, isGraph: true, count: 60 },
  { ...plain, jobs: 30, states: 12, isGraph: true, count: 60 },
  { ...plain, jobs: 60, states: 25, isGraph: false, count: 40 },
  { ...plain, jobs: 60, states: 25, isGraph: true, count: 40 },
  { ...plain, jobs: 60, states: 25, isGraph: true, values: "tiered", count: 40 },
  { ...plain, jobs: 60, states: 25, isGraph: true, hasTies: true, count: 20 },
  { ...plain, jobs: 60, states: 25, isGraph: false, values: "hard", count: 20 },
  { ...plain, jobs: 60, states: 25, isGraph: true, values: "hard", count: 20 },
];
/** Untimed beforehand, so that neither is measured while it is being compiled. */
const WARM = 12;

interface Measured {
  readonly ours: readonly number[];
  readonly theirs: readonly number[];
  readonly nodes: readonly number[];
  readonly differ: number;
  readonly unproven: number;
}

type Highs = Awaited<ReturnType<typeof loadHighs>>;

function measure(cases: readonly ChoiceProblem[], highs: Highs): Measured {
  const [ours, theirs, nodes]: [number[], number[], number[]] = [[], [], []];
  let differ = 0;
  let unproven = 0;
  for (const asked of cases) {
    const began = performance.now();
    const got = choose(asked);
    const between = performance.now();
    if (!got.ok) throw new Error(JSON.stringify(got.problems));
    // A solver has no word for work that must be done over the budget: it is given what that costs.
    const text = mostWorthText(asked, asked.budget + (got.value.overBy ?? 0));
    const beganTheirs = performance.now();
    const answer = highs.solve(text, PROVEN);
    theirs.push(performance.now() - beganTheirs);
    ours.push(between - began);
    nodes.push(got.value.nodes);
    if (Math.round(answer.ObjectiveValue) !== got.value.value) differ += 1;
    if (!got.value.proven) unproven += 1;
  }
  return { ours, theirs, nodes, differ, unproven };
}

/** The rows of choosing in the bench table. */
export async function bench(): Promise<readonly BenchRow[]> {
  const highs = await loadHighs();
  const warm = { ...plain, jobs: 30, states: 12, isGraph: true };
  measure(
    Array.from({ length: WARM }, (_, i) => choiceCase({ ...warm, hasTies: i % 2 === 0 }, 1 + i)),
    highs,
  );
  let [count, differ, unproven] = [0, 0, 0];
  const rows = KINDS.map((kind): BenchRow => {
    const cases = Array.from({ length: kind.count }, (_, i) => choiceCase(kind, 7000 + 1000 * kind.jobs + i));
    const got = measure(cases, highs);
    count += kind.count;
    differ += got.differ;
    unproven += got.unproven;
    const ties = kind.hasTies ? ", groups, sets and needs" : "";
    return {
      what: `${kind.count} choices of ${kind.jobs} jobs and ${kind.states} states, ${kind.isGraph ? "graph" : "tree"}, ${kind.values} values${ties}`,
      unit: "ms",
      figures: {
        "our search, median": percentile(got.ours, 0.5),
        "HiGHS, median": percentile(got.theirs, 0.5),
        "our search, p95": percentile(got.ours, 0.95),
        "HiGHS, p95": percentile(got.theirs, 0.95),
        "our search, longest": Math.max(...got.ours),
        "HiGHS, longest": Math.max(...got.theirs),
      },
      note: `steps: median ${percentile(got.nodes, 0.5)}, most ${Math.max(...got.nodes)}; differ in worth: ${got.differ}; not proven: ${got.unproven}`,
    };
  });
  return [
    ...rows,
    { what: `All ${count} choices`, unit: "", figures: { "differ in worth": differ, "not proven": unproven } },
  ];
}
