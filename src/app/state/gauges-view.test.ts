import { expect, test } from "vitest";
import type { HouseGauge, Stands } from "../../core/record/index.js";
import { formOf, gaugeFrom, inUnit } from "./gauge-form.js";
import { gaugeAs, gaugeLine, gaugesOf } from "./gauges-view.js";

const dial: HouseGauge = {
  id: "g-1",
  name: "Dial, red box",
  quantity: "length",
  unit: "mm",
  resolution: 0.01,
  error: 0.02,
  checked: "2025-11-30",
  tool: "dial",
};
const plain: HouseGauge = {
  id: "g-2",
  name: "Callipers",
  quantity: "length",
  unit: "mm",
  resolution: 0.02,
  error: 0.03,
};
const standing = (gauge: HouseGauge): readonly Stands<HouseGauge>[] => [
  { id: "e", value: gauge, at: { wall: 1, count: 0 }, by: "p" },
];
const house = { gauges: new Map([dial, plain].map((gauge) => [gauge.id, standing(gauge)])) };
const day = (ms: number): string => new Date(ms).toISOString().slice(0, 10);
const NOW = Date.parse("2026-03-01");

test("gauges stand by name; a point that names a dial gets this house's own", () => {
  expect(gaugesOf(house).map(({ name }) => name)).toEqual(["Callipers", "Dial, red box"]);
  expect(gaugeAs(house, "dial")).toBe(dial);
  expect(gaugeAs(house, "rule")).toBeUndefined();
  expect(gaugeAs(house, "")).toBeUndefined();
});

test("a gauge says how well it reads and when it was checked, and that a year is long", () => {
  expect(gaugeLine(dial, NOW, day)).toBe("Reads to 0.01, gauge ± 0.02 mm. Checked 2025-11-30");
  expect(gaugeLine(dial, Date.parse("2026-12-02"), day)).toContain("more than a year ago");
  expect(gaugeLine(plain, NOW, day)).toContain("Never checked");
});

test("another unit takes the figures with it; what is no figure stays as typed", () => {
  expect(inUnit({ ...formOf(dial), error: "fine" }, "[in_i]")).toMatchObject({
    unit: "[in_i]",
    resolution: "0.000394",
    error: "fine",
  });
});

test("what is typed becomes a gauge only with a name and two figures above nought", () => {
  expect(gaugeFrom(formOf(dial), "g-1")).toEqual(dial);
  expect(gaugeFrom({ ...formOf(plain), resolution: "0,02" }, "g-2")).toEqual(plain);
  for (const part of [{ name: " " }, { error: "0" }, { resolution: "fine" }, { quantity: "beauty" }])
    expect(gaugeFrom({ ...formOf(dial), ...part }, "g-1")).toBeUndefined();
});
