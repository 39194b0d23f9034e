/** Reasons of planning in words: every code core/plan can give, with the figures it really gives. */
import { expect, test } from "vitest";
import type { UrgencyKey, Why } from "../../core/assess/contract.js";
import { LIKELIHOODS } from "../../core/plan/matrix.js";
import { whyKeys } from "../../core/plan/order.js";
import { urgencyOf } from "../../core/plan/urgency.js";
import { GRADES } from "../../core/terms/index.js";
import { whyTexts } from "../texts/why.js";
import { whyText } from "./work-view.js";

const CONSEQUENCES = [1, 2, 3, 4] as const;
const EXPOSURES = [-1, 0, 1] as const;

/** Every reason of every urgency that differs in anything the rules of urgency look at. */
function everyReason(): readonly Why[] {
  const found = new Map<string, Why>();
  const keys: UrgencyKey[] = [];
  const add = (why: Why): void => void found.set(JSON.stringify(why), why);
  for (const grade of GRADES)
    for (const consequence of CONSEQUENCES)
      for (const likelihood of LIKELIHOODS)
        for (const exposure of EXPOSURES)
          for (const flag of [0, 1, 2, 3, 4, 5, 6, 7])
            for (const left of [undefined, 0.5]) {
              const urgency = urgencyOf({
                id: "f@p",
                grade,
                consequence,
                likelihood,
                exposure,
                mustStand: (flag & 1) > 0,
                close: (flag & 2) > 0,
                limitPassed: (flag & 4) > 0,
                position: 1,
                ...(left === undefined ? {} : { left }),
              });
              urgency.why.forEach(add);
              keys.push(urgency.key);
            }
  const [one] = keys;
  if (one === undefined) throw new Error("no urgency was made");
  for (const other of keys) add(whyKeys(one, other));
  const beside: Partial<UrgencyKey>[] = [{ grade: "advisory" }, { left: 0.2 }, { position: 9 }, { id: "g@p" }];
  for (const change of beside) add(whyKeys({ ...one, left: null }, { ...one, left: null, ...change }));
  add({ code: "answers-several", params: { faults: 2 } });
  add({ code: "brought-along", params: {} });
  return [...found.values()];
}

test("every reason core/plan gives has its words, and every figure the words name", () => {
  const reasons = everyReason();
  expect([...new Set(reasons.map((why) => why.code))].sort()).toEqual(Object.keys(whyTexts).sort());
  for (const why of reasons) {
    const names = [...(whyTexts[why.code] ?? "").matchAll(/\{([^}|]+)/g)].map(([, name]) => name);
    expect(Object.keys(why.params), why.code).toEqual(expect.arrayContaining(names));
    expect(whyText(why)).not.toMatch(/[{}]|undefined|\bnot known\b.*not known/);
  }
});

test("a reason that came without its figure is told without it", () => {
  expect(whyText({ code: "grade", params: {} })).toBe("Graded .");
});
