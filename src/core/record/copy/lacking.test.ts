// What a copy does not hold is told by name; nothing is written that would be refused, nothing counted that is not kept.
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { act, bytesOf, emptyVisit, pictureDraft } from "../../../../tests/store/sample.js";
import { copyOf, filledPhone, good, newStore, volumesOf, wholeOf } from "../../../../tests/support/copies.js";
import { openCopy } from "../../../device/files/open.js";
import { startPack } from "../../../device/files/pack.js";
import {
  draftNote,
  draftPicture,
  dryRun,
  gatherCopy,
  idText,
  isEntry,
  readCopyMade,
  takeIn,
  writeVolume,
} from "../index.js";
import { COPY_LIMITS, type CopyLimits } from "./layout.js";

const STAMP = { made: "2026-03-02T10:00:00.000Z", set: "set-1", app: "0.1.0" };
const textOf = async (file: File, name: string): Promise<string> =>
  new TextDecoder().decode(unzipSync(new Uint8Array(await file.arrayBuffer()))[name]);

/** A phone whose visit names a picture that is not on it. */
async function lackingPhone() {
  const phone = await filledPhone(1);
  const late = await bytesOf("the picture still on the other phone");
  const body = { blob: late.hash, thumb: late.hash, type: "image/jpeg", width: 4, height: 3, name: "hub, outer race" };
  good(await phone.store.append([draftPicture(act(), emptyVisit(phone.visit), body)]));
  return { ...phone, late };
}

describe("what a copy does not hold", () => {
  test("FL12 is told by visit and picture: in the plan, in the page, in the list of contents", async () => {
    const { store, visit, late } = await lackingPhone();
    const plan = good(await gatherCopy(store, { holds: "everything" }));
    const told = { hash: late.hash, stream: visit, of: "Little one", on: "2026-02-03", why: "not-here" };
    expect(plan.lacking).toEqual([
      expect.objectContaining({ ...told, what: "small-picture", name: "hub, outer race" }),
    ]);
    const [file] = await volumesOf(store, plan);
    if (!file) throw new Error("no volume");
    const page = await textOf(file, "README.txt");
    expect(page).toContain(`small form of a picture "hub, outer race" of Little one, visit of 2026-02-03`);
    expect(page).toContain(late.hash);
    const copy = good(await openCopy(file));
    expect([copy.manifest.format, copy.manifest.lacking]).toEqual(["leadlamp-copy/2", plan.lacking]);
  });

  test("FL12 a copy that holds all it names is written so that an older version of the app reads it", async () => {
    const { store } = await filledPhone(1);
    const file = await copyOf(store, { holds: "everything" });
    expect(good(await openCopy(file)).manifest.format).toBe("leadlamp-copy/1");
    expect(await textOf(file, "README.txt")).not.toContain("LACKING");
  });

  test("FL12 a file larger than a copy may hold stays out and is told; the others are there", async () => {
    const { store } = await filledPhone(2);
    const large = await bytesOf("x".repeat(3_000));
    const { visit } = await filledPhone(0, store);
    good(await store.append([pictureDraft(visit, large.hash)], [large]));
    const plan = good(
      await gatherCopy(store, { holds: "everything" }, undefined, { ...COPY_LIMITS, fileBytes: 2_000 }),
    );
    expect(plan.lacking.map(({ hash, why }) => [hash, why])).toEqual([[large.hash, "too-large"]]);
    expect(plan.volumes.flat()).toHaveLength(2);
  });

  test("FL12 something deleted while a copy is written ends it: its words stand in what was gathered", async () => {
    const { store, visit, blobs } = await filledPhone(2);
    const plan = good(await gatherCopy(store, { holds: "everything" }));
    const picture = good(await store.entries(visit)).find((one) => isEntry(one) && one.kind === "picture");
    good(await store.eraseForGood(act(), { ids: picture ? [idText(picture)] : [] }));
    expect(good(await store.missingBlobs(blobs.map(({ hash }) => hash)))).toHaveLength(1);
    const written = await writeVolume(store, plan, 0, STAMP, startPack("x.zip"));
    expect(written.ok || written.problems[0]?.code).toBe("files.changed");
  });
});

describe("only what is new", () => {
  test("FL10 bytes that came later to entries already copied come along, with no entry in between", async () => {
    const { store, visit, late, car } = await lackingPhone();
    const { streams } = good(await gatherCopy(store, { holds: "everything" }));
    const since = readCopyMade(JSON.parse(JSON.stringify({ at: 1_770_000_000_000, streams })));
    if (!since) throw new Error("not remembered");
    const nothing = await gatherCopy(store, { holds: "new", since });
    expect(nothing.ok || nothing.problems[0]?.code).toBe("files.nothing-new");
    good(await store.receive([], [late]));
    const plan = good(await gatherCopy(store, { holds: "new", since }));
    expect(plan.volumes.flat().map(({ hash }) => hash)).toEqual([late.hash]);
    expect([plan.lacking, plan.streams[visit]?.lacking, plan.streams[car]?.lacking]).toEqual([[], [], []]);
    const next = await gatherCopy(store, { holds: "new", since: { at: 1, streams: plan.streams } });
    expect(next.ok || next.problems[0]?.code).toBe("files.nothing-new");
  });

  test("FL10 still lacking, it is looked for again at every copy", async () => {
    const { store, visit, late } = await lackingPhone();
    const { streams } = good(await gatherCopy(store, { holds: "everything" }));
    good(await store.append([draftNote(act(), emptyVisit(visit), { text: "seen again" })]));
    const plan = good(await gatherCopy(store, { holds: "new", since: { at: 1, streams } }));
    expect([plan.lacking.map(({ hash }) => hash), plan.streams[visit]?.lacking]).toEqual([[late.hash], [late.hash]]);
  });

  test("FL10 a copy remembered by an older version, which did not say what it lacked, is made good with every picture", async () => {
    const { store } = await filledPhone(2);
    const { streams } = good(await gatherCopy(store, { holds: "everything" }));
    const older = Object.fromEntries(
      Object.entries(streams).map(([name, { mark, last, sum }]) => [name, { mark, last, sum }]),
    );
    const plan = good(await gatherCopy(store, { holds: "new", since: { at: 1, streams: older } }));
    expect(plan.volumes.flat()).toHaveLength(2);
  });
});

describe("what is written can be read", () => {
  const bigJournal = async (limits: CopyLimits) => {
    const { store, visit } = await filledPhone(1);
    for (let i = 0; i < 6; i++)
      good(await store.append([draftNote(act(), emptyVisit(visit), { text: `${i} ${"ä".repeat(2_000)}` })]));
    return { store, plan: await gatherCopy(store, { holds: "everything" }, undefined, limits) };
  };

  test("FL13 a journal larger than is read is refused before anything is written, and what to do is said", async () => {
    const { plan } = await bigJournal({ ...COPY_LIMITS, journalBytes: 20_000 });
    expect(plan.ok || plan.problems[0]).toMatchObject({ code: "files.too-much", params: { what: "journal" } });
  });

  test.each([20_000, 25_000, 27_000, 30_000, 40_000])(
    "FL13 with room for %s bytes of journal: either not written, or read again under the same limit",
    async (journalBytes) => {
      const limits = { ...COPY_LIMITS, journalBytes };
      const { store, plan } = await bigJournal(limits);
      if (!plan.ok) return expect(plan.problems[0]?.code).toBe("files.too-much");
      for (const file of await volumesOf(store, plan.value))
        expect((await openCopy(file, undefined, undefined, limits)).ok).toBe(true);
    },
  );

  test("FL13 so many sheets that no volume has room for a picture; a list of contents longer than is read", async () => {
    const { store } = await filledPhone(2);
    const cramped = await gatherCopy(store, { holds: "everything" }, undefined, {
      ...COPY_LIMITS,
      volumeBytes: 90_000,
    });
    expect(cramped.ok || cramped.problems[0]).toMatchObject({ code: "files.too-much", params: { what: "frozen" } });
    const plan = good(await gatherCopy(store, { holds: "everything" }));
    const limits = { ...COPY_LIMITS, manifestBytes: 300 };
    const written = await writeVolume(store, plan, 0, STAMP, startPack("x.zip"), undefined, limits);
    expect(written.ok || written.problems[0]).toMatchObject({ code: "files.too-much", params: { what: "contents" } });
  });
});

test("FL8 bytes of what was erased here are neither counted nor taken in", async () => {
  const { store, visit, blobs } = await filledPhone(3);
  const file = await copyOf(store, { holds: "everything" });
  const pictures = good(await store.entries(visit)).filter((one) => isEntry(one) && one.kind === "picture");
  good(await store.eraseForGood(act(), { ids: pictures.slice(0, 2).map(idText) }));
  const before = await wholeOf(store);
  const copy = good(await openCopy(file));
  const told = good(await dryRun(store, copy));
  expect(told.blobs).toEqual({ fresh: 0, known: blobs.length - 2 });
  const taken = good(await takeIn(store, copy));
  expect([taken.blobs, taken.left]).toEqual([0, 0]);
  expect(await wholeOf(store)).toEqual(before);
  // On a phone that knows of no erasure all of it is kept, and just so much is told.
  const wiped = newStore();
  const fresh = good(await dryRun(wiped, copy)).blobs.fresh;
  expect([fresh, good(await takeIn(wiped, copy)).blobs]).toEqual([blobs.length, blobs.length]);
  expect((await wholeOf(wiped)).blobs).toHaveLength(blobs.length);
});
