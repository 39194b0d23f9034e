/** Money in whole minor units: tax rounded four ways, line by line and on the total; shares that add up. */
import { type TaxLevel, taxOn } from "../../core/plan/index.js";
import { minorOf, money, type Rounding, split } from "../../core/units/index.js";
import { caseOf, eachOf, firstOf, has, remarks, type Section, underName } from "./section.js";
import { asFields, fields, inside, list, one, signedWhole, whole } from "./shape.js";

const shared = caseOf(fields({ total: signedWhole, weights: list(whole, 1) }), ({ total, weights }, at) => {
  const all = weights.reduce((sum, one) => sum + one, 0);
  if (all === 0 || !Number.isSafeInteger(all)) {
    const params = { found: weights.join(", "), expected: "weights of which one is above nought" };
    at.problems.push({ code: "plan-file.expected", where: { path: `${at.path}.weights` }, params });
    return undefined;
  }
  return { total, weights, shares: split(money(total), weights).map(minorOf) };
});

const isShared = (value: unknown): boolean => has(value, "total", "weights");

export const splitMoney: Section = {
  name: "split_money",
  isSection: (value) => isShared(firstOf(value, "cases")),
  answer: underName("cases", shared),
  isCase: isShared,
  answerCase: shared,
};

const MOST = 1e11;
const net = one("whole minor units up to 1e11", (value) =>
  Number.isSafeInteger(value) && Math.abs(Number(value)) <= MOST ? Number(value) : undefined,
);
const basisPoints = one("whole basis points up to 100000", (value) =>
  Number.isSafeInteger(value) && Number(value) >= 0 && Number(value) <= 100_000 ? Number(value) : undefined,
);
/** Two digits behind the point, as most currencies have. */
const DIGITS = 2;

function taxed(nets: readonly number[], bp: number, rounding: Rounding, level: TaxLevel): number {
  const lines = nets.map((one) => ({ group: "all", net: one }));
  const groups = [{ id: "all", name: "all", basisPoints: bp }];
  return taxOn(lines, { groups, rounding, level }, DIGITS).reduce((sum, { tax }) => sum + tax, 0);
}

const rounded = caseOf(fields({ net, bp: basisPoints }), ({ net: amount, bp }) => ({
  net: amount,
  bp,
  halfUp: taxed([amount], bp, "half-up", "invoice"),
  halfEven: taxed([amount], bp, "half-even", "invoice"),
  down: taxed([amount], bp, "down", "invoice"),
  up: taxed([amount], bp, "up", "invoice"),
}));

const atLevels = caseOf(fields({ lines: list(net), bp: basisPoints }), ({ lines, bp }) => ({
  lines,
  bp,
  perLineHalfUp: taxed(lines, bp, "half-up", "line"),
  onTotalHalfUp: taxed(lines, bp, "half-up", "invoice"),
}));

const isTax = (value: unknown): boolean => has(value, "bp") && (has(value, "net") || has(value, "lines"));
const taxOf = (value: unknown, at: Parameters<typeof rounded>[1]) =>
  has(value, "lines") ? atLevels(value, at) : rounded(value, at);

export const taxRounding: Section = {
  name: "tax_rounding",
  isSection: (value) => isTax(asFields(value)?.["level"]) || isTax(firstOf(value, "cases")),
  answer: (value, at) => {
    const given = asFields(value) ?? {};
    return {
      ...remarks(given),
      ...(given["cases"] === undefined ? {} : { cases: eachOf(given["cases"], inside(at, "cases"), rounded) }),
      ...(given["level"] === undefined ? {} : { level: atLevels(given["level"], inside(at, "level")) }),
    };
  },
  isCase: isTax,
  answerCase: taxOf,
};
