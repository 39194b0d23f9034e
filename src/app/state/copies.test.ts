// Copies as screens need them: when the car list asks for one, what a file is called, which papers of a visit can go.
import { describe, expect, test } from "vitest";
import { act, bytesOf, emptyVisit, foreign, pictureDraft } from "../../../tests/store/sample.js";
import { copyOf, filledPhone, good } from "../../../tests/support/copies.js";
import { draftMark, draftNote, draftUndo, foldVisit, gatherCopy, idText, isEntry } from "../../core/record/index.js";
import { problem } from "../../core/terms/index.js";
import { openCopy } from "../../device/files/open.js";
import { refusedWords } from "../texts/files.js";
import { copyName, madeOf, placeIn } from "./copies.js";
import { ASK_AFTER_DAYS, copyAge } from "./copy-age.js";
import { papersOf } from "./papers-view.js";

const DAY = 86_400_000;

describe("how long the record has lain on this phone alone", () => {
  test("FL10 never copied: counted from the oldest; copied: from the copy, while anything changed since", async () => {
    const { store, visit } = await filledPhone();
    const before = good(await store.summaries());
    const oldest = Math.min(...before.map(({ last }) => last.wall));
    const later = oldest + ASK_AFTER_DAYS * DAY;
    expect(copyAge(before, undefined, later)).toEqual({ own: 2, changed: 2, alone: ASK_AFTER_DAYS });
    expect(copyAge(before, undefined, later - 1).alone).toBe(ASK_AFTER_DAYS - 1);
    const made = madeOf(good(await gatherCopy(store, { holds: "everything" })), later);
    expect(copyAge(before, made, later + 100 * DAY)).toEqual({ own: 2, changed: 0, alone: 0, days: 100 });
    good(await store.append([draftNote(act(), emptyVisit(visit), { text: "seen again" })]));
    expect(copyAge(good(await store.summaries()), made, later + 3 * DAY)).toEqual({
      own: 2,
      changed: 1,
      alone: 3,
      days: 3,
    });
  });

  test("the demo never asks for a copy, nor does a phone without anything", async () => {
    const demo = {
      of: "house",
      stream: "car:demo-x",
      demo: true,
      entries: 3,
      last: { wall: 0, count: 0 },
      trouble: false,
    } as const;
    expect(copyAge([demo], undefined, 1_000 * DAY)).toEqual({ own: 0, changed: 0, alone: 0 });
    expect(copyAge([], undefined, DAY).alone).toBe(0);
  });

  test("a car or a visit handed on is no copy of the record", async () => {
    const { store, car, visit } = await filledPhone();
    expect(madeOf(good(await gatherCopy(store, { holds: "visit", car, visit })), 1)).toBeUndefined();
  });
});

test("a file is called what it is, of when, and which part, in letters every system takes", async () => {
  const plan = good(await gatherCopy((await filledPhone()).store, { holds: "everything" }));
  const noon = new Date(2026, 10, 29, 12).getTime();
  expect(copyName("", noon, plan, 0, false)).toBe("leadlamp-everything-2026-11-29.zip");
  expect(copyName("visit Ébène / ../ №7", noon, plan, 0, true)).toBe("leadlamp-visit-ebene-7-2026-11-29.zip.age");
  const parts = { ...plan, volumes: [[], [], []] };
  expect(copyName("", noon, parts, 1, false)).toBe("leadlamp-everything-2026-11-29-2-of-3.zip");
});

test("FL5 everything that can be wrong with a file has its words, its place and what to do", async () => {
  const { store } = await filledPhone(1);
  const opened = await openCopy(new File([(await copyOf(store, { holds: "everything" })).slice(0, 400)], "cut.zip"));
  const code = opened.ok ? "" : (opened.problems[0]?.code ?? "");
  for (const one of [
    code,
    "files.bomb",
    "record.bad-entry",
    "record.not-json",
    "record.store-full",
    "record.store-lost",
  ]) {
    const { says, todo } = refusedWords(one);
    expect([says, todo]).not.toContain("");
  }
  expect(refusedWords("record.not-json").says).toBe("A line of its journal is not in order.");
  expect(placeIn(problem("x", { file: "journal.jsonl", line: 12, path: "entry.at" }))).toBe(
    "journal.jsonl, line 12, entry.at",
  );
  expect(placeIn(problem("x"))).toBe("");
});

test("FL11 papers: what was taken back or written over goes too, with every entry that names its bytes", async () => {
  const { store, visit } = await filledPhone(1);
  const more = await bytesOf("a licence that was in the picture");
  good(await store.append([pictureDraft(visit, more.hash)], [more]));
  good(await store.append([draftNote(act(), emptyVisit(visit), { text: "first words" })]));
  let state = foldVisit(good(await store.entries(visit)));
  const [note] = state.notes;
  const picture = state.pictures.find(({ value }) => value.blob === more.hash);
  if (!note || !picture) throw new Error("no note, no picture");
  const over = draftNote(act(), state, { text: "better words" });
  good(await store.append([{ ...over, body: { ...(over.body as object), replaces: [note.id] } }]));
  good(await store.append(draftUndo(act(), state, [picture.id])));
  state = foldVisit(good(await store.entries(visit)));
  const papers = papersOf(state);
  const told = papers.map(({ is, words, hidden, ids }) => [is, words, hidden, ids.length]);
  expect(told).toContainEqual(["note", "better words", false, 2]);
  expect(told.filter(([is]) => is === "picture")).toEqual([
    ["picture", "", false, 1],
    ["picture", "", true, 1],
  ]);
  const twin = foreign(pictureDraft(visit, more.hash), "w8", 1);
  const both = papersOf(foldVisit([...state.ledger.log.values(), twin])).find(({ key }) => key === more.hash);
  expect([both?.ids.length, both?.ids.includes(idText(twin))]).toEqual([2, true]);
});

test("FL11 papers: what is said of a picture goes with it, and is still found where the picture went before", async () => {
  const { store, visit } = await filledPhone(1);
  const more = await bytesOf("a plate to be marked");
  good(await store.append([pictureDraft(visit, more.hash)], [more]));
  const read = async () => foldVisit(good(await store.entries(visit)));
  const words = { type: "words", at: [0.5, 0.5], words: "somebody's name" } as const;
  good(await store.append([draftMark(act(), await read(), more.hash, "m1", words)]));
  const state = await read();
  const paper = papersOf(state).find(({ key }) => key === more.hash);
  const marks = [...state.ledger.log.values()].filter((one) => isEntry(one) && one.kind === "picture.mark");
  expect(marks).toHaveLength(1);
  expect(paper?.ids).toEqual(expect.arrayContaining(marks.map(idText)));
  const [picture] = state.pictures.filter(({ value }) => value.blob === more.hash).map(({ id }) => id);
  good(await store.eraseForGood(act(), { ids: picture === undefined ? [] : [picture] }));
  const left = papersOf(await read()).find(({ key }) => key === more.hash);
  expect([left?.is, left?.hidden, left?.ids]).toEqual(["picture", true, marks.map(idText)]);
  good(await store.eraseForGood(act(), { ids: left?.ids ?? [] }));
  const bodies = [...(await read()).ledger.log.values()].filter(
    (one) => isEntry(one) && one.kind.startsWith("picture"),
  );
  expect(JSON.stringify(bodies)).not.toContain("somebody's name");
});
