/**
 * The record as data: what an entry is, and what folding a log gives. No storage, no clock: stamps,
 * nonces and writers come in from outside.
 */
import type { Audience, Grade, ReplyKey, ReplyValue } from "../terms/index.js";
import type { CarLimit, PlaceChange } from "../sheet/car.js";

/** Hybrid logical time: wall clock in ms and a counter; orders display only. */
export interface Stamp {
  readonly wall: number;
  readonly count: number;
}
/** Who an entry is by. */
export interface Person {
  readonly id: string;
  readonly name: string;
}
/** (stream, writer, seq) names an entry; the nonce tells a copy from a fork. */
export interface EntryId {
  readonly stream: string;
  readonly writer: string;
  readonly seq: number;
  readonly nonce: string;
}
export interface Entry extends EntryId {
  readonly at: Stamp;
  readonly by: string;
  readonly kind: string;
  readonly v: number;
  /** Absent on a stub: erased for good. */
  readonly body?: unknown;
}
/** What the app hands over to be appended; the store gives seq inside its transaction. */
export type Draft = Omit<Entry, "seq" | "writer">;

/** Entry id as one text: `stream/writer/seq/nonce`. */
export type IdText = string;

/** Bodies by kind, version 1. Streams: `car:…`, `visit:…`, `house`. */
export interface Bodies {
  "car.begun": { readonly name: string; readonly demo?: boolean };
  "car.named": { readonly name: string; readonly replaces: readonly IdText[] };
  "car.fact": { readonly fact: string; readonly value: string | number | boolean | null; readonly replaces: readonly IdText[] };
  "car.place": { readonly change: PlaceChange; readonly replaces: readonly IdText[] };
  "car.limit": { readonly limit: CarLimit | null; readonly key: string; readonly replaces: readonly IdText[] };
  "car.same": { readonly other: string };
  "car.same-occasion": { readonly visits: readonly string[] };
  "visit.opened": {
    readonly car: string;
    readonly purpose: "workshop" | "viewing" | "season";
    readonly who: Audience;
    readonly odometer?: { readonly value: string; readonly unit: string };
    /** Frozen: editions (content hash + label) and the blob that holds each; common and limits likewise. */
    readonly sheets: readonly { readonly id: string; readonly edition: string; readonly label: string; readonly blob: string }[];
    readonly common: string;
    readonly limits: string;
  };
  "visit.complaint": { readonly text: string; readonly complaint?: string };
  "visit.sheet-added": { readonly id: string; readonly edition: string; readonly label: string; readonly blob: string };
  "visit.odometer": { readonly value: string; readonly unit: string; readonly replaces: readonly IdText[] };
  reply: { readonly key: ReplyKey; readonly value: ReplyValue | null; readonly replaces: readonly IdText[] };
  note: { readonly point?: string; readonly place?: string; readonly state?: string; readonly text: string };
  picture: { readonly blob: string; readonly thumb: string; readonly type: string; readonly width: number; readonly height: number; readonly point?: string; readonly place?: string; readonly state?: string; readonly fault?: string; readonly unreadable?: boolean; readonly name?: string };
  regrade: { readonly fault: string; readonly place: string; readonly grade: Grade; readonly reason: string; readonly replaces: readonly IdText[] };
  "caution.told": { readonly caution: string };
  "visit.closed": { readonly assessment: string; readonly engine: string };
  "visit.judged-again": { readonly sheets: readonly { readonly id: string; readonly edition: string; readonly label: string; readonly blob: string }[]; readonly before: string; readonly after: string; readonly engine: string };
  "visit.reopened": { readonly reason: string };
  "house.sheet": { readonly id: string; readonly edition: string; readonly label: string; readonly blob: string };
  "house.person": { readonly person: Person };
  undo: { readonly of: readonly IdText[] };
  erase: { readonly of: readonly IdText[] };
}
export type Kind = keyof Bodies;

/** One standing reply and where it came from. */
export interface Standing {
  readonly id: IdText;
  readonly value: ReplyValue;
  readonly at: Stamp;
  readonly by: string;
}
/** One standing value of something that can be replaced (fact, name, limit, place, odometer). */
export interface Stands<T> {
  readonly id: IdText;
  readonly value: T;
  readonly at: Stamp;
  readonly by: string;
}

export interface CarState {
  readonly stream: string;
  readonly names: readonly Stands<string>[];
  readonly demo: boolean;
  /** Several entries where people differ. */
  readonly facts: ReadonlyMap<string, readonly Stands<string | number | boolean>[]>;
  readonly places: readonly Stands<PlaceChange>[];
  readonly limits: ReadonlyMap<string, readonly Stands<CarLimit>[]>;
  readonly sameOccasions: readonly (readonly string[])[];
  readonly sameCars: readonly string[];
  readonly trouble: Trouble;
}

export interface VisitState {
  readonly stream: string;
  readonly opened?: Stands<Bodies["visit.opened"]>;
  readonly odometer: readonly Stands<{ readonly value: string; readonly unit: string }>[];
  readonly sheets: readonly Bodies["visit.sheet-added"][];
  readonly complaints: readonly Stands<Bodies["visit.complaint"]>[];
  /** keyText → every reply that stands there; two with different values: two replies differ. */
  readonly replies: ReadonlyMap<string, { readonly key: ReplyKey; readonly standing: readonly Standing[] }>;
  readonly notes: readonly Stands<Bodies["note"]>[];
  readonly pictures: readonly Stands<Bodies["picture"]>[];
  readonly regrades: ReadonlyMap<string, readonly Stands<Bodies["regrade"]>[]>;
  readonly told: readonly Stands<Bodies["caution.told"]>[];
  readonly judgedAgain: readonly Stands<Bodies["visit.judged-again"]>[];
  readonly closed?: Stands<Bodies["visit.closed"]>;
  /** What could be undone next, newest first, by this writer. */
  readonly undoable: readonly { readonly id: IdText; readonly kind: string; readonly at: Stamp; readonly by: string }[];
  readonly redoable: readonly { readonly id: IdText; readonly of: readonly IdText[] }[];
  readonly trouble: Trouble;
}

/** What a fold met and kept, to be shown: forks, entries of unknown kind or newer version, stubs, gaps. */
export interface Trouble {
  readonly forks: readonly (readonly IdText[])[];
  readonly unknown: readonly { readonly id: IdText; readonly kind: string; readonly v: number }[];
  readonly erased: number;
  readonly gaps: readonly { readonly writer: string; readonly missing: readonly number[] }[];
}
