import { expect, test } from "vitest";
import { BODIES } from "../../../tests/store/sample-bodies.js";
import { DECISION_BODIES } from "../../../tests/store/sample-decisions.js";
import { LIMIT_BODIES } from "../../../tests/store/sample-limits.js";
import { PICTURE_BODIES } from "../../../tests/store/sample-pictures.js";
import { PLAN_BODIES } from "../../../tests/store/sample-plan.js";
import { RELEASE_BODIES } from "../../../tests/store/sample-release.js";
import { SHEET_DRAFT_BODIES } from "../../../tests/store/sample-sheet-drafts.js";
import { VIEWING_BODIES } from "../../../tests/store/sample-viewing.js";
import { WEAR_BODIES } from "../../../tests/store/sample-wear.js";
import { ALL_KINDS } from "./all-kinds.js";
import { faultsOf } from "./check-logged.js";
import type { Entry, Kind } from "./contract.js";
import { kindIn, whyUnknown } from "./kinds.js";

type Sampled = keyof typeof BODIES;
const streamOf = (kind: Kind): string => {
  if (kind === "undo" || kind === "erase") return "visit:v";
  const [of] = ALL_KINDS[kind].streams;
  return of === "house" ? "house" : `${of}:${of === "car" ? "c" : "v"}`;
};
const why = (one: Entry) => whyUnknown(one, ALL_KINDS);
const faults = (one: Entry) => faultsOf(one, {}, ALL_KINDS);
const entry = (kind: Kind, body: unknown, v = ALL_KINDS[kind].v): Entry => ({
  stream: streamOf(kind),
  writer: "w1",
  seq: 1,
  nonce: "n",
  at: { wall: 1, count: 0 },
  by: "anna",
  kind,
  v,
  body,
});
const kinds = Object.keys(BODIES).filter((kind): kind is Sampled => kind in BODIES);

test("every kind has a sample", () => {
  const later = {
    ...PLAN_BODIES,
    ...DECISION_BODIES,
    ...RELEASE_BODIES,
    ...PICTURE_BODIES,
    ...WEAR_BODIES,
    ...VIEWING_BODIES,
    ...SHEET_DRAFT_BODIES,
    ...LIMIT_BODIES,
  };
  const sampled = [...kinds, ...Object.keys(later)];
  expect(sampled.toSorted()).toEqual(Object.keys(ALL_KINDS).toSorted());
});

test.each(kinds)("[RC4] %s: a body as it should be is taken", (kind) => {
  expect(why(entry(kind, BODIES[kind]))).toBeUndefined();
  expect(faults(entry(kind, BODIES[kind]))).toEqual([]);
});

test.each(kinds)("[RC4] %s: every field spoilt, missing or added is found out", (kind) => {
  const body: object = BODIES[kind];
  const fields = Object.keys(body);
  const spoilt: object[] = [{ ...body, more: 1 }, ...fields.map((field) => ({ ...body, [field]: { strange: true } }))];
  const optional = new Set([
    "odometer",
    "complaint",
    "point",
    "place",
    "state",
    "thumb",
    "fault",
    "name",
    "unreadable",
    "cut",
  ]);
  const needed = fields.filter(
    (field) =>
      !optional.has(field) ||
      (field !== "cut" &&
        ["car.begun", "car.named", "car.place", "car.place-named", "regrade", "sound"].includes(kind)),
  );
  for (const field of needed) spoilt.push(Object.fromEntries(Object.entries(body).filter(([name]) => name !== field)));
  for (const one of spoilt) {
    expect(why(entry(kind, one)), JSON.stringify(one)).toBe("body");
    expect(faults(entry(kind, one)), JSON.stringify(one)).toHaveLength(1);
  }
});

test.each(kinds)("[RC4] %s: a newer version is none of this program's business", (kind) => {
  const next = ALL_KINDS[kind].v + 1;
  expect(why(entry(kind, BODIES[kind], next))).toBe("newer");
  expect(why(entry(kind, { anything: 1 }, next))).toBe("newer");
  expect(faults(entry(kind, { anything: 1 }, next))).toEqual([]);
});

test("[RC4] judging again as it was first written is held to the shape it had then", () => {
  const { common: _common, limits: _limits, ...first } = BODIES["visit.judged-again"];
  expect(why(entry("visit.judged-again", first, 1))).toBeUndefined();
  expect(faults(entry("visit.judged-again", first, 1))).toEqual([]);
  expect(why(entry("visit.judged-again", first, 2))).toBe("body");
  expect(why(entry("visit.judged-again", BODIES["visit.judged-again"], 1))).toBe("body");
  expect(faults(entry("visit.judged-again", BODIES["visit.judged-again"], 1))).toHaveLength(1);
});

test("[RC4] in another kind of stream an entry has no effect", () => {
  expect(why({ ...entry("reply", BODIES.reply), stream: "car:c" })).toBe("stream");
  expect(why({ ...entry("house.sheet", BODIES["house.sheet"]), stream: "visit:v" })).toBe("stream");
});

test("[RC4] a kind named like something every object has is still unknown", () => {
  expect(["constructor", "toString", "__proto__"].map((kind) => kindIn(ALL_KINDS, kind))).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test.each<readonly [string, Kind, object]>([
  ["a limit filed under another key", "car.limit", { ...BODIES["car.limit"], key: "lim.float-unit" }],
  [
    "a limit with neither value nor bands",
    "car.limit",
    { key: "l", limit: { limit: "l", unit: "mm", basis: "maker" }, replaces: [] },
  ],
  [
    "a limit with both",
    "car.limit",
    { key: "l", limit: { limit: "l", unit: "mm", basis: "maker", value: "1", bands: { major: "1" } }, replaces: [] },
  ],
  [
    "a limit of a basis nobody knows",
    "car.limit",
    { key: "l", limit: { limit: "l", unit: "mm", basis: "hearsay", value: "1" }, replaces: [] },
  ],
  [
    "a band of a grade nobody knows",
    "car.limit",
    { key: "l", limit: { limit: "l", unit: "mm", basis: "maker", bands: { bad: "1" } }, replaces: [] },
  ],
  ["a place filed under another id", "car.place", { ...BODIES["car.place"], place: "drain-8" }],
  ["a place neither there nor away", "car.place", { place: "x", change: {}, replaces: [] }],
  ["a fact that is no number", "car.fact", { fact: "x", value: Number.NaN, replaces: [] }],
  ["an occasion of one visit", "car.same-occasion", { visits: ["visit:v"] }],
  ["a date without offset", "visit.dated", { on: "2026-02-03T10:00", replaces: [] }],
  ["a thirteenth month", "visit.dated", { on: "2026-13-03T10:00Z", replaces: [] }],
  ["a purpose nobody has", "visit.opened", { ...BODIES["visit.opened"], purpose: "fun" }],
  ["a grade nobody gives", "regrade", { ...BODIES.regrade, grade: "awful" }],
  ["a picture of half a pixel", "picture", { ...BODIES.picture, width: 0.5 }],
  [
    "a reading with no shot",
    "reply",
    { key: { ...BODIES.reply.key }, value: { type: "reading", values: [], unit: "mm" }, replaces: [] },
  ],
  [
    "a reason nobody gives",
    "reply",
    {
      key: { ...BODIES.reply.key, field: "*" },
      value: { type: "non-answer", nonAnswer: "not-reached", reason: "bored" },
      replaces: [],
    },
  ],
])("[RC4] found out: %s", (_what, kind, body) => {
  expect(why(entry(kind, body))).toBe("body");
});
