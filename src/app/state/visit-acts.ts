/** What a person can do in a visit beside replying (reply-acts.ts), each as one act of the journal. Judges nothing. */
import {
  type Act,
  type Bodies,
  type Draft,
  draftClock,
  draftClose,
  draftComplaint,
  draftFinding,
  draftNote,
  draftOdometer,
  draftPicture,
  draftRedo,
  draftRegrade,
  draftReopen,
  draftSettle,
  draftSheet,
  draftSound,
  draftTold,
  type FreeFinding,
  type IdText,
  type KeptBytes,
  type LookingTime,
  type Odometer,
  type Step,
  type VisitState,
} from "../../core/record/index.js";
import type { PictureOutcome } from "../../core/record/photo.js";
import type { Grade, ReplyKey } from "../../core/terms/index.js";
import { FROZEN_TYPE, type FrozenSheetFile, frozenBytes } from "./frozen.js";
import type { Journal } from "./journal.js";
import type { PictureSpot } from "./picture-spot.js";
import { act } from "./reply-acts.js";
import type { PointAt } from "./standing.js";

/** Settles replies that differ by the one that is right. */
export const settle = (journal: Journal, stream: string, key: ReplyKey, chosen: IdText): Promise<boolean> =>
  act(journal, stream, "a-reply", (one, visit) => [draftSettle(one, visit, key, chosen)]);

export const note = (journal: Journal, stream: string, text: string, at: Partial<PointAt>): Promise<boolean> =>
  act(journal, stream, "a-note", (one, visit) => [draftNote(one, visit, { text, ...at })]);

/** What is said of a picture in the act that keeps it. */
export type SaidOfPicture = (act: Act, visit: VisitState, blob: string) => readonly Draft[];

/** A picture made ready by the device, with its small copy where there is one; pinned to nothing it lies unsorted. */
export function picture(
  journal: Journal,
  stream: string,
  made: PictureOutcome,
  spot: PictureSpot,
  name: string,
  more?: SaidOfPicture,
): Promise<boolean> {
  const body =
    made.kind === "picture"
      ? {
          blob: made.picture.hash,
          thumb: made.thumb.hash,
          type: made.picture.type,
          width: made.picture.width,
          height: made.picture.height,
        }
      : { blob: made.hash, type: made.type, width: 0, height: 0, unreadable: true };
  const blobs = made.kind === "picture" ? [made.picture, made.thumb] : [made];
  return act(
    journal,
    stream,
    "a-picture",
    (one, visit) => [
      draftPicture(one, visit, { ...body, ...spot, ...(name === "" ? {} : { name }) }),
      ...(more?.(one, visit, body.blob) ?? []),
    ],
    blobs.map(({ hash, type, bytes }) => ({ hash, type, bytes })),
  );
}

/** A sound of a point, with its bytes. */
export const sound = (
  journal: Journal,
  stream: string,
  body: Omit<Bodies["sound"], "replaces">,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<boolean> =>
  act(journal, stream, "a-sound", (one, visit) => [draftSound(one, visit, body)], [
    { hash: body.blob, type: body.type, bytes },
  ]);

/** Says where pictures belong, in place of what was said before: one act, undone together. */
export const sortPictures = (
  journal: Journal,
  stream: string,
  pictures: readonly IdText[],
  spot: PictureSpot,
): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) =>
    visit.pictures.flatMap(({ id, value }) => {
      if (!pictures.includes(id)) return [];
      const { point: _point, place: _place, state: _state, fault: _fault, replaces: _replaces, ...rest } = value;
      return [draftPicture(one, visit, { ...rest, ...spot }, [id])];
    }),
  );

/** Something seen that no point asks for, under the name it keeps; null takes it back. */
export const offList = (journal: Journal, stream: string, name: string, found: FreeFinding | null): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => [draftFinding(one, visit, name, found)]);

export const regrade = (
  journal: Journal,
  stream: string,
  fault: string,
  place: string,
  grade: Grade | null,
  reason: string,
): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => [draftRegrade(one, visit, { fault, place, grade, reason })]);

/** The owner has been told of these cautions. */
export const told = (journal: Journal, stream: string, cautions: readonly string[]): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => cautions.map((caution) => draftTold(one, visit, caution)));

export const odometer = (journal: Journal, stream: string, value: Odometer): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => [draftOdometer(one, visit, value)]);

export const complaint = (journal: Journal, stream: string, text: string, known?: string): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => [
    draftComplaint(one, visit, { text, ...(known === undefined ? {} : { complaint: known }) }),
  ]);

/** Sets the time for looking, stops it or lets it go on; null takes it away. */
export const lookingTime = (journal: Journal, stream: string, time: LookingTime | null): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => [draftClock(one, visit, time)]);

/** Freezes one more sheet in a visit under way, with its blob. */
export async function addSheet(
  journal: Journal,
  stream: string,
  file: FrozenSheetFile,
  hash: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
): Promise<boolean> {
  const bytes = frozenBytes(file);
  const blob: KeptBytes = { hash: await hash(bytes), type: FROZEN_TYPE, bytes };
  const sheet = { id: file.sheet.id, edition: file.edition, label: file.sheet.label, blob: blob.hash };
  return act(journal, stream, "an-entry", (one, visit) => [draftSheet(one, visit, sheet)], [blob]);
}

/** Brings an undone step back. */
export const redo = (journal: Journal, stream: string, step: Pick<Step, "ids">): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => draftRedo(one, visit, step.ids));

/** Closes the visit with its judgement as a readable blob. */
export async function close(
  journal: Journal,
  stream: string,
  assessment: unknown,
  engine: string,
  hash: (bytes: Uint8Array<ArrayBuffer>) => Promise<string>,
): Promise<boolean> {
  const bytes = new TextEncoder().encode(JSON.stringify(assessment));
  const blob: KeptBytes = { hash: await hash(bytes), type: "application/json", bytes };
  return act(journal, stream, "an-entry", (one, visit) => [draftClose(one, visit, { assessment: blob.hash, engine })], [
    blob,
  ]);
}

export const reopen = (journal: Journal, stream: string, reason: string): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => [draftReopen(one, visit, reason)]);
