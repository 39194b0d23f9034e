// [AS8]–[AS16] Which limits are in force, what a band says, values worked out from readings.
import { expect, test } from "vitest";
import { replies, smallEngine, visit } from "../../../tests/support/small-car.js";
import { HUB_SHEET, rule } from "../../../tests/support/small-sheets.js";
import { type AssessInput, assess, explain } from "./index.js";

const engine = smallEngine();
const on = (said: Parameters<typeof replies>[1], more: Partial<AssessInput> = {}) =>
  assess(engine, visit(replies(engine, said), more));
const book = (...limits: AssessInput["car"]["limits"]) => ({ car: { facts: {}, limits } });
const finding = (a: ReturnType<typeof on>, rule: string, place = "FR") =>
  a.findings.find((f) => f.rule === rule && f.place === place);
const limitStep = (a: ReturnType<typeof on>, rule: string) => finding(a, rule)?.because.find((b) => b.kind === "limit");

test("[AS10] the kind of hub decides which limit a reading meets", () => {
  expect(finding(on({ "hub.float@FR": "0.18 mm", "hub.kind@FR": "taper" }), "hub.r03")?.grade).toBe("minor");
  expect(finding(on({ "hub.float@FR": "0.18 mm", "hub.kind@FR": "unit" }), "hub.r03")?.grade).toBe("major");
});

test("[AS8] a fixed-grade rule hears a band only when both ends of the uncertainty agree", () => {
  const pad = smallEngine([
    {
      id: "hub.t1",
      scope: "corner",
      effect: "finding",
      fault: "hub.t",
      grade: "major",
      when: "band(hub.pad) >= major",
      sure: "likely",
    },
  ]);
  const a = assess(pad, visit(replies(pad, { "hub.pad@FR": "3.1 mm" })));
  expect(a.findings.some((f) => f.rule === "hub.t1")).toBe(false);
  expect(a.settle).toContainEqual(
    expect.objectContaining({ point: "hub.pad", place: "FR", decides: ["hub.r04", "hub.t1"], closer: true }),
  );
});

test("[AS9] the band finding takes the worse end and says it is too close to call", () => {
  const close = finding(on({ "hub.pad@FR": "3.1 mm" }), "hub.r04");
  expect([close?.grade, close?.close]).toEqual(["major", true]);
  const past = finding(on({ "hub.pad@FR": "2.8 mm" }), "hub.r04");
  expect([past?.grade, past?.close]).toEqual(["major", false]);
  expect(finding(on({ "hub.pad@FR": "3.2 mm" }), "hub.r04")).toBeUndefined();
});

test("[AS9] a fault resting on a close reading alone is close, and asks to measure again", () => {
  const a = on({ "hub.pad@FR": "3.1 mm" });
  expect(a.faults).toMatchObject([{ fault: "hub.pad-thin", close: true, grade: "major" }]);
  const again = { point: "hub.pad", place: "FR", because: "hub.r04", again: true };
  expect([a.open, a.faults[0]?.settle]).toEqual([[again], [again]]);
  expect(a.settle).toContainEqual({
    point: "hub.pad",
    place: "FR",
    because: "hub.r04",
    decides: ["hub.r04"],
    closer: true,
  });
  expect(a.readings.find((r) => r.point === "hub.pad")?.limits).toMatchObject([
    { limit: "lim.pad", state: "too close", grade: "major" },
  ]);
  expect(a.points.find((p) => p.point === "hub.pad" && p.place === "FR")?.is).toBe("major");
});

test("[AS3] a better gauge named with the reading makes it clear", () => {
  const fine = { type: "reading", values: ["3.1"], unit: "mm", gauge: { resolution: 0.01, error: 0.01 } } as const;
  const a = on({ "hub.pad@FR": fine });
  expect(finding(a, "hub.r04")).toBeUndefined();
  expect(a.readings[0]?.uncertainty).toBeCloseTo(0.01291, 5);
});

test("[AS3] without a gauge the point's tool is echoed; without a tool the last figure typed is the step", () => {
  const step = finding(on({ "hub.pad@FR": "2.5 mm" }), "hub.r04")?.because.find((b) => b.kind === "reply");
  expect(step).toMatchObject({ value: { gauge: { id: "pad-gauge", resolution: 0.1, error: 0.1 } } });
  const toolless = smallEngine(
    [],
    [{ ...HUB_SHEET, points: HUB_SHEET.points.map((p) => (p.id === "hub.pad" ? { ...p, tool: undefined } : p)) }],
  );
  const read = assess(toolless, visit(replies(toolless, { "hub.pad@FR": "3.10 mm" }), { sheets: ["hub"] })).readings[0];
  expect(read?.uncertainty).toBeCloseTo((2 * 0.01) / Math.sqrt(12), 8);
});

test("[AS1] the point's set-up error is added to a named gauge", () => {
  const named = { type: "reading", values: ["0.20"], unit: "mm", gauge: { resolution: 0, error: 0 } } as const;
  const a = on({ "hub.float@FR": named, "hub.kind@FR": "taper" });
  expect(a.readings.find((r) => r.point === "hub.float")?.uncertainty).toBeCloseTo((2 * 0.02) / Math.sqrt(3), 8);
});

test("[AS12] several limits may apply: the mildest grade they agree on, 'at least', and the deciding point opened", () => {
  const a = on({ "hub.float@FR": "0.30 mm" });
  expect(finding(a, "hub.r03")).toMatchObject({ grade: "major", atLeast: false });
  const mild = on({ "hub.float@FR": "0.18 mm" });
  expect(finding(mild, "hub.r03")).toMatchObject({ grade: "minor", atLeast: true });
  expect(mild.open).toContainEqual(expect.objectContaining({ point: "hub.kind", place: "FR" }));
});

test("[AS12] where they agree on no grade nothing fires, and the kind is to settle", () => {
  const a = on({ "hub.float@FR": "0.08 mm" });
  expect(a.findings).toEqual([]);
  expect(a.settle).toContainEqual(
    expect.objectContaining({ point: "hub.kind", place: "FR", decides: expect.arrayContaining(["hub.r03"]) }),
  );
  expect(a.points.find((p) => p.point === "hub.float" && p.place === "FR")?.is).toBe("answered");
});

test("[AS12] one limit alone that may apply says nothing for certain", () => {
  const a = on({ "hub.float@FR": "0.001 mm" });
  expect(a.findings).toEqual([]);
  expect(a.settle).toContainEqual(expect.objectContaining({ point: "hub.kind", place: "FR" }));
});

test("[AS12] a kind that cannot be told applies no limit for certain; not fitted applies none", () => {
  expect(on({ "hub.float@FR": "0.18 mm", "hub.kind@FR": "could-not-tell" }).findings).toMatchObject([
    { atLeast: true, grade: "minor" },
  ]);
  const none = on({ "hub.float@FR": "0.28 mm", "hub.kind@FR": "not-fitted" });
  expect(none.findings).toEqual([]);
  expect(none.settle.flatMap((s) => s.decides)).not.toContain("hub.r03");
});

test("[AS13] a maker's figure is the edge of its grade: milder defaults drop, dangerous stays beyond it", () => {
  const makers = book({ limit: "lim.float-taper", value: "0.20", unit: "mm", basis: "maker", source: "maker's book" });
  const at = (mm: string) => on({ "hub.float@FR": `${mm} mm`, "hub.kind@FR": "taper" }, makers);
  expect(finding(at("0.15"), "hub.r03")).toBeUndefined();
  expect(finding(at("0.30"), "hub.r03")?.grade).toBe("major");
  expect(finding(at("0.90"), "hub.r03")?.grade).toBe("dangerous");
  expect(limitStep(at("0.30"), "hub.r03")).toMatchObject({
    edge: 0.2,
    basis: "maker",
    source: "maker's book",
    isDefault: false,
    limit: "lim.float-taper",
  });
});

test("[AS13] a figure beyond the default's dangerous edge leaves no dangerous band", () => {
  const makers = book({ limit: "lim.float-unit", value: "0.60", unit: "mm", basis: "maker" });
  expect(finding(on({ "hub.float@FR": "0.55 mm" }, makers), "hub.r03")).toBeUndefined();
  expect(finding(on({ "hub.float@FR": "0.90 mm" }, makers), "hub.r03")?.grade).toBe("major");
});

test("[AS13] a figure is in force whatever 'applies' says, and retires the other defaults of that reading there", () => {
  const makers = book({ limit: "lim.float-taper", value: "0.40", unit: "mm", basis: "maker" });
  // kind says unit, whose default would call 0.30 major
  expect(finding(on({ "hub.float@FR": "0.30 mm", "hub.kind@FR": "unit" }, makers), "hub.r03")).toBeUndefined();
  expect(finding(on({ "hub.float@FR": "0.45 mm" }, makers), "hub.r03")).toMatchObject({
    grade: "major",
    atLeast: false,
  });
});

test("[AS13] a figure for too much says nothing about too little", () => {
  const makers = book({ limit: "lim.float-taper", value: "0.40", unit: "mm", basis: "maker" });
  const a = on({ "hub.float@FR": "0.001 mm", "hub.kind@FR": "taper" }, makers);
  expect(a.findings.find((f) => f.rule === "hub.r03")?.because).toContainEqual(
    expect.objectContaining({ kind: "limit", limit: "lim.float-none" }),
  );
});

test("[AS13] a figure with bands and a grade of its own, in another unit", () => {
  const makers = book({ limit: "lim.pad", bands: { minor: "0.16", major: "0.1" }, unit: "[in_i]", basis: "maker" });
  expect(finding(on({ "hub.pad@FR": "3.2 mm" }, makers), "hub.r04")).toBeUndefined();
  expect(finding(on({ "hub.pad@FR": "2.3 mm" }, makers), "hub.r04")?.grade).toBe("major");
  expect(finding(on({ "hub.pad@FR": "1.2 mm" }, makers), "hub.r04")?.grade).toBe("dangerous");
});

test("[AS14] the figure named for the closest place wins; two equally close both stand and the worse rules", () => {
  const car = { limit: "lim.pad", value: "4", unit: "mm", basis: "maker" } as const;
  const front = { ...car, place: "axle-F", value: "2" } as const;
  const a = on({ "hub.pad@FR": "3.0 mm", "hub.pad@RR": "3.0 mm" }, book(car, front));
  expect(a.findings.map((f) => f.place)).toEqual(["RR"]);
  const differ = on({ "hub.pad@FR": "3.0 mm" }, book(front, { ...front, value: "5" }));
  expect(finding(differ, "hub.r04")?.grade).toBe("major");
});

test("[AS13] a figure for a limit nobody has, or one that cannot be read, is told", () => {
  const a = on(
    {},
    book(
      { limit: "lim.nothing", value: "1", unit: "mm", basis: "maker" },
      { limit: "lim.pad", value: "three", unit: "mm", basis: "maker" },
    ),
  );
  expect(a.problems.map((p) => p.code)).toEqual(["assess.limit-unknown", "assess.figure-not-read"]);
});

test("[AS4] fewer shots than asked are no pass, but a past edge stays past", () => {
  const few = on({ "hub.disc@FR": ["10.00 mm", "10.01 mm"] });
  expect(few.findings).toEqual([]);
  expect(few.points.find((p) => p.point === "hub.disc" && p.place === "FR")?.is).toBe("answered");
  expect(few.settle).toContainEqual(expect.objectContaining({ point: "hub.disc", place: "FR" }));
  const waves = on({ "hub.disc@FR": ["10.00 mm", "10.20 mm"] });
  // past the worst edge there is: no further shot can better or worsen that
  expect(finding(waves, "hub.r07")).toMatchObject({ grade: "major", atLeast: false });
  expect(finding(on({ "hub.disc@FR": ["10.00 mm", "10.03 mm"] }), "hub.r07")).toMatchObject({
    grade: "minor",
    atLeast: true,
  });
  const whole = on({ "hub.disc@FR": ["10.00 mm", "10.01 mm", "10.00 mm", "10.01 mm"] });
  expect(whole.points.find((p) => p.point === "hub.disc" && p.place === "FR")?.is).toBe("sound");
});

test("[AS4] as a number, a reading with shots still to come is not known", () => {
  const twins = smallEngine([rule("hub.t1", "corner", "hub.t", "minor", "hub.disc > opposite.hub.disc")]);
  const four = ["10.00 mm", "10.01 mm", "10.00 mm", "10.09 mm"];
  const is = (shots: readonly string[]) => {
    const said = replies(twins, {
      "hub.disc@FR": shots,
      "hub.disc@FL": ["10.00 mm", "10.00 mm", "10.00 mm", "10.00 mm"],
    });
    return explain(twins, visit(said), "hub.t1", "FR");
  };
  expect(is(four)).toEqual({ is: "true", missing: [] });
  expect(is(four.slice(1))).toEqual({ is: "unknown", missing: ["hub.disc@FR#w8-off.thick"] });
});

test("[AS15] a derived value carries the uncertainty of what it is made of, its formula and its inputs", () => {
  const a = on({ "hub.heat@FR": "70 Cel", "hub.air": "15 Cel" });
  const step = finding(a, "hub.r14")?.because.find((b) => b.kind === "derived");
  const u = Math.sqrt(1 / 12 + 9 / 3);
  expect(step).toMatchObject({ id: "hub.heat_rise", place: "FR", value: 55, unit: "K", formula: "hub.heat - hub.air" });
  expect(step?.kind === "derived" && step.uncertainty).toBeCloseTo(2 * Math.sqrt(2) * u, 6);
  expect(step?.kind === "derived" && step.from.map((k) => k.point)).toEqual(["hub.heat", "hub.air"]);
});

test("[AS15] a derived value is not known while one input is missing, and names it", () => {
  const a = on({ "hub.heat@FR": "70 Cel" });
  expect(a.settle).toContainEqual(expect.objectContaining({ point: "hub.air", place: "car", decides: ["hub.r14"] }));
});

test("[AS16] a preferred value falls back, and says what it stands in for", () => {
  const direct = finding(on({ "hub.float@FR": "0.40 mm", "hub.kind@FR": "taper" }), "hub.r21");
  expect(direct?.because).toContainEqual(
    expect.objectContaining({ kind: "derived", used: "hub.float", insteadOf: [] }),
  );
  const instead = finding(on({ "hub.wall@FR": "1.50 mm" }), "hub.r21");
  expect(instead?.because).toContainEqual(
    expect.objectContaining({ kind: "derived", used: "hub.wall", insteadOf: ["hub.float"] }),
  );
});

test("[AS5] what cannot be read is told and never counts", () => {
  const odd = { type: "reading", values: ["three"], unit: "mm" } as const;
  const a = on({ "hub.pad@FR": odd });
  expect(a.problems).toMatchObject([{ code: "assess.reading-not-read" }]);
  expect(a.points.find((p) => p.point === "hub.pad" && p.place === "FR")?.is).toBe("answered");
  expect(on({ "hub.pad@FR": { ...odd, values: ["3"], unit: "bar" } }).problems).toMatchObject([
    { code: "assess.unit-unknown" },
  ]);
  expect(on({ "hub.pad@FR": { type: "yes", yes: true } }).problems).toMatchObject([{ code: "assess.reply-kind" }]);
});

test("[AS5] a word in place of a number is no number", () => {
  const a = on({ "hub.wall@FR": "no-echo" });
  expect(a.findings).toEqual([]);
  expect(a.points.find((p) => p.point === "hub.wall" && p.place === "FR")?.is).toBe("answered");
});
