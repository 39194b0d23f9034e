// Printing beside the screen: one picture at a time, stopped at once, what broke is told.
import { expect, test } from "vitest";
import { WORDS } from "../../../tests/support/handover-visit.js";
import type { PageWish, PrintWish } from "../../core/report/index.js";
import { makePage } from "./make-page.js";
import type { FromPress, ToPress } from "./messages.js";
import { type PressWorker, startSheetPrinter } from "./printer.js";
import { samplePages } from "./sample-pages.js";

const WISH: PrintWish = {
  pages: samplePages(1),
  pageOf: "Page {page} of {pages}",
  madeAt: "2027-05-04T10:00:00+02:00",
  marks: {},
  noPicture: "",
  noSigns: "",
};

/** Those of the sample's findings. */
const PICTURES = [
  ...new Set(
    samplePages(1).blocks.flatMap((block) =>
      block.is === "finding" ? block.finding.pictures.map(({ hash }) => hash) : [],
    ),
  ),
];

function press() {
  const told: ToPress[] = [];
  const worker = {
    ended: false,
    onmessage: null as PressWorker["onmessage"],
    onerror: null as PressWorker["onerror"],
    postMessage: (message: ToPress) => void told.push(message),
    terminate: () => {
      worker.ended = true;
    },
  };
  const say = (data: FromPress): void => worker.onmessage?.({ data } as MessageEvent<FromPress>);
  return { told, worker, say, printer: startSheetPrinter(() => worker) };
}

const bytes = (): Uint8Array<ArrayBuffer> => new Uint8Array([1, 2, 3]);
const later = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

test("a picture is read when it is asked for, and nothing where it is not there or cannot be read", async () => {
  const { told, say, printer, worker } = press();
  const printing = printer.print(
    WISH,
    async (hash) => {
      if (hash === "broken") throw new Error("cannot be read");
      return hash === "there" ? { type: "image/jpeg", bytes: bytes() } : undefined;
    },
    () => undefined,
  );
  for (const hash of ["there", "gone", "broken"]) {
    say({ is: "wanted", hash });
    await later();
  }
  expect(told.slice(1)).toEqual([
    { is: "picture", picture: { type: "image/jpeg", bytes: bytes() } },
    { is: "picture", picture: undefined },
    { is: "picture", picture: undefined },
  ]);
  const sheet = { bytes: bytes(), pages: 1, missingSigns: [], missingPictures: [] };
  say({ is: "printed", sheet });
  expect(await printing.done).toBe(sheet);
  expect(worker.ended).toBe(true);
});

test("stopped, its worker is gone at once and nothing came of it", async () => {
  const { say, printer, worker, told } = press();
  const progress: number[] = [];
  const printing = printer.print(
    WISH,
    async () => ({ type: "image/jpeg", bytes: bytes() }),
    (done) => progress.push(done),
  );
  say({ is: "drawn", done: 1, of: 9 });
  say({ is: "wanted", hash: "there" });
  printing.stop();
  await later();
  say({ is: "drawn", done: 2, of: 9 });
  expect([await printing.done, worker.ended, progress, told.length]).toEqual([undefined, true, [1], 1]);
});

test("what broke in the worker, or kept it from starting, is told", async () => {
  for (const broke of [
    (of: ReturnType<typeof press>) => of.say({ is: "broke", says: "RangeError: out of memory" }),
    (of: ReturnType<typeof press>) => of.worker.onerror?.({ message: "out of memory" } as ErrorEvent),
  ]) {
    const made = press();
    const { done } = made.printer.print(
      WISH,
      async () => undefined,
      () => undefined,
    );
    broke(made);
    await expect(done).rejects.toThrow("out of memory");
    expect(made.worker.ended).toBe(true);
  }
});

test("a page file is wished for whole and comes back whole", async () => {
  const { say, printer, told } = press();
  const wish: PageWish = { pages: samplePages(1), words: WORDS, hashes: ["a"], most: 1280 };
  const { done } = printer.page(
    wish,
    async () => undefined,
    () => undefined,
  );
  expect(told[0]).toEqual({ is: "page", wish });
  const page = { bytes: bytes(), missing: 1 };
  say({ is: "written", page });
  expect(await done).toBe(page);
});

test("a page file carries every picture that is there, and counts those that are not", async () => {
  const progress: number[] = [];
  const made = await makePage(
    { pages: samplePages(1), words: WORDS, hashes: PICTURES, most: 1280 },
    async (hash, most) => (hash === PICTURES[0] && most === 1280 ? { type: "image/png", bytes: bytes() } : undefined),
    (done) => progress.push(done),
  );
  const html = new TextDecoder().decode(made.bytes);
  expect(html).toContain('src="data:image/png;base64,AQID"');
  expect([made.missing, progress]).toEqual([PICTURES.length - 1, PICTURES.map((_, at) => at + 1)]);
});
