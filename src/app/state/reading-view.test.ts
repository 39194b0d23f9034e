import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import type { JudgedReading } from "../../core/assess/contract.js";
import {
  type Entering,
  gaugeUsed,
  lastReading,
  readEntry,
  readingList,
  readingScale,
  unitsOffered,
  verdictOf,
  windowIn,
  withoutReading,
  withReading,
} from "./reading-view.js";

const known = miniKnowledge();
const play = { quantity: "length", unit: "mm", window: [0, 2] } as const;
const wall = { ...play, shots: 3 } as const;
const field = <Field extends { readonly window: readonly [number, number] }>(of: Field) => ({
  ...of,
  window: [...of.window] as [number, number],
});
const dial = { resolution: 0.01, error: 0.01 };
const entering = (typed: string, part: Partial<Entering> = {}): Entering => ({
  typed,
  unit: "mm",
  comma: false,
  gauge: dial,
  ...part,
});
const reading = (typed: string, part: Partial<Entering> = {}) => {
  const entry = readEntry(field(play), entering(typed, part));
  if (entry.is !== "reading") throw new Error(`${typed} is a reading`);
  return entry.reading;
};
const judged = (value: number, state: "clear" | "too close" | "past", grade: "major" | null): JudgedReading => ({
  point: "hub.float",
  field: "play",
  place: "FR",
  value,
  uncertainty: 0.03,
  unit: "mm",
  limits: [
    {
      limit: "lim.float",
      direction: "over",
      bands: { minor: 0.13, major: 0.25 },
      unit: "mm",
      basis: "practice",
      source: "common practice",
      isDefault: true,
      state,
      grade,
      applies: "yes",
    },
  ],
});

test("point or comma, a fraction, '4 thou' are understood; what can't be read says why", () => {
  expect(reading("0,22", { comma: true })).toMatchObject({ text: "0.22", unit: "mm" });
  expect(reading("4 thou")).toMatchObject({ text: "4", unit: "[mil_i]" });
  expect(reading("3/32", { unit: "[in_i]" })).toMatchObject({ text: "3/32", unit: "[in_i]" });
  expect(readEntry(field(play), entering("some"))).toMatchObject({
    is: "refused",
    problem: { code: "units.not-a-number" },
  });
  expect(readEntry(field(play), entering("  "))).toEqual({ is: "empty" });
});

test("a reading outside its window is unusual, never refused; the window follows the unit", () => {
  expect(readEntry(field(play), entering("9"))).toMatchObject({ is: "reading", unusual: true });
  expect(readEntry(field(play), entering("2"))).toMatchObject({ is: "reading", unusual: false });
  expect(readEntry(field(play), entering("0.05", { unit: "[in_i]" }))).toMatchObject({ unusual: false });
  expect(windowIn(field(play), "um")).toEqual([0, 2000]);
});

test("one reading replaces the last, several are added in the unit of the first", () => {
  const first = withReading(field(play), undefined, reading("0.22"), dial);
  expect(withReading(field(play), first, reading("0.18"), dial).values).toEqual(["0.18"]);
  const two = withReading(field(wall), first, reading("4 thou"), dial);
  expect(two).toEqual({ type: "reading", values: ["0.22", "0.1016"], unit: "mm", gauge: dial });
  expect(withoutReading(two, 0)?.values).toEqual(["0.1016"]);
  expect(withoutReading(first, 0)).toBeUndefined();
});

test("limits and the last value are hidden until the reading is entered", () => {
  const value = withReading(field(play), undefined, reading("0.26"), dial);
  const while_ = readingScale(field(play), entering("0.26"), undefined, undefined, 0.1);
  expect(while_).toMatchObject({ limitsShown: false, edges: [], reading: { value: 0.26, uncertainty: 0.01 } });
  expect(while_.nominal).toBeUndefined();
  const after = readingScale(field(play), entering(""), value, judged(0.26, "too close", "major"), 0.1);
  expect(after).toMatchObject({ limitsShown: true, reading: { value: 0.26, uncertainty: 0.03 }, nominal: { at: 0.1 } });
  expect(after.edges.map(({ grade, text }) => `${grade} ${text}`)).toEqual(["minor 0.13", "major 0.25"]);
  const half = readingScale(field(wall), entering(""), value, judged(0.26, "past", "major"), undefined);
  expect(half.limitsShown).toBe(false);
});

test("too close to call says so with the edge it spans; clear and past say that", () => {
  expect(verdictOf(field(play), judged(0.26, "too close", "major"), entering(""))).toMatchObject({
    title: "Too close to call",
    says: "0.26 ± 0.03 spans 0.25. Measure again.",
    tooClose: true,
  });
  expect(verdictOf(field(play), judged(0.4, "past", "major"), entering(""))?.title).toBe("Past the major limit");
  expect(verdictOf(field(play), judged(0.05, "clear", null), entering(""))?.title).toBe("Clear of the limits");
  expect(verdictOf(field(play), { ...judged(0.05, "clear", null), limits: [] }, entering(""))?.title).toBe(
    "No limit over this reading",
  );
  expect(verdictOf(field(play), undefined, entering(""))).toBeUndefined();
});

test("another unit on the switch converts what is shown, never what is kept", () => {
  const value = withReading(
    field(wall),
    withReading(field(wall), undefined, reading("0.254"), dial),
    reading("0.508"),
    dial,
  );
  const shown = readingList(
    field(wall),
    value,
    entering("", { unit: "[mil_i]", gauge: { resolution: 0.1, error: 0.1 } }),
    "lowest",
  );
  expect(shown.map((one) => `${one.value} ${one.caption}`)).toEqual(["10.0 1", "20.0 2", "10.0 lowest", "15.0 mean"]);
  expect(value.values).toEqual(["0.254", "0.508"]);
});

test("the field's own unit is offered first; a gauge of another quantity is none for it", () => {
  expect(unitsOffered(field(play)).map(({ words }) => words)).toEqual(["mm", "in", "thou"]);
  expect(gaugeUsed(field(play), known.gauges.get("dial"), "um")).toEqual({ id: "dial", resolution: 10, error: 10 });
  expect(gaugeUsed(field(play), known.gauges.get("bar-gauge"), "mm")).toBeUndefined();
});

test("the last value is the mean of the newest earlier visit that has one", () => {
  const standing = (values: readonly string[]) => ({
    replies: new Map([
      [
        "k",
        {
          key: { point: "", place: "", state: "", field: "" },
          differ: false,
          standing: [
            { id: "1", at: { wall: 1, count: 0 }, by: "p", value: { type: "reading" as const, values, unit: "mm" } },
          ],
        },
      ],
    ]),
  });
  expect(lastReading(field(play), [standing(["0.1"]), standing(["0.2", "0.3"])], "k", "mm")).toBeCloseTo(0.25);
  expect(lastReading(field(play), [standing(["0.1"])], "other", "mm")).toBeUndefined();
});
