/** The demo written through the real record and judged by the real sheets: what it has to show, and what it may not. */
import { createHash } from "node:crypto";
import * as shelf from "virtual:leadlamp/index";
import { beforeAll, expect, test } from "vitest";
import type { Assessment } from "../../core/assess/contract.js";
import { planWork, type WorkInput } from "../../core/plan/index.js";
import {
  type CarState,
  type Entry,
  foldCar,
  foldHouse,
  foldPlan,
  foldVisit,
  isDemo,
  isEntry,
  limitsOf,
  memoryWorld,
  openMemoryStore,
  type PlanState,
  partKey,
  placesOf,
  type Store,
  toAssessInput,
  type VisitState,
} from "../../core/record/index.js";
import { type BuiltCommon, type BuiltSheet, buildPlaces } from "../../core/sheet/run.js";
import { GRADES } from "../../core/terms/index.js";
import { withExamples } from "../state/example-house.js";
import * as judging from "../state/judging.js";
import { wearingUpTo } from "../state/looks-ground.js";
import { layWork, workInput } from "../state/plan-input.js";
import { dayOf } from "../state/today.js";
import { trendsTold } from "../state/wearing-told.js";
import { allWearing, type Wearing, wearingAt, wearingList } from "../state/wearing-view.js";
import { wornCar } from "../state/wearing-visits.js";
import { breakText, chartText, lineText, shortText } from "../state/wearing-words.js";
import { DEMO_CAR, DEMO_PLAN, DEMO_SECOND_PLAN, INVENTED, PEOPLE } from "./names.js";
import { openDemo, writeDemo } from "./open-demo.js";
import { DEMO_SHEETS, STORIES } from "./scenario.js";
import { BEARING, BEARING_PART, CALIPER_HOURS } from "./third-plan.js";

interface Told {
  readonly visit: VisitState;
  readonly judged: Assessment;
}
let store: Store;
let log: readonly Entry[];
let car: CarState;
let visits: readonly Told[];
let plan: PlanState;
let work: WorkInput;
let refusing = false;

const NOWHERE = { go: () => undefined, swap: () => undefined, up: () => undefined };
const NOW = Date.parse("2026-11-20T10:00:00Z");
const hash = async (bytes: Uint8Array): Promise<string> => createHash("sha256").update(bytes).digest("hex");

function phoneAnd() {
  let count = 0;
  const nonce = (): string => `nonce-${String(++count).padStart(8, "0")}`;
  const kept = openMemoryStore(memoryWorld(), {
    nonce,
    hashOf: hash,
    fault: (operation) => {
      if (refusing && operation === "complete") throw new DOMException("no room", "QuotaExceededError");
    },
  });
  const phone = { now: () => NOW, nonce, hash };
  const planner = async () => ({ plan: async (input: WorkInput) => planWork(input) });
  return { store: kept, phone, shelf, judging: async () => judging, planner };
}

async function entriesOf(stream: string): Promise<readonly Entry[]> {
  const read = await store.entries(stream);
  return read.ok ? read.value.filter(isEntry) : [];
}

async function judgementOf(visit: VisitState): Promise<Assessment> {
  const blob = await store.blob(visit.closed?.value.assessment ?? "");
  if (!blob.ok || !blob.value) throw new Error(`${visit.stream} was closed without a judgement`);
  return JSON.parse(new TextDecoder().decode(blob.value.bytes)) as Assessment;
}

beforeAll(async () => {
  const needs = phoneAnd();
  store = needs.store;
  await writeDemo(needs);
  const streams = [DEMO_CAR, ...STORIES.map(({ stream }) => stream), DEMO_PLAN, DEMO_SECOND_PLAN];
  log = (await Promise.all(streams.map(entriesOf))).flat();
  car = foldCar(await entriesOf(DEMO_CAR));
  const [first, second, third] = await Promise.all(
    STORIES.map(async ({ stream }) => foldVisit(await entriesOf(stream))),
  );
  if (!first || !second || !third) throw new Error("the demo has three visits");
  const sheets: readonly BuiltSheet[] = await Promise.all(shelf.sheets.map((one) => one.load()));
  const input = toAssessInput(car, third, [first, second], limitsOf(car));
  if (!input.ok) throw new Error("the third visit was opened");
  const common: BuiltCommon = await shelf.common.load();
  const engine = await judging.ready({ common, sheets });
  const open = judging.start(engine, input.value).assessment;
  visits = [
    { visit: first, judged: await judgementOf(first) },
    { visit: second, judged: await judgementOf(second) },
    { visit: third, judged: judging.withHand(open, third) },
  ];
  plan = foldPlan(await entriesOf(DEMO_PLAN));
  const { tree } = buildPlaces(common.common.places, placesOf(car));
  const jobs = judging.order(of(2).judged, sheets, { at: dayOf(NOW), exposure: 0, around: tree.around });
  const known = {
    jobs: new Map(sheets.flatMap(({ sheet }) => sheet.jobs.map((job) => [job.id, { job }] as const))),
    common: common.common,
    ownJobs: judging.ownJobsOf(third),
  };
  const laid = layWork({ known, tree, jobs, orders: of(2).judged.orders });
  work = workInput(laid, known, plan, withExamples(foldHouse([])), dayOf(NOW));
}, 120_000);

const of = (at: number): Told => {
  const found = visits[at];
  if (!found) throw new Error(`the demo has no visit ${at}`);
  return found;
};

/** What was read at a place, visit by visit; every shot of one reading together. */
const readings = (point: string, place: string, field: string): readonly (number | undefined)[] =>
  visits.map(({ visit }) => {
    const slot = [...visit.replies.values()].find(
      ({ key }) => key.point === point && key.place === place && key.field === field,
    );
    const value = slot?.standing[0]?.value;
    return value?.type === "reading" ? Math.min(...value.values.map(Number)) : undefined;
  });

test("the owner decided four jobs four ways at the price of that evening, read the warning of the one refused, and signed", () => {
  const said = [...plan.decisions.values()].flat();
  expect(said.map(({ value }) => value.word).sort()).toEqual(["no", "tell-me-more", "yes-by", "yes-now"]);
  const due = new Set(work.jobs.map(({ id }) => id));
  for (const id of plan.decisions.keys()) expect(due, id).toContain(id);
  for (const { value } of said) expect([value.price?.currency, value.estimate !== undefined]).toEqual(["EUR", true]);
  expect(said.find(({ value }) => value.word === "no")?.value.warning?.shown).not.toEqual([]);
  expect(plan.signed.map(({ value }) => [value.decisions.length, value.drawn !== undefined])).toEqual([[4, true]]);
  expect(work.jobs.filter(({ declined }) => declined).map(({ id }) => id)).toEqual(["job.brk.find@FR"]);
});

test("every visit of the demo judges without a problem, and the older two are closed with their judgement", () => {
  expect(visits.flatMap(({ judged }) => judged.problems)).toEqual([]);
  expect(visits.map(({ visit }) => visit.closed !== undefined)).toEqual([true, true, false]);
  expect(visits.flatMap(({ visit }) => visit.trouble.unknown)).toEqual([]);
});

test("every kind of entry a person makes about a car and a visit occurs", () => {
  // Pictures are drawn off the screen, which only a browser can: there they are pinned, and one is not.
  const kinds = new Set(log.map(({ kind }) => kind));
  for (const kind of ["car.begun", "car.fact", "car.limit", "car.place", "car.place-named", "person"])
    expect(kinds).toContain(kind);
  for (const kind of ["visit.opened", "visit.complaint", "reply", "note", "sound", "visit.closed"])
    expect(kinds).toContain(kind);
  for (const kind of ["regrade", "finding", "caution.told"]) expect(kinds).toContain(kind);
});

test("every grade occurs in the visit under way, one finding off the list and one graded by hand among them", () => {
  const { faults } = of(2).judged;
  expect(GRADES.filter((grade) => !faults.some((fault) => fault.grade === grade))).toEqual([]);
  expect(faults.map(({ fault }) => fault)).toContain("own.demo-shield");
  expect(faults.filter(({ byHand }) => byHand).map(({ fault, place }) => `${fault}@${place}`)).toEqual([
    "drn.wet-floor@behind-seat-L",
  ]);
});

test("each of the five sheets has replies in every visit", () => {
  for (const { visit } of visits) {
    expect(visit.sheets.map(({ id }) => id).sort()).toEqual([...DEMO_SHEETS].sort());
    const heads = new Set([...visit.replies.values()].map(({ key }) => key.point.split(".")[0]));
    expect(DEMO_SHEETS.filter((sheet) => !heads.has(sheet))).toEqual([]);
  }
});

test("walls and linings fall and play and drain times grow from visit to visit", () => {
  for (const [point, place, field] of [
    ["corr.wall", "outrigger-L-3", "wall"],
    ["brk.pad", "FR-pad-inner", "trail"],
    ["brk.pad", "FL-pad-outer", "lead"],
    ["brk.disc-thick", "FR", "thick"],
  ] as const) {
    const [first = 0, second = 0, third = 0] = readings(point, place, field);
    expect([first > second, second > third, third > 0], `${point} ${place}`).toEqual([true, true, true]);
  }
  for (const [point, place, field] of [
    ["whl.float", "FR", "play"],
    ["drn.pour-time", "scuttle-L", "time"],
  ] as const) {
    const [first = 0, second = 0, third = 0] = readings(point, place, field);
    expect([first < second, second < third, first > 0], `${point} ${place}`).toEqual([true, true, true]);
  }
  expect(of(2).judged.faults.map(({ fault, place }) => `${fault}@${place}`)).toContain("corr.rate@outrigger-L-3");
});

test("a bearing grumbles a year before it has play, and one float is too close to call", () => {
  const at = (visit: number, fault: string, place: string) =>
    of(visit).judged.faults.find((one) => one.fault === fault && one.place === place);
  expect([at(0, "whl.race", "RR"), at(1, "whl.play", "RR")]).toEqual([undefined, undefined]);
  expect(at(1, "whl.race", "RR")?.grade).toBe("minor");
  expect(at(2, "whl.race", "RR")?.grade).toBe("dangerous");
  expect(at(2, "whl.play", "FR")?.close).toBe(true);
});

test("two people felt one wheel differently, a jacking point was soft before it was sound, some steel was not seen", () => {
  const differ = [...of(2).visit.replies.values()].filter((slot) => slot.differ);
  expect(differ.map(({ key }) => `${key.point}@${key.place}`)).toEqual(["whl.spin@FL"]);
  const jack = log.filter(({ kind, body }) => kind === "reply" && JSON.stringify(body).includes('"jack-RL"'));
  expect(jack.some(({ body }) => JSON.stringify(body).includes("soft"))).toBe(true);
  const lift = of(1).judged.gates.find(({ gate }) => gate === "gate.no-lift-here");
  expect(lift?.state).toBe("cleared");
  const unseen = [...of(2).visit.replies.values()].flatMap(({ standing }) =>
    standing.flatMap(({ value }) => (value.type === "non-answer" && value.reason ? [value.reason] : [])),
  );
  expect(unseen).toContain("covered");
});

test("kilometres, dates and ages agree with each other", () => {
  const km = visits.map(({ visit }) => Number(visit.odometer[0]?.value.value));
  const since = readings("whl.since", "car", "km").map((value) => value ?? 0);
  for (const [at, value] of since.entries()) {
    const driven = (km[at] ?? 0) - (km[0] ?? 0);
    expect(Math.abs(value - (since[0] ?? 0) - driven), `visit ${at}`).toBeLessThan(500);
  }
  const seals = readings("brk.seal-age", "car", "years");
  expect(seals.map((value) => (value ?? 0) - (seals[0] ?? 0))).toEqual([0, 1, 2]);
  const days = STORIES.map(({ daysAgo }) => daysAgo);
  expect([...days].sort((a, b) => b - a)).toEqual(days);
});

test("the money reaches some of the work that may wait and not all, and nothing due is without hours", () => {
  const made = planWork(work);
  expect([made.setAside, made.problems, made.choice?.overBy, made.choice?.proven]).toEqual([[], [], undefined, true]);
  const may = made.jobs.filter(({ isMandatory }) => !isMandatory);
  expect([may.some(({ isChosen }) => isChosen), may.some(({ isChosen }) => !isChosen)]).toEqual([true, true]);
  expect(made.estimate?.gross.likely).toBeLessThanOrEqual(work.budget ?? 0);
  expect(made.schedule?.finish).toBeDefined();
});

test("one part is priced, ordered and promised for a working day, one job has hours by hand, a nut is loose", () => {
  const key = partKey(BEARING_PART);
  const steps = plan.partSteps.get(key)?.map(({ value }) => value) ?? [];
  expect(steps.map(({ step }) => step)).toEqual(["ordered", "promised"]);
  const promised = steps[1]?.promised ?? "";
  expect(promised > dayOf(NOW)).toBe(true);
  expect([1, 2, 3, 4, 5]).toContain(new Date(promised).getUTCDay());
  const bearing = work.jobs.find(({ id }) => id === `${BEARING.job}@${BEARING.place}`);
  const part = bearing?.parts.find(({ id }) => id === BEARING_PART.part);
  expect(part).toMatchObject({ supplier: "maker", promised, price: [18_900, 21_500, 26_000] });
  expect(bearing?.parts.map(({ id }) => id)).toContain(part?.counterpart);
  const byHand = work.jobs.find(({ id }) => id === `${CALIPER_HOURS.job}@${CALIPER_HOURS.place}`);
  expect(byHand?.minutes).toEqual(CALIPER_HOURS.minutes);
  expect([plan.loose.size, plan.cleared.size]).toEqual([1, 0]);
});

test("the first estimate is what planning gave that evening; what came on top was agreed to after it", () => {
  const [first, ...more] = plan.estimates;
  expect(more).toEqual([]);
  expect(first?.value.estimate).toMatchObject({ kind: "first-estimate/1", told: "p80", currency: "EUR", setAside: [] });
  const added = [...plan.additions.values()].flat().map(({ value }) => value.agreed);
  expect(added.map((agreed) => agreed?.who)).toEqual([PEOPLE.ottilie.name]);
  expect((added[0]?.on ?? "") > (first?.value.on ?? "9")).toBe(true);
  expect([plan.scope.length, plan.intake.size > 5, plan.use.length]).toEqual([1, true, 1]);
});

test("no name occurs that is not on the list of invented ones", () => {
  const said = log.flatMap(({ body }) => {
    const { text, name, words, reason, found, source, limit, ...more } = body as Record<string, unknown>;
    const { says, why, figures, agreed } = more;
    const inner = [found, limit, figures, agreed].flatMap((one) =>
      typeof one === "object" && one !== null ? Object.values(one as Record<string, unknown>) : [],
    );
    return [text, name, words, reason, source, says, why, ...inner].filter(
      (one): one is string => typeof one === "string",
    );
  });
  // A large letter inside a sentence makes a name; the first word of a sentence has one anyway.
  const inside = said.flatMap((text) => [...text.matchAll(/(?<=[a-z,;:] )[A-Z]\w+/g)].map(([word]) => word));
  const names = [...said.filter((text) => text.includes("(demo)")), ...inside].flatMap(
    (text) => text.match(/[A-Z][a-z]+/g) ?? [],
  );
  expect(names.length).toBeGreaterThan(5);
  expect(names.filter((word) => !INVENTED.includes(word) && word !== "Workshop")).toEqual([]);
  expect(Object.values(PEOPLE).every(({ name }) => name.endsWith("(demo)"))).toBe(true);
});

test("all of it lies in streams of the demo and goes in one action; refused, nothing of it stays", async () => {
  expect(log.every(({ stream }) => isDemo(stream))).toBe(true);
  const there = await store.summaries();
  const streams = there.ok ? there.value.filter(({ demo }) => demo).map(({ stream }) => stream) : [];
  expect(streams).toContain(DEMO_PLAN);
  const removed = await store.removeStreams(streams);
  expect(removed.ok && removed.value).toBe(log.length);
  expect(await store.streams()).toMatchObject({ value: [] });
  const needs = phoneAnd();
  refusing = true;
  await expect(writeDemo(needs)).rejects.toThrow("record.store-full");
  refusing = false;
  expect(await needs.store.streams()).toMatchObject({ value: [] });
});

test("brought in again while it is there, nothing is written twice", async () => {
  const needs = phoneAnd();
  const app = {
    ...needs,
    remembered: { get: () => null, put: () => undefined, drop: () => undefined },
    journal: { refresh: async () => undefined },
    router: { fromHere: () => NOWHERE },
  };
  await openDemo(app);
  const once = await needs.store.entries(DEMO_PLAN);
  await openDemo(app);
  expect(once.ok && once.value.length).toBe(plan.ledger.log.size);
  expect(await needs.store.entries(DEMO_PLAN)).toEqual(once);
});

test("over its three visits several parts wear, one came back, and one can't be told apart yet", async () => {
  const compiler = {
    compile: () => {
      throw new Error("the demo's sheets are those of the build");
    },
  };
  const there = phoneAnd();
  await openDemo({
    ...there,
    remembered: { get: () => null, put: () => undefined, drop: () => undefined },
    journal: { refresh: async () => undefined },
    router: { fromHere: () => NOWHERE },
  });
  const needs = { store: there.store, shelf, compiler, judging: async () => judging };
  const worn = await wornCar(
    needs,
    car,
    visits.map(({ visit }) => visit),
  );
  if (!worn) throw new Error("the demo has visits");
  const all = allWearing(worn, new Map([[visits[2]?.visit.stream ?? "", plan]]));
  const { wearing, notYet, alone } = wearingList(all);
  const named = ({ of, place }: Wearing) => `${of}@${place}`;
  const soon = wearing.filter(({ reach, passed }) => !passed && reach.is === "reaches").map(named);
  expect(soon[0]).toBe("brk.pad_thin@FR-pad-inner");
  expect(soon.length).toBeGreaterThan(8);
  expect(notYet.map(named)).toContain("brk.fluid-water@car");
  expect(alone.map(named)).toContain("brk.fluid-boil@car");
  const boil = wearingAt(all, "brk.fluid-boil~boils", "car");
  expect(boil?.series.breaks.map(({ kind }) => kind)).toEqual(["unsaid"]);
  expect(breakText(worn.known, boil?.series.breaks[0] ?? { visit: "", kind: "method", back: 0 }, "Cel")).toContain(
    "53",
  );
  for (const one of all)
    for (const text of [lineText(one), shortText(one), chartText(one)]) {
      expect(text).not.toMatch(/undefined|NaN|Infinity/);
      expect(text).not.toBe("");
    }
  // The bearing at its end has passed its major edge; the dangerous one is what is told of next.
  expect(wearingAt(all, "whl.float~play", "RR")).toMatchObject({ passed: { is: "past" }, reach: { is: "reaches" } });
  const told = trendsTold(all).find(({ id }) => id === "brk.pad_thin~@FR-pad-inner");
  expect(told).toMatchObject({ unit: "mm", edge: 3, grade: "major" });
  expect(told?.readings.map(({ value }) => value)).toEqual([9.1, 6.8, 3.8]);
  expect((told?.reaches?.from ?? "") > (told?.lookAgain ?? "")).toBe(true);
  const bearing = trendsTold(all).find(({ id }) => id === "whl.float~play@RR");
  expect(bearing).toMatchObject({ grade: "dangerous", passed: { grade: "major" } });
  expect(trendsTold(all)).toHaveLength(wearing.length);
  // A hand-over of the second visit is of its day: what was read later is not in it.
  const seen = visits.map(({ visit }) => visit);
  const then = wearingUpTo({ worn, visits: seen, plans: new Map() }, visits[1]?.visit.stream ?? "");
  const pad = wearingAt(then, "brk.pad_thin~", "FR-pad-inner");
  expect(pad && trendsTold([pad])[0]?.readings.map(({ value }) => value)).toEqual([9.1, 6.8]);
});
