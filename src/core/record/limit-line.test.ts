import { expect, test } from "vitest";
import { LIMIT_BODIES } from "../../../tests/store/sample-limits.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import type { CarLimit } from "../sheet/car.js";
import { faultsOf } from "./check-logged.js";
import type { Act, Entry, Kind } from "./contract.js";
import { draftCar } from "./draft.js";
import { draftLimit } from "./draft-car.js";
import { draftFigure, draftFigureLooked, draftOutOfBook } from "./draft-limit-told.js";
import { foldCar } from "./fold-car.js";
import { isEntry } from "./identity.js";
import type { FigureTold } from "./limit-bodies.js";
import { LIMIT_KINDS } from "./limit-kinds.js";
import { foldLimitBook, limitKeysOf, limitLine } from "./limit-line.js";
import { limitsOf } from "./looked.js";
import { draftUndo } from "./undo.js";

let given = 0;
const act = (by = "anna"): Act => {
  given += 1;
  const id = `act${given}`;
  let made = 0;
  return {
    id,
    by,
    at: { wall: given * 1000, count: 0 },
    nonce: () => {
      made += 1;
      return `${id}-${made}`;
    },
  };
};
const float = (value: string, place?: string): CarLimit => ({
  limit: "lim.float",
  value,
  unit: "mm",
  basis: "maker",
  ...(place === undefined ? {} : { place }),
});
const told = (page: string): FigureTold => ({
  condition: "cold",
  source: { trust: "maker-this", way: "book", title: "Workshop manual", page },
});
const begun = (): SampleLog => {
  const log = new SampleLog("car:c");
  log.add(draftCar(act(), "car:c", "the blue one"));
  return log;
};
const line = (log: SampleLog, key = "lim.float") =>
  limitLine(log.car, key).map(({ limit, is, told: of, why }) => [limit?.value, is, of?.source.page, why]);

test("[RC87] [RC88] a figure that replaces another keeps the other in its line, each with its own source and reason", () => {
  const log = begun();
  log.add(draftFigure(act(), log.car, float("0.1"), told("12")));
  log.add(draftFigure(act("jo"), log.car, float("0.2"), told("31"), " the later edition "));
  expect(line(log)).toEqual([
    ["0.1", "replaced", "12", undefined],
    ["0.2", "standing", "31", "the later edition"],
  ]);
  expect(limitLine(log.car, "lim.float").map(({ by }) => by)).toEqual(["anna", "jo"]);
  expect(limitsOf(log.car)).toEqual([float("0.2")]);
});

test("[RC88] taken out with its reason, no figure stands and the line tells who took it out and why", () => {
  const log = begun();
  log.add(draftFigure(act(), log.car, float("0.1"), told("12")));
  log.add(draftOutOfBook(act(), log.car, "lim.float", "for the later hub"));
  expect(limitsOf(log.car)).toEqual([]);
  expect(line(log)).toEqual([
    ["0.1", "replaced", "12", undefined],
    [undefined, "standing", undefined, "for the later hub"],
  ]);
  expect(limitKeysOf(log.car, "lim.float")).toEqual(["lim.float"]);
});

test("[RC87] a figure entered before anything could be told of one stands, and starts with nothing told", () => {
  const log = begun();
  log.add(draftLimit(act(), log.car, { ...float("0.1"), source: "page 3" }));
  expect(line(log)).toEqual([["0.1", "standing", undefined, undefined]]);
  log.add(draftFigure(act(), log.car, float("0.1"), told("4")));
  log.add(draftLimit(act(), log.car, float("0.1")));
  expect(line(log).map(([, , page]) => page)).toEqual([undefined, "4", undefined]);
});

test("[RC89] a second look is for the entry it names: the same figure entered again has had none", () => {
  const log = begun();
  const id = log.add(draftFigure(act(), log.car, float("0.1"), told("12")));
  const look = log.add(draftFigureLooked(act(), log.car, { key: "lim.float", id }, " Jo ", ""));
  const looks = () => limitLine(log.car, "lim.float").map((one) => one.looked.map(({ value }) => value.who));
  expect(looks()).toEqual([["Jo"]]);
  log.add(draftFigure(act(), log.car, float("0.1"), told("12")));
  expect(looks()).toEqual([["Jo"], []]);
  log.add(draftUndo(act(), log.car, [look]));
  expect(looks()).toEqual([[], []]);
});

test("[RC88] places have lines of their own; an undone figure stays in its line as undone", () => {
  const log = begun();
  log.add(draftFigure(act(), log.car, float("0.1"), told("12")));
  const right = log.add(draftFigure(act(), log.car, float("0.3", "FR"), told("13")));
  expect(limitKeysOf(log.car, "lim.float")).toEqual(["lim.float", "lim.float@FR"]);
  expect(limitKeysOf(log.car, "lim.flo")).toEqual([]);
  log.add(draftUndo(act(), log.car, [right]));
  expect(line(log, "lim.float@FR")).toEqual([["0.3", "undone", "13", undefined]]);
  expect(line(log)).toEqual([["0.1", "standing", "12", undefined]]);
});

test("[RC90] a car folded without these kinds reports none of them; the book reports what it does not know itself", () => {
  const log = begun();
  log.add(draftFigure(act(), log.car, float("0.1"), told("12")));
  const later = log.entries
    .filter(isEntry)
    .map((one) => ({ ...one, kind: one.kind.replace("limit.told", "limit.then") }));
  expect(foldCar(later).trouble.unknown).toEqual([]);
  expect(foldLimitBook(later).trouble.unknown.map(({ kind, why }) => `${kind} ${why}`)).toEqual(["limit.then kind"]);
});

const entry = (kind: Kind, body: unknown): Entry => ({
  ...{ stream: "car:c", writer: "w1", seq: 1, nonce: "n", at: { wall: 1, count: 0 }, by: "anna" },
  ...{ kind, v: 1, body },
});
const faults = (kind: Kind, body: unknown) =>
  faultsOf(entry(kind, body), {}, LIMIT_KINDS).map(({ where }) => where.path);

test("[RC4] a body as it should be is taken", () => {
  expect(faults("limit.told", LIMIT_BODIES["limit.told"])).toEqual([]);
  expect(faults("limit.looked", LIMIT_BODIES["limit.looked"])).toEqual([]);
});

const { told: whole, ...bare } = LIMIT_BODIES["limit.told"];
test.each<readonly [string, Kind, object, string]>([
  ["a telling that tells nothing", "limit.told", { key: bare.key, of: bare.of }, "body"],
  [
    "a source nobody trusts in that order",
    "limit.told",
    { ...bare, told: { source: { trust: "hearsay", way: "book" } } },
    "body.told.source.trust",
  ],
  ["a figure kept with no source", "limit.told", { ...bare, told: { condition: "cold" } }, "body.told.source"],
  [
    "a usual window upside down",
    "limit.told",
    { ...bare, told: { ...whole, odd: { low: 2, high: 1, unit: "mm" } } },
    "body.told.odd.high",
  ],
  ["words longer than a box", "limit.told", { ...bare, why: "x".repeat(201) }, "body.why"],
  [
    "a day that is none",
    "limit.told",
    { ...bare, told: { source: { ...whole?.source, on: "2026-13-01" } } },
    "body.told.source.on",
  ],
  ["a second look of no entry", "limit.looked", { ...LIMIT_BODIES["limit.looked"], of: "n2" }, "body.of"],
  ["a second look by nobody", "limit.looked", { ...LIMIT_BODIES["limit.looked"], who: "" }, "body.who"],
])("[RC4] found out: %s", (_what, kind, body, path) => {
  expect(faults(kind, body)).toEqual([path]);
});
