// [RC65] [RC66] What a viewing adds to the plan of its visit.
import { expect, test } from "vitest";
import { act } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { VIEWING_BODIES } from "../../../tests/store/sample-viewing.js";
import { ALL_KINDS } from "./all-kinds.js";
import { faultsOf } from "./check-logged.js";
import type { Entry } from "./contract.js";
import { draftClaim, draftClaimSeen, draftPapersUntil } from "./draft-viewing.js";
import { draftUndo, undoable } from "./undo.js";
import type { ViewingKind } from "./viewing-bodies.js";

const planOf = (log: SampleLog) => ({ ...log.plan, stream: "plan:v" });
const claims = (log: SampleLog) =>
  planOf(log)
    .claims.get("c1")
    ?.map(({ value }) => value.text);
const seen = (log: SampleLog) =>
  planOf(log)
    .claimsSeen.get("c1")
    ?.map(({ value }) => value.word);
const SEEN = { words: "", on: "2026-03-14" } as const;

test("[RC65] the words of a claim are mended under its name, and what was seen of it stays", () => {
  const log = new SampleLog();
  log.add(draftClaim(act(), planOf(log), "c1", { text: "new belts", from: "advert" }));
  log.add(draftClaimSeen(act(), planOf(log), "c1", { word: "not-shown", ...SEEN }));
  log.add(draftClaim(act(), planOf(log), "c1", { text: "New belts", from: "seller" }));
  expect([claims(log), seen(log)]).toEqual([["New belts"], ["not-shown"]]);
  log.add(draftClaim(act(), planOf(log), "c1", null));
  expect(claims(log)).toBeUndefined();
});

test("[RC65] undone, the word before stands again; two phones' words both stand", () => {
  const log = new SampleLog();
  const empty = planOf(log);
  log.add(draftClaimSeen(act(), empty, "c1", { word: "not-shown", ...SEEN }));
  log.add(draftClaimSeen(act(), planOf(log), "c1", { word: "shown", ...SEEN }));
  const [step] = undoable(planOf(log), "w1");
  log.add(draftUndo(act(), planOf(log), step?.ids ?? []));
  expect(seen(log)).toEqual(["not-shown"]);
  log.add(draftClaimSeen(act(), empty, "c1", { word: "otherwise", ...SEEN }));
  expect(seen(log)).toEqual(["not-shown", "otherwise"]);
});

test("[RC66] the day papers go is moved, and kept again with null", () => {
  const log = new SampleLog();
  const until = () => planOf(log).papersUntil.map(({ value }) => value);
  log.add(draftPapersUntil(act(), planOf(log), "2026-04-13"));
  log.add(draftPapersUntil(act(), planOf(log), "2026-05-13"));
  expect(until()).toEqual(["2026-05-13"]);
  log.add(draftPapersUntil(act(), planOf(log), null));
  expect(until()).toEqual([]);
});

test.each(Object.keys(VIEWING_BODIES) as ViewingKind[])(
  "[RC4] %s: every field spoilt, missing or added is found out",
  (kind) => {
    const entry = (body: object): Entry => ({
      stream: "plan:v",
      writer: "w1",
      seq: 1,
      nonce: "n",
      at: { wall: 1, count: 0 },
      by: "anna",
      kind,
      v: 1,
      body,
    });
    const faults = (body: object) => faultsOf(entry(body), {}, ALL_KINDS);
    const body: object = VIEWING_BODIES[kind];
    expect(faults(body)).toEqual([]);
    expect(faults({ ...body, more: 1 })).not.toEqual([]);
    for (const field of Object.keys(body)) {
      expect(faults({ ...body, [field]: { strange: true } }), field).not.toEqual([]);
      expect(faults(Object.fromEntries(Object.entries(body).filter(([key]) => key !== field))), field).not.toEqual([]);
    }
    expect(
      faultsOf(entry({ claim: "c", says: { text: "  ", from: "advert" }, replaces: [] }), {}, ALL_KINDS),
    ).not.toEqual([]);
  },
);
