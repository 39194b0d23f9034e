import { expect, test } from "vitest";
import { QUANTITIES, unitsOf } from "../../core/units/index.js";
import { unitShown } from "../texts/units.js";
import { replyText } from "./telling.js";

test("every unit is written as core/units writes it", () => {
  for (const quantity of QUANTITIES) {
    for (const unit of unitsOf(quantity)) expect(unitShown(unit.code), unit.code).toBe(unit.shown);
  }
});

test("a reading is told as typed, with its unit", () => {
  const value = { type: "reading", values: ["0.220", "1 1/2"], unit: "[in_i]" } as const;
  expect(replyText(undefined, "play", value, "technician")).toBe("0.220 / 1 1/2 in");
});

test("a non-answer is told with its reason, in the person's own words where they gave some", () => {
  const tell = (value: Parameters<typeof replyText>[2]) => replyText(undefined, "*", value, "owner");
  expect(tell({ type: "non-answer", nonAnswer: "not-fitted" })).toBe("Not fitted");
  expect(tell({ type: "non-answer", nonAnswer: "could-not-tell", reason: "too-hot" })).toBe("Could not tell: too hot");
  expect(tell({ type: "non-answer", nonAnswer: "not-reached", reason: "other", words: "shield glued on" })).toBe(
    "Not reached: shield glued on",
  );
});
