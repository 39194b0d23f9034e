/**
 * The record as the screens use it: folded streams as signals, and keeping. A draft becomes an entry only when the
 * store says it is durable; until then it lies over the folded state as not kept. Knows no screen and no judgement.
 */
import { batch, computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import {
  type Act,
  type CarState,
  compareStamps,
  type Draft,
  draftPerson,
  type Entry,
  FIRST_STAMP,
  fetchedFold,
  foldCar,
  foldStep,
  foldVisit,
  follows,
  type Health,
  HOUSE,
  type HouseState,
  type KeptBytes,
  type Logged,
  type PlanState,
  planStream,
  type RecordState,
  type Stamp,
  type Store,
  type Summary,
  stampNext,
  streamKind,
  type VisitState,
} from "../../core/record/index.js";
import { type Problem, problem } from "../../core/terms/index.js";
import { replacedByNewer, type UnkeptWhat } from "./unkept.js";

/** What the phone gives the record: a clock, chance, a hash. */
export interface Phone {
  readonly now: () => number;
  /** A new random text of at least 96 bits at every call. */
  readonly nonce: () => string;
  /** SHA-256 as 64 small hex digits. */
  readonly hash: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>;
}

/** One act on its way to the store, or refused by it. */
export interface Unkept {
  readonly what: UnkeptWhat;
  readonly drafts: readonly Draft[];
  readonly blobs: readonly KeptBytes[];
  /** Absent while it is being kept. */
  readonly problem?: Problem;
}

export type Opened<State> =
  | { readonly is: "opening" }
  | { readonly is: "open"; readonly state: State }
  | { readonly is: "missing" }
  | { readonly is: "trouble"; readonly problem: Problem };

export interface Made {
  readonly drafts: readonly Draft[];
  readonly blobs?: readonly KeptBytes[];
}

export interface Journal {
  readonly health: ReadonlySignal<Health>;
  readonly writer: ReadonlySignal<string | undefined>;
  readonly summaries: ReadonlySignal<readonly Summary[] | undefined>;
  /** Reads the summaries again; a failed reading leaves what was shown. */
  refresh(): Promise<void>;
  /** Reads everything again, and who writes now: after a file was read in. */
  reread(): Promise<void>;
  readonly unkept: ReadonlySignal<readonly Unkept[]>;
  /** Folded with what is not kept laid over it. */
  car(stream: string): ReadonlySignal<Opened<CarState>>;
  visit(stream: string): ReadonlySignal<Opened<VisitState>>;
  house(): ReadonlySignal<Opened<HouseState>>;
  /** Whether the house has said anything; undefined while that is being read. Folding it is for who needs to know what. */
  readonly houseSaid: ReadonlySignal<boolean | undefined>;
  /** The plan of a visit; one of which nothing is said yet is open, and empty. */
  plan(visit: string): ReadonlySignal<Opened<PlanState>>;
  /** Folded entries only: what judging may use, and what drafts are made from. */
  keptCar(stream: string): ReadonlySignal<Opened<CarState>>;
  keptVisit(stream: string): ReadonlySignal<Opened<VisitState>>;
  keptHouse(): ReadonlySignal<Opened<HouseState>>;
  keptPlan(visit: string): ReadonlySignal<Opened<PlanState>>;
  /**
   * Keeps one act. `make` is called when everything before it is folded, so that what it replaces is known.
   * True once it is durable; false when it was refused and waits among `unkept`, or when there was nothing to keep.
   */
  keep(what: UnkeptWhat, make: (act: Act) => Made): Promise<boolean>;
  /** Tries everything not kept again, oldest first. */
  again(): Promise<void>;
}

/** Told of every entry once it is durable and folded. */
export type OnKept = (entries: readonly Entry[]) => void;

/** A person's id and name as they stand now; asked at every act. */
export type WhoLooks = () => { readonly id: string; readonly name: string };

export function openJournal(store: Store, phone: Phone, who: WhoLooks, onKept: OnKept): Journal {
  const health = signal<Health>(store.health());
  const writer = signal<string | undefined>(undefined);
  const summaries = signal<readonly Summary[] | undefined>(undefined);
  const underway = signal<readonly Unkept[]>([]);
  const folded = new Map<string, Signal<Opened<RecordState>>>();
  const houseSaid = signal<boolean | undefined>(undefined);
  let last: Stamp = FIRST_STAMP;
  let tail: Promise<unknown> = Promise.resolve();

  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const run = tail.then(work);
    tail = run.catch(() => undefined);
    return run;
  };
  const seen = (stamps: Iterable<Stamp>): void => {
    for (const stamp of stamps) if (follows(stamp, phone.now()) && compareStamps(stamp, last) > 0) last = stamp;
  };

  const foldAll = (stream: string, entries: readonly Logged[], fold: Fold): Opened<RecordState> => {
    seen(entries.map(({ at }) => at));
    return { is: "open", state: fold(stream, entries) };
  };
  const read = async (stream: string, into: Signal<Opened<RecordState>>): Promise<void> => {
    const atOnce = foldOf(stream);
    const [fold, entries] = await Promise.all([atOnce ?? fetchedFold(), store.entries(stream)]);
    // A house and a plan are there before anything is said in them; a car or visit of which only stubs are left is not.
    if (entries.ok && atOnce && entries.value.every(({ kind }) => (kind ?? "erase") === "erase"))
      into.value = { is: "missing" };
    else if (entries.ok) into.value = foldAll(stream, entries.value, fold);
    // Reading failed: what is shown already is still true.
    else if (into.peek().is !== "open") into.value = { is: "trouble", problem: entries.problems[0] as Problem };
  };
  const foldedOf = (stream: string): Signal<Opened<RecordState>> => {
    const there = folded.get(stream);
    if (there) return there;
    const made = signal<Opened<RecordState>>({ is: "opening" });
    folded.set(stream, made);
    inTurn(() => read(stream, made)).catch((error: unknown) => {
      if (made.peek().is === "opening")
        made.value = { is: "trouble", problem: problem("app.mistake", {}, { says: String(error) }) };
    });
    return made;
  };

  void inTurn(async () => {
    const entries = await store.entries(HOUSE);
    if (entries.ok) houseSaid.value = entries.value.length > 0;
  });

  const take = (entries: readonly Logged[]): void => {
    seen(entries.map(({ at }) => at));
    if (entries.some(({ stream }) => stream === HOUSE)) houseSaid.value = true;
    for (const stream of new Set(entries.map((entry) => entry.stream))) {
      const own = entries.filter((entry) => entry.stream === stream);
      const into = folded.get(stream);
      const now = into?.peek();
      if (!into || !now) continue;
      const fold = foldOf(stream);
      if (now.is === "open") into.value = { is: "open", state: foldStep(now.state, own) };
      else if (fold) into.value = foldAll(stream, own, fold);
      else void inTurn(() => read(stream, into));
    }
  };

  const refresh = async (): Promise<void> => {
    const read = await store.summaries();
    if (!read.ok) return;
    seen(read.value.map((summary) => summary.last));
    summaries.value = read.value;
  };

  const attempt = async (item: Unkept): Promise<boolean> => {
    const trying: Unkept = { what: item.what, drafts: item.drafts, blobs: item.blobs };
    underway.value = [...underway.peek().filter((one) => one !== item), trying];
    const kept = await store.append(item.drafts, item.blobs);
    batch(() => {
      const rest = underway.peek().filter((one) => one !== trying);
      if (kept.ok) take(kept.value);
      underway.value = kept.ok ? rest : [...rest, { ...trying, problem: kept.problems[0] as Problem }];
    });
    if (kept.ok) onKept(kept.value);
    return kept.ok;
  };

  const people = (act: Act, drafts: readonly Draft[]): readonly Draft[] => {
    const person = who();
    if (person.name === "") return [];
    return [...new Set(drafts.map(({ stream }) => stream))].flatMap((stream) => {
      const now = folded.get(stream)?.peek();
      return draftPerson(act, now?.is === "open" ? now.state : foldCar([]), person, stream);
    });
  };

  const keep: Journal["keep"] = (what, make) =>
    inTurn(async () => {
      last = stampNext(last, phone.now());
      const act: Act = { id: phone.nonce(), by: who().id, at: last, nonce: phone.nonce };
      const { drafts, blobs = [] } = make(act);
      if (drafts.length === 0) return false;
      underway.value = replacedByNewer(underway.peek(), drafts);
      return attempt({ what, drafts: [...people(act, drafts), ...drafts], blobs });
    });

  const again = (): Promise<void> =>
    inTurn(async () => {
      for (const item of underway.peek().filter((one) => one.problem)) {
        if (!(await attempt(item))) return;
      }
    });

  store.watchHealth((now) => {
    const before = health.peek().is;
    health.value = now;
    if (now.is !== "open" || before === "open") return;
    for (const [stream, into] of folded) if (into.peek().is !== "open") void inTurn(() => read(stream, into));
    void refresh();
    void again();
  });
  store.watch((changes) => {
    for (const change of changes) {
      const into = folded.get(change.stream);
      if (into && (change.from === "elsewhere" || change.whole)) void inTurn(() => read(change.stream, into));
    }
    if (changes.some((change) => change.from === "elsewhere" || change.whole)) void refresh();
  });
  const askWriter = async (): Promise<void> => {
    const made = await store.writer();
    if (made.ok) writer.value = made.value;
  };
  void askWriter();

  // A stream's name says its kind, and it is folded by that same kind.
  const keptOf = <State extends RecordState>(stream: string) =>
    foldedOf(stream) as unknown as ReadonlySignal<Opened<State>>;

  const shown = <State extends RecordState>(stream: string): ReadonlySignal<Opened<State>> => {
    const kept = keptOf<State>(stream);
    return computed(() => {
      const now = kept.value;
      const over = underway.value.flatMap(({ drafts }) => drafts).filter((draft) => draft.stream === stream);
      if (now.is !== "open" || over.length === 0) return now;
      return { is: "open", state: foldStep(now.state, over.map(asPending)) };
    });
  };
  const cache = new Map<string, ReadonlySignal<Opened<RecordState>>>();
  const cached = <State extends RecordState>(stream: string): ReadonlySignal<Opened<State>> => {
    const there = cache.get(stream) ?? shown(stream);
    cache.set(stream, there);
    foldedOf(stream);
    // A stream's name says its kind, and it is folded by that same kind.
    return there as ReadonlySignal<Opened<State>>;
  };
  return {
    health,
    writer,
    summaries,
    refresh,
    reread: () =>
      inTurn(async () => {
        for (const [stream, into] of folded) await read(stream, into);
        await Promise.all([askWriter(), refresh()]);
      }),
    unkept: underway,
    car: (stream) => cached<CarState>(stream),
    visit: (stream) => cached<VisitState>(stream),
    house: () => cached<HouseState>(HOUSE),
    houseSaid,
    plan: (visit) => cached<PlanState>(planStream(visit)),
    keptCar: (stream) => keptOf<CarState>(stream),
    keptVisit: (stream) => keptOf<VisitState>(stream),
    keptHouse: () => keptOf<HouseState>(HOUSE),
    keptPlan: (visit) => keptOf<PlanState>(planStream(visit)),
    keep,
    again,
  };
}

type Fold = (stream: string, entries: readonly Logged[]) => RecordState;

/** The fold of a stream by the kind its name says; none for those whose fold has to be fetched. */
function foldOf(stream: string): Fold | undefined {
  const kind = streamKind(stream);
  if (kind === "car") return (_, entries) => foldCar(entries);
  return kind === "visit" ? (_, entries) => foldVisit(entries) : undefined;
}

/** A draft as an entry of a writer that never exists, so that it can be laid over what is kept. */
const asPending = (draft: Draft, index: number): Entry => ({ ...draft, writer: "not-kept-yet", seq: index + 1 });
