/** What stands against handing a car back, and what is due afterwards. */
import { expect, test } from "vitest";
import type { ComplaintAnswer, PlanBodies, Stands, VisitState } from "../../record/index.js";
import { isSamePerson } from "../../terms/run.js";
import { type Against, type HandingBack, mayBeDriven, mayBeMoved, standsAgainst } from "./against.js";
import { complaintsOf, type HeardIn, openComplaints } from "./complaints.js";
import { rechecksOf } from "./rechecks.js";
import { type AnswerTold, type Asking, type WorkTold, worksTold } from "./works.js";

const NOTHING: HandingBack = {
  faults: [],
  gates: [{ gate: "gate.away", guards: "drive-away", drives: true, state: "cleared" }],
  works: [],
  loose: [],
  parts: [],
  complaints: [],
  isAlone: false,
};
const at = { job: "job.whl.bearing", place: "RR" };
const DONE: WorkTold = {
  ...at,
  stands: "done",
  doneOn: "2026-03-10",
  toldAt: { wall: 100, count: 0 },
  unanswered: [],
  forOthers: [],
  unasked: [],
  wanting: [],
  isOwn: false,
  isMeasured: false,
  looked: "none",
  lookers: [],
  access: ["hub-off"],
};
const told = (given: Partial<HandingBack>): readonly string[] =>
  standsAgainst({ ...NOTHING, ...given }).map(({ weight, is }) => `${weight} ${is}`);
const gate = (guards: string, state: "tripped" | "cleared" | "not cleared", noted?: number) => ({
  gate: `gate.${guards}`,
  guards,
  drives: ["drive-away", "w4-road", "z9-track"].includes(guards),
  state,
  ...(noted === undefined ? {} : { noted: { wall: noted, count: 0 } }),
});
const AWAY = gate("drive-away", "cleared");

test("[RL1] nothing open: it may be handed back; anything that refuses, and it may not be driven", () => {
  expect(mayBeDriven(standsAgainst(NOTHING))).toBe(true);
  const loose = { loose: "l1", what: "loose", words: ["hub nut"], on: "2026-03-03" } as const;
  expect(mayBeDriven(standsAgainst({ ...NOTHING, loose: [loose] }))).toBe(false);
});

test("[RL2] a dangerous finding stands against it until the judgement no longer has it, job done or not", () => {
  const fault = { fault: "whl.race", place: "RR", grade: "dangerous", jobs: [at.job] } as const;
  const isDone = (works: readonly WorkTold[]) =>
    standsAgainst({ ...NOTHING, faults: [fault], works }).find(
      (one): one is Extract<Against, { is: "dangerous" }> => one.is === "dangerous",
    )?.isDone;
  expect(told({ faults: [fault] })).toEqual(["danger dangerous"]);
  expect([isDone([]), isDone([DONE])]).toEqual([false, true]);
  expect(told({ faults: [{ ...fault, grade: "major" }] })).toEqual([]);
});

test("[RL3] the gate before driving away must be open; noted why it is passed all the same, it is told", () => {
  expect(told({ gates: [gate("drive-away", "cleared"), gate("w4-road", "not cleared")] })).toEqual([]);
  expect(told({ gates: [gate("drive-away", "not cleared")] })).toEqual(["refuses gate"]);
  expect(told({ gates: [gate("drive-away", "not cleared", 50)] })).toEqual(["told gate"]);
  expect(told({ gates: [gate("drive-away", "tripped", 50)] })).toEqual(["danger gate"]);
});

test("[RL3] a shut road gate and fuel vapour stand against it too, hot brakes and a place not to lift do not", () => {
  expect(told({ gates: [gate("drive-away", "cleared"), gate("w4-road", "tripped")] })).toEqual(["danger gate"]);
  // Of a car state of a house's own in which the car drives, too.
  expect(told({ gates: [gate("drive-away", "cleared"), gate("z9-track", "tripped")] })).toEqual(["danger gate"]);
  expect(told({ gates: [gate("drive-away", "tripped"), gate("w4-road", "tripped")] })).toEqual(["danger gate"]);
  expect(told({ gates: [gate("spark", "tripped"), gate("touch", "tripped"), gate("lift", "tripped"), AWAY] })).toEqual([
    "danger gate",
  ]);
});

test("[RL3] a note why a gate is passed is of the car as it was: work done later takes it away", () => {
  const noted = (wall: number) =>
    standsAgainst({ ...NOTHING, gates: [gate("drive-away", "not cleared", wall)], works: [DONE] });
  expect(noted(100)).toMatchObject([{ weight: "refuses", is: "gate", isNoteOld: true }]);
  expect(noted(101)).toMatchObject([{ weight: "told", is: "gate", isNoteOld: false }]);
});

test("[RL3] without a gate before driving away it is told that nothing was asked, and never passed over", () => {
  expect(told({ gates: [] })).toEqual(["told no-gate"]);
  expect(told({ gates: [gate("w4-road", "tripped")] })).toEqual(["danger gate", "told no-gate"]);
});

test("[RL4] what is begun and not done refuses, what waits is told", () => {
  const { doneOn: _doneOn, ...open } = DONE;
  expect(told({ works: [{ ...open, stands: "begun" }] })).toEqual(["refuses unfinished"]);
  expect(told({ works: [{ ...open, stands: "waiting" }] })).toEqual(["told waiting"]);
});

test("[RL5] of a job that is done every part told of is fitted and was not found wanting, or went back", () => {
  const part = { ...at, part: "set", since: "2026-03-10", failed: [], chased: 0 } as const;
  const parts = (stands: "arrived" | "fitted" | "sent-back", failed: readonly "right"[] = []) =>
    told({ works: [DONE], parts: [{ ...part, stands, failed }] });
  expect([parts("arrived"), parts("fitted", ["right"])]).toEqual([["refuses part"], ["refuses part"]]);
  expect([parts("fitted"), parts("sent-back")]).toEqual([[], []]);
  expect(told({ parts: [{ ...part, stands: "arrived" }] })).toEqual([]);
});

test("[RL6] points of a job that is done are answered anew; those no open sheet asks for are told", () => {
  const points = [{ point: "whl.float", place: "RR" }];
  expect(told({ works: [{ ...DONE, unanswered: points }] })).toEqual(["refuses unmeasured"]);
  expect(told({ works: [{ ...DONE, unasked: points }] })).toEqual(["told unasked"]);
  expect(told({ works: [{ ...DONE, forOthers: points }] })).toEqual(["refuses for-others"]);
  expect(told({ works: [{ ...DONE, isOwn: true }] })).toEqual(["refuses unmeasured"]);
  expect(told({ works: [{ ...DONE, isOwn: true, isMeasured: true }] })).toEqual([]);
});

test("[RL7] a second person looks; who did it looking again counts only where one person works, and is told", () => {
  const wheels = { ...DONE, secondLook: "wheels" } as const;
  expect(told({ works: [wheels] })).toEqual(["refuses second-look"]);
  expect(told({ works: [{ ...wheels, looked: "same" }] })).toEqual(["refuses second-look"]);
  expect(told({ works: [{ ...wheels, looked: "same" }], isAlone: true })).toEqual(["told own-look"]);
  expect(told({ works: [wheels], isAlone: true })).toEqual(["refuses second-look"]);
  expect(told({ works: [{ ...wheels, looked: "other" }] })).toEqual([]);
});

test("[RL1] the gravest stands first", () => {
  const complaint = { id: "c", visit: "visit:v", on: "", text: "It hums", isCarried: false, differ: false };
  const fault = { fault: "f", place: "RR", grade: "dangerous", jobs: [] } as const;
  expect(told({ complaints: [complaint], works: [{ ...DONE, secondLook: "wheels" }], faults: [fault] })).toEqual([
    "danger dangerous",
    "refuses second-look",
    "told complaint",
  ]);
});

const stamp = (wall: number) => ({ wall, count: 0 });
const stands = <T>(value: T, wall: number, by = "ines"): Stands<T> => ({ id: `e${wall}`, value, at: stamp(wall), by });
const step = (name: PlanBodies["job.step"]["step"], wall: number, on = "2026-03-10") =>
  stands({ ...at, step: name, on }, wall);
const asking = (more: Partial<Asking> = {}): Asking => ({
  says: () => ({ job: { access: [], "second-look": "wheels" }, after: [{ point: "whl.float", place: "RR" }] }),
  answered: () => undefined,
  askedOf: () => "this person",
  nameOf: () => "Ines",
  ...more,
});
const sound = (wall: number, is: AnswerTold["is"] = "in order"): AnswerTold => ({
  at: stamp(wall),
  is,
  says: "0.24 mm",
});
const look = (who: string, wall: number, same = false) =>
  stands({ ...at, who, on: "2026-03-11", words: "looked", same }, wall);
const KEY = "job.whl.bearing@RR";
const work = (
  steps: readonly ReturnType<typeof step>[],
  looks: readonly ReturnType<typeof look>[] = [],
  more: Partial<Asking> = {},
): WorkTold | undefined =>
  worksTold({ jobSteps: new Map([[KEY, steps]]), secondLooks: new Map([[KEY, looks]]) }, asking(more))[0];

test("[RL6] an answer counts when it is given after the job was told as done, not before", () => {
  const unanswered = (wall: number) =>
    work([step("done", 100)], [], { answered: () => sound(wall) })?.unanswered.length;
  expect([unanswered(99), unanswered(100), unanswered(101)]).toEqual([1, 1, 0]);
  const asked = (of: ReturnType<Asking["askedOf"]>, wall = 99) =>
    work([step("done", 100)], [], { askedOf: () => of, answered: () => sound(wall) });
  expect(asked("nobody")).toMatchObject({ unanswered: [], forOthers: [], unasked: [{}] });
  expect(asked("somebody else")).toMatchObject({ unanswered: [], forOthers: [{}], unasked: [] });
  expect(asked("nobody", 101)).toMatchObject({ unanswered: [], forOthers: [], unasked: [] });
});

test("[RL6] an answer given after the job counts only when it is in order; a bad one says what it was", () => {
  const wanting = (is: AnswerTold["is"], wall = 101) => {
    const one = work([step("done", 100)], [], { answered: () => sound(wall, is) });
    return { told: told({ works: one ? [{ ...one, looked: "other" }] : [] }), points: one?.wanting };
  };
  expect(wanting("in order")).toEqual({ told: [], points: [] });
  expect(wanting("major")).toEqual({
    told: ["refuses wanting"],
    points: [{ point: "whl.float", place: "RR", is: "major", says: "0.24 mm" }],
  });
  const weights = (["dangerous", "minor", "unfit", "advisory", "unsettled"] as const).map((is) => wanting(is).told);
  expect(weights.map(([one]) => one?.split(" ")[0])).toEqual(["refuses", "refuses", "refuses", "told", "told"]);
  // What was bad before the work says nothing of the work.
  expect(wanting("major", 99)).toEqual({ told: ["refuses unmeasured"], points: [] });
});

test("[RL6] begun again it is not done, and done anew everything is looked at anew", () => {
  const again = [step("done", 100), step("begun", 200, "2026-03-12")];
  expect(work(again)?.doneOn).toBeUndefined();
  const anew = work([...again, step("done", 300, "2026-03-13")], [look("Jo", 150)], { answered: () => sound(150) });
  expect(anew).toMatchObject({ doneOn: "2026-03-13", looked: "none", unanswered: [{ point: "whl.float" }] });
  expect(work([step("done", 100), step("measured-again", 200)])).toMatchObject({
    doneOn: "2026-03-10",
    isMeasured: true,
  });
});

test("[RL7] the same name in other capitals is the same person, and so is who says so", () => {
  const looked = (...looks: readonly ReturnType<typeof look>[]) => work([step("done", 100)], looks)?.looked;
  expect([looked(), looked(look("  INES ", 200)), looked(look("Jo", 200, true))]).toEqual(["none", "same", "same"]);
  expect([looked(look("Jo", 200)), looked(look("Ines", 200), look("Jo", 201))]).toEqual(["other", "other"]);
  expect([isSamePerson("Anna  Bo", "anna bo"), isSamePerson("", "")]).toEqual([true, false]);
});

test("[RL8] wheel nuts are due wherever a wheel was off, and what a sheet asks for; a day stands with each", () => {
  const off = (access: string): boolean => access === "hub-off";
  const due = rechecksOf([{ ...DONE, recheckKm: 500 }], new Map(), { odometer: 64_905, kmADay: 25 }, off);
  expect(due).toEqual([
    { id: "wheel-nuts", is: "wheel-nuts", places: ["RR"], km: 50, at: 64_955, on: "2026-03-12" },
    { id: KEY, is: "job", job: at.job, places: ["RR"], km: 500, at: 65_405, on: "2026-03-30" },
  ]);
  expect(rechecksOf([{ ...DONE, access: ["covers-off"] }], new Map(), {}, off)).toEqual([]);
});

test("[RL8] nobody knows how far it goes in a day: a month on from the day it left, and no odometer made up", () => {
  const [nuts] = rechecksOf([DONE], new Map(), { leftOn: "2026-03-20" }, () => true);
  expect(nuts).toEqual({ id: "wheel-nuts", is: "wheel-nuts", places: ["RR"], km: 50, on: "2026-04-19" });
});

test("[RL8] looked at again it is done, unless the wheel was off again since", () => {
  const checked = (on: string) =>
    rechecksOf(
      [DONE],
      new Map([["wheel-nuts", [stands({ recheck: "wheel-nuts", who: "Jo", on, words: "held" }, 1)]]]),
      {},
      () => true,
    )[0]?.done?.who;
  expect([checked("2026-03-11"), checked("2026-03-09")]).toEqual(["Jo", undefined]);
});

const HUM = "visit:a/w1/2/n";
const answer = (word: ComplaintAnswer["word"]): ComplaintAnswer => ({
  word,
  findings: [],
  words: "tried",
  who: "Ines",
  on: "2026-03-03",
});
const heard = (
  visit: string,
  complaints: readonly string[],
  answers: readonly (readonly [string, ComplaintAnswer["word"], number])[] = [],
  log: VisitState["ledger"]["log"] = new Map(),
): HeardIn => ({
  visit: {
    stream: visit,
    on: [stands("2026-03-01", 1)],
    complaints: complaints.map((id) => ({ ...stands({ text: "It hums", replaces: [] }, 1), id })),
    ledger: { log } as VisitState["ledger"],
  },
  answers: new Map(answers.map(([id, word, wall]) => [id, [stands(answer(word), wall)]])),
});

test("[RL9] a complaint is carried on until it is answered, and where it is answered it is still shown", () => {
  const [first, open] = [heard("visit:a", [HUM]), heard("visit:b", [])];
  expect(openComplaints(complaintsOf(open, [first]))).toMatchObject([{ id: HUM, isCarried: true, on: "2026-03-01" }]);
  const here = heard("visit:b", [], [[HUM, "found", 5]]);
  expect(complaintsOf(here, [first])).toMatchObject([{ isCarried: true, answer: { word: "found" } }]);
  expect(complaintsOf(heard("visit:c", []), [first, here])).toEqual([]);
  expect(complaintsOf(heard("visit:a", [HUM]), [])).toMatchObject([{ isCarried: false }]);
});

test("[RL9] answered by what it needs first, it is open and carried on, and so it is where two answers differ", () => {
  const needs = heard("visit:a", [HUM], [[HUM, "needs", 5]]);
  const [carried] = complaintsOf(heard("visit:b", []), [needs]);
  expect(carried).toMatchObject({ isCarried: true, answer: { word: "needs" } });
  expect(told({ complaints: complaintsOf(needs, []) })).toEqual(["told complaint"]);
  const differ = complaintsOf(heard("visit:b", [], [[HUM, "not-heard", 6]]), [needs]);
  expect(openComplaints(differ)).toMatchObject([{ differ: true }]);
  expect(openComplaints(complaintsOf(heard("visit:a", [HUM], [[HUM, "found", 5]]), []))).toEqual([]);
});

test("[RL9] of two answers the one said last is told, and that they differ", () => {
  const here = heard("visit:b", [], [[HUM, "found", 5]]);
  const [one] = complaintsOf(here, [heard("visit:a", [HUM], [[HUM, "not-heard", 9]])]);
  expect(one).toMatchObject({ answer: { word: "not-heard" }, differ: true });
});

test("[RL9] a slip of the pen mended afterwards leaves the complaint answered", () => {
  const mended = "visit:a/w1/3/n";
  const log = new Map([
    [mended, { body: { text: "It hums", replaces: [HUM] } }],
  ]) as unknown as VisitState["ledger"]["log"];
  expect(complaintsOf(heard("visit:a", [mended], [[HUM, "found", 5]], log), [])).toMatchObject([
    { id: mended, answer: { word: "found" } },
  ]);
});

test("[RL10] with something left loose or off it is not handed back at all; drained or unplugged is told", () => {
  const left = (what: "loose" | "off" | "drained" | "unplugged") => ({
    loose: "a",
    what,
    words: ["hub nut, finger tight"],
    on: "2027-03-01",
  });
  const moved = (what: Parameters<typeof left>[0]) => mayBeMoved(standsAgainst({ ...NOTHING, loose: [left(what)] }));
  expect((["loose", "off", "drained", "unplugged"] as const).map(moved)).toEqual([false, false, true, true]);
});
