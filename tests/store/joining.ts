/** The part of the storage contract about joining logs: receiving, forks, stubs, erasing, removal. */
import {
  draftErase,
  draftVisit,
  foldVisit,
  idText,
  isStub,
  type Logged,
  type Store,
} from "../../src/core/record/index.js";
import { act, bytesOf, carAndVisit, foreign, newVisit, opening, pictureDraft, replyDraft, words } from "./sample.js";
import { type Bench, bad, type Check, good, holds, same } from "./subject.js";

const check = (name: string, run: (bench: Bench) => Promise<void>): Check => ({ name, run });
const entriesOf = async (store: Store, stream: string): Promise<readonly Logged[]> =>
  good(await store.entries(stream), stream);

export const joining: readonly Check[] = [
  check("receiving is a union: again is nothing new, order makes no difference", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const log = [1, 2, 3].map((seq) => foreign(replyDraft(visit, `whl.p${seq}`, words("rough")), "w2", seq));
    const first = good(await store.receive([...log].reverse()), "receive");
    same([first.added, first.known, first.forks], [3, 0, []], "first time");
    const again = good(await store.receive(log), "receive again");
    same([again.added, again.known], [0, 3], "second time");
    same(await entriesOf(store, visit), log, "the log");
  }),

  check("a fork keeps both", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const [one, other] = [
      replyDraft(visit, "whl.spin", words("rough")),
      replyDraft(visit, "whl.spin", words("smooth")),
    ];
    good(await store.receive([foreign(one, "w2", 1)]), "receive");
    const received = good(await store.receive([foreign(other, "w2", 1)]), "receive the twin");
    same(received.forks.length, 2, "both ids told");
    const state = foldVisit(await entriesOf(store, visit));
    same(
      state.trouble.forks.map((ids) => ids.length),
      [2],
      "fork shown",
    );
    same(
      [...state.replies.values()].map(({ differ, standing }) => [differ, standing.length]),
      [[true, 2]],
      "both stand",
    );
  }),

  check("our own entries altered elsewhere do not replace ours, and are told", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const [ours] = good(await store.append([replyDraft(visit, "whl.spin", words("rough"))]), "append");
    if (!ours) throw new Error("no entry");
    const altered = {
      ...replyDraft(visit, "whl.spin", words("smooth")),
      writer: ours.writer,
      seq: ours.seq,
      nonce: ours.nonce,
    };
    const received = good(await store.receive([altered]), "receive");
    same(received.altered, [idText(ours)], "told");
    same(await entriesOf(store, visit), [ours], "ours kept");
  }),

  check("meeting an entry of our own writer we never wrote makes a new writer", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const [ours] = good(await store.append([replyDraft(visit, "whl.spin", words("rough"))]), "append");
    const old = ours?.writer ?? "";
    const received = good(
      await store.receive([foreign(replyDraft(visit, "whl.rock", words("none")), old, 2)]),
      "receive",
    );
    holds(received.newWriter !== undefined && received.newWriter !== old, "a new writer");
    same(good(await bench.open().writer(), "writer"), received.newWriter, "in every tab");
    const [next] = good(await store.append([replyDraft(visit, "whl.float", words("x"))]), "append");
    same([next?.writer, next?.seq], [received.newWriter, 1], "the next entry is by the new writer");
  }),

  check("an entry that is none refuses the whole", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const fine = foreign(replyDraft(visit, "whl.spin", words("rough")), "w2", 1);
    same(bad(await store.receive([fine, { ...fine, seq: 0 }]), "seq 0"), "record.bad-entry", "code");
    const mixed = foreign(draftVisit(act(), newVisit(), opening("car:mine")), "w2", 1);
    const body = { ...opening("car:demo-x") };
    same(
      bad(await store.receive([fine, { ...mixed, body }]), "demo car in one's own visit"),
      "record.demo-mixed",
      "code",
    );
    same(await entriesOf(store, visit), [], "nothing kept");
  }),

  check("erasing leaves identity and time, and bytes only where something else refers to them", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const [shared, own] = [await bytesOf("shared"), await bytesOf("own")];
    const drafts = [pictureDraft(visit, shared.hash, own.hash), pictureDraft(visit, shared.hash)];
    const [first, second] = good(await store.append(drafts, [shared, own]), "append");
    if (!first || !second) throw new Error("no entries");
    const erasure = good(await store.eraseForGood(act(), { ids: [idText(first)] }), "erase");
    same(erasure.length, 1, "one erase entry");
    const [stub, left] = await entriesOf(store, visit);
    const { stream, writer, seq, nonce, at } = first;
    same(stub, { stream, writer, seq, nonce, at }, "the stub");
    same(left, second, "the other entry is untouched");
    same(good(await store.missingBlobs([shared.hash, own.hash]), "missing"), [own.hash], "blobs left");
    same(foldVisit(await entriesOf(store, visit)).pictures.length, 1, "pictures standing");
  }),

  check("a body that comes after its erasure, or with it, or before it, ends as a stub", async (bench) => {
    const visit = newVisit();
    const picture = await bytesOf("secret");
    const body = foreign(pictureDraft(visit, picture.hash), "w2", 1);
    const state = foldVisit([body]);
    const erasures = draftErase(act(), state, [idText(body)]).map((draft) => foreign(draft, "w3", 1));
    const orders = [[[body], erasures], [erasures, [body]], [[body, ...erasures]]];
    for (const order of orders) {
      const store = (await bench.another()).open();
      for (const log of order) good(await store.receive(log, [picture]), "receive");
      const kept = await entriesOf(store, visit);
      same(kept.map(isStub), [true, false], "stub and erasure");
      same(good(await store.blob(picture.hash), "blob"), undefined, "no bytes");
    }
  }),

  check("a stub from elsewhere takes our body away, a body does not bring it back", async (bench) => {
    const store = bench.open();
    const visit = newVisit();
    const body = foreign(replyDraft(visit, "whl.spin", words("rough")), "w2", 1);
    const { stream, writer, seq, nonce, at } = body;
    const stub = { stream, writer, seq, nonce, at };
    good(await store.receive([body]), "receive");
    const taken = good(await store.receive([stub]), "receive the stub");
    same([taken.erased, taken.forks], [1, []], "erased, no fork");
    good(await store.receive([body]), "receive the body again");
    same(await entriesOf(store, visit), [stub], "the stub");
  }),

  check("a whole stream is erased in one act and stays so when a copy comes back", async (bench) => {
    const store = bench.open();
    const { car, visit, drafts } = carAndVisit();
    good(await store.append([...drafts, replyDraft(visit, "whl.spin", words("rough"))]), "append");
    const before = await entriesOf(store, visit);
    good(await store.eraseForGood(act(), { stream: visit }), "erase");
    good(await store.receive(before), "receive the old copy");
    const entries = await entriesOf(store, visit);
    same(
      entries.map(({ kind }) => kind ?? "stub"),
      ["stub", "stub", "erase"],
      "what is left",
    );
    const summaries = good(await store.summaries(), "summaries");
    same(
      summaries.map(({ stream, of }) => [stream, of]),
      [
        [car, "car"],
        [visit, "erased"],
      ],
      "summaries",
    );
    same(good(await store.eraseForGood(act(), { stream: visit }), "erase again"), [], "nothing left to erase");
  }),

  check("the demo goes in one action without a trace; one's own never goes with it", async (bench) => {
    const store = bench.open();
    const [own, demo] = [carAndVisit(), carAndVisit(true)];
    const [shared, only] = [await bytesOf("shared"), await bytesOf("only the demo's")];
    good(await store.append(own.drafts), "append own");
    good(await store.append([pictureDraft(own.visit, shared.hash)], [shared]), "append own picture");
    good(
      await store.append([...demo.drafts, pictureDraft(demo.visit, shared.hash, only.hash)], [shared, only]),
      "append demo",
    );
    good(await store.summaries(), "summaries");
    same(bad(await store.removeStreams([demo.car, own.car]), "removing one's own"), "record.not-demo", "code");
    same(good(await store.removeStreams([demo.car, demo.visit]), "remove"), 3, "entries removed");
    same(good(await store.streams(), "streams"), [own.car, own.visit].sort(), "streams left");
    same(
      good(await store.summaries(), "summaries").map(({ stream }) => stream),
      [own.car, own.visit].sort(),
      "summaries left",
    );
    same(good(await store.missingBlobs([shared.hash, only.hash]), "missing"), [only.hash], "blobs left");
    good(await store.append(demo.drafts), "the demo again");
    same(foldVisit(await entriesOf(store, demo.visit)).demo, true, "it is the demo");
  }),
];
