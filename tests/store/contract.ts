/**
 * What every store of the record must do, as plain functions that throw: run in memory, on a stand-in for IndexedDB
 * and in a real browser. Refuses to know which.
 */
import {
  draftCar,
  draftUndo,
  foldVisit,
  idText,
  type Logged,
  type Store,
  summarise,
} from "../../src/core/record/index.js";
import { joining } from "./joining.js";
import {
  act,
  bytesOf,
  carAndVisit,
  emptyVisit,
  foreign,
  newCar,
  newVisit,
  outline,
  pictureDraft,
  replyDraft,
  words,
} from "./sample.js";
import { type Bench, bad, type Check, good, holds, same, until } from "./subject.js";

const check = (name: string, run: (bench: Bench) => Promise<void>): Check => ({ name, run });
const entriesOf = async (store: Store, stream: string): Promise<readonly Logged[]> =>
  good(await store.entries(stream), stream);

export const contract: readonly Check[] = [
  ...joining,

  check("what was appended is there, numbered from one, by this installation's writer", async (bench) => {
    const store = bench.open();
    const { car, visit, drafts } = carAndVisit();
    const entries = good(await store.append([...drafts, replyDraft(visit, "whl.spin", words("rough"))]), "append");
    same(
      entries.map(({ seq }) => seq),
      [1, 1, 2],
      "numbers per stream",
    );
    const writer = good(await store.writer(), "writer");
    holds(
      entries.every((one) => one.writer === writer),
      "one writer",
    );
    same(await entriesOf(store, visit), entries.slice(1), "the visit as appended");
    same(await entriesOf(store, car), entries.slice(0, 1), "the car as appended");
    same(good(await store.streams(), "streams"), [car, visit].sort(), "streams");
  }),

  check("another tab reads it, and numbers go on from there", async (bench) => {
    const [one, other] = [bench.open(), bench.open()];
    const { visit, drafts } = carAndVisit();
    good(await one.append(drafts), "append");
    const [entry] = good(await other.append([replyDraft(visit, "whl.spin", words("rough"))]), "append elsewhere");
    same(entry?.seq, 2, "number after the other tab's");
    same(good(await one.writer(), "writer"), good(await other.writer(), "writer"), "tabs share a writer");
  }),

  check("two tabs writing at once leave neither gap nor fork", async (bench) => {
    const tabs = [bench.open(), bench.open(), bench.open()];
    const visit = newVisit();
    const all = Array.from({ length: 30 }, (_, i) =>
      tabs[i % 3]?.append([replyDraft(visit, `whl.p${i}`, words("rough"))]),
    );
    for (const result of await Promise.all(all)) if (result) good(result, "append");
    const entries = await entriesOf(bench.open(), visit);
    same(
      entries.map(({ seq }) => seq),
      Array.from({ length: 30 }, (_, i) => i + 1),
      "numbers",
    );
    same(foldVisit(entries).trouble, { forks: [], unknown: [], erased: 0, gaps: [] }, "trouble");
  }),

  check(
    "drafts made on this device: tabs taking turns and at once, twice each, and a writer given up in between",
    async (bench) => {
      const [one, other] = [bench.open(), bench.open()];
      const visit = newVisit();
      const own = (point: string) => ({ ...replyDraft(visit, point, words("rough")), nonce: bench.nonce() });
      const drafts = Array.from({ length: 24 }, (_, i) => own(`whl.p${i}`));
      for (const [i, draft] of drafts.entries()) {
        const [first, second] = i % 2 === 0 ? [one, other] : [other, one];
        if (i % 3 === 0) good(await first.append([draft]), "append");
        const both = await Promise.all([first.append([draft]), second.append([draft])]);
        same(...(both.map((result) => good(result, "append at once")) as [unknown, unknown]), "one entry for both");
      }
      const entries = await entriesOf(one, visit);
      same(
        entries.map(({ seq, nonce }) => [seq, nonce]),
        drafts.map(({ nonce }, i) => [i + 1, nonce]),
        "each once, in order",
      );
      const old = entries[0]?.writer ?? "";
      const copy = foreign(replyDraft(newVisit(), "whl.spin", words("x")), old, 7);
      const next = good(await other.receive([copy]), "our writer, never written here").newWriter;
      // The first tab may not have heard yet; what it keeps now must be the new writer's all the same.
      same(good(await one.append([own("whl.last")]), "append")[0]?.writer, next, "the new writer");
    },
  ),

  check("the same drafts again are the same entries, nothing more", async (bench) => {
    const store = bench.open();
    const { visit, drafts } = carAndVisit();
    const first = good(await store.append(drafts), "append");
    const more = [...drafts, replyDraft(visit, "whl.spin", words("rough"))];
    const again = good(await bench.open().append(more), "append again");
    same(again.slice(0, 2), first, "kept before");
    same(again[2]?.seq, 2, "only the new one is numbered");
    same((await entriesOf(store, visit)).length, 2, "entries in the visit");
  }),

  check("bytes are kept under their hash with their entry, and never overwritten", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const picture = await bytesOf("picture");
    good(await store.append([pictureDraft(visit, picture.hash)], [picture]), "append");
    good(await store.append([pictureDraft(visit, picture.hash)], [{ ...picture, type: "text/html" }]), "append again");
    const kept = good(await store.blob(picture.hash), "blob");
    same([kept?.type, [...(kept?.bytes ?? [])]], ["image/jpeg", [...picture.bytes]], "bytes and type as first kept");
    const missing = (await bytesOf("never kept")).hash;
    same(good(await store.missingBlobs([picture.hash, missing]), "missing"), [missing], "missing blobs");
    same(good(await store.blob(missing), "blob"), undefined, "no blob");
  }),

  check("bytes under a false hash refuse the whole", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const picture = { ...(await bytesOf("picture")), hash: "0".repeat(64) };
    same(bad(await store.append([pictureDraft(visit, picture.hash)], [picture]), "append"), "record.blob-hash", "code");
    same(
      bad(await store.receive([foreign(pictureDraft(visit, picture.hash), "w2", 1)], [picture]), "receive"),
      "record.blob-hash",
      "code",
    );
    same(await entriesOf(store, visit), [], "nothing kept");
  }),

  check("a part of a larger buffer is kept as that part", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const large = new TextEncoder().encode("xxxpicturexxx");
    const picture = await bytesOf("picture");
    const part = new Uint8Array(large.buffer, 3, 7);
    good(await store.append([pictureDraft(visit, picture.hash)], [{ ...picture, bytes: part }]), "append");
    same(new TextDecoder().decode(good(await store.blob(picture.hash), "blob")?.bytes), "picture", "bytes");
  }),

  check("heads tell how far a stream has come, and what came after is read alone", async (bench) => {
    const store = bench.open();
    const { visit, drafts } = carAndVisit();
    good(await store.append(drafts), "append");
    const heads = good(await store.heads(visit), "heads");
    same(Object.values(heads.last), [1], "last");
    const added = good(await store.append([replyDraft(visit, "whl.spin", words("rough"))]), "append");
    good(await store.receive([foreign(replyDraft(visit, "whl.rock", words("none")), "w2", 1)]), "receive");
    const after = good(await store.entries(visit, heads), "entries after");
    same(outline(after).length, 2, "two came after");
    holds(
      after.some((one) => idText(one) === added.map(idText)[0]),
      "the own one is among them",
    );
    holds(good(await store.heads(visit), "heads").mark !== heads.mark, "the mark moved");
    same(good(await store.heads("visit:none"), "heads").last, {}, "no such stream");
  }),

  check("other tabs hear what changed, and whether to read the whole again", async (bench) => {
    const [here, there] = [bench.open(), bench.open()];
    await Promise.all([here.ready(), there.ready()]);
    const heard: string[] = [];
    const own: string[] = [];
    const note = (list: string[]) => (changes: readonly { stream: string; whole: boolean; from: string }[]) => {
      for (const { stream, whole, from } of changes) list.push(`${stream} ${whole ? "whole" : "more"} ${from}`);
    };
    there.watch(note(heard));
    const stop = here.watch(note(own));
    const visit = newVisit();
    const [entry] = good(await here.append([replyDraft(visit, "whl.spin", words("rough"))]), "append");
    if (!entry) throw new Error("no entry");
    await until(() => heard.length === 1, "the other tab hears of the append");
    good(await here.receive([foreign(replyDraft(visit, "whl.rock", words("none")), "w2", 2)]), "receive ahead");
    good(await here.receive([foreign(replyDraft(visit, "whl.rock", words("bad")), "w2", 1)]), "fill the gap");
    good(await here.eraseForGood(act(), { ids: [idText(entry)] }), "erase");
    await until(() => heard.length === 4, "the other tab hears of all four");
    same(
      heard,
      [`${visit} more elsewhere`, `${visit} more elsewhere`, `${visit} whole elsewhere`, `${visit} whole elsewhere`],
      "heard there",
    );
    same(
      own,
      heard.map((one) => one.replace("elsewhere", "here")),
      "heard here",
    );
    stop();
    good(await here.append([replyDraft(visit, "whl.float", words("x"))]), "append");
    same(own.length, 4, "no longer listening");
  }),

  check("nothing is told when nothing changed", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const draft = replyDraft(visit, "whl.spin", words("rough"));
    const entries = good(await store.append([draft]), "append");
    let told = 0;
    store.watch(() => (told += 1));
    good(await store.append([draft]), "append again");
    good(await store.receive(entries), "receive our own");
    same(told, 0, "told");
  }),

  check("settings are this phone's own and hold what they were given", async (bench) => {
    const store = bench.open();
    same(good(await store.setting("person"), "setting"), undefined, "none yet");
    good(await store.keepSetting("person", { id: "anna", name: "Anna" }), "keep");
    good(await store.keepSetting("theme", "daylight"), "keep");
    good(await store.keepSetting("theme", "under-the-car"), "keep");
    same(good(await bench.open().setting("theme"), "setting"), "under-the-car", "newest");
    same(good(await bench.open().setting("person"), "setting"), { id: "anna", name: "Anna" }, "whole");
    same(good(await store.streams(), "streams"), [], "no stream comes of it");
  }),

  check("a snapshot holds while stream and fold are as they were", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    good(await store.append([replyDraft(visit, "whl.spin", words("rough"))]), "append");
    const { mark } = good(await store.heads(visit), "heads");
    good(await store.keepSnapshot({ stream: visit, name: "judged", foldVersion: 7, mark, data: [1, 2] }), "keep");
    same(good(await store.snapshot(visit, "judged", 7), "snapshot"), [1, 2], "as kept");
    same(good(await store.snapshot(visit, "judged", 8), "snapshot"), undefined, "another fold");
    same(good(await store.snapshot(visit, "other", 7), "snapshot"), undefined, "another name");
    good(await store.append([replyDraft(visit, "whl.rock", words("none"))]), "append");
    same(good(await store.snapshot(visit, "judged", 7), "snapshot"), undefined, "the stream moved on");
  }),

  check("summaries stay true through appending, undo, forks, erasing and removal", async (bench) => {
    const store = bench.open();
    const { car, visit, drafts } = carAndVisit();
    const isTrue = async (what: string): Promise<void> => {
      const list = good(await store.summaries(), what);
      const streams = good(await store.streams(), what);
      const should = await Promise.all(
        streams.map(async (stream) => summarise(stream, await entriesOf(store, stream))),
      );
      same(list, should, what);
      same(good(await store.summaries(), what), should, `${what}, read again`);
    };
    await isTrue("empty");
    good(await store.append(drafts), "append");
    await isTrue("opened");
    const [reply] = good(await store.append([replyDraft(visit, "whl.spin", words("rough"))]), "append");
    if (!reply) throw new Error("no entry");
    await isTrue("one reply");
    good(await store.append(draftUndo(act(), foldVisit(await entriesOf(store, visit)), [idText(reply)])), "undo");
    await isTrue("undone");
    good(
      await store.receive([foreign(replyDraft(visit, "whl.spin", words("smooth")), reply.writer, reply.seq)]),
      "fork",
    );
    await isTrue("forked");
    good(
      await store.receive([{ ...foreign(replyDraft(visit, "x", words("y")), "w9", 4), kind: "from.later", v: 3 }]),
      "newer",
    );
    await isTrue("with an entry from a later version and a gap");
    good(await store.eraseForGood(act(), { ids: [idText(reply)] }), "erase");
    await isTrue("erased");
    good(await store.append([draftCar(act(), newCar(true), "Demo")]), "append");
    await isTrue("with a demo");
    good(
      await store.removeStreams(good(await store.streams(), "streams").filter((one) => one.includes("demo-"))),
      "remove",
    );
    await isTrue("demo removed");
    same(good(await store.streams(), "streams"), [car, visit].sort(), "streams");
  }),

  check("entries from a later version are kept as they came", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const later = {
      ...foreign(replyDraft(visit, "x", words("y")), "w2", 1),
      kind: "from.later",
      v: 2,
      body: { deep: [{ on: null }] },
    };
    const newer = { ...foreign(replyDraft(visit, "x", words("y")), "w2", 2), v: 2, body: { other: true } };
    good(await store.receive([later, newer]), "receive");
    same(await entriesOf(store, visit), [later, newer], "as they came");
    same(
      foldVisit(await entriesOf(store, visit)).trouble.unknown.map(({ why }) => why),
      ["kind", "newer"],
      "reported",
    );
  }),

  check("an empty append is nothing", async (bench) => {
    const store = bench.open();
    same(good(await store.append([]), "append"), [], "entries");
    same(good(await store.streams(), "streams"), [], "streams");
    same(emptyVisit("visit:x").replies.size, 0, "nothing folded");
  }),
];
