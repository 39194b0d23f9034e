/**
 * The contract under failures: the nth operation fails, once or for ever, for every n until the work gets through.
 * Nothing said to be kept is lost, nothing is kept twice or in part, and the same call works afterwards.
 */
import { foldVisit, idText, type Store } from "../../src/core/record/index.js";
import type { Result } from "../../src/core/terms/index.js";
import { act, bytesOf, foreign, newVisit, outline, pictureDraft, replyDraft, words } from "./sample.js";
import { type Bench, bad, type Check, good, holds, same } from "./subject.js";

/** Errors a browser's storage is known to raise, with what they become on the screen. */
const ERRORS = {
  QuotaExceededError: "full",
  InvalidStateError: "lost",
  UnknownError: "lost",
  AbortError: "lost",
} as const;

/** One piece of work that may be tried again, and what must be true once it is done. */
interface Work {
  readonly what: string;
  run(store: Store): Promise<Result<unknown>>;
  /** Throws when it is not wholly done. */
  isDone(store: Store): Promise<void>;
  /** Throws when anything of it is there though the work failed. */
  isUndone(store: Store): Promise<void>;
}

const outlineOf = async (store: Store, stream: string): Promise<readonly string[]> =>
  outline(good(await store.entries(stream), "entries"));

async function appending(): Promise<Work> {
  const visit = newVisit();
  const picture = await bytesOf(`picture of ${visit}`);
  const drafts = [
    replyDraft(visit, "whl.spin", words("rough")),
    pictureDraft(visit, picture.hash),
    replyDraft(visit, "whl.rock", words("bad")),
  ];
  return {
    what: "appending three entries and a picture",
    run: (store) => store.append(drafts, [picture]),
    async isDone(store) {
      const entries = good(await store.entries(visit), "entries");
      same(
        entries.map(({ seq, nonce }) => [seq, nonce]),
        drafts.map(({ nonce }, i) => [i + 1, nonce]),
        "each once, in order",
      );
      same(good(await store.missingBlobs([picture.hash]), "missing"), [], "picture kept");
    },
    async isUndone(store) {
      same(await outlineOf(store, visit), [], "no part of it");
      same(good(await store.missingBlobs([picture.hash]), "missing"), [picture.hash], "no bytes without their entry");
    },
  };
}

async function receiving(): Promise<Work> {
  const visit = newVisit();
  const picture = await bytesOf(`received ${visit}`);
  const log = [
    foreign(pictureDraft(visit, picture.hash), "w2", 1),
    foreign(replyDraft(visit, "whl.spin", words("rough")), "w2", 2),
    foreign(replyDraft(visit, "whl.spin", words("smooth")), "w2", 2),
    foreign(replyDraft(visit, "whl.rock", words("none")), "w3", 1),
  ];
  return {
    what: "receiving a log with a fork and a picture",
    run: (store) => store.receive(log, [picture]),
    async isDone(store) {
      const ids = (await outlineOf(store, visit)).toSorted();
      same(ids, log.map(idText).toSorted(), "each once");
      same(good(await store.missingBlobs([picture.hash]), "missing"), [], "picture kept");
    },
    async isUndone(store) {
      same(await outlineOf(store, visit), [], "no part of it");
    },
  };
}

async function erasing(bench: Bench): Promise<Work> {
  const visit = newVisit();
  const picture = await bytesOf(`erased ${visit}`);
  const store = bench.open();
  const kept = good(
    await store.append([pictureDraft(visit, picture.hash), replyDraft(visit, "whl.spin", words("rough"))], [picture]),
    "append",
  );
  const before = outline(kept);
  const [entry] = kept;
  if (!entry) throw new Error("no entry");
  const who = act();
  // One nonce for every try, as a screen that tries again holds on to its drafts.
  const again = { ...who, nonce: () => `${who.id}-erase` };
  return {
    what: "erasing an entry and its picture",
    run: (other) => other.eraseForGood(again, { ids: [idText(entry)] }),
    async isDone(other) {
      same(
        (await outlineOf(other, visit)).map((one) => one.endsWith(" stub")),
        [true, false, false],
        "stub, reply, one erasure",
      );
      same(good(await other.missingBlobs([picture.hash]), "missing"), [picture.hash], "bytes gone");
      same(foldVisit(good(await other.entries(visit), "entries")).trouble.gaps, [], "no gap");
    },
    async isUndone(other) {
      same(await outlineOf(other, visit), before, "as it was");
      same(good(await other.missingBlobs([picture.hash]), "missing"), [], "bytes still there");
    },
  };
}

const WORKS: readonly ((bench: Bench) => Promise<Work>)[] = [appending, receiving, erasing];
/** More operations than any of the works needs: should a work never get through, the loop says so. */
const ENOUGH = 200;

/** Fails operation 1, 2, 3 … until the work gets through without meeting the fault. */
async function failEach(
  bench: Bench,
  make: (bench: Bench) => Promise<Work>,
  error: keyof typeof ERRORS,
  forEver: boolean,
): Promise<void> {
  for (let at = 1; at <= ENOUGH; at++) {
    const work = await make(bench);
    const store = bench.open();
    good(await store.streams(), "opened and alive");
    bench.order({ at, error, forEver });
    const result = await work.run(store);
    const isMet = bench.operations() >= at;
    const health = store.health();
    bench.order(undefined);
    const what = `${work.what}, ${error} ${forEver ? "from" : "at"} operation ${at}`;
    if (result.ok) await work.isDone(store);
    else {
      same(
        result.problems.map(({ code }) => code),
        [`record.store-${ERRORS[error]}`],
        `${what}: problem`,
      );
      same(health.is, ERRORS[error], `${what}: health`);
      await work.isUndone(store);
    }
    good(await work.run(store), `${what}: again`);
    same(store.health().is, "open", `${what}: health afterwards`);
    await work.isDone(store);
    store.close();
    if (!isMet) return;
    if (forEver) holds(!result.ok, `${what}: said to be kept though storage failed for ever`);
  }
  throw new Error(`not through within ${ENOUGH} operations`);
}

export const faults: readonly Check[] = [
  ...Object.keys(ERRORS).flatMap((error) =>
    [false, true].map((forEver) => ({
      name: `failing at every operation in turn with ${error}, ${forEver ? "for ever" : "once"}: all or nothing, and it works again`,
      run: async (bench: Bench) => {
        for (const make of WORKS) await failEach(bench, make, error as keyof typeof ERRORS, forEver);
      },
    })),
  ),
  {
    name: "no room is a state, not a loss: the drafts stay with the caller and go in once there is room",
    async run(bench) {
      const store = bench.open();
      const visit = newVisit();
      const states: string[] = [];
      store.watchHealth(({ is }) => states.push(is));
      const first = replyDraft(visit, "whl.spin", words("rough"));
      good(await store.append([first]), "append");
      bench.order({ at: 1, error: "QuotaExceededError", forEver: true });
      const drafts = [replyDraft(visit, "whl.rock", words("bad"))];
      same(bad(await store.append(drafts), "append"), "record.store-full", "code");
      same(store.health().is, "full", "health");
      bench.order(undefined);
      same((await outlineOf(store, visit)).length, 1, "reading goes on");
      same(store.health().is, "full", "reading does not claim there is room");
      good(await store.append(drafts), "append again");
      same([store.health().is, (await outlineOf(store, visit)).length], ["open", 2], "room again");
      same(states.filter((is) => is !== "opening").slice(-2), ["full", "open"], "states told");
    },
  },
  {
    name: "a dead connection heals within the same call and nobody is troubled",
    async run(bench) {
      const store = bench.open();
      await store.ready();
      const states: string[] = [];
      store.watchHealth(({ is }) => states.push(is));
      for (const error of ["InvalidStateError", "UnknownError", "AbortError"]) {
        const visit = newVisit();
        bench.order({ at: 2, error, forEver: false });
        good(await store.append([replyDraft(visit, "whl.spin", words("rough"))]), error);
        bench.order(undefined);
        same((await outlineOf(store, visit)).length, 1, `${error}: kept once`);
      }
      same(states, [], "states told");
    },
  },
  {
    name: "a connection that stays dead is told, and probing it brings it back",
    async run(bench) {
      const store = bench.open();
      await store.ready();
      bench.order({ at: 1, error: "InvalidStateError", forEver: true });
      same(bad(await store.entries("house"), "reading"), "record.store-lost", "code");
      same(store.health().is, "lost", "health");
      bench.order(undefined);
      same((await store.probe()).is, "open", "after probing");
    },
  },
  {
    name: "our own mistakes are thrown, change nothing and leave the store well",
    async run(bench) {
      const store = bench.open();
      const visit = newVisit();
      const draft = { ...replyDraft(visit, "whl.spin", words("rough")), v: 0 };
      let said = "";
      await store.append([draft]).catch((error: unknown) => {
        said = String(error);
      });
      holds(said.includes("record.bad-entry"), `thrown: ${said}`);
      same(await outlineOf(store, visit), [], "nothing kept");
      same(store.health().is, "open", "health");
    },
  },
];
