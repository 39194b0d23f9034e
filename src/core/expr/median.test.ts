// The middle one over all places of a kind: what counts, what is missing, how certain it is.
import { expect, test } from "vitest";
import { key, linkedFormula, told } from "../../../tests/support/expr-told.js";
import { NOT_FITTED, scopeOf, worldOf } from "../../../tests/support/expr-world.js";
import { withUncertainty } from "./run.js";

test("[EX52] the middle one over all places of its kind; of an even number the mean of the middle two", () => {
  const low = "whl.float < 0.75 * median(whl.float)";
  const floats = (...of: readonly (number | typeof NOT_FITTED)[]) =>
    worldOf(
      Object.fromEntries(
        ["FL", "FR", "RL", "RR"].map((at, i) => {
          const is = of[i] ?? NOT_FITTED;
          return [`whl.float@${at}`, is === NOT_FITTED ? is : { value: Number(is), u: 0 }];
        }),
      ),
    );
  // One far above the others moves a mean and the largest, but not the middle.
  expect(told(low, floats(0.2, 0.14, 0.2, 2), "FR")).toBe(true);
  expect(told(low, floats(0.2, 0.16, 0.2, 2), "FR")).toBe(false);
  expect(told(low, floats(0.1, 0.2, 0.3, 0.4), "FL")).toBe(true);
  expect(told(low, floats(0.19, 0.2, 0.3, 0.4), "FL")).toBe(false);
  expect(told(low, floats(0.19, 0.2, 0.3), "FL")).toBe(false);
  expect(told(low, floats(0.14, 0.2, 0.3), "FL")).toBe(true);
});

test("[EX53] the middle is not known while one place is open; a place without it drops out", () => {
  const low = "whl.float < 0.75 * median(whl.float)";
  const one = { value: 0.1, u: 0 };
  const three = { "whl.float@FL": one, "whl.float@FR": one, "whl.float@RL": one };
  expect(told(low, worldOf(three))).toEqual([key("whl.float", "RR")]);
  expect(told(low, worldOf({ ...three, "whl.float@RR": NOT_FITTED }))).toBe(false);
  const none = Object.fromEntries(["FL", "FR", "RL", "RR"].map((at) => [`whl.float@${at}`, NOT_FITTED]));
  expect(told("whl.runout < median(whl.float)", worldOf({ ...none, "whl.runout@FR": one }))).toBe("does not apply");
});

test("[EX38] the uncertainty of the middle is that of the readings that make it", () => {
  const world = worldOf({
    "whl.float@FL": { value: 0.1, u: 0.01 },
    "whl.float@FR": { value: 0.5, u: 0.02 },
    "whl.float@RL": { value: 0.9, u: 0.01 },
    "whl.float@RR": NOT_FITTED,
  });
  const both = withUncertainty(linkedFormula("median(whl.float)"));
  expect(both(scopeOf(world), "FL")).toEqual({ value: 0.5, u: expect.closeTo(0.02, 12) });
});
