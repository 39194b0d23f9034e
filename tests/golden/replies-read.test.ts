/**
 * Everything asked, over all shipped sheets: what is said is read by a rule, a limit, a value, a gate or another point; else
 * it stands below with the reason it is asked all the same. Judges no car.
 */
import { expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { replyOf } from "../../src/core/expr/plan.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const { whole, sheets } = result.value;
const points = sheets.flatMap(({ built }) => built.sheet.points);

/** Replies that judge nothing: they say how sure, where or when, for the person who reads the finding. */
const TOLD: Readonly<Record<string, string>> = {
  "brk.pedal-hold time": "how long the foot was on it, beside 'holds'",
  "brk.heat which": "which signs were counted",
  "buy.defects pictured": "counted before leaving, so that no picture is missing at home",
  "buy.eng-start time": "beside how it fires, and beside the same at a second viewing",
  "buy.id-history years": "beside the number of bills and the longest gap, which are judged",
  "corr.wall face": "where the lowest wall stands, for the next reading",
  "drn.floor-hole holes": "how many there are to come back to",
  "drn.boot depth": "how much water there was; that any stands is judged",
  "elec.unfused circuits": "how long the list is, for the price of fuses",
  "elec.bat-crank time": "whether the lowest volts were waited for",
  "exh.exh-noise speed": "the papers' figure holds at one speed only",
  "head.guide-hold made": "which reamer and which clearance the maker's figure is for",
  "rest.lay-date odometer": "what it had run when it was put away",
  "rest.lay-oil filled": "what goes in next time",
  "rest.lay-fuel additive": "what went in, so that nobody adds it twice",
  "rest.up-fuel helper": "the look is never done alone: who was there is said",
  "rest.up-pedal time": "how long the foot was on it, beside 'stays up'",
  "road.rt-route road": "two drives compare on one route",
  "road.rt-route air": "two drives compare in like weather",
  "road.rt-pull-power at": "where to look again after the repair",
  "road.rt-noise from": "where to listen on the lift",
  "road.rt-vibe shows-in": "where it is felt; what it goes with is judged",
  "road.rt-idle rpm": "the maker's figure is seldom to hand; that it settles is judged",
  "trans.pedal stroke": "beside the free play, which is judged; the whole stroke is the maker's",
  "trans.joint which": "which joint to order",
  "trans.boot end": "which boot to order",
  "trans.bell oil-from": "which seal to order",
  "trans.diff preload": "the maker's figure alone judges it",
  "trim.switchgear how-many": "how many small parts to look for",
  "trim.screw line": "which line to look along; that a tip touches is judged",
  "tyre.tyre-date code": "as moulded, for the record; the years are judged",
  "whl.onset speed": "beside the same at the next visit, on the same road",
  "whl.shimmy speed": "for the drive after the repair",
};

const plain = (name: string): string => name.replaceAll("_", "-");
const spelled = new Map(
  points.flatMap(({ id, fields }) =>
    Object.keys(fields).flatMap((field, at) => [
      [`${id}-${field}`, `${id} ${field}`] as const,
      ...(at === 0 ? [[id, `${id} ${field}`] as const] : []),
    ]),
  ),
);
const named = (name: unknown): readonly string[] => {
  const reply = typeof name === "string" ? spelled.get(plain(name)) : undefined;
  return reply === undefined ? [] : [reply];
};

function repliesIn(part: unknown): readonly string[] {
  if (!Array.isArray(part)) return [];
  const reply = replyOf(part);
  return reply === undefined ? part.flatMap(repliesIn) : [`${plain(reply.point)} ${reply.field}`];
}

const read = new Set([
  ...[whole.plans, ...sheets.map(({ built }) => built.plans)].flatMap((plans) =>
    Object.values(plans).flatMap(({ code }) => repliesIn(code)),
  ),
  ...sheets.flatMap(({ built: { sheet } }) => [
    ...sheet.derived.flatMap(({ prefer = [] }) => prefer.flatMap(named)),
    ...sheet.rules.flatMap(({ effect, grade }) => [
      ...(typeof effect === "object" ? Object.values(effect).flat().flatMap(named) : []),
      ...(typeof grade === "object" ? named(grade["limit-of"]) : []),
    ]),
  ]),
]);
const asked = points.flatMap(({ id, fields }) => Object.keys(fields).map((field) => `${id} ${field}`));

test("what is asked is read by something, or stands among what is only told", () => {
  expect(asked.length).toBeGreaterThan(700);
  expect(asked.filter((reply) => !read.has(reply) && !(reply in TOLD))).toEqual([]);
});

test("what is only told is asked, and read by nothing", () => {
  expect(Object.keys(TOLD).filter((reply) => read.has(reply) || !asked.includes(reply))).toEqual([]);
});

test("a limit stands over a reading some rule asks the band or the grade of", () => {
  const graded = new Set([
    ...[whole.plans, ...sheets.map(({ built }) => built.plans)].flatMap((plans) =>
      Object.values(plans).flatMap(({ code }) => bandsIn(code)),
    ),
    ...sheets.flatMap(({ built }) =>
      built.sheet.rules.flatMap(({ grade }) => (typeof grade === "object" ? [keyOf(grade["limit-of"])] : [])),
    ),
  ]);
  const idle = sheets.flatMap(({ built }) => built.sheet.limits).filter(({ of }) => !graded.has(keyOf(of)));
  expect(idle.map(({ id }) => id)).toEqual([]);
});

/** A reading by point and field, a derived value by its name. */
const keyOf = (name: string): string => spelled.get(plain(name)) ?? plain(name);

function bandsIn(part: unknown): readonly string[] {
  if (!Array.isArray(part)) return [];
  const reply = part[0] === "band" ? replyOf(part) : undefined;
  if (reply === undefined) return part.flatMap(bandsIn);
  return [reply.field === "" ? plain(reply.point) : `${plain(reply.point)} ${reply.field}`];
}
