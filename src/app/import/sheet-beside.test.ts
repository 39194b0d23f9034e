// The worker of the sheet editor: one request at a time, the newest of its kind, and what becomes of it when one breaks.
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import type { ProvingGround } from "../state/sheet-tools.js";
import { type SheetWorker, sheetsBeside } from "./sheet-beside.js";
import type { SheetAnswer, SheetCame, SheetGoesOn, SheetRequest } from "./sheet-messages.js";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const { sheet, common } = miniSheets();
const on = { bare: common, others: [] };
/** The sheet after one more change. */
const changed = (): ProvingGround => ({ sheet: { ...sheet }, on });
const CHECK = { do: "check" } as const;
const told = (says: string): SheetCame => ({ check: { told: [{ is: "note", code: "note", says }] } });

interface FakeWorker extends SheetWorker {
  readonly asked: SheetRequest[];
  ended: boolean;
  answer(came: SheetCame): void;
  die(): void;
}
function workers() {
  const made: FakeWorker[] = [];
  const onPage: SheetRequest[] = [];
  const make = (): SheetWorker => {
    const worker: FakeWorker = {
      asked: [],
      ended: false,
      onmessage: null,
      onerror: null,
      postMessage: (request) => void worker.asked.push(request),
      terminate: () => {
        worker.ended = true;
      },
      answer: (came) => {
        const data: SheetAnswer = { id: worker.asked.at(-1)?.id ?? 0, came };
        worker.onmessage?.({ data } as MessageEvent<SheetAnswer>);
      },
      die: () => worker.onerror?.({ message: "gone" } as ErrorEvent),
    };
    made.push(worker);
    return worker;
  };
  const here = async () => async (request: SheetRequest) => {
    onPage.push(request);
    return { id: request.id, came: told("on the page") };
  };
  return { made, onPage, make, here, beside: sheetsBeside(make, here) };
}

test("while one sheet is checked only the newest of those that came after it waits; the older ones come to nothing", async () => {
  const { made, beside } = workers();
  const [first, second, third] = [0, 1, 2].map(() => beside.ask(CHECK, changed()));
  expect(made[0]?.asked.map(({ id }) => id)).toEqual([1]);
  expect(await first).toBeUndefined();
  expect(await second).toBeUndefined();
  made[0]?.answer(told("of the first"));
  expect(made[0]?.asked.map(({ id }) => id)).toEqual([1, 3]);
  made[0]?.answer(told("of the third"));
  expect(await third).toEqual(told("of the third"));
  expect(made.length).toBe(1);
});

test("a check does not take the place of cases that are being proved", async () => {
  const { made, beside } = workers();
  const ground = changed();
  const proved = beside.ask({ do: "prove", cases: [] }, ground);
  const checked = beside.ask(CHECK, ground);
  made[0]?.answer({ prove: [] });
  made[0]?.answer(told("checked"));
  expect([await proved, await checked]).toEqual([{ prove: [] }, told("checked")]);
});

test("a sheet and what it stands beside go over once, and again only where they are others", () => {
  const { made, beside } = workers();
  const ground = changed();
  for (const next of [ground, ground, { ...ground, sheet: { ...sheet } }]) {
    void beside.ask(CHECK, next);
    made[0]?.answer({});
  }
  const sent = made[0]?.asked.map((request) => ["sheet" in request, "on" in request]);
  expect(sent).toEqual([
    [true, true],
    [false, false],
    [true, false],
  ]);
});

test("a worker that breaks is replaced, and the same is asked of the new one with all it needs", async () => {
  const { made, beside } = workers();
  const ground = changed();
  const checked = beside.ask(CHECK, ground);
  made[0]?.die();
  expect([made.length, made[0]?.ended, made[1]?.asked]).toEqual([2, true, [{ id: 1, asked: CHECK, ...ground }]]);
  made[0]?.die();
  made[1]?.answer(told("checked"));
  expect(await checked).toEqual(told("checked"));
  expect([made.length, beside.isInTheWay]).toEqual([2, false]);
});

test("where a newer one took its place, what a broken worker was asked is not asked again", async () => {
  const { made, beside } = workers();
  void beside.ask(CHECK, changed());
  const newer = beside.ask(CHECK, changed());
  made[0]?.die();
  expect(made[1]?.asked.map(({ id }) => id)).toEqual([2]);
  made[1]?.answer(told("newer"));
  expect(await newer).toEqual(told("newer"));
});

test("one that says nothing for a minute counts as broken", () => {
  const { made, beside } = workers();
  void beside.ask(CHECK, changed());
  vi.advanceTimersByTime(60_000);
  expect([made.length, made[0]?.ended]).toEqual([2, true]);
});

test("one that says that it goes on is waited for, however long it takes", async () => {
  const { made, beside } = workers();
  const proved = beside.ask({ do: "prove", cases: [] }, changed());
  for (let told = 0; told < 5; told += 1) {
    vi.advanceTimersByTime(50_000);
    made[0]?.onmessage?.({ data: { id: 1, goesOn: true } } as MessageEvent<SheetGoesOn>);
  }
  made[0]?.answer({ prove: [] });
  expect(await proved).toEqual({ prove: [] });
  vi.advanceTimersByTime(120_000);
  expect([made.length, made[0]?.ended]).toEqual([1, false]);
});

test("where no worker will run the page answers, with the whole sheet, and it is told", async () => {
  const { made, onPage, beside } = workers();
  const ground = changed();
  const checked = beside.ask(CHECK, ground);
  made[0]?.die();
  made[1]?.die();
  expect(await checked).toEqual(told("on the page"));
  expect([onPage, beside.isInTheWay, made.length]).toEqual([[{ id: 1, asked: CHECK, ...ground }], true, 2]);
});

test("the same where none can be started at all", async () => {
  const { here } = workers();
  const beside = sheetsBeside(() => {
    throw new Error("not allowed");
  }, here);
  beside.stay()();
  expect(await beside.ask(CHECK, changed())).toEqual(told("on the page"));
  expect(beside.isInTheWay).toBe(true);
});

test("what the checker itself breaks on is told, and nothing is asked again", async () => {
  const { made, beside } = workers();
  const checked = beside.ask(CHECK, changed());
  made[0]?.onmessage?.({ data: { id: 1, broke: "RangeError" } } as MessageEvent<SheetAnswer>);
  await expect(checked).rejects.toThrow("RangeError");
  expect([made.length, made[0]?.asked.length]).toEqual([1, 1]);
});

test("the worker starts with the first screen of the editor and ends a while after the last was left, never while it works", () => {
  const { made, beside } = workers();
  const leave = beside.stay();
  expect(made.length).toBe(1);
  const leaveNext = beside.stay();
  leave();
  vi.advanceTimersByTime(60_000);
  expect(made[0]?.ended).toBe(false);
  void beside.ask(CHECK, changed());
  leaveNext();
  vi.advanceTimersByTime(20_000);
  expect(made[0]?.ended).toBe(false);
  made[0]?.answer({});
  vi.advanceTimersByTime(20_000);
  expect([made[0]?.ended, made.length]).toEqual([true, 1]);
});
