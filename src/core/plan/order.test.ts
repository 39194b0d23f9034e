// The work list: jobs from faults, until when, and why one stands above another.
import { expect, test } from "vitest";
import type { Fault } from "../assess/contract.js";
import { likelihoodFromTrend, type OrderSetting, order, urgentFaults, whyAbove } from "./index.js";

const fault = (more: Partial<Fault>): Fault => ({
  fault: "whl.play",
  place: "FR",
  grade: "major",
  sure: "likely",
  close: false,
  provisional: false,
  rules: ["whl.r11"],
  jobs: ["job.whl.bearing"],
  cautions: [],
  consequence: 2,
  likelihood: "C",
  mustStand: false,
  position: 10,
  settle: [],
  ...more,
});
const SHEETS = [
  {
    sheet: {
      jobs: [
        { id: "job.whl.bearing", place: "corner" },
        { id: "job.brk.pads", place: "axle" },
      ],
      nextLooks: [
        { grade: "advisory", km: 3000, months: 6 } as const,
        { fault: "whl.play", months: 3 },
        { job: "job.whl.bearing", km: 500 },
      ],
      rules: [{ fault: "whl.seal" }, { fault: "whl.play" }],
    },
  },
];
const around = (place: string, kind: string) =>
  kind === "axle" && place.startsWith("F") ? "axle-F" : kind === "corner" ? place : undefined;
const NOW: OrderSetting = { exposure: 0, at: "2026-03-31", around };
const jobs = (faults: readonly Fault[], setting: OrderSetting = NOW) => order({ faults }, SHEETS, setting);

test("[PL9] a job that a greater one due at the same place contains folds into it; elsewhere both stand", () => {
  const [first] = SHEETS;
  if (first === undefined) throw new Error("no sheet");
  const sheets = [
    {
      sheet: {
        ...first.sheet,
        jobs: [
          { id: "job.whl.bearing", place: "corner" },
          { id: "job.whl.repack", place: "corner", "included-in": ["job.whl.bearing"] },
          { id: "job.whl.adjust", place: "corner", "included-in": ["job.whl.hub", "job.whl.repack"] },
        ],
      },
    },
  ];
  const slack = fault({ fault: "whl.slack", jobs: ["job.whl.adjust"], grade: "dangerous", consequence: 1 });
  const wet = fault({ fault: "whl.water", jobs: ["job.whl.repack"], grade: "minor" });
  const list = order({ faults: [fault({}), slack, wet, { ...wet, place: "FL" }] }, sheets, NOW);
  expect(list.map((j) => `${j.job}@${j.place}`)).toEqual(["job.whl.bearing@FR", "job.whl.repack@FL"]);
  expect(list[0]).toMatchObject({
    grade: "dangerous",
    key: { id: "whl.slack@FR" },
    includes: ["job.whl.adjust", "job.whl.repack"],
  });
  expect(list[0]?.faults.map((f) => f.fault)).toEqual(["whl.slack", "whl.play", "whl.water"]);
  expect(list[1]?.includes).toEqual([]);
});

test("faults on both front wheels that ask for pads make one job on the axle, with the more urgent one's key", () => {
  const pads = { fault: "brk.pad-thin", jobs: ["job.brk.pads"] };
  const list = jobs([
    fault({ ...pads, place: "FL", grade: "minor" }),
    fault({ ...pads, place: "FR", grade: "dangerous", consequence: 1 }),
  ]);
  expect(list).toMatchObject([
    { job: "job.brk.pads", place: "axle-F", grade: "dangerous", byWhen: { class: 0 }, key: { id: "brk.pad-thin@FR" } },
  ]);
  expect(list[0]?.faults.map((f) => f.place)).toEqual(["FR", "FL"]);
  expect(list[0]?.why.map((w) => w.code)).toContain("answers-several");
});

test("a job shows the worst grade it answers, also when a milder fault is due sooner", () => {
  const seat = fault({ fault: "int.belt", grade: "minor", consequence: 1, likelihood: "A" });
  const list = jobs([fault({ grade: "major", consequence: 3, likelihood: "D" }), seat]);
  expect(list).toMatchObject([{ job: "job.whl.bearing", grade: "major", key: { id: "int.belt@FR", due: 1 } }]);
});

test("why one job stands above another, asked either way round", () => {
  const [first, second] = jobs([
    fault({ grade: "minor", jobs: ["job.a"] }),
    fault({ fault: "whl.race", grade: "dangerous", jobs: ["job.b"] }),
  ]);
  if (first === undefined || second === undefined) throw new Error("two jobs");
  const reason = {
    above: "job.b@FR",
    below: "job.a@FR",
    why: { code: "above.dangerous", params: { upper: "dangerous", lower: "minor" } },
  };
  expect([whyAbove(first, second), whyAbove(second, first)]).toEqual([reason, reason]);
});

test("two jobs of one fault stand by their names, and say so", () => {
  const [a, b] = jobs([fault({ jobs: ["job.z", "job.a"] })]);
  expect([a?.job, b?.job]).toEqual(["job.a", "job.z"]);
  expect(a && b && whyAbove(a, b).why).toEqual({ code: "above.id", params: { upper: "job.a@FR", lower: "job.z@FR" } });
});

test("a fault without a job is in the findings, not in the work list", () => {
  expect(jobs([fault({ jobs: [] })])).toEqual([]);
});

test("a reading too close to call is taken as occasional at least, and asks to measure again", () => {
  const [due] = urgentFaults([fault({ close: true, likelihood: "E" })], SHEETS, NOW);
  expect([due?.urgency.likelihood, due?.urgency.why.map((w) => w.code).includes("measure-again")]).toEqual(["C", true]);
  expect(urgentFaults([fault({ close: true, likelihood: "A" })], SHEETS, NOW)[0]?.urgency.likelihood).toBe("A");
});

test("a high band without a dangerous grade asks for another look, and leaves the grade", () => {
  const [due] = urgentFaults([fault({ consequence: 1, likelihood: "B", grade: "minor" })], SHEETS, NOW);
  expect([due?.urgency.lookAgain, due?.fault.grade]).toEqual([true, "minor"]);
});

test("hard use makes it likelier, a lay-up less so", () => {
  const p = (exposure: -1 | 0 | 1) => urgentFaults([fault({})], SHEETS, { ...NOW, exposure })[0]?.urgency.likelihood;
  expect([p(1), p(0), p(-1)]).toEqual(["B", "C", "D"]);
});

test("the ranks at which due classes change", () => {
  const due = (consequence: 1 | 2 | 3 | 4, likelihood: Fault["likelihood"], grade: Fault["grade"] = "minor") =>
    urgentFaults([fault({ grade, consequence, likelihood })], SHEETS, NOW)[0]?.urgency.key.due;
  // ranks 4 and 8, 9 and 10, 17 and 18
  expect([due(1, "C", "dangerous"), due(1, "D", "dangerous")]).toEqual([0, 1]);
  expect([due(1, "C"), due(1, "D")]).toEqual([1, 2]);
  expect([due(3, "B"), due(2, "D")]).toEqual([2, 3]);
  expect([due(3, "E"), due(4, "C")]).toEqual([3, 4]);
});

test("likelihood from the way left: passed, under half, before the next visit, soon after, later", () => {
  expect([-1, 0, 0.49, 0.5, 0.99, 1, 1.9, 2].map(likelihoodFromTrend)).toEqual([
    "A",
    "A",
    "B",
    "C",
    "C",
    "D",
    "D",
    "E",
  ]);
});

test("within a stated distance or time: half of what is left and the legal period, whichever is nearer", () => {
  const trends = [{ fault: "whl.play", place: "FR", left: { km: 3001, days: 90 } }];
  const at = (more: Partial<OrderSetting>) => jobs([fault({})], { ...NOW, trends, ...more })[0]?.byWhen;
  expect(at({ nextVisitKm: 10_000 })).toEqual({ class: 2, distance: { value: 1500, unit: "km" }, date: "2026-05-15" });
  expect(at({ nextVisitKm: 10_000, legalMonths: { major: 1 } })).toMatchObject({ date: "2026-04-30" });
});

test("a limit passed is due before the next drive; one reached before the next visit is due within a distance", () => {
  const minor = fault({ grade: "minor", consequence: 3, likelihood: "D" });
  const due = (trend: { left: { km?: number }; limitPassed?: boolean }) =>
    jobs([minor], { ...NOW, nextVisitKm: 5000, trends: [{ fault: "whl.play", place: "FR", ...trend }] })[0]?.byWhen
      .class;
  expect([
    due({ left: { km: 12_000 } }),
    due({ left: { km: 4000 } }),
    due({ left: { km: 12_000 }, limitPassed: true }),
  ]).toEqual([3, 2, 1]);
});

test("next visit: its date, or the sheet's own next look when nearer; nothing made up where neither is known", () => {
  const mild = fault({ fault: "whl.seal", grade: "advisory", consequence: 3, likelihood: "C" });
  expect(jobs([mild], { ...NOW, nextVisit: "2026-06-01" })[0]?.byWhen).toEqual({
    class: 3,
    distance: { value: 3000, unit: "km" },
    date: "2026-06-01",
  });
  expect(jobs([mild], { ...NOW, nextVisit: "2027-06-01" })[0]?.byWhen.date).toBe("2026-09-30");
  expect(order({ faults: [mild] }, [], { exposure: 0 })[0]?.byWhen).toEqual({ class: 3 });
});

test("a figure in months ends on the last day of a shorter month", () => {
  const trendless = fault({ fault: "whl.seal", grade: "advisory", consequence: 4, likelihood: "C" });
  expect(jobs([trendless], { ...NOW, at: "2025-08-31" })[0]?.byWhen).toMatchObject({ class: 4, date: "2026-02-28" });
});

test("[PL5] a row for a grade holds for its own sheet's faults, and not for what is to be put right soon", () => {
  const rust = fault({ fault: "corr.rust", grade: "advisory", consequence: 3, likelihood: "C" });
  expect(jobs([rust])[0]?.byWhen).toEqual({ class: 3 });
  const soon = fault({ fault: "whl.seal", grade: "advisory", consequence: 2, likelihood: "C" });
  expect(jobs([soon])[0]?.byWhen).toEqual({ class: 2 });
  expect(jobs([fault({})])[0]?.byWhen).toEqual({ class: 2, date: "2026-06-30" });
});

test("[PL5] a job states no figure of a lesser fault while its most urgent has none", () => {
  const grave = fault({ fault: "whl.race" });
  const mild = fault({ fault: "whl.seal", grade: "advisory", consequence: 3, likelihood: "C" });
  expect(jobs([grave, mild])[0]?.byWhen).toEqual({ class: 2 });
  expect(jobs([{ ...grave, place: "FL" }, mild]).map((j) => j.byWhen.distance?.value)).toEqual([undefined, 3000]);
});

test("[PL6] of two alike in class, rank and grade the one stated for nearer stands above, and says so", () => {
  const [first] = SHEETS;
  if (first === undefined) throw new Error("no sheet");
  const sheets = [
    {
      sheet: {
        ...first.sheet,
        nextLooks: [
          { fault: "whl.far", km: 1000 },
          { fault: "whl.near", km: 500 },
          { fault: "whl.dated", months: 3 },
        ],
      },
    },
  ];
  const faults = ["whl.open", "whl.dated", "whl.far", "whl.near"].map((id, position) =>
    fault({ fault: id, position, place: `P${position}` }),
  );
  const list = order({ faults }, sheets, NOW);
  expect(list.map((j) => j.faults[0]?.fault)).toEqual(["whl.near", "whl.far", "whl.dated", "whl.open"]);
  const [near, far] = list;
  expect(near && far && whyAbove(near, far).why).toEqual({ code: "above.left", params: { upper: 0.1, lower: 0.2 } });
  // with a visit planned in 500 km, three months are the nearer of what is stated
  const soon = order({ faults }, sheets, { ...NOW, nextVisitKm: 200, nextVisit: "2027-03-31" });
  expect(soon.map((j) => j.faults[0]?.fault)).toEqual(["whl.dated", "whl.near", "whl.far", "whl.open"]);
});
