// Deleting for good as one act: refused it leaves everything, done it leaves nothing beside the record either, broken it says so.

import { signal } from "@preact/signals";
import { expect, test } from "vitest";
import { bench, benchVisit, until } from "../../../tests/support/app-bench.js";
import { fail, problem } from "../../core/terms/index.js";
import { eraseNow } from "./erasing.js";
import { readOpen, writeOpen } from "./left-open.js";
import { defaultSettings } from "./settings.js";
import { beginSound, finishSound, forgetSlices, keepSlice, type SoundOpen } from "./sound-slices.js";

const at = { point: "hub.spin", place: "FR", state: "w7-hang" };
const bytes = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

async function laidOut() {
  const on = bench();
  const { visit } = await benchVisit(on);
  await until(on.journal.visit(visit), ({ is }) => is === "open");
  const forgotten: string[] = [];
  const forget = async (names: readonly string[]): Promise<void> => void forgotten.push(...names);
  const app = { ...on, settings: signal(defaultSettings("anna", false)), forget };
  const open: SoundOpen = { id: "one", visit, at, type: "audio/webm" };
  const kept = async (): Promise<string> => {
    const log = await on.store.entries(visit);
    return JSON.stringify(log);
  };
  return { on, app, visit, open, forgotten, kept };
}

test("FL11 a recording not yet kept goes with its visit, slices behind a gap too, and what was open is crossed out", async () => {
  const { on, app, visit, open, forgotten } = await laidOut();
  await beginSound(on.store, open);
  for (const index of [0, 1, 4]) await keepSlice(on.store, open.id, index, bytes(`private ${index}`));
  await keepSlice(on.store, "earlier", 7, bytes("older"));
  await writeOpen(on.store, "camera", { href: `#/visit/${visit.slice("visit:".length)}/camera`, phone: true });
  await on.store.keepSetting(`leadlamp.at.${visit}`, "w7-hang FR hub.spin");
  expect(await eraseNow(app, { streams: [visit] })).toMatchObject({ is: "done", beside: true });
  const left = await Promise.all(
    [...Array(9).keys()].map(async (index) => (await on.store.setting(`sound.slice.${index}`)) as { value?: unknown }),
  );
  expect(left.every(({ value }) => value === undefined || value === null)).toBe(true);
  expect([await readOpen(on.store, "sound"), await readOpen(on.store, "camera")]).toEqual([undefined, undefined]);
  expect(await on.store.setting(`leadlamp.at.${visit}`)).toEqual({ ok: true, value: null });
  expect(forgotten).toEqual([visit.slice("visit:".length)]);
});

test("FL11 a recording open for another visit stays", async () => {
  const { on, open } = await laidOut();
  await beginSound(on.store, open);
  await keepSlice(on.store, open.id, 0, bytes("theirs"));
  await forgetSlices(on.store, ["visit:another"]);
  expect(await readOpen(on.store, "sound")).toEqual(open);
  expect(await on.store.setting("sound.slice.0")).toMatchObject({ value: { of: open.id } });
});

test("FL11 a page ended between deleting and forgetting brings nothing of the recording back", async () => {
  const { on, app, visit, open } = await laidOut();
  await beginSound(on.store, open);
  await keepSlice(on.store, open.id, 0, bytes("private"));
  await eraseNow(
    { ...app, store: { ...on.store, setting: async () => fail(problem("record.store-lost")) } },
    { streams: [visit] },
  );
  await on.journal.reread();
  await until(on.journal.keptVisit(visit), (now) => now.is === "missing" || (now.is === "open" && !now.state.opened));
  expect(await finishSound(on, open)).toBe(true);
  const log = await on.store.entries(visit);
  expect(log.ok && log.value.every((one) => one.kind === undefined || one.kind === "erase")).toBe(true);
  expect(await on.store.setting("sound.slice.0")).toEqual({ ok: true, value: null });
});

test("FL11 refused by the storage, nothing is deleted of any stream and nothing is forgotten", async () => {
  const { on, app, visit, open, forgotten, kept } = await laidOut();
  await beginSound(on.store, open);
  const before = await kept();
  const full = { ...on.store, eraseForGood: async () => fail(problem("record.store-full")) };
  const came = await eraseNow({ ...app, store: full }, { streams: [visit] });
  expect(came).toMatchObject({ is: "refused", problems: [{ code: "record.store-full" }] });
  expect([await kept(), forgotten, await readOpen(on.store, "sound")]).toEqual([before, [], open]);
});

test("FL11 what breaks is told as not known; deleted and not looked at is told as deleted", async () => {
  const { on, app, visit } = await laidOut();
  const broken = { ...on.store, eraseForGood: () => Promise.reject(new Error("ended")) };
  expect(await eraseNow({ ...app, store: broken }, { streams: [visit] })).toMatchObject({ is: "broke" });
  const blind = { ...on.store, summaries: async () => fail(problem("record.store-lost")) };
  const done = await eraseNow({ ...app, store: blind }, { streams: [visit] });
  expect(done).toMatchObject({ is: "done", erased: { unlooked: { code: "record.store-lost" } } });
});

test("FL11 what beside the record could not be dropped is said", async () => {
  const { app, visit } = await laidOut();
  const forget = () => Promise.reject(new Error("not fetched"));
  expect(await eraseNow({ ...app, forget }, { streams: [visit] })).toMatchObject({ is: "done", beside: false });
});
