// Planning on the command line: what is asked in a file comes back worked out anew, whatever the file said it should be.
import { expect, test } from "vitest";
import { BESIDE_A_LIMIT, GAUGED, RANGE_BY_CHANCE, SEVERAL } from "../../tests/reference/facts/limits.js";
import { SHARED_OUT } from "../../tests/reference/facts/money.js";
import {
  BANDS,
  EIGHT,
  EIGHT_IN_ORDER,
  EIGHT_TOLD_BY,
  SUM_OF_WEIGHTS,
  TABLE_A_III,
} from "../../tests/reference/facts/urgency.js";
import { FIVE, HALF_LIFE, TWO_POINTS } from "../../tests/reference/facts/wear.js";
import { type Asked, askedFor, askedText, expectCase, expectWorkedOut } from "../../tests/support/plan-asked.js";
import { main } from "./main.js";

const VERDICT = { clear: "clear of limit", close: "too close: measure again", past: "past limit" };
const BECAUSE = {
  dangerous: "one is graded dangerous",
  due: "it falls due sooner",
  rank: "its risk number is lower (worse)",
  grade: "its grade is worse",
};

const guard = GAUGED.map((row) => ({
  y: row.y,
  resolution: row.d,
  mpe: row.e,
  lower: "lower" in row ? row.lower : null,
  upper: "upper" in row ? row.upper : null,
  u: row.u,
  verdict: VERDICT[row.zone],
  ...("U" in row ? { U: row.U, p_conform: row.p } : {}),
}));

const SECTIONS: readonly Asked[] = [
  { section: "risk_matrix", given: [], facts: { rows: TABLE_A_III, bands: BANDS } },
  {
    section: "priority_order",
    given: ["input"],
    facts: {
      input: EIGHT,
      expectedOrder: EIGHT_IN_ORDER.map(({ id }) => id),
      detail: EIGHT_IN_ORDER,
      reasons: EIGHT_TOLD_BY.map((by, i) => ({
        above: EIGHT_IN_ORDER[i]?.id,
        below: EIGHT_IN_ORDER[i + 1]?.id,
        because: BECAUSE[by],
      })),
      dueNames: [
        "before the car is moved",
        "before the next drive",
        "within a stated distance or time",
        "next visit",
        "watch",
      ],
    },
  },
  { section: "sum_weight_counterexample", given: ["minors"], facts: SUM_OF_WEIGHTS },
  { section: "split_money", given: ["total", "weights"], facts: { cases: SHARED_OUT } },
  {
    section: "guard",
    given: ["y", "resolution", "mpe", "lower", "upper", "limit", "relU", "confidence", "extra.u"],
    facts: { cases: guard, extra: BESIDE_A_LIMIT },
  },
  { section: "trend", given: ["x", "y", "limit", "in"], facts: { ...FIVE, ...TWO_POINTS } },
  {
    section: "half_life",
    given: [
      ..."from to t need initial previous actual actualLong actualShort yearsLong yearsShort cap".split(" "),
      ..."rate.years life.rate interval.life src unit".split(" "),
    ],
    facts: HALF_LIFE,
  },
  { section: "aggregate", given: ["rule", "in"], facts: { cases: SEVERAL, noiseRange: RANGE_BY_CHANCE } },
];

test.each(SECTIONS)("$section: every field as worked out outside, none read from the file", expectWorkedOut);

const CASES = [
  ["a reading beside its limit", guard[0]],
  ["a speed limit", BESIDE_A_LIMIT[0]],
  ["a breakdown voltage", BESIDE_A_LIMIT[1]],
  ["five readings", FIVE.outlier],
  ["two readings too near each other", TWO_POINTS.twoPointIndistinct],
  ["a rate", HALF_LIFE.rate[2]],
  ["a life", HALF_LIFE.life[1]],
  ["a next look", HALF_LIFE.interval[6]],
  ["two rates", HALF_LIFE.controlling[1]],
  ["money in shares", SHARED_OUT[1]],
  ["several readings", SEVERAL[2]],
] as const;
test.each(CASES)("one bare case: %s", (_, facts) => expectCase(facts));

test("a faulty case is told with its path and what was expected; the rest is worked out", async () => {
  const sound = SHARED_OUT[0];
  const { exit, answer, err } = await askedFor({ about: "shares", split_money: { cases: [{ total: 10.5 }, sound] } });
  expect(exit).toBe(1);
  expect(answer).toEqual({ about: "shares", split_money: { cases: [null, sound] } });
  expect(err).toBe(
    "FILE: split_money.cases[0].total: 10.5 does not fit; expected a whole number\n" +
      "FILE: split_money.cases[0].weights: is missing; expected a list",
  );
});

test("a section nobody knows is told with its nearest, the others are answered", async () => {
  const { exit, answer, err } = await askedFor({ half_live: {}, sum_weight_counterexample: { minors: 3 } });
  expect(exit).toBe(1);
  expect(answer).toMatchObject({ sum_weight_counterexample: { minorSum: 3, first: "dangerous" } });
  expect(err).toContain("half_live: is no section; nearest half_life");
});

test.each([
  [
    "readings that do not match their times",
    { x: [0, 1, 2], y: [3, 2], limit: 1 },
    "y: 2 does not fit; expected 3 readings",
  ],
  ["a reading without a limit", { y: 3, resolution: 0.1, mpe: 0.1 }, "neither a lower nor an upper limit"],
  ["a wall that grew", { from: 3, to: 4, years: 2 }, "loss_per_year"],
  ["a finding twice", [EIGHT[0], EIGHT[0]], "“f1” stands twice"],
  ["a grade nobody knows", [{ ...EIGHT[0], grade: "bad" }], "input[0].grade: “bad” does not fit"],
  ["weights of nothing", { total: 5, weights: [0, 0] }, "expected weights of which one is above nought"],
  ["what is no question", { colour: "red" }, "holds no section of planning"],
])("%s is told", async (_, value, told) => {
  const { exit, err } = await askedFor(value);
  expect(exit).toBe(1);
  expect(err).toContain(told);
});

test("wrong use ends with 2, a file that is no JSON with 1", async () => {
  expect((await askedText("{}", "more")).exit).toBe(2);
  expect((await askedText("{")).exit).toBe(1);
  const [out, err]: [string[], string[]] = [[], []];
  const terminal = { out: (line: string) => out.push(line), err: (line: string) => err.push(line) };
  expect(await main(["plan"], terminal)).toBe(2);
  expect(err.join("\n")).toContain("mc_");
  expect(await main(["plan", "none.json"], terminal)).toBe(2);
  expect(out).toEqual([]);
});
