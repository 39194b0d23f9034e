import { computed, signal } from "@preact/signals";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Health } from "../../core/record/index.js";
import type { Unkept } from "./journal.js";
import { keepingState, troubleTold } from "./keeping.js";

const underway: Unkept = { what: "a-reply", drafts: [], blobs: [] };
const refused = (code: string, what: Unkept["what"] = "a-reply"): Unkept => ({
  ...underway,
  what,
  problem: { code, where: {}, params: {} },
});
const journal = (unkept: readonly Unkept[] = [], is: Health["is"] = "open") => ({
  unkept: signal(unkept),
  health: signal<Health>({ is }),
});

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test("'keeping' is said only after a second, and gone as soon as it is kept", () => {
  const on = journal();
  const state = keepingState(on, signal(true));
  expect(state.value.kind).toBe("kept");
  on.unkept.value = [underway];
  vi.advanceTimersByTime(999);
  expect(state.value.kind).toBe("kept");
  vi.advanceTimersByTime(2);
  expect(state.value).toEqual({ kind: "keeping", words: "Keeping …" });
  on.unkept.value = [];
  expect(state.value.kind).toBe("kept");
});

test("without a signal nothing is greyed out, it is only said; what is not kept outranks it", () => {
  const on = journal();
  const online = signal(true);
  const kind = computed(() => keepingState(on, online).value.kind);
  online.value = false;
  expect(kind.value).toBe("no-signal");
  on.unkept.value = [refused("record.store-full")];
  expect(kind.value).toBe("error");
});

test("what was not kept is named, with why and what is safe; several are counted", () => {
  expect(troubleTold(journal()).value).toBeUndefined();
  expect(troubleTold(journal([underway])).value).toBeUndefined();
  const one = troubleTold(journal([refused("record.store-full", "a-picture")])).value;
  expect(one).toMatchObject({ title: "The picture was not kept", reload: false });
  expect(one?.says).toMatch(/no room left/);
  const two = troubleTold(journal([refused("record.store-lost"), refused("record.store-lost")])).value;
  expect(two?.title).toBe("2 replies wait on the screen");
});

test("storage that is refused or held by a newer version is told before anything is pressed", () => {
  expect(troubleTold(journal([], "refused")).value?.says).toMatch(/private window/);
  expect(troubleTold(journal([], "closed-by-newer")).value).toMatchObject({ reload: true });
  expect(troubleTold(journal([], "opening")).value).toBeUndefined();
});
