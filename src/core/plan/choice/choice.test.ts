// Choosing within a budget: what is always in, what goes together, what excludes what, and what is told when it is faulty.
import { describe, expect, test } from "vitest";
import { PLAN_MESSAGES, tellPlan } from "../messages.js";
import type { ChoiceJob, ChoiceProblem } from "./contract.js";
import { choose, flatValues, nextStep, tieredValues } from "./door.js";

const job = (id: string, value: number, cost: number, more: Partial<ChoiceJob> = {}): ChoiceJob => ({
  id,
  value,
  cost,
  access: [],
  ...more,
});
const asked = (budget: number, jobs: readonly ChoiceJob[], states: ChoiceProblem["states"] = []): ChoiceProblem => ({
  budget,
  jobs,
  states,
});
const LIFT = { id: "lift", cost: 10, parents: [] };
const WHEEL = { id: "wheel", cost: 10, parents: ["lift"] };
function chosen(problem: ChoiceProblem) {
  const got = choose(problem);
  if (!got.ok) throw new Error(JSON.stringify(got.problems));
  return got.value;
}

test("[PC1] a state opened for two jobs is paid once, with all it hangs on", () => {
  const got = chosen(
    asked(60, [job("pads", 5, 20, { access: ["wheel"] }), job("hose", 4, 20, { access: ["wheel"] })], [LIFT, WHEEL]),
  );
  expect(got).toMatchObject({ cost: 60, value: 9, chosen: ["hose", "pads"], open: ["lift", "wheel"] });
});

test("[PC2] mandatory jobs over the budget all stay, by how much is said, and only what costs nothing more joins", () => {
  const jobs = [
    job("hose", 1, 100, { access: ["wheel"], mandatory: true }),
    job("wipe", 1, 0, { access: ["wheel"] }),
    job("pads", 9, 1, { access: ["wheel"] }),
    job("trim", 9, 0, { access: ["carpet"] }),
  ];
  const got = chosen(asked(90, jobs, [LIFT, WHEEL, { id: "carpet", cost: 1, parents: [] }]));
  expect(got).toMatchObject({ chosen: ["hose", "wipe"], cost: 120, overBy: 30, proven: true });
});

test("[PC2] what a mandatory job needs is mandatory too, and its rivals are out", () => {
  const jobs = [
    job("clutch", 1, 10, { mandatory: true, needs: ["cable"], oneOf: "way" }),
    job("cable", 0, 10),
    job("clutch through the tunnel", 50, 1, { oneOf: "way" }),
    job("after the tunnel", 50, 1, { needs: ["clutch through the tunnel"] }),
  ];
  expect(chosen(asked(100, jobs)).chosen).toEqual(["cable", "clutch"]);
});

test("[PC3] of a group at most one is done; a set is done whole or not at all; a job brings what it needs", () => {
  const group = [job("a", 5, 10, { oneOf: "g" }), job("b", 6, 10, { oneOf: "g" }), job("c", 4, 10)];
  expect(chosen(asked(30, group))).toMatchObject({ chosen: ["b", "c"], value: 10 });
  const set = [
    job("left", 9, 10, { together: "dampers" }),
    job("right", 1, 10, { together: "dampers" }),
    job("c", 4, 10),
  ];
  expect(chosen(asked(19, set)).chosen).toEqual(["c"]);
  expect(chosen(asked(20, set)).chosen).toEqual(["left", "right"]);
  const chain = [job("a", 9, 10, { needs: ["b"] }), job("b", 0, 10), job("c", 8, 10)];
  expect(chosen(asked(19, chain)).chosen).toEqual(["c"]);
  expect(chosen(asked(20, chain)).chosen).toEqual(["a", "b"]);
});

test("[PC3] a set with a mandatory job is mandatory, and jobs of a set may need each other", () => {
  const jobs = [
    job("left", 0, 10, { together: "s", mandatory: true, needs: ["right"] }),
    job("right", 0, 10, { together: "s", needs: ["left"] }),
  ];
  expect(chosen(asked(5, jobs))).toMatchObject({ chosen: ["left", "right"], overBy: 15 });
});

test("[PC5] of equal worth the cheaper is chosen, also where worth times cost is too large for one number", () => {
  const pair = (worth: number, unit: number) => [job("a", worth, 9 * unit), job("b", worth, 8 * unit)];
  expect(chosen(asked(10, pair(3, 1))).chosen).toEqual(["b"]);
  expect(chosen(asked(1e9, pair(1e9, 1e8)))).toMatchObject({ chosen: ["b"], proven: true, bound: 1e9 });
});

/** Twenty jobs worth about what they cost: the hard kind, far from done after a few hundred steps. */
const HARD_JOBS = Array.from({ length: 20 }, (_, i) => {
  const value = 1000 + ((i * 7919) % 997);
  return job(`j${i}`, value, value + ((i * 131) % 101));
});
const HARD = asked(Math.floor(HARD_JOBS.reduce((sum, { cost }) => sum + cost, 0) / 2), HARD_JOBS);

test("[PC6] stopped by its cap or by hand, the best found is given, and nothing is worth more than the bound it names", () => {
  const whole = chosen(HARD);
  expect(whole.proven).toBe(true);
  const capped = chosen({ ...HARD, nodeCap: 3 });
  expect(capped).toMatchObject({ proven: false, nodes: 3 });
  expect(capped.cost).toBeLessThanOrEqual(HARD.budget);
  expect(capped.value).toBeLessThanOrEqual(whole.value);
  expect(capped.bound).toBeGreaterThanOrEqual(whole.value);
  let asks = 0;
  const got = choose(HARD, () => {
    asks += 1;
    return asks < 2;
  });
  expect([got.ok && got.value.proven, asks]).toEqual([false, 2]);
  expect(got.ok && got.value.nodes).toBeLessThan(whole.nodes);
});

describe("[PC8] the next better list", () => {
  const jobs = [job("a", 5, 10), job("b", 4, 9), job("c", 1, 7)];
  test("is the cheapest worth more, and says what gives way", () => {
    const step = nextStep(asked(9, jobs), chosen(asked(9, jobs)));
    expect(step).toMatchObject({
      ok: true,
      value: { more: 1, added: ["a"], leftOut: ["b"], atLeast: 10, proven: true },
    });
  });
  test("is none when everything is chosen, however much money there is", () => {
    const step = nextStep(asked(26, jobs), chosen(asked(26, jobs)));
    expect(step.ok && step.value).toEqual({ added: [], leftOut: [], proven: true, nodes: 1 });
  });
  test("starts from what the mandatory jobs cost when they exceed the budget", () => {
    const over = asked(5, [job("hose", 1, 10, { mandatory: true }), ...jobs]);
    expect(nextStep(over, chosen(over))).toMatchObject({ ok: true, value: { more: 12, added: ["c"] } });
  });
  test("not searched to the end names a cost below which there is none", () => {
    const present = chosen(HARD);
    const whole = nextStep(HARD, present);
    const cut = nextStep({ ...HARD, nodeCap: 1 }, present);
    expect([whole.ok && whole.value.proven, cut.ok && cut.value.proven]).toEqual([true, false]);
    if (whole.ok && cut.ok) expect(cut.value.atLeast).toBeLessThanOrEqual(whole.value.atLeast ?? 0);
  });
});

describe("[PC9] values", () => {
  const jobs = [
    { id: "serious", rank: 9, after: "watched" },
    { id: "medium", rank: 17, after: "gone" },
    { id: "mild", rank: 10, after: "watched" },
    { id: "low", rank: 18, after: "gone" },
    { id: "lower", rank: 20, after: "watched" },
    { id: "high", rank: 5, after: "gone" },
  ] as const;
  test("are rank steps won, to 20 when left to be watched and to 21 when gone", () => {
    expect(Object.fromEntries(flatValues(jobs))).toEqual({
      serious: 11,
      medium: 4,
      mild: 10,
      low: 3,
      lower: 0,
      high: 16,
    });
  });
  test("by tiers: one more than all below together, times the steps", () => {
    const values = Object.fromEntries(tieredValues(jobs));
    expect(values).toEqual({ low: 3, lower: 0, medium: 16, mild: 40, serious: 60 * 11, high: 720 * 16 });
  });
});

const FAULTY: readonly (readonly [string, ChoiceProblem, string])[] = [
  ["budget", asked(-1, []), "The budget is -1."],
  ["cost", asked(1, [job("pads", 1, -5)]), "pads costs -5."],
  ["cost", asked(1, [], [{ id: "lift", cost: 0.5, parents: [] }]), "lift costs 0.5."],
  ["value", asked(1, [job("pads", Number.NaN, 5)]), "pads is worth NaN."],
  ["node-cap", { ...asked(1, []), nodeCap: 0 }, "is 0 steps"],
  ["twice", asked(1, [job("pads", 1, 5), job("pads", 1, 6)]), "pads stands twice"],
  [
    "unknown-state",
    asked(1, [job("pads", 1, 5, { access: ["lifft"] })], [LIFT]),
    "needs lifft open, which is not known. Nearest: lift.",
  ],
  ["unknown-state", asked(1, [], [WHEEL]), "wheel needs lift open"],
  ["unknown-job", asked(1, [job("pads", 1, 5, { needs: ["discs"] })]), "pads needs the job discs"],
  ["state-circle", asked(1, [], [{ ...LIFT, parents: ["wheel"] }, WHEEL]), "lift, wheel."],
  ["job-circle", asked(1, [job("a", 1, 5, { needs: ["b"] }), job("b", 1, 5, { needs: ["a"] })]), "a, b."],
  ["job-circle", asked(1, [job("a", 1, 5, { needs: ["a"] })]), "round: a."],
  [
    "never",
    asked(1, [job("a", 1, 5, { oneOf: "g", needs: ["b"] }), job("b", 1, 5, { oneOf: "g" })]),
    "a can never be done",
  ],
  [
    "never",
    asked(1, [job("a", 1, 5, { oneOf: "g", together: "s" }), job("b", 1, 5, { oneOf: "g", together: "s" })]),
    "of a, b, at most",
  ],
  [
    "both-mandatory",
    asked(1, [job("a", 1, 5, { oneOf: "g", mandatory: true }), job("b", 1, 5, { oneOf: "g", mandatory: true })]),
    "a, b: all must",
  ],
  ["too-large", asked(1, [job("a", 1, 2 ** 53 - 1), job("b", 1, 2 ** 53 - 1)]), "too large"],
];
test.each(FAULTY)("[PC7] faulty: %s is told with its name and what to do", (code, problem, says) => {
  const got = choose(problem);
  if (got.ok) throw new Error("taken for good");
  expect(got.problems.map((p) => p.code)).toContain(`choice.${code}`);
  expect(got.problems.map(tellPlan).join(" ")).toContain(says);
  expect(nextStep(problem, { value: 0, cost: 0, chosen: [], open: [], bound: 0, proven: true, nodes: 0 }).ok).toBe(
    false,
  );
});
test("[PC7] every problem of choosing has a case here", () => {
  const told = Object.keys(PLAN_MESSAGES).filter((code) => code.startsWith("choice."));
  expect(told.sort()).toEqual([...new Set(FAULTY.map(([code]) => `choice.${code}`))].sort());
});
