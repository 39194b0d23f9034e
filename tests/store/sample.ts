/** Made-up acts, drafts and bytes for tests of record and store. No randomness: names count upwards. */
import {
  type Act,
  type Bodies,
  carStream,
  type Draft,
  draftCar,
  draftPicture,
  draftReply,
  draftVisit,
  type Entry,
  foldVisit,
  type KeptBytes,
  type Logged,
  type VisitState,
  visitStream,
} from "../../src/core/record/index.js";
import type { ReplyKey, ReplyValue } from "../../src/core/terms/index.js";

let counted = 0;
/** A text no other call gives, in the shape of a nonce. */
export function fresh(what = "n"): string {
  counted += 1;
  return `${what}${counted.toString(36)}`;
}

export const act = (wall = 1_770_000_000_000, by = "anna"): Act => ({
  id: fresh("act"),
  by,
  at: { wall: wall + counted, count: 0 },
  nonce: () => fresh(),
});

export const HASH_A = "a".repeat(64);
export const HASH_B = "b".repeat(64);
export const HASH_C = "c".repeat(64);

export const opening = (car: string, more: Partial<Bodies["visit.opened"]> = {}): Bodies["visit.opened"] => ({
  car,
  purpose: "workshop",
  who: "technician",
  on: "2026-02-03T09:30+01:00",
  odometer: { value: "61 240", unit: "km" },
  sheets: [{ id: "whl", edition: "e1", label: "Wheel bearings 1", blob: HASH_A }],
  common: HASH_B,
  limits: HASH_C,
  ...more,
});

export const key = (point: string, field = "feel", place = "FR", state = "w7-hang"): ReplyKey => ({
  point,
  place,
  state,
  field,
});
export const words = (...said: string[]): ReplyValue => ({ type: "words", words: said });
export const reading = (value: string): ReplyValue => ({ type: "reading", values: [value], unit: "mm" });
export const notReached: ReplyValue = { type: "non-answer", nonAnswer: "not-reached", reason: "covered" };

export const newCar = (demo = false): string => carStream(fresh("car"), demo);
export const newVisit = (demo = false): string => visitStream(fresh("visit"), demo);

/** A car and a visit of it, opened. */
export function carAndVisit(demo = false): {
  readonly car: string;
  readonly visit: string;
  readonly drafts: readonly Draft[];
} {
  const [car, visit] = [newCar(demo), newVisit(demo)];
  return { car, visit, drafts: [draftCar(act(), car, "Little one"), draftVisit(act(), visit, opening(car))] };
}

/** A visit still empty, for drafts that replace nothing. */
export const emptyVisit = (stream: string): VisitState => ({ ...foldVisit([]), stream });

export const replyDraft = (stream: string, point: string, value: ReplyValue, field = "feel"): Draft =>
  draftReply(act(), emptyVisit(stream), key(point, field), value);

export const pictureDraft = (stream: string, blob: string, thumb = blob): Draft =>
  draftPicture(act(), emptyVisit(stream), { blob, thumb, type: "image/jpeg", width: 4, height: 3 });

/** An entry as another phone wrote it. */
export const foreign = (draft: Draft, writer: string, seq: number): Entry => ({ ...draft, writer, seq });

/** Bytes under their hash; other text, other bytes. */
export async function bytesOf(text: string, type = "image/jpeg"): Promise<KeptBytes> {
  const bytes = new TextEncoder().encode(text);
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return { type, bytes, hash: Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("") };
}

/** What makes two logs the same: ids and whether a body is left, in order. */
export const outline = (entries: readonly Logged[]): readonly string[] =>
  entries.map((one) => `${one.stream}/${one.writer}/${one.seq}/${one.nonce}${one.kind === undefined ? " stub" : ""}`);
