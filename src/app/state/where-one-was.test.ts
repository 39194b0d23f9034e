import { expect, test } from "vitest";
import type { VisitState } from "../../core/record/index.js";
import { keyText, type ReplyKey } from "../../core/terms/index.js";
import type { TextShelf } from "./settings.js";
import { recallPoint, refreshPoint, rememberPoint } from "./where-one-was.js";

function shelf(): TextShelf {
  const kept = new Map<string, string>();
  return {
    get: (key) => kept.get(key) ?? null,
    put: (key, text) => void kept.set(key, text),
    drop: (key) => void kept.delete(key),
  };
}

/** Replies to one field each, kept in the order given. */
function replies(...points: readonly string[]): VisitState["replies"] {
  const kept = points.map((point, index) => {
    const key: ReplyKey = { point, place: "RL", state: "w7-hang", field: "feel" };
    const value = { type: "words", words: ["quiet"] } as const;
    const standing = [{ id: `visit:1/w/${index + 1}/n${index}`, value, at: { wall: 1000 + index, count: 0 }, by: "p" }];
    return [keyText(key), { key, standing, differ: false }] as const;
  });
  return new Map(kept);
}

const at = (point: string) => ({ state: "w7-hang", place: "RL", point });

test("the point one was at comes back, although it was walked to after the last reply", () => {
  const kept = shelf();
  rememberPoint(kept, "visit:1", at("whl.seal"), replies("whl.spin"));
  expect(recallPoint(kept, "visit:1", replies("whl.spin"))).toEqual(at("whl.seal"));
});

test("a reply kept since then wins: the memory was older than the record", () => {
  const kept = shelf();
  rememberPoint(kept, "visit:1", at("whl.spin"), replies("whl.spin"));
  expect(recallPoint(kept, "visit:1", replies("whl.spin", "whl.rock"))).toEqual(at("whl.rock"));
});

test("without a memory one was nowhere, whatever was replied on the form or on another phone", () => {
  expect(recallPoint(shelf(), "visit:1", replies("whl.spin", "whl.rock"))).toBeUndefined();
  expect(recallPoint(shelf(), "visit:1", replies())).toBeUndefined();
});

test("a half-written memory counts as none", () => {
  const kept = shelf();
  kept.put("leadlamp.at.visit:1", "w7-hang RL");
  expect(recallPoint(kept, "visit:1", replies())).toBeUndefined();
});

test("a place set without looking at replies holds against all of them", () => {
  const kept = shelf();
  rememberPoint(kept, "visit:1", at("whl.seal"));
  expect(recallPoint(kept, "visit:1", replies("whl.spin", "whl.rock"))).toEqual(at("whl.seal"));
});

test("what is kept beside the record is newer than the text store of a killed browser; without it that stands", async () => {
  const kept = shelf();
  const stale = shelf();
  rememberPoint(stale, "visit:1", at("whl.spin"), replies("whl.spin"));
  const [name, text] = rememberPoint(kept, "visit:1", at("whl.seal"), replies("whl.spin"));
  const store = (value: unknown) => ({
    setting: async (asked: string) => ({ ok: true, value: asked === name ? value : undefined }) as const,
  });
  await refreshPoint(stale, store(undefined), "visit:1");
  expect(recallPoint(stale, "visit:1", replies("whl.spin"))).toEqual(at("whl.spin"));
  await refreshPoint(stale, store(text), "visit:1");
  expect(recallPoint(stale, "visit:1", replies("whl.spin"))).toEqual(at("whl.seal"));
  // A reply tells by itself where it was given: it needs no step kept beside it.
  expect(recallPoint(stale, "visit:1", replies("whl.spin", "whl.rock"))).toEqual(at("whl.rock"));
});
