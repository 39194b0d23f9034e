/** Folding in general: from a log to a state, and one entry onwards. Knows no kind of state by itself. */
import type { FoldedState, Ledger, Logged, Person, Stands } from "./contract.js";
import { byCode, compareShown, idText, isDemo, type StreamKind, streamKind } from "./identity.js";
import type { Kinds, Known } from "./kinds.js";
import { changesBelow, isNews, knownIn, ledgerOf, ledgerStep, troubleOf } from "./ledger.js";
import { standingIn, standsIn } from "./standing.js";

/** A state's own fields, beside those every state has, to be filled in. */
export type Own<S extends FoldedState> = {
  -readonly [Field in keyof Omit<S, keyof FoldedState>]: Filling<Omit<S, keyof FoldedState>[Field]>;
};
type Filling<T> = T extends ReadonlyMap<infer Key, infer Value> ? Map<Key, Value> : T;

/** Brings the slot `slot`, whose text after `|` is `rest`, up to date. */
export type Fill<S extends FoldedState> = (own: Own<S>, ledger: Ledger, slot: string, rest: string) => void;

/** How one kind of state is made of slots. */
export interface Parts<S extends FoldedState> {
  readonly of: StreamKind;
  /** The kinds its streams may hold. */
  readonly kinds: Kinds;
  /** Slot that begins a stream: the earliest entry in it names the stream new entries go to. */
  readonly begins: string;
  readonly empty: () => Own<S>;
  /** A copy whose maps may be changed. */
  readonly copy: (state: S) => Own<S>;
  /** By what a slot's text begins with, up to `|`: brings that slot up to date in a copy. */
  readonly fill: Readonly<Record<string, Fill<S>>>;
  readonly join: (own: Own<S>, folded: FoldedState) => S;
}

/** Folds the entries of one stream, or of several joined ones. Streams of another kind are left out. */
export function fold<S extends FoldedState>(parts: Parts<S>, entries: Iterable<Logged>): S {
  const own: Logged[] = [];
  for (const logged of entries) if (streamKind(logged.stream) === parts.of) own.push(logged);
  return whole(parts, ledgerOf(own, parts));
}

/** From so many entries on one whole fold is quicker than steps that each copy the maps; own measurement. */
const WHOLE_FROM = 40;

/** The state after these entries too, whatever kind of state; equal to folding all of them anew. */
export function foldStep<S extends FoldedState>(state: S, entries: Iterable<Logged>): S {
  // A state's ledger remembers the parts that state was folded by.
  const parts = state.ledger.parts as Parts<S>;
  const more = [...entries].filter((logged) => isNews(state.ledger, logged));
  const wholeFrom = (at: number, folded: S): S => fold(parts, [...folded.ledger.log.values(), ...more.slice(at)]);
  if (more.length >= WHOLE_FROM) return wholeFrom(0, state);
  let folded = state;
  for (const [at, logged] of more.entries()) {
    // What needs the whole log again takes all the rest with it.
    if (changesBelow(folded.ledger, logged)) return wholeFrom(at, folded);
    folded = step(parts, folded, logged);
  }
  return folded;
}

/** The state after one more entry. */
function step<S extends FoldedState>(parts: Parts<S>, state: S, logged: Logged): S {
  if (streamKind(logged.stream) !== parts.of) return state;
  const { ledger, slots } = ledgerStep(state.ledger, logged);
  if (ledger === state.ledger) return state;
  if (slots === "all" || slots.includes(parts.begins)) return whole(parts, ledger);
  const own = parts.copy(state);
  const people = slots.some(isPerson) ? new Map(state.people) : state.people;
  applySlots(parts, own, people, ledger, slots);
  const streams = state.streams.includes(logged.stream) ? state.streams : streamsOf(ledger);
  return parts.join(own, foldedOf(parts, ledger, people, streams));
}

function whole<S extends FoldedState>(parts: Parts<S>, ledger: Ledger): S {
  const own = parts.empty();
  const people: People = new Map();
  applySlots(parts, own, people, ledger, ledger.slots.keys());
  return parts.join(own, foldedOf(parts, ledger, people, streamsOf(ledger)));
}

type People = ReadonlyMap<string, readonly Stands<Person>[]>;

function applySlots<S extends FoldedState>(
  parts: Parts<S>,
  own: Own<S>,
  people: People,
  ledger: Ledger,
  slots: Iterable<string>,
): void {
  for (const slot of slots) {
    const bar = slot.indexOf("|");
    const rest = slot.slice(bar + 1);
    if (isPerson(slot)) {
      // Only ever a map made by `step` or `whole` for this very state.
      setOrDrop(people as Map<string, readonly Stands<Person>[]>, rest, standsIn(ledger, slot, personOf));
      continue;
    }
    const fill = parts.fill[slot.slice(0, bar)];
    if (!fill) throw new Error(`No part of a ${parts.of} is made of ${slot}`);
    fill(own, ledger, slot, rest);
  }
}

function foldedOf<S extends FoldedState>(
  parts: Parts<S>,
  ledger: Ledger,
  people: People,
  streams: readonly string[],
): FoldedState {
  const stream = standingIn(ledger, parts.begins)[0]?.stream ?? streams[0] ?? "";
  return { stream, streams, demo: isDemo(stream), people, trouble: troubleOf(ledger), ledger };
}

function streamsOf(ledger: Ledger): readonly string[] {
  return [...new Set([...ledger.log.values()].map((one) => one.stream))].sort(byCode);
}

const isPerson = (slot: string): boolean => slot.startsWith("person|");
const personOf = (entry: Known): Person | null => (entry.kind === "person" ? entry.body.person : null);

/** Keeps what stands under a key; a key under which nothing stands is not there. */
export function setOrDrop<T>(map: Map<string, readonly T[]>, key: string, list: readonly T[]): void {
  if (list.length > 0) map.set(key, list);
  else map.delete(key);
}

/** Every entry ever made in a slot, undone and replaced ones too, in order of ids. */
export function everIn(ledger: Ledger, slot: string): readonly Known[] {
  const entries: Known[] = [];
  for (const id of ledger.slots.get(slot) ?? []) {
    const entry = knownIn(ledger, id);
    if (entry) entries.push(entry);
  }
  return entries;
}

/** Entries of a slot that are not undone, replaced ones too, in the order of showing. */
export function liveIn(ledger: Ledger, slot: string): readonly Known[] {
  return everIn(ledger, slot)
    .filter((entry) => !ledger.dead.has(idText(entry)))
    .sort(compareShown);
}
