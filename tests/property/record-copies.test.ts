/** Laws of copies: shared out among volumes, read in in any order, any part of them, again and again, the record is their union. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { shareOut } from "../../src/core/record/copy/volumes.js";
import { dryRun, gatherCopy, takeIn } from "../../src/core/record/index.js";
import { openCopy } from "../../src/device/files/open.js";
import { act, replyDraft, words } from "../store/sample.js";
import { copyOf, filledPhone, good, newStore, volumesOf, wholeOf } from "../support/copies.js";

test("FL3 shared out: every picture once, in order, no volume fuller than there is room for", () => {
  const sizes = fc.array(fc.integer({ min: 1, max: 4_000 }), { maxLength: 60 });
  fc.assert(
    fc.property(sizes, fc.integer({ min: 5_000, max: 20_000 }), (bytes, room) => {
      const media = bytes.map((size, i) => ({ hash: `h${i}`, type: "image/jpeg", bytes: size }));
      const limits = { ...LIMITS, volumeBytes: room + 1_000 };
      const volumes = shareOut(media, 1_000, limits);
      expect(volumes.flat()).toEqual(media);
      for (const volume of volumes) expect(volume.reduce((sum, one) => sum + one.bytes, 0)).toBeLessThanOrEqual(room);
      if (media.length > 0) expect(volumes.every((volume) => volume.length > 0)).toBe(true);
      else expect(volumes).toEqual([[]]);
    }),
  );
});

test("FL3 FL8 volumes read in in any order, with repeats: every line from the first, every picture of those read", async () => {
  const { store } = await filledPhone(7);
  const small = { ...LIMITS, volumeBytes: 103_000 };
  const plan = good(await gatherCopy(store, { holds: "everything" }, undefined, small));
  expect(plan.volumes.length).toBeGreaterThan(2);
  const files = await volumesOf(store, plan);
  const whole = await wholeOf(store);
  const order = fc.array(fc.nat({ max: files.length - 1 }), { minLength: 1, maxLength: 6 });
  await fc.assert(
    fc.asyncProperty(order, async (picks) => {
      const phone = newStore();
      for (const pick of picks) {
        const file = files[pick];
        if (!file) throw new Error("no such volume");
        const copy = good(await openCopy(file));
        const told = good(await dryRun(phone, copy));
        const { received, blobs } = good(await takeIn(phone, copy));
        expect([told.added, told.known, told.erased, told.blobs.fresh]).toEqual([
          received.added,
          received.known,
          received.erased,
          blobs,
        ]);
      }
      const now = await wholeOf(phone);
      expect(now.log).toEqual(whole.log);
      const expected = new Set([...plan.frozen, ...[...new Set(picks)].flatMap((pick) => plan.volumes[pick] ?? [])]);
      expect(now.blobs).toEqual([...expected].map(({ hash }) => hash).sort());
    }),
    { numRuns: 12 },
  );
});

test("FL8 two phones' files read in both ways round leave both with the same record", async () => {
  const one = await filledPhone();
  const { car, visit } = one;
  const other = newStore();
  good(await takeIn(other, good(await openCopy(await copyOf(one.store, { holds: "visit", car, visit })))));
  good(await one.store.append([replyDraft(visit, "whl.rock", words("clear"))]));
  good(await other.append([replyDraft(visit, "whl.rock", words("none"))]));
  const [first] = good(await one.store.entries(visit));
  if (!first) throw new Error("no entry");
  good(await other.eraseForGood(act(), { ids: [`${first.stream}/${first.writer}/${first.seq}/${first.nonce}`] }));
  const [there, back] = [
    await copyOf(one.store, { holds: "visit", car, visit }),
    await copyOf(other, { holds: "car", car, visits: [visit] }),
  ];
  const told = good(await dryRun(one.store, good(await openCopy(back))));
  expect(told.erasedHere).toBe(1);
  good(await takeIn(one.store, good(await openCopy(back))));
  good(await takeIn(other, good(await openCopy(there))));
  expect(await wholeOf(one.store)).toEqual(await wholeOf(other));
});

const LIMITS = {
  volumeBytes: 1_000_000,
  files: 20_000,
  unpackedBytes: 2_000_000,
  journalBytes: 1_000_000,
  fileBytes: 1_000_000,
  manifestBytes: 1_000_000,
  ratio: 200,
  smallBytes: 1_000_000,
};
