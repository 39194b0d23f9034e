/** Names of entries and streams as text, and the order they are shown in. Refuses to look into bodies. */
import type { CarLimit } from "../sheet/car.js";
import type { Entry, EntryId, IdText, Logged, Stub } from "./contract.js";
import { compareStamps } from "./time.js";

export const HOUSE = "house";
/** What every stream, writer and nonce is made of; no slash, so that an id splits one way only. */
export const NAME_PATTERN = /^[A-Za-z0-9._-]{1,80}$/;
const STREAM_PATTERN = /^(?:house|(?:car|visit|plan):[A-Za-z0-9._-]{1,80})$/;

export type StreamKind = "car" | "visit" | "plan" | "house";

export const isStreamName = (text: string): boolean => STREAM_PATTERN.test(text);

/** The kind of a stream whose name passed `isStreamName`. */
export function streamKind(stream: string): StreamKind {
  // What stands before the colon is one of the kinds: the pattern of names says so.
  return stream.split(":")[0] as StreamKind;
}

/** Whether a stream belongs to the demo. Its name says so, so that no entry can turn one's own car into it. */
export const isDemo = (stream: string): boolean => /^(?:car|visit|plan):demo-/.test(stream);

export const carStream = (nonce: string, demo = false): string => `car:${demo ? "demo-" : ""}${nonce}`;
export const visitStream = (nonce: string, demo = false): string => `visit:${demo ? "demo-" : ""}${nonce}`;

/** The plan of a visit: named after it, so that two phones that plan the same visit write to one stream. */
export const planStream = (visit: string): string => visit.replace(/^visit:/, "plan:");

/** Texts made before: an entry is asked for its id over and over, and never changes. */
const texts = new WeakMap<EntryId, IdText>();

export function idText(id: EntryId): IdText {
  const made = texts.get(id);
  if (made !== undefined) return made;
  const text = `${id.stream}/${id.writer}/${id.seq}/${id.nonce}`;
  texts.set(id, text);
  return text;
}

/** What a fork shares: the id without its nonce. */
export const identityText = (id: EntryId): string => `${id.stream}/${id.writer}/${id.seq}`;

const ID_PATTERN = /^([^/]+)\/([^/]+)\/([1-9][0-9]{0,15})\/([^/]+)$/;

/** The parts of an id; undefined when the text is none. */
export function parseId(text: IdText): EntryId | undefined {
  const [, stream, writer, digits, nonce] = ID_PATTERN.exec(text) ?? [];
  if (stream === undefined || writer === undefined || digits === undefined || nonce === undefined) return undefined;
  const seq = Number(digits);
  const fits =
    isStreamName(stream) && NAME_PATTERN.test(writer) && NAME_PATTERN.test(nonce) && Number.isSafeInteger(seq);
  return fits ? { stream, writer, seq, nonce } : undefined;
}

export const isStub = (logged: Logged): logged is Stub => logged.kind === undefined;
export const isEntry = (logged: Logged): logged is Entry => logged.kind !== undefined;

/** What erasing leaves of an entry. */
export const stubOf = ({ stream, writer, seq, nonce, at }: Logged): Stub => ({ stream, writer, seq, nonce, at });

/** Order for writing a log down: stream, writer, seq, nonce; by code unit, never by locale. */
export function compareIds(a: EntryId, b: EntryId): number {
  return byCode(a.stream, b.stream) || byCode(a.writer, b.writer) || a.seq - b.seq || byCode(a.nonce, b.nonce);
}

/** Order for showing: time first, then the id, so that every phone shows the same. */
export function compareShown(a: Logged, b: Logged): number {
  return compareStamps(a.at, b.at) || compareIds(a, b);
}

export function byCode(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** What a figure in the limits book is filed under: one per default limit, or one per place where it names one. */
export const limitKey = (limit: CarLimit): string =>
  limit.place === undefined ? limit.limit : `${limit.limit}@${limit.place}`;

/** What a grade by hand is filed under. */
export const faultKey = (fault: string, place: string): string => `${fault}@${place}`;
