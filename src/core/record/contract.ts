/**
 * The record as data: what an entry is, and what folding a log gives. No storage, no clock: stamps,
 * nonces and writers come in from outside. Rules: SPEC.md.
 */
import type { CarLimit, PlaceChange } from "../sheet/car.js";
import type { Audience, Grade, Purpose, ReplyKey, ReplyValue } from "../terms/index.js";
import type { HouseCalendar, HouseTerms, HouseTermsBodies, Supplier } from "./house-bodies.js";
import type { Kinds } from "./kinds.js";
import type { LimitBodies } from "./limit-bodies.js";
import type { PictureBodies } from "./picture-bodies.js";
import type { PlanBodies } from "./plan-bodies.js";
import type { DraftedItem, SheetDraftBodies } from "./sheet-draft-bodies.js";

/** Hybrid logical time: wall clock in ms since 1970 and a counter; orders display only. */
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
  /** `car:…`, `visit:…`, `plan:…` or `house`; the demo's begin with `car:demo-`, `visit:demo-` and `plan:demo-`. */
  readonly stream: string;
  /** One installation of the app in one browser profile. */
  readonly writer: string;
  /** From 1, without gaps per stream and writer. */
  readonly seq: number;
  readonly nonce: string;
}
export interface Entry extends EntryId {
  readonly at: Stamp;
  /** Person id. */
  readonly by: string;
  /** Entries of one act (all joints here the same) are undone together. */
  readonly act?: string;
  readonly kind: string;
  readonly v: number;
  readonly body: unknown;
}
/** What is left of an entry erased for good: identity and time, nothing else. */
export interface Stub extends EntryId {
  readonly at: Stamp;
  readonly kind?: never;
}
/** What a log holds. */
export type Logged = Entry | Stub;
/** What the app hands over to be appended; the store gives seq and writer inside its transaction. */
export type Draft = Omit<Entry, "seq" | "writer">;

/** Entry id as one text: `stream/writer/seq/nonce`. */
export type IdText = string;

/**
 * One act of a person, made outside where clock and randomness are: everything drafted with it shares its stamp
 * and is undone together.
 */
export interface Act {
  readonly id: string;
  readonly by: string;
  readonly at: Stamp;
  /** A new random text of at least 96 bits at every call. */
  readonly nonce: () => string;
}

/** SHA-256 of a blob, 64 small hex digits. */
export type BlobHash = string;

/** A sheet as it was when frozen: edition (content hash), label for people, and the blob that holds it. */
export interface FrozenSheet {
  readonly id: string;
  readonly edition: string;
  readonly label: string;
  readonly blob: BlobHash;
}
export interface Odometer {
  /** As typed. */
  readonly value: string;
  readonly unit: string;
}
export type FactValue = string | number | boolean;
type Replaces = { readonly replaces: readonly IdText[] };

/** A gauge of this house, with its own figures and when it was last checked against something known. */
export interface HouseGauge {
  readonly id: string;
  readonly name: string;
  readonly quantity: string;
  /** UCUM; of both figures. */
  readonly unit: string;
  readonly resolution: number;
  readonly error: number;
  /** ISO 8601 date; absent while nobody knows. */
  readonly checked?: string;
  /** The gauge of the shared files it is used as, so that points that name that one offer it first. */
  readonly tool?: string;
}

/** `from`: ISO 8601 with offset, so that the time left is the same after a kill. */
export interface LookingTime {
  readonly from: string;
  readonly minutes: number;
  /** Set while it stands still, from when on; version 1 has none. */
  readonly stopped?: string;
}

/** Something seen that no point asks for, in one's own words and graded by who saw it. */
export interface FreeFinding {
  readonly place: string;
  readonly words: string;
  readonly grade: Grade;
  readonly reason: string;
  /** The car must not be driven. */
  readonly mustStand: boolean;
  /** What would put it right, in one's own words; `hours` as typed, with a decimal point. */
  readonly job?: { readonly words: string; readonly hours?: string };
}

/** Bodies by kind, in every version known here. A value of null takes back what it replaces. */
export interface Bodies extends PlanBodies, HouseTermsBodies, PictureBodies, SheetDraftBodies, LimitBodies {
  "car.begun": { readonly name: string };
  "car.named": Replaces & { readonly name: string };
  "car.fact": Replaces & { readonly fact: string; readonly value: FactValue | null };
  "car.place": Replaces & { readonly place: string; readonly change: PlaceChange | null };
  /** What this car's people call a place; the words of the sheets where none stands. */
  "car.place-named": Replaces & { readonly place: string; readonly name: string | null };
  /** `key` is `limitKey(limit)`. */
  "car.limit": Replaces & { readonly key: string; readonly limit: CarLimit | null };
  "car.same": { readonly other: string };
  "car.same-occasion": { readonly visits: readonly string[] };
  "visit.opened": {
    readonly car: string;
    readonly purpose: Purpose;
    readonly who: Audience;
    /** When the car was looked at, ISO 8601 with offset: not the stamp, which a wrong clock may spoil. */
    readonly on: string;
    readonly odometer?: Odometer;
    readonly sheets: readonly FrozenSheet[];
    /** Blobs that hold the shared files and the limits in force. */
    readonly common: BlobHash;
    readonly limits: BlobHash;
  };
  "visit.dated": Replaces & { readonly on: string };
  "visit.odometer": Replaces & Odometer;
  "visit.complaint": Replaces & { readonly text: string; readonly complaint?: string };
  "visit.sheet-added": FrozenSheet;
  reply: Replaces & { readonly key: ReplyKey; readonly value: ReplyValue | null };
  note: Replaces & {
    readonly text: string;
    readonly point?: string;
    readonly place?: string;
    readonly state?: string;
  };
  picture: Replaces & {
    readonly blob: BlobHash;
    /** Absent when the picture could not be decoded and is kept as it came. */
    readonly thumb?: BlobHash;
    readonly type: string;
    /** Pixels; 0 when not decoded. */
    readonly width: number;
    readonly height: number;
    readonly point?: string;
    readonly place?: string;
    readonly state?: string;
    readonly fault?: string;
    readonly unreadable?: boolean;
    /** What it shows, or the file name it came with. */
    readonly name?: string;
  };
  /** What was heard at a point, as it was recorded. */
  sound: Replaces & {
    readonly blob: BlobHash;
    /** What the recorder really wrote. */
    readonly type: string;
    /** How long, in milliseconds; 0 where that is not known. */
    readonly ms: number;
    readonly point: string;
    readonly place: string;
    readonly state: string;
    /** The app was ended while it was recorded: the rest is missing. */
    readonly cut?: boolean;
  };
  /** A grade by hand; null gives the rules' own grade back. */
  regrade: Replaces & {
    readonly fault: string;
    readonly place: string;
    readonly grade: Grade | null;
    readonly reason: string;
  };
  /** `finding` is the name it keeps however often it is mended; the writer of its first entry makes it up. */
  finding: Replaces & { readonly finding: string; readonly found: FreeFinding | null };
  /** The time there is for looking, from when it began to run; null: no clock. */
  "visit.clock": Replaces & { readonly clock: LookingTime | null };
  "caution.told": { readonly caution: string };
  /** `assessment`: blob of the judgement; `engine`: version that judged. */
  "visit.closed": Replaces & { readonly assessment: BlobHash; readonly engine: string };
  "visit.reopened": Replaces & { readonly reason: string };
  /** Version 1 has neither `common` nor `limits`: it tells of a judgement, and nothing is judged by it. */
  "visit.judged-again": {
    readonly sheets: readonly FrozenSheet[];
    /** Blobs of the judgement before and after. */
    readonly before: BlobHash;
    readonly after: BlobHash;
    readonly engine: string;
    /** Blobs of the shared files and the limits the visit is judged by from here on. */
    readonly common?: BlobHash;
    readonly limits?: BlobHash;
  };
  "house.sheet": Replaces & { readonly id: string; readonly sheet: FrozenSheet | null };
  "house.gauge": Replaces & { readonly id: string; readonly gauge: HouseGauge | null };
  /** In any stream, so that a visit handed to another phone says who looked. */
  person: Replaces & { readonly person: Person };
  undo: { readonly of: readonly IdText[] };
  /** `replaced`: what the erased entry had replaced, so that nothing older comes back to life. */
  erase: { readonly of: readonly { readonly id: IdText; readonly replaced?: readonly IdText[] }[] };
}
export type Kind = keyof Bodies;

/** One standing value of something that can be replaced, and the entry it came from. */
export interface Stands<T> {
  readonly id: IdText;
  readonly value: T;
  readonly at: Stamp;
  readonly by: string;
}
/** One standing reply. */
export type Standing = Stands<ReplyValue>;

/** Everything that stands for one key; `differ`: two different values do, or an answer beside a non-answer. */
export interface ReplySlot {
  readonly key: ReplyKey;
  readonly standing: readonly Standing[];
  readonly differ: boolean;
}

/** What every folded state has. */
export interface FoldedState {
  /** The stream new entries go to: the first of `streams`. */
  readonly stream: string;
  /** Several when cars or visits were joined. */
  readonly streams: readonly string[];
  readonly demo: boolean;
  readonly people: ReadonlyMap<string, readonly Stands<Person>[]>;
  readonly trouble: Trouble;
  /** Every entry by id, for draft…, undoable, historyOf and foldStep; screens read the other fields. */
  readonly ledger: Ledger;
}

export interface CarState extends FoldedState {
  readonly of: "car";
  readonly names: readonly Stands<string>[];
  /** Several entries where people differ. */
  readonly facts: ReadonlyMap<string, readonly Stands<FactValue>[]>;
  /** By place id. */
  readonly places: ReadonlyMap<string, readonly Stands<PlaceChange>[]>;
  /** By place id: names of this car's own. */
  readonly placeNames: ReadonlyMap<string, readonly Stands<string>[]>;
  /** By `limitKey`. */
  readonly limits: ReadonlyMap<string, readonly Stands<CarLimit>[]>;
  readonly notes: readonly Stands<Bodies["note"]>[];
  readonly pictures: readonly Stands<Bodies["picture"]>[];
  readonly sameOccasions: readonly Stands<readonly string[]>[];
  readonly sameCars: readonly Stands<string>[];
}

export interface VisitState extends FoldedState {
  readonly of: "visit";
  /** The earliest opening of the joined visits. */
  readonly opened?: Stands<Bodies["visit.opened"]>;
  /** When the car was looked at; several where people differ. */
  readonly on: readonly Stands<string>[];
  readonly odometer: readonly Stands<Odometer>[];
  /** One per sheet id: the edition judged again by last, else the newest frozen one. */
  readonly sheets: readonly FrozenSheet[];
  /** Shared files and limits in force: of the newest judging again, else of the newest opening. */
  readonly frozen?: { readonly common: BlobHash; readonly limits: BlobHash };
  readonly complaints: readonly Stands<Bodies["visit.complaint"]>[];
  /** keyText → every reply that stands there. A non-answer stands under field `*`. */
  readonly replies: ReadonlyMap<string, ReplySlot>;
  readonly notes: readonly Stands<Bodies["note"]>[];
  readonly pictures: readonly Stands<Bodies["picture"]>[];
  readonly sounds: readonly Stands<Bodies["sound"]>[];
  /** By `faultKey(fault, place)`. */
  readonly regrades: ReadonlyMap<string, readonly Stands<Bodies["regrade"] & { readonly grade: Grade }>[]>;
  /** Findings off the list, by their names; several under one where people differ. */
  readonly found: ReadonlyMap<string, readonly Stands<FreeFinding>[]>;
  /** The time for looking; several where people differ. */
  readonly clock: readonly Stands<LookingTime>[];
  readonly told: readonly Stands<Bodies["caution.told"]>[];
  /** Set while a closing stands and no reopening does. */
  readonly closed?: Stands<Bodies["visit.closed"]>;
  /** Every closing ever made and not undone, oldest first. */
  readonly closings: readonly Stands<Bodies["visit.closed"]>[];
  /** Standing reopenings. */
  readonly reopened: readonly Stands<Bodies["visit.reopened"]>[];
  readonly judgedAgain: readonly Stands<Bodies["visit.judged-again"]>[];
}

export interface HouseState extends FoldedState {
  readonly of: "house";
  readonly sheets: ReadonlyMap<string, readonly Stands<FrozenSheet>[]>;
  readonly gauges: ReadonlyMap<string, readonly Stands<HouseGauge>[]>;
  /** Rates and tax; several where people differ. */
  readonly terms: readonly Stands<HouseTerms>[];
  /** Days worked, people and lifts. */
  readonly calendar: readonly Stands<HouseCalendar>[];
  /** By the supplier's id. */
  readonly suppliers: ReadonlyMap<string, readonly Stands<Supplier>[]>;
  /** Sheets under work by the draft's name: the edition each was begun from. */
  readonly drafts: ReadonlyMap<string, readonly Stands<FrozenSheet>[]>;
  /** By `draft|list|item`; one taken out stands as null. */
  readonly draftItems: ReadonlyMap<string, readonly Stands<{ readonly to: DraftedItem | null }>[]>;
  /** By `draft|list`. */
  readonly draftOrders: ReadonlyMap<string, readonly Stands<readonly string[]>[]>;
}

/** What a fold met and kept, to be shown: forks, entries of unknown kind or newer version, stubs, gaps. */
export interface Trouble {
  /** Entries that claim one identity. */
  readonly forks: readonly (readonly IdText[])[];
  /** `kind`: not known here · `newer`: known, in a newer version · `body`: not what its kind holds · `stream`: in the wrong kind of stream. */
  readonly unknown: readonly {
    readonly id: IdText;
    readonly kind: string;
    readonly v: number;
    readonly why: "kind" | "newer" | "body" | "stream";
  }[];
  readonly erased: number;
  /** Numbers not seen, from–to, both included. */
  readonly gaps: readonly {
    readonly stream: string;
    readonly writer: string;
    readonly from: number;
    readonly to: number;
  }[];
}

/** What a fold remembers of a log. Made by the folds only; every list is in order of `compareIds`. */
export interface Ledger {
  /** What it was folded by: the kinds known there, and how a state is made of slots. */
  readonly parts: { readonly kinds: Kinds };
  readonly log: ReadonlyMap<IdText, Logged>;
  /** Slot text → entries that give it a value, erased ones left out. */
  readonly slots: ReadonlyMap<string, readonly IdText[]>;
  /** Undo entries by what they name. */
  readonly undoers: ReadonlyMap<IdText, readonly IdText[]>;
  /** Undone: neither stands nor replaces, nor (an undo) undoes. */
  readonly dead: ReadonlySet<IdText>;
  /** Erased ids → what each had replaced. */
  readonly erased: ReadonlyMap<IdText, readonly IdText[]>;
  /** The same turned round: what was replaced → the erased ids that had replaced it. */
  readonly erasedOver: ReadonlyMap<IdText, readonly IdText[]>;
  readonly unknown: Trouble["unknown"];
  /** Identity text → the entries that claim it, where more than one does. */
  readonly forks: ReadonlyMap<string, readonly IdText[]>;
  /** `stream/writer` → last seq, and how many different ones were seen. */
  readonly writers: ReadonlyMap<string, { readonly last: number; readonly seen: number }>;
  readonly gaps: Trouble["gaps"];
}
