/** Money shared out so that it adds up. */
import { minorOf, money, split } from "../../core/units/index.js";
import { caseOf, has, type Section, underName } from "./section.js";
import { fields, list, signedWhole, whole } from "./shape.js";

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
  isSection: (value) => has(value, "cases") && isShared((value["cases"] as readonly unknown[])[0]),
  answer: underName("cases", shared),
  isCase: isShared,
  answerCase: shared,
};
