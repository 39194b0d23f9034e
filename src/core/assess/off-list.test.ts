// [AS53] Findings off the list, beside what the rules found; and where they stand in the order of work.
import { expect, test } from "vitest";
import { replies, smallEngine, visit } from "../../../tests/support/small-car.js";
import { HUB_SHEET } from "../../../tests/support/small-sheets.js";
import { order } from "../plan/index.js";
import { addOffList, applyRegrades, assess, type OffList } from "./index.js";

const engine = smallEngine();
const ruled = assess(engine, visit(replies(engine, { "hub.rock@FR": "none", "hub.spin@FR": "grumble" })));
const WIRE: OffList = {
  name: "f1",
  place: "RL",
  words: "wire round the arm",
  grade: "minor",
  reason: "chafing",
  mustStand: false,
  hasJob: true,
  by: "Anna",
  at: 0,
  id: "e1",
};
const FAULT = "own.f1";
const gateOf = (a: typeof ruled, guards: string) => a.gates.find((gate) => gate.guards === guards);

test("[AS53] it stands beside what the rules found, with its own words, and changes nothing they said", () => {
  const both = addOffList(ruled, [WIRE]);
  expect(both.faults.filter(({ fault }) => fault !== FAULT)).toEqual(ruled.faults);
  expect(both.findings.filter(({ fault }) => fault !== FAULT)).toEqual(ruled.findings);
  const { faults: _f, findings: _i, ...rest } = both;
  expect(ruled).toMatchObject(rest);
  expect(both.findings.find(({ fault }) => fault === FAULT)).toMatchObject({
    place: "RL",
    grade: "minor",
    because: [{ kind: "own-words", words: "wire round the arm", reason: "chafing", by: "Anna" }],
  });
  expect(addOffList(ruled, [])).toBe(ruled);
});

test("[AS53] dangerous, or the car must stand: the driving gates shut, at its place, with the caution", () => {
  expect(gateOf(ruled, "drive-away")?.state).not.toBe("tripped");
  for (const one of [{ grade: "dangerous" }, { mustStand: true }] as const) {
    const shut = addOffList(ruled, [{ ...WIRE, ...one }]);
    expect(gateOf(shut, "drive-away")?.state).toBe("tripped");
    expect(gateOf(shut, "w4-road")?.state).toBe("tripped");
    const told = shut.cautions.find(({ caution }) => caution === "cau.dont-drive");
    expect(told).toMatchObject({ signal: "danger", places: ["RL"] });
    expect(told?.because).toContain(FAULT);
  }
  expect(addOffList(ruled, [WIRE]).gates).toEqual(ruled.gates);
});

test("[AS53] two mendings that differ are both told, and the worse grade rules", () => {
  const both = addOffList(ruled, [WIRE, { ...WIRE, grade: "major", reason: "cut through", hasJob: false, id: "e2" }]);
  const own = both.faults.filter(({ fault }) => fault === FAULT);
  expect(own).toMatchObject([{ grade: "major", consequence: 2, likelihood: "C", jobs: [FAULT] }]);
  expect(both.findings.filter(({ fault }) => fault === FAULT)).toHaveLength(2);
});

test("[AS53] its job stands in the work list by its grade, among those of rules", () => {
  const place = (grade: OffList["grade"]) =>
    order(addOffList(ruled, [{ ...WIRE, grade }]), [{ sheet: HUB_SHEET }], { exposure: 0 }).map(({ job }) => job);
  expect(place("dangerous")[0]).toBe(FAULT);
  expect(place("advisory").at(-1)).toBe(FAULT);
  expect(place("advisory")).toHaveLength(2);
});

test("[AS51] graded anew by hand it opens the road again, with the old grade beside it", () => {
  const shut = addOffList(ruled, [{ ...WIRE, grade: "dangerous" }]);
  const calmed = applyRegrades(shut, [{ fault: FAULT, place: "RL", grade: "minor", reason: "cut off", id: "g1" }]);
  expect(calmed.faults.find(({ fault }) => fault === FAULT)?.byHand).toMatchObject({ was: "dangerous" });
  expect(gateOf(calmed, "drive-away")?.state).toBe(gateOf(ruled, "drive-away")?.otherwise);
});
