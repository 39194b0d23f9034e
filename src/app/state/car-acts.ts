/** Beginning a car, and opening a visit: each one act of the journal. Judges nothing. */
import {
  type Bodies,
  carStream,
  draftCar,
  draftClock,
  draftComplaint,
  draftReply,
  draftVisit,
  foldVisit,
  type KeptBytes,
  visitStream,
} from "../../core/record/index.js";
import type { CarLimit } from "../../core/sheet/run.js";
import type { ReplyKey, ReplyValue } from "../../core/terms/index.js";
import { FROZEN_TYPE, type FrozenCommonFile, type FrozenFile, type FrozenSheetFile, frozenBytes } from "./frozen.js";
import type { Journal, Phone } from "./journal.js";

/** A new car; its stream once it is kept, undefined when it was refused. */
export async function newCar(journal: Journal, name: string, demo = false): Promise<string | undefined> {
  let stream = "";
  const kept = await journal.keep("an-entry", (one) => {
    stream = carStream(one.id, demo);
    return { drafts: [draftCar(one, stream, name)] };
  });
  return kept ? stream : undefined;
}

/** What opening a visit asks of the person, and the sheets it freezes. */
export interface Opening {
  readonly car: string;
  readonly purpose: Bodies["visit.opened"]["purpose"];
  readonly who: Bodies["visit.opened"]["who"];
  /** ISO 8601 with offset. */
  readonly on: string;
  readonly odometer?: { readonly value: string; readonly unit: string };
  readonly complaint?: { readonly text: string; readonly complaint?: string };
  /** What was answered on the form already. */
  readonly replies?: readonly { readonly key: ReplyKey; readonly value: ReplyValue }[];
  readonly common: FrozenCommonFile;
  readonly sheets: readonly FrozenSheetFile[];
  readonly limits: readonly CarLimit[];
}

/** A frozen file as the blob it is kept in. */
export async function blobOf(phone: Pick<Phone, "hash">, file: FrozenFile): Promise<KeptBytes> {
  const bytes = frozenBytes(file);
  return { hash: await phone.hash(bytes), type: FROZEN_TYPE, bytes };
}

/** Opens a visit with everything it freezes in one act; its stream once it is kept. */
export async function openVisit(
  journal: Journal,
  phone: Pick<Phone, "hash">,
  opening: Opening,
  demo = false,
): Promise<string | undefined> {
  const common = await blobOf(phone, opening.common);
  const limits = await blobOf(phone, { format: "leadlamp-frozen-limits/1", limits: opening.limits });
  const sheets = await Promise.all(opening.sheets.map(async (file) => ({ file, blob: await blobOf(phone, file) })));
  let stream = "";
  const kept = await journal.keep("an-entry", (one) => {
    stream = visitStream(one.id, demo);
    const opened = draftVisit(one, stream, {
      car: opening.car,
      purpose: opening.purpose,
      who: opening.who,
      on: opening.on,
      ...(opening.odometer ? { odometer: opening.odometer } : {}),
      sheets: sheets.map(({ file, blob }) => ({
        id: file.sheet.id,
        edition: file.edition,
        label: file.sheet.label,
        blob: blob.hash,
      })),
      common: common.hash,
      limits: limits.hash,
    });
    const empty = { ...foldVisit([]), stream };
    const said = opening.complaint ? [draftComplaint(one, empty, opening.complaint)] : [];
    const replied = (opening.replies ?? []).map(({ key, value }) => draftReply(one, empty, key, value));
    // Nobody has arrived yet: the time for looking is started by whoever stands before the car.
    const waits = opening.purpose === "viewing" ? [draftClock(one, empty, null)] : [];
    return {
      drafts: [opened, ...said, ...replied, ...waits],
      blobs: [common, limits, ...sheets.map(({ blob }) => blob)],
    };
  });
  return kept ? stream : undefined;
}
