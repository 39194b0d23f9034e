import { expect, test } from "vitest";
import {
  type Bench,
  bench,
  benchVisit,
  commonFrozen,
  key,
  miniShelf,
  sheetFrozen,
  until,
} from "../../../tests/support/app-bench.js";
import { type CarState, undoable, type VisitState } from "../../core/record/index.js";
import type { CarLimit } from "../../core/sheet/run.js";
import { fact } from "./car-edits.js";
import {
  findingChanges,
  judgeBy,
  judgementsOf,
  keepJudgedAgain,
  limitChanges,
  movedOn,
  setNow,
} from "./judge-again.js";
import { keepFigure } from "./limit-acts.js";
import { reply, undo } from "./reply-acts.js";
import { sheetsAtHand } from "./sheets-at-hand.js";
import { close } from "./visit-acts.js";

const MAKERS: CarLimit = { limit: "lim.float", unit: "mm", value: "0.1", grade: "dangerous", basis: "maker" };
const shelf = miniShelf();
const compiler = { compile: async () => Promise.reject(new Error("nothing here needs the parser")) };
const judging = () => import("./judging.js");

const carNow = (on: Bench, stream: string): CarState => {
  const car = on.journal.keptCar(stream).peek();
  if (car.is !== "open") throw new Error("the car is read by now");
  return car.state;
};
const visitNow = (on: Bench, stream: string): VisitState => {
  const visit = on.journal.keptVisit(stream).peek();
  if (visit.is !== "open") throw new Error("the visit is read by now");
  return visit.state;
};

/** A hub with 0.2 mm of float in an open visit: minor by the default limit. Then the maker's figure comes. */
async function floating() {
  const on = bench();
  const { car, visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await until(desk.known, (known) => known !== undefined);
  await fact(on.journal, car, "brakes", "outboard");
  await reply(on.journal, visit, key("hub.float", "FR", "play"), {
    type: "reading",
    values: ["0.2"],
    unit: "mm",
  });
  await until(desk.assessment, (now) => (now?.faults.length ?? 0) > 0);
  await keepFigure(on.journal, car, MAKERS, { source: { trust: "maker-this", way: "book", title: "Workshop manual" } });
  const atHand = sheetsAtHand(shelf, undefined, on.store);
  const frozen = () => {
    const laid = desk.laid.peek();
    if (!laid) throw new Error("the visit is laid out by now");
    return laid.frozen;
  };
  const proposed = async () => {
    const taken = movedOn(frozen(), carNow(on, car), shelf.common.edition, atHand);
    const set = await setNow({ shelf }, frozen(), carNow(on, car), atHand, taken);
    const judged = await judgeBy({ shelf, compiler, judging }, set, carNow(on, car), visitNow(on, visit), []);
    if (!judged.ok) throw new Error(judged.problems[0]?.code);
    const before = desk.assessment.peek();
    if (!before) throw new Error("the visit is judged by now");
    return { set, before, after: judged.value.assessment, engine: judged.value.engine };
  };
  return { on, car, visit, desk, atHand, frozen, proposed };
}

const gradesOf = (judged: { readonly faults: readonly { readonly grade: string }[] } | undefined) =>
  judged?.faults.map(({ grade }) => grade);

test("a maker's figure entered while a visit is open counts in it only after it is judged again, and not before", async () => {
  const { on, car, visit, desk, atHand, frozen, proposed } = await floating();
  const was = gradesOf(desk.assessment.value);
  expect(movedOn(frozen(), carNow(on, car), shelf.common.edition, atHand)).toEqual({ limits: true, sheets: false });
  const { set, ...judged } = await proposed();
  expect(gradesOf(desk.assessment.value)).toEqual(was);
  const changes = findingChanges(judged.before, judged.after);
  expect(changes.changed.map(({ before, after }) => [before.grade, after.grade])).toEqual([["minor", "dangerous"]]);
  expect([changes.appeared, changes.went]).toEqual([[], []]);
  expect(await keepJudgedAgain(on, visit, set, judged)).toBe(true);
  await until(desk.assessment, (now) => now?.faults[0]?.grade === "dangerous");
  expect(frozen().limits.limits).toEqual([MAKERS]);
  expect(movedOn(frozen(), carNow(on, car), shelf.common.edition, atHand)).toEqual({ limits: false, sheets: false });
});

test("it is undone like any act: the limits the visit was opened with judge again, and what changed is still told", async () => {
  const { on, visit, desk, proposed } = await floating();
  const { set, ...judged } = await proposed();
  await keepJudgedAgain(on, visit, set, judged);
  await until(desk.assessment, (now) => now?.faults[0]?.grade === "dangerous");
  const [kept] = visitNow(on, visit).judgedAgain;
  const told = kept && (await judgementsOf(on, kept.value));
  expect(told?.changed.map(({ before, after }) => [before.grade, after.grade])).toEqual([["minor", "dangerous"]]);
  const [step] = undoable(visitNow(on, visit), on.journal.writer.peek() ?? "");
  expect(step?.kinds).toEqual(["visit.judged-again"]);
  await undo(on.journal, visit, { ids: [kept?.id ?? ""] });
  await until(desk.assessment, (now) => now?.faults[0]?.grade === "minor");
  expect(visitNow(on, visit).judgedAgain).toEqual([]);
});

test("a closed visit is judged again on purpose, and the judgement it was closed with stays", async () => {
  const { on, visit, desk, proposed } = await floating();
  await close(on.journal, visit, desk.assessment.value, "1", on.phone.hash);
  const { set, ...judged } = await proposed();
  await keepJudgedAgain(on, visit, set, judged);
  await until(desk.assessment, (now) => now?.faults[0]?.grade === "dangerous");
  const state = visitNow(on, visit);
  expect(state.closed?.id).toBe(state.closings[0]?.id);
  const closing = await on.store.blob(state.closed?.value.assessment ?? "");
  const text = closing.ok && closing.value ? new TextDecoder().decode(closing.value.bytes) : "";
  expect(gradesOf(JSON.parse(text))).toEqual(["minor"]);
});

test("left as they were, the sheets and the limits stay those the visit froze", async () => {
  const { on, car, atHand } = await floating();
  const frozen = {
    common: { ...commonFrozen, edition: "before" },
    sheets: [{ ...sheetFrozen, edition: "before" }],
    limits: { format: "leadlamp-frozen-limits/1" as const, limits: [] },
  };
  expect(movedOn(frozen, carNow(on, car), shelf.common.edition, atHand)).toEqual({ limits: true, sheets: true });
  const now = (taken: { limits: boolean; sheets: boolean }) =>
    setNow({ shelf }, frozen, carNow(on, car), atHand, taken);
  expect(await now({ limits: false, sheets: false })).toEqual(frozen);
  expect(await now({ limits: true, sheets: false })).toMatchObject({ ...frozen, limits: { limits: [MAKERS] } });
  const sheets = await now({ limits: false, sheets: true });
  expect([sheets.common.edition, sheets.sheets[0]?.edition]).toEqual([commonFrozen.edition, sheetFrozen.edition]);
  expect(sheets.limits.limits).toEqual([]);
  const without = await setNow({ shelf }, frozen, carNow(on, car), [], { limits: false, sheets: true });
  expect(without.sheets).toEqual(frozen.sheets);
});

test("limits are told apart by what they hold for; two figures on one are told together", () => {
  const left: CarLimit = { ...MAKERS, place: "FL" };
  const other: CarLimit = { ...MAKERS, value: "0.3" };
  expect(limitChanges([MAKERS], [MAKERS])).toEqual([]);
  expect(limitChanges([MAKERS], [MAKERS, left]).map(({ key, place }) => [key, place])).toEqual([
    ["lim.float@FL", "FL"],
  ]);
  const [change] = limitChanges([MAKERS], [MAKERS, other]);
  expect([change?.before.length, change?.after.length]).toEqual([1, 2]);
  expect(limitChanges([MAKERS], [])[0]?.after).toEqual([]);
});
