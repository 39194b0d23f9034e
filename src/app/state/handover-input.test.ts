// A hand-over put together from the demo's visit under way: everything in it is the visit's, nothing is made up.
import { beforeAll, expect, test } from "vitest";
import { demoGround } from "../../../tests/support/demo-ground.js";
import type { HandoverInput } from "../../core/report/index.js";
import { AUDIENCES, type Audience } from "../../core/terms/index.js";
import type { HandoverGround } from "./handover-ground.js";
import { handoverInput } from "./handover-input.js";
import { costOf } from "./handover-work.js";

let grounds: (reader: Audience) => HandoverGround;
let owner: HandoverInput;
beforeAll(async () => {
  grounds = await demoGround();
  owner = handoverInput(grounds("owner"));
}, 120_000);

test("every finding is there with its because, its jobs are in the work list", () => {
  const { assessment } = grounds("owner");
  expect(owner.faults).toHaveLength(assessment.faults.length);
  const jobs = new Set(owner.jobs.map(({ id }) => id));
  for (const fault of owner.faults) {
    expect(fault.because, fault.fault).not.toEqual([]);
    for (const job of fault.jobs) expect(jobs).toContain(job);
  }
});

test("a limit in a because keeps its figures and its source", () => {
  const steps = owner.faults.flatMap(({ because }) => because).filter((step) => step.is === "limit");
  expect(steps.length).toBeGreaterThan(0);
  for (const step of steps) {
    expect(step.edge).toBeGreaterThan(0);
    expect(step.source === "" && step.basis === "published").toBe(false);
  }
});

test("what nobody looked at stands apart from what is sound, each with its reason", () => {
  const { assessment } = grounds("owner");
  const unseen = assessment.points.filter(({ is }) => is === "not-looked-at" || is === "cannot-get-at");
  expect(owner.notSeen).toHaveLength(unseen.length);
  expect(owner.notSeen.some(({ nonAnswer }) => nonAnswer !== undefined)).toBe(true);
  expect(owner.looked.sound).toBe(assessment.points.filter(({ is }) => is === "sound").length);
});

test("HO44 a point whose reply could stop the car stands by name, though no check waits for it", () => {
  const ground = grounds("owner");
  const point = owner.notSeen.find(({ awaited }) => awaited === undefined)?.point ?? "";
  const awaitedWith = (worth: HandoverGround["worth"]) =>
    handoverInput({ ...ground, worth }).notSeen.filter((one) => one.point === point && one.awaited === true);
  expect(awaitedWith(new Map([[point, { decides: 2 }]])), point).toEqual([]);
  expect(awaitedWith(new Map([[point, { decides: 2, stops: true }]])).length, point).toBeGreaterThan(0);
});

test("readings stand as typed and as judged, with what was read there before", () => {
  const before = owner.readings.filter(({ last }) => last !== undefined);
  expect(before.length).toBeGreaterThan(0);
  for (const reading of owner.readings) {
    expect(reading.typed.every((one) => /^\d/.test(one))).toBe(true);
    expect(Number.isFinite(reading.value)).toBe(true);
  }
});

test("HO39 jobs by their own work and parts, and what is opened once, add up to the estimate's likely sum", () => {
  const { plan, input } = grounds("owner");
  const openings = owner.money?.openings ?? [];
  expect(openings.length).toBeGreaterThan(0);
  const listed = [...owner.jobs.flatMap(({ cost }) => (cost ? [cost[1]] : [])), ...openings.map(({ cost }) => cost[1])];
  const sum = listed.reduce((all, one) => all + one, 0);
  // Of tax on the whole each line rounds by itself.
  expect(Math.abs(sum - (plan?.estimate?.gross.likely ?? 0))).toBeLessThanOrEqual(listed.length * 2);
  for (const { cost, most } of owner.jobs)
    if (cost && most !== undefined) expect([cost[1] <= most, most <= cost[2]]).toEqual([true, true]);
  expect(costOf({ plan: undefined, input }, owner.jobs[0]?.id ?? "")).toBeUndefined();
});

test("HO28 what was told first stands by each job, or why it does not", () => {
  expect(owner.jobs.some(({ first }) => first?.isNet === true)).toBe(true);
  expect(owner.firstUntold).toBeUndefined();
  const ground = grounds("owner");
  const told = (more: Partial<HandoverGround>) => handoverInput({ ...ground, ...more }).firstUntold?.why;
  expect(told({ currency: { currency: "CHF", minorDigits: 2 } })).toBe("currency");
  expect(told({ currency: undefined })).toBe("no-rates");
  const [given] = ground.said.estimates;
  if (!given) throw new Error("the demo gave no estimate");
  const estimates = [{ ...given, value: { ...given.value, estimate: { kind: "first-estimate/9" } } }];
  expect(told({ said: { ...ground.said, estimates } })).toBe("newer");
});

test("names of who looked are told; whose car it is and who helped are named as persons", () => {
  expect(owner.visit.lookers).toContain("Ines (demo)");
  expect(owner.personal).toContain("Ottilie (demo)");
  expect(owner.personal).not.toContain("Ines (demo)");
});

test("an owner reads an owner's words, a technician the trade's", () => {
  const technician = handoverInput(grounds("technician"));
  const differing = owner.faults.filter(({ title }, at) => technician.faults[at]?.title !== title);
  expect(differing.length).toBeGreaterThan(0);
});

test("every reader is given plain data that survives being written and read", () => {
  for (const reader of AUDIENCES) {
    const input = handoverInput(grounds(reader));
    expect(JSON.parse(JSON.stringify(input))).toEqual(input);
  }
});

test("HO37 the work that is done is told with who did it, and that nobody has looked at it a second time", () => {
  expect(owner.done).toMatchObject([
    { id: "job.whl.secure@FL", on: "2026-11-20", by: "Jorin (demo)", look: { needed: true, is: "none", who: [] } },
  ]);
  expect(owner.done?.[0]?.unseen.length).toBeGreaterThan(0);
});

test("HO2 a gate that a rule's caution trips hangs on that rule's finding, as on the terminal", () => {
  const ground = grounds("owner");
  const { assessment } = ground;
  const of = assessment.findings.find(({ fault }) => fault !== null);
  if (!of?.fault) throw new Error("the demo has no finding");
  const [gate, ...gates] = assessment.gates;
  if (!gate) throw new Error("the demo has no gate");
  const trippedBy = [{ kind: "caution", rule: of.rule, place: of.place }] as const;
  const tripped = { ...assessment, gates: [{ ...gate, state: "tripped" as const, trippedBy }, ...gates] };
  const told = handoverInput({ ...ground, assessment: tripped }).gates[0];
  expect(told).toMatchObject({ faults: [{ fault: of.fault, place: of.place }], onlyThose: true });
});

test("HO38 while a plan is read, complaints of every visit stand and none of them passes for unanswered", () => {
  const ground = grounds("owner");
  const { complaints } = handoverInput({ ...ground, heard: undefined });
  const all = [...ground.earlier, ground.visit].flatMap((one) => one.complaints);
  expect(complaints.map(({ id }) => id)).toEqual(all.map(({ id }) => id));
  expect(complaints.every(({ answer }) => answer?.is === "not-read")).toBe(true);
});

test("HO38 what is loose is not told as nothing where it cannot be worked out", () => {
  const ground = grounds("owner");
  const broken = handoverInput({ ...ground, today: "no day" });
  expect(broken.loose).toBeUndefined();
  expect(broken.isProgressUnread).toBe(true);
  expect(owner.isProgressUnread).toBeUndefined();
});

test("HO31 every name a person was ever given is a person's, also one that was mended since", () => {
  const ground = grounds("buyer");
  const { ledger } = ground.visit;
  const [id, entry] = [...ledger.log].find(([, one]) => one.kind === "person") ?? [];
  if (id === undefined || entry?.kind === undefined) throw new Error("the demo's visit names nobody");
  const older = { ...entry, body: { person: { id: "elsewhere", name: "Ottilie Brandt (demo)" } } };
  const log = new Map([...ledger.log, [`${id} older`, older] as const]);
  const visit = { ...ground.visit, ledger: { ...ledger, log } };
  expect(handoverInput({ ...ground, visit }).personal).toContain("Ottilie Brandt (demo)");
});

test("the day the car comes in for its work is told, once somebody has said one that is to come", () => {
  const ground = grounds("owner");
  const begins = (value: string) => [{ id: "b", value, at: { wall: 0, count: 0 }, by: "" }];
  const at = (day: string) => handoverInput({ ...ground, said: { ...ground.said, begins: begins(day) } }).visit.next;
  expect(at("2026-12-01")).toBe("2026-12-01");
  expect(at("2026-11-01")).toBeUndefined();
});
