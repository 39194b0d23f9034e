import { expect, test } from "vitest";
import { bench, benchVisit, miniTree, until } from "../../../tests/support/app-bench.js";
import { makeAct } from "../../device/store/index.js";
import { readOpen } from "./left-open.js";
import { beginSound, finishSound, forgetSound, keepSlice, type SoundOpen } from "./sound-slices.js";
import { secondsOf, soundsView } from "./sound-view.js";
import { sound } from "./visit-acts.js";

const at = { point: "hub.spin", place: "FR", state: "w7-hang" };
const bytes = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

async function laidOut() {
  const on = bench();
  const { visit } = await benchVisit(on);
  await until(on.journal.visit(visit), ({ is }) => is === "open");
  const open: SoundOpen = { id: "one", visit, at, type: "audio/webm;codecs=opus" };
  const sounds = () => {
    const opened = on.journal.visit(visit).value;
    return opened.is === "open" ? opened.state.sounds : [];
  };
  const heard = async (index = 0): Promise<string> => {
    const blob = await on.store.blob(sounds()[index]?.value.blob ?? "");
    return new TextDecoder().decode(blob.ok ? blob.value?.bytes : undefined);
  };
  return { on, visit, open, sounds, heard };
}

test("slices become one sound of the point, with its length, and nothing is left of them", async () => {
  const { on, open, sounds, heard } = await laidOut();
  await beginSound(on.store, open);
  for (const [index, text] of ["he", "ar", "d"].entries()) await keepSlice(on.store, open.id, index, bytes(text));
  expect(await finishSound(on, open, 5200)).toBe(true);
  expect(sounds().map(({ value }) => [value.place, value.ms, value.cut, value.type])).toEqual([
    ["FR", 5200, undefined, open.type],
  ]);
  expect(await heard()).toBe("heard");
  expect(await readOpen(on.store, "sound")).toBeUndefined();
  expect(await on.store.setting("sound.slice.0")).toEqual({ ok: true, value: null });
});

test("cut off, all but the last slice is there, and it says so; taken up twice it is one sound", async () => {
  const { on, open, sounds, heard } = await laidOut();
  await beginSound(on.store, open);
  await keepSlice(on.store, open.id, 0, bytes("as far as "));
  await keepSlice(on.store, open.id, 1, bytes("here"));
  // The next start finds what was written down.
  const found = await readOpen(on.store, "sound");
  expect(found).toEqual(open);
  expect(await finishSound(on, open)).toBe(true);
  expect(sounds()[0]?.value).toMatchObject({ ms: 0, cut: true, point: "hub.spin" });
  expect(await heard()).toBe("as far as here");
  await beginSound(on.store, open);
  for (const [index, text] of ["as far as ", "here"].entries()) await keepSlice(on.store, open.id, index, bytes(text));
  await finishSound(on, open);
  expect(sounds()).toHaveLength(1);
});

test("slices of an earlier recording are never taken for this one's", async () => {
  const { on, open, heard } = await laidOut();
  await keepSlice(on.store, "earlier", 0, bytes("old"));
  await keepSlice(on.store, "earlier", 1, bytes("old"));
  await beginSound(on.store, open);
  await keepSlice(on.store, open.id, 0, bytes("new"));
  await finishSound(on, open, 1000);
  expect(await heard()).toBe("new");
});

test("thrown away, or ended before anything was heard, there is no sound", async () => {
  const { on, open, sounds } = await laidOut();
  await beginSound(on.store, open);
  await keepSlice(on.store, open.id, 0, bytes("private"));
  await forgetSound(on.store, open.id);
  expect(await on.store.setting("sound.slice.0")).toEqual({ ok: true, value: null });
  await beginSound(on.store, open);
  expect(await finishSound(on, open)).toBe(true);
  expect(sounds()).toEqual([]);
});

test("[RC51] erased for good, the sound's bytes are gone with its entry", async () => {
  const { on, visit, sounds } = await laidOut();
  const hash = await on.phone.hash(bytes("voice"));
  await sound(on.journal, visit, { blob: hash, type: "audio/mp4", ms: 900, ...at }, bytes("voice"));
  expect(await on.store.missingBlobs([hash])).toEqual({ ok: true, value: [] });
  const act = makeAct("p1", { wall: 1_900_000_000_000, count: 0 });
  await on.store.eraseForGood(act, { ids: [sounds()[0]?.id ?? ""] });
  expect(await on.store.missingBlobs([hash])).toEqual({ ok: true, value: [hash] });
});

test("left against right: the last sound of either side, left first, only where both have one", async () => {
  const { on, visit, sounds } = await laidOut();
  const keep = async (place: string, text: string): Promise<void> => {
    const hash = await on.phone.hash(bytes(text));
    await sound(on.journal, visit, { blob: hash, type: "audio/mp4", ms: 400, ...at, place }, bytes(text));
  };
  const tree = miniTree();
  await keep("FR", "right");
  expect(soundsView(tree, sounds(), at).sides).toBeUndefined();
  await keep("FL", "left");
  await keep("FR", "right again");
  const view = soundsView(tree, sounds(), at);
  const blobOf = async (text: string): Promise<string> => on.phone.hash(bytes(text));
  expect([view.sides?.left.blob, view.sides?.right.blob]).toEqual([await blobOf("left"), await blobOf("right again")]);
  expect(view.here).toHaveLength(2);
  expect(soundsView(tree, sounds(), { ...at, state: "w8-off" })).toEqual({ here: [] });
  expect([secondsOf(400), secondsOf(8400)]).toEqual([1, 8]);
});
