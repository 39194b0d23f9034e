/** The order of value as it is put at every reply: made once, and anew when something else is asked. */
import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import { planned } from "../../../tests/support/small-car.js";
import { HUB_SHEET, JOINT_SHEET, SMALL_COMMON } from "../../../tests/support/small-sheets.js";
import { type Asked, prepare, valueOrder, worthOf } from "../../core/assess/index.js";
import { foldVisit } from "../../core/record/index.js";
import { inOrder } from "./asked-order.js";

const built = planned(SMALL_COMMON, [HUB_SHEET, JOINT_SHEET]);
const engine = prepare(built.common, built.sheets);
const set = { engine, ...built, laid: { known: miniKnowledge() } };
const visit = foldVisit([]);

/** Everything the small sheets ask, at one place, from their least point to their gravest. */
const worths = worthOf(engine, built.common, built.sheets);
const asked = [...worths]
  .toSorted(([, a], [, b]) => a.decides - b.decides)
  .map(
    ([point]): Asked => ({
      point,
      place: "FL",
      state: "w7-hang",
      fields: [],
      with: [],
      safetyCritical: false,
      openedBy: [],
    }),
  );
const put = (some: readonly Asked[]): readonly Asked[] => inOrder({ asked: some }, visit, set).asked;

test("a reply that changes nothing of what is asked leaves the order as it stands", () => {
  const first = put(asked);
  expect(first).toEqual(valueOrder(asked, worths).asked);
  expect(first).not.toEqual(asked);
  const again = asked.map((one) => ({ ...one, openedBy: ["a rule"] }));
  expect(put(again)).toEqual(first.map((one) => ({ ...one, openedBy: ["a rule"] })));
});

test("what is opened meanwhile has its place in the order, and what is gone has none", () => {
  const fewer = asked.slice(1);
  put(fewer);
  expect(put(asked)).toEqual(valueOrder(asked, worths).asked);
  expect(put(fewer)).toEqual(valueOrder(fewer, worths).asked);
  const [least, ...others] = asked;
  const moved = [...others, ...(least ? [{ ...least, place: "RL" }] : [])];
  expect(put(moved)).toEqual(valueOrder(moved, worths).asked);
});
