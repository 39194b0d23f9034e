import { expect, test } from "vitest";
import { bench, benchVisit, until } from "../../../tests/support/app-bench.js";
import type { PictureKeeper, PictureOutcome } from "../../core/record/photo.js";
import { openPictureLine, type PictureSource } from "./picture-line.js";
import { unsortedCount } from "./pictures-view.js";
import { undo } from "./reply-acts.js";
import { sortPictures } from "./visit-acts.js";

const source = (name: string): PictureSource => Object.assign(new Blob([name]), { name });
const spot = { point: "hub.spin", place: "FR", state: "w7-hang" };

/** A keeper of pictures that keeps the bytes as they came, one at a time, when told to. */
async function laidOut() {
  const on = bench();
  const { visit } = await benchVisit(on);
  await until(on.journal.visit(visit), ({ is }) => is === "open");
  const gates: (() => void)[] = [];
  const pictures: PictureKeeper<Blob, AbortSignal> = {
    waiting: 0,
    keep: async (blob, abort) => {
      await new Promise<void>((resolve, reject) => {
        gates.push(resolve);
        abort?.addEventListener("abort", () => reject(abort.reason), { once: true });
      });
      const bytes = new Uint8Array(await blob.arrayBuffer());
      if (bytes.length === 0) throw new DOMException("gone", "NotReadableError");
      const hash = await on.phone.hash(bytes);
      return { kind: "original", why: "no-picture", type: "image/x", bytes, hash } satisfies PictureOutcome;
    },
  };
  const line = openPictureLine({ journal: on.journal, pictures });
  const kept = () => {
    const opened = on.journal.visit(visit).value;
    return opened.is === "open" ? opened.state.pictures : [];
  };
  /** Lets the picture that is being worked on through. */
  const letThrough = async (): Promise<void> => {
    await until(line.now, ({ waiting }) => waiting.some(({ is }) => is === "working"));
    gates.shift()?.();
  };
  return { on, visit, line, kept, letThrough };
}

test("several pictures are kept one after the other, each where it belongs, and the line tells how far it is", async () => {
  const { visit, line, kept, letThrough } = await laidOut();
  line.add(visit, [source("a"), source("b"), source("c")], spot);
  await letThrough();
  await until(line.now, ({ done }) => done === 1);
  expect(line.now.value.all).toBe(3);
  await letThrough();
  await until(line.now, ({ done }) => done === 2);
  await letThrough();
  await until(line.now, ({ waiting }) => waiting.length === 0);
  expect(kept().map(({ value }) => [value.name, value.point, value.place])).toEqual([
    ["a", "hub.spin", "FR"],
    ["b", "hub.spin", "FR"],
    ["c", "hub.spin", "FR"],
  ]);
});

test("one left out leaves the others: the one being worked on, and one that waits", async () => {
  const { visit, line, kept, letThrough } = await laidOut();
  line.add(visit, [source("a"), source("b"), source("c"), source("d")], spot);
  await until(line.now, ({ waiting }) => waiting[0]?.is === "working");
  const [first, , third] = line.now.value.waiting;
  line.leaveOut(third?.id ?? 0);
  line.leaveOut(first?.id ?? 0);
  await until(line.now, ({ waiting }) => waiting[0]?.name === "b" && waiting[0].is === "working");
  // The gate of the one left out stands first in the row.
  await letThrough();
  await letThrough();
  await until(line.now, ({ waiting }) => waiting[0]?.name === "d" && waiting[0].is === "working");
  await letThrough();
  await until(line.now, ({ waiting }) => waiting.length === 0);
  expect(kept().map(({ value }) => value.name)).toEqual(["b", "d"]);
});

test("a file the phone no longer gives away is told, and holds nothing up", async () => {
  const { visit, line, kept, letThrough } = await laidOut();
  line.add(visit, [Object.assign(new Blob([]), { name: "lost" }), source("b")], {});
  await letThrough();
  await until(line.now, ({ waiting }) => waiting[0]?.is === "unread");
  await letThrough();
  await until(line.now, ({ waiting }) => waiting.length === 1);
  expect(kept()).toHaveLength(1);
  line.leaveOut(line.now.value.waiting[0]?.id ?? 0);
  expect(line.now.value).toEqual({ waiting: [], done: 0, all: 0 });
});

test("while storage refuses the line waits: what stands on the screen as not kept does not pile up", async () => {
  const { on, visit, line, kept, letThrough } = await laidOut();
  on.refuse = true;
  line.add(visit, [source("a"), source("b")], {});
  await letThrough();
  await until(on.journal.unkept, (items) => items.some(({ problem }) => problem));
  await until(line.now, ({ waiting }) => waiting.length === 1);
  expect(line.now.value.waiting.map(({ is }) => is)).toEqual(["waiting"]);
  on.refuse = false;
  await on.journal.again();
  await letThrough();
  await until(line.now, ({ waiting }) => waiting.length === 0);
  expect(kept().map(({ value }) => value.name)).toEqual(["a", "b"]);
});

test("pictures shot first are sorted together in one act, and one undo puts them back", async () => {
  const { on, visit, line, kept, letThrough } = await laidOut();
  line.add(visit, [source("a"), source("b"), source("c")], {});
  for (let one = 0; one < 3; one++) {
    await letThrough();
    await until(line.now, ({ waiting, done }) => done === one + 1 || waiting.length === 0);
  }
  expect(unsortedCount(kept())).toBe(3);
  const ids = kept()
    .slice(0, 2)
    .map(({ id }) => id);
  const before = on.kept.length;
  expect(await sortPictures(on.journal, visit, ids, { place: "FR" })).toBe(true);
  expect(unsortedCount(kept())).toBe(1);
  expect(kept().map(({ value }) => value.place)).toContain("FR");
  const step = on.kept.slice(before).map(({ stream, writer, seq, nonce }) => `${stream}/${writer}/${seq}/${nonce}`);
  await undo(on.journal, visit, { ids: step });
  expect(unsortedCount(kept())).toBe(3);
});
