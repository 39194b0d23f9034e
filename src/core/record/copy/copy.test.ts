// Copies of the record: only what is new, what reading one in would do, a phone that meets its own double, erasing looked at.
import { describe, expect, test } from "vitest";
import {
  act,
  bytesOf,
  foreign,
  fresh,
  newVisit,
  pictureDraft,
  replyDraft,
  words,
} from "../../../../tests/store/sample.js";
import { copyOf, filledPhone, good, newStore, wholeOf } from "../../../../tests/support/copies.js";
import { openCopy } from "../../../device/files/open.js";
import { sha256 } from "../../../device/files/parts.js";
import {
  draftErase,
  type Entry,
  foldVisit,
  gatherCopy,
  idText,
  type Logged,
  memoryWorld,
  openMemoryStore,
  readCopyMade,
  takeIn,
} from "../index.js";
import { holdsCameraTags } from "./camera-tags.js";
import { compareLogs } from "./compare.js";
import { movedBelow } from "./copy-made.js";
import { eraseAndLook } from "./erase-for-good.js";
import { fileName, hashIn, isCopyName } from "./layout.js";
import { readManifest } from "./manifest.js";

const HASH = "0a".repeat(32);

test("FL2 a file is named by its hash, with an ending people's programs know; no other name has a place", () => {
  for (const [type, name] of [
    ["image/jpeg", `pictures/${HASH}.jpg`],
    ["audio/webm;codecs=opus", `sounds/${HASH}.webm`],
    ["application/json", `frozen/${HASH}.json`],
    ["application/x-odd", `other/${HASH}.bin`],
  ] as const) {
    expect(fileName(HASH, type)).toBe(name);
    expect([hashIn(name), isCopyName(name)]).toEqual([HASH, true]);
  }
  for (const name of [
    "pictures/x.jpg",
    `pictures/${HASH}.jpg/`,
    `../pictures/${HASH}.jpg`,
    `pictures/${HASH.toUpperCase()}.jpg`,
    "",
  ])
    expect(isCopyName(name)).toBe(false);
});

describe("only what is new since the copy before", () => {
  const madeOf = async (phone: Awaited<ReturnType<typeof filledPhone>>) => ({
    at: 1_770_000_000_000,
    streams: good(await gatherCopy(phone.store, { holds: "everything" })).streams,
  });

  test("FL10 nothing entered since: there is nothing to put into it", async () => {
    const phone = await filledPhone();
    const nothing = await gatherCopy(phone.store, { holds: "new", since: await madeOf(phone) });
    expect(nothing.ok || nothing.problems[0]?.code).toBe("files.nothing-new");
  });

  test("FL10 a stream that went on comes whole, with its new pictures only; both copies give the record", async () => {
    const phone = await filledPhone();
    const { store, visit } = phone;
    const first = await copyOf(store, { holds: "everything" });
    const since = await madeOf(phone);
    const more = await bytesOf("one more picture");
    good(await store.append([pictureDraft(visit, more.hash)], [more]));
    const plan = good(await gatherCopy(store, { holds: "new", since }));
    expect(plan.volumes.flat().map(({ hash }) => hash)).toEqual([more.hash]);
    expect([plan.before, plan.counts.cars, plan.counts.visits]).toEqual([3, 0, 1]);
    const phones = newStore();
    for (const file of [await copyOf(store, { holds: "new", since }), first])
      good(await takeIn(phones, good(await openCopy(file))));
    expect(await wholeOf(phones)).toEqual(await wholeOf(store));
  });

  test("FL10 what came in below the last number brings all pictures of its stream", async () => {
    const phone = await filledPhone();
    const { store, visit } = phone;
    good(await store.receive([foreign(replyDraft(visit, "whl.b", words("x")), "w9", 2)]));
    const since = await madeOf(phone);
    const late = await bytesOf("late picture");
    good(await store.receive([foreign(pictureDraft(visit, late.hash), "w9", 1)], [late]));
    const plan = good(await gatherCopy(store, { holds: "new", since }));
    expect(plan.volumes.flat().map(({ hash }) => hash)).toContain(late.hash);
    expect(movedBelow("a 3 0\nb 2 1", "a 5 0\nb 2 1\nc 1 0")).toBe(false);
    expect(movedBelow("a 3 0", "a 3 1")).toBe(true);
  });

  test("what was remembered of a copy and has another shape counts as nothing", () => {
    for (const odd of [undefined, null, 3, {}, { at: 1 }, { at: 1, streams: { "car:x": 3 } }])
      expect(readCopyMade(odd)).toBeUndefined();
    expect(
      readCopyMade({ at: 1, streams: { "car:x": { mark: "w 1 0", last: { w: 1 }, sum: "1 0 0" } } }),
    ).toBeDefined();
  });
});

/** Logs of one visit on two phones, with everything that can happen to them. */
async function twoLogs(): Promise<{ readonly here: readonly Logged[]; readonly from: readonly Logged[] }> {
  const visit = newVisit();
  const entry = (point: string, writer: string, seq: number): Entry =>
    foreign(replyDraft(visit, point, words("rough")), writer, seq);
  const own = [1, 2, 3, 4].map((seq) => entry(`p${seq}`, "w1", seq));
  const theirs = [1, 2, 3].map((seq) => entry(`q${seq}`, "w2", seq));
  const [one, two, three] = own as [Entry, Entry, Entry];
  const state = foldVisit([...own, ...theirs]);
  const erases = (ids: readonly Logged[], seq: number, writer: string): Entry => {
    const [draft] = draftErase(act(), state, ids.map(idText));
    if (!draft) throw new Error("nothing to erase");
    return foreign(draft, writer, seq);
  };
  const fork = { ...two, nonce: fresh() };
  const altered = { ...three, body: { ...(three.body as object), value: { type: "words", words: ["other"] } } };
  return {
    here: [...own, erases([theirs[0] as Entry], 5, "w1")],
    from: [fork, altered, one, ...theirs, erases([one, theirs[1] as Entry], 4, "w2"), entry("r", "w3", 7)],
  };
}

test("FL8 what a file would do is told just as it is then done: new, known, erased, forks, altered", async () => {
  const { here, from } = await twoLogs();
  for (const [before, file] of [
    [here, from],
    [from, here],
    [[], from],
    [here, here],
  ] as const) {
    const phone = newStore();
    if (before.length > 0) good(await phone.receive(before));
    const kept = good(await phone.entries(here[0]?.stream ?? ""));
    const told = compareLogs(kept, file);
    const done = good(await phone.receive(file));
    expect([told.added, told.known, told.erased, told.forks, told.altered]).toEqual([
      done.added,
      done.known,
      done.erased,
      done.forks.length,
      done.altered.length,
    ]);
  }
});

test("FL8 RC45 a phone that meets entries of its own it no longer had writes under a new name", async () => {
  const { store, visit } = await filledPhone();
  const copy = good(await openCopy(await copyOf(store, { holds: "everything" })));
  const writer = good(await store.writer());
  // The same installation as the browser remembers it, its entries gone.
  const world = memoryWorld();
  world.data.writer = writer;
  const emptied = openMemoryStore(world, { nonce: () => fresh("r"), hashOf: sha256 });
  const taken = good(await takeIn(emptied, copy));
  const now = good(await emptied.writer());
  expect([taken.received.newWriter, now === writer]).toEqual([now, false]);
  const [next] = good(await emptied.append([replyDraft(visit, "whl.rock", words("none"))]));
  expect([next?.writer, next?.seq]).toEqual([now, 1]);
});

test("FL9 marks of a camera are found, and not where there are none", () => {
  const codes = (text: string) => new TextEncoder().encode(text);
  for (const tagged of ["....Exif\0\0MM", "....eXIfMM", "http://ns.adobe.com/xap/1.0/", "<x:xmpmeta>"])
    expect(holdsCameraTags(codes(tagged))).toBe(true);
  for (const plain of ["", "E", "Exit", "JFIF and nothing else", "Exif without its zeros"])
    expect(holdsCameraTags(codes(plain))).toBe(false);
});

describe("deleted for good", () => {
  test("FL11 a car with its visit: no body, no bytes; what another visit needs stays and is told", async () => {
    const phone = await filledPhone();
    const other = await filledPhone(1, phone.store);
    const shared = phone.blobs[0];
    if (!shared) throw new Error("no blob");
    good(await phone.store.append([pictureDraft(other.visit, shared.hash)]));
    const streams = [phone.car, phone.visit];
    const erased = good(await eraseAndLook(phone.store, act(), { streams }));
    expect(erased).toEqual({ entries: 6, bodiesLeft: 0, blobs: 5, shared: 1, blobsLeft: 0 });
    for (const stream of streams)
      for (const logged of good(await phone.store.entries(stream))) expect([undefined, "erase"]).toContain(logged.kind);
    const names = good(await phone.store.summaries()).flatMap((one) => (one.of === "car" ? one.names : []));
    expect(names).toEqual(["Little one"]);
  });

  test("FL11 single papers: their bytes go, everything else stays", async () => {
    const { store, visit, blobs } = await filledPhone(2);
    const picture = blobs.at(-1);
    const log = good(await store.entries(visit));
    const ids = log.filter((one) => JSON.stringify(one).includes(`"blob":"${picture?.hash}"`)).map(idText);
    expect(ids.length).toBe(1);
    expect(good(await eraseAndLook(store, act(), { ids }))).toEqual({
      entries: 1,
      bodiesLeft: 0,
      blobs: 1,
      shared: 0,
      blobsLeft: 0,
    });
    expect(
      good(await store.entries(visit)).filter((one) => one.kind !== undefined && one.kind !== "erase").length,
    ).toBe(log.length - 1);
  });
});

test("a list with a volume beyond the last, or one file twice, is not in order", () => {
  const files = [{ name: `pictures/${HASH}.jpg`, type: "image/jpeg", bytes: 3 }];
  const manifest = {
    format: "leadlamp-copy/1",
    made: "2026-03-02T10:00:00.000Z",
    app: "0.1.0",
    holds: "everything",
    set: "s",
    volume: 1,
    of: 1,
    counts: { cars: 1, visits: 0, entries: 1, stubs: 0 },
    journal: { bytes: 1, sha256: HASH },
    files,
    elsewhere: 0,
    keptBack: 0,
  };
  const code = (change: object): string | undefined => {
    const read = readManifest(JSON.stringify({ ...manifest, ...change }));
    return read.ok ? "fine" : read.problems[0]?.code;
  };
  expect(code({})).toBe("fine");
  expect(code({ volume: 2 })).toBe("files.manifest");
  expect(code({ volume: 0 })).toBe("files.manifest");
  expect(code({ files: [...files, ...files] })).toBe("files.manifest");
  expect(code({ more: 1 })).toBe("files.manifest");
});
