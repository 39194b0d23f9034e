// [AS53]–[AS57] What was replied at earlier visits, as rules hear it.
import { expect, test } from "vitest";
import { replies, smallEngine, visit } from "../../../tests/support/small-car.js";
import { rule } from "../../../tests/support/small-sheets.js";
import { type AssessInput, assess, type EarlierVisit, reassess, start } from "./index.js";

const engine = smallEngine([
  rule("hub.t1", "corner", "hub.grown", "minor", "clearly_more(hub.float, last(hub.float))"),
  rule("hub.t2", "corner", "hub.torn", "minor", 'hub.seen_twice == "torn" && last(hub.seen_twice) == "sound"'),
  rule("hub.t3", "corner", "hub.soon", "minor", "since_last_km(hub.float) <= 5000"),
  rule("hub.t4", "corner", "hub.wasted", "minor", 'last(hub.spin) == "rough" && hub.spin == "smooth"'),
]);
type Said = Parameters<typeof replies>[1];
const before = (at: string, said: Said, km?: number, unit = "km"): EarlierVisit => ({
  at,
  ...(km === undefined ? {} : { odometer: { value: km, unit } }),
  replies: replies(engine, said, at),
});
const on = (said: Said, earlier: readonly EarlierVisit[], more: Partial<AssessInput> = {}) =>
  assess(engine, visit(replies(engine, said), { earlier, ...more }));
const found = (said: Said, earlier: readonly EarlierVisit[], more: Partial<AssessInput> = {}) =>
  on(said, earlier, more).findings.flatMap((f) => (f.rule.startsWith("hub.t") ? [`${f.rule}@${f.place}`] : []));
const GREW = { "hub.float@FR": "0.09 mm" };

test("[AS53] the newest earlier visit that measured there is compared with, in whatever order they come", () => {
  const visits = [
    before("2024-05-01", { "hub.float@FR": "0.08 mm" }),
    before("2025-05-01", { "hub.float@FR": "0.03 mm" }),
  ];
  expect(found(GREW, visits)).toEqual(["hub.t1@FR"]);
  expect(found(GREW, [...visits].reverse())).toEqual(["hub.t1@FR"]);
  expect(found(GREW, visits.slice(0, 1))).toEqual([]);
  expect(found(GREW, [before("2025-05-01", { "hub.float@FL": "0.03 mm" })])).toEqual([]);
  expect(found(GREW, [before("2027-05-01", { "hub.float@FR": "0.03 mm" })])).toEqual([]);
});

test("[AS53] a visit that could not reach it is passed over, one without the part ends the search", () => {
  const oldest = before("2023-05-01", { "hub.float@FR": "0.03 mm" });
  for (const [said, rules] of [
    ["not-reached", ["hub.t1@FR"]],
    ["could-not-tell", ["hub.t1@FR"]],
    ["not-fitted", []],
  ] as const)
    expect(found(GREW, [oldest, before("2025-05-01", { "hub.float@FR": said })]), said).toEqual(rules);
  const unread = { ...before("2025-05-01", {}), replies: replies(engine, { "hub.float@FR": "much mm" }, "x") };
  expect(found(GREW, [oldest, unread])).toEqual(["hub.t1@FR"]);
});

test("[AS53] without an earlier answer the rule does not apply: nothing to settle, and the point can be sound", () => {
  const said = { "hub.spin@FR": "smooth" };
  const first = on(said, []);
  expect(first.settle.flatMap((s) => s.decides)).not.toContain("hub.t4");
  expect(first.points).toEqual(assess(smallEngine(), visit(replies(engine, said))).points);
  expect(found(said, [before("2025-05-01", { "hub.spin@FR": "rough" })])).toEqual(["hub.t4@FR"]);
});

test("[AS54] of two answers that stood there any one makes it fire, and is named", () => {
  const two = [
    before("2025-05-01", { "hub.float@FR": "0.08 mm" }),
    before("2025-05-01", { "hub.float@FR": "0.03 mm" }),
  ];
  const a = on(GREW, [
    two[0] ?? before("", {}),
    { ...before("2025-05-01", {}), replies: replies(engine, { "hub.float@FR": "0.03 mm" }, "other") },
  ]);
  expect(a.findings.find((f) => f.rule === "hub.t1")?.differ).toEqual(["other0"]);
  expect(found(GREW, [two[0] ?? before("", {})])).toEqual([]);
});

test("[AS55] of a point asked in two car states the same state is compared", () => {
  const cold = before("2025-05-01", { "hub.seen-twice@FR#w1-cold": "sound" });
  expect(found({ "hub.seen-twice@FR#w1-cold": "torn" }, [cold])).toEqual(["hub.t2@FR"]);
  expect(found({ "hub.seen-twice@FR#w8-off": "torn" }, [cold])).toEqual([]);
});

test("[AS56] the because tells what it was last time, with day and odometer", () => {
  const a = on(GREW, [before("2025-05-01", { "hub.float@FR": "0.03 mm" }, 48000)]);
  const told = a.findings.find((f) => f.rule === "hub.t1")?.because.find((b) => b.kind === "earlier");
  expect(told).toMatchObject({
    at: "2025-05-01",
    odometer: { value: 48000, unit: "km" },
    key: { point: "hub.float", place: "FR" },
    value: { type: "reading", values: ["0.03"], unit: "mm", gauge: { id: "dial" } },
  });
});

test("[AS57] the distance since then needs both odometers, and a clock turned back tells nothing", () => {
  const at = (km: number | undefined, unit = "km") => [before("2025-05-01", { "hub.float@FR": "0.03 mm" }, km, unit)];
  const now = (km: number) => ({ odometer: { value: km, unit: "km" } });
  expect(found({}, at(48000), now(53000))).toEqual(["hub.t3@FR"]);
  expect(found({}, at(48000), now(53001))).toEqual([]);
  expect(found({}, at(30000, "[mi_i]"), now(50000))).toEqual(["hub.t3@FR"]);
  expect(found({}, at(48000), now(47000))).toEqual([]);
  expect(found({}, at(undefined), now(50000))).toEqual([]);
  expect(found({}, at(48000))).toEqual([]);
});

test("[AS50] another earlier visit, or another odometer, is judged anew", () => {
  const input = (earlier: readonly EarlierVisit[], km: number) =>
    visit(replies(engine, GREW), { earlier, odometer: { value: km, unit: "km" } });
  const steps = [
    input([], 50000),
    input([before("2024-05-01", { "hub.float@FR": "0.03 mm" }, 44000)], 50000),
    input([before("2024-05-01", { "hub.float@FR": "0.03 mm" }, 46000)], 50000),
    input([before("2024-05-01", { "hub.float@FR": "0.08 mm" }, 46000)], 50000),
    input([before("2024-05-01", { "hub.float@FR": "0.08 mm" }, 46000)], 60000),
    input([before("2024-06-01", { "hub.float@FR": "0.03 mm" }, 46000)], 60000),
  ];
  let session = start(engine, input([], 50000));
  for (const step of steps) {
    session = reassess(session, step);
    expect(session.assessment).toEqual(assess(engine, step));
  }
});
