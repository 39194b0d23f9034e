/**
 * Judging a visit again by the limits book and the check sheets as they are now: what differs from what it froze,
 * and which findings that would change. Works it out and drafts nothing by itself: a person keeps it or leaves it.
 */
import type { Assessment, Fault } from "../../core/assess/contract.js";
import {
  type CarState,
  draftJudgedAgain,
  faultKey,
  type KeptBytes,
  limitKey,
  limitsOf,
  sameValue,
  toAssessInput,
  type VisitState,
} from "../../core/record/index.js";
import { type CarLimit, isEdition } from "../../core/sheet/run.js";
import { ok, type Result } from "../../core/terms/index.js";
import type { App } from "./app.js";
import { blobOf } from "./car-acts.js";
import type { SheetAtHand } from "./sheets-at-hand.js";
import { commonFile, type FrozenSet, plannedSet } from "./shelf.js";

/** What is taken as it is now; the rest stays as frozen. */
export interface Taken {
  readonly limits: boolean;
  readonly sheets: boolean;
}

/** Whether the limits in force, or the editions, are others than the visit is judged by. */
export const movedOn = (
  frozen: FrozenSet | undefined,
  car: CarState,
  commonEdition: string,
  atHand: readonly SheetAtHand[],
): Taken => ({
  limits: frozen !== undefined && !sameValue(frozen.limits.limits, limitsOf(car)),
  sheets:
    frozen !== undefined &&
    (!isEdition(frozen.common.edition, commonEdition) ||
      frozen.sheets.some(({ sheet, edition }) =>
        atHand.some((one) => one.id === sheet.id && !isEdition(edition, one.edition)),
      )),
});

/**
 * What the visit would be judged by. A sheet that is not at hand any more, or can't be read, stays as it was frozen.
 */
export async function setNow(
  { shelf }: Pick<App, "shelf">,
  frozen: FrozenSet,
  car: CarState,
  atHand: readonly SheetAtHand[],
  taken: Taken,
): Promise<FrozenSet> {
  const limits = taken.limits ? { ...frozen.limits, limits: limitsOf(car) } : frozen.limits;
  if (!taken.sheets) return { ...frozen, limits };
  const sheets = frozen.sheets.map(async (file) => {
    const read = await atHand.find(({ id }) => id === file.sheet.id)?.file();
    return read?.ok ? read.value : file;
  });
  return { common: await commonFile(shelf), sheets: await Promise.all(sheets), limits };
}

/** Judges what stands in the visit by this set, grades by hand and findings off the list included, as laying it out does. */
export async function judgeBy(
  { shelf, compiler, judging }: Pick<App, "shelf" | "compiler" | "judging">,
  set: FrozenSet,
  car: CarState,
  visit: VisitState,
  earlier: readonly VisitState[],
): Promise<Result<{ readonly assessment: Assessment; readonly engine: string }>> {
  const [core, planned] = await Promise.all([judging(), plannedSet(shelf, compiler, set)]);
  if (!planned.ok) return planned;
  const input = toAssessInput(car, visit, earlier, set.limits.limits);
  if (!input.ok) return input;
  const engine = await core.ready(planned.value);
  const { assessment } = core.start(engine, input.value);
  return ok({ assessment: core.withHand(assessment, visit), engine: core.ENGINE_VERSION });
}

/** What two judgements say differently, fault by fault and place by place. */
export interface FindingChanges {
  readonly changed: readonly { readonly before: Fault; readonly after: Fault }[];
  readonly appeared: readonly Fault[];
  readonly went: readonly Fault[];
}

type Judged = Pick<Assessment, "faults">;

export function findingChanges(before: Judged, after: Judged): FindingChanges {
  const byKey = ({ faults }: Judged) => new Map(faults.map((one) => [faultKey(one.fault, one.place), one]));
  const [was, is] = [byKey(before), byKey(after)];
  return {
    changed: [...is].flatMap(([key, one]) => {
      const old = was.get(key);
      return old && saysOther(old, one) ? [{ before: old, after: one }] : [];
    }),
    appeared: [...is].flatMap(([key, one]) => (was.has(key) ? [] : [one])),
    went: [...was].flatMap(([key, one]) => (is.has(key) ? [] : [one])),
  };
}

const saysOther = (a: Fault, b: Fault): boolean =>
  a.grade !== b.grade || a.close !== b.close || a.sure !== b.sure || a.provisional !== b.provisional;

/** Figures on one limit and place before and after; several where people differ, none for the default. */
interface LimitChange {
  readonly key: string;
  readonly limit: string;
  readonly place?: string;
  readonly before: readonly CarLimit[];
  readonly after: readonly CarLimit[];
}

export function limitChanges(before: readonly CarLimit[], after: readonly CarLimit[]): readonly LimitChange[] {
  const keyed = new Map([...before, ...after].map((one) => [limitKey(one), one]));
  return [...keyed].flatMap(([key, { limit, place }]) => {
    const on = (figures: readonly CarLimit[]) => figures.filter((one) => limitKey(one) === key);
    const change = { key, limit, ...(place === undefined ? {} : { place }), before: on(before), after: on(after) };
    return sameValue(change.before, change.after) ? [] : [change];
  });
}

const jsonBlob = async (phone: App["phone"], value: unknown): Promise<KeptBytes> => {
  const bytes = new TextEncoder().encode(JSON.stringify(value));
  return { hash: await phone.hash(bytes), type: "application/json", bytes };
};

/** Keeps the new judgement: from here on the visit is judged by this set. */
export async function keepJudgedAgain(
  { journal, phone }: Pick<App, "journal" | "phone">,
  stream: string,
  set: FrozenSet,
  judged: { readonly before: Assessment; readonly after: Assessment; readonly engine: string },
): Promise<boolean> {
  const [common, limits] = [await blobOf(phone, set.common), await blobOf(phone, set.limits)];
  const sheets = await Promise.all(set.sheets.map(async (file) => ({ file, blob: await blobOf(phone, file) })));
  const [before, after] = [await jsonBlob(phone, judged.before), await jsonBlob(phone, judged.after)];
  const body = {
    sheets: sheets.map(({ file, blob }) => ({
      id: file.sheet.id,
      edition: file.edition,
      label: file.sheet.label,
      blob: blob.hash,
    })),
    common: common.hash,
    limits: limits.hash,
    before: before.hash,
    after: after.hash,
    engine: judged.engine,
  };
  const kept = journal.keptVisit(stream);
  return journal.keep("an-entry", (act) => {
    const visit = kept.peek();
    if (visit.is !== "open") return { drafts: [] };
    const blobs = [common, limits, ...sheets.map(({ blob }) => blob), before, after];
    return { drafts: [draftJudgedAgain(act, visit.state, body)], blobs };
  });
}

/** The two judgements of a judging again that was kept; undefined when their blobs are not here or not ours. */
export async function judgementsOf(
  { store }: Pick<App, "store">,
  { before, after }: { readonly before: string; readonly after: string },
): Promise<FindingChanges | undefined> {
  const [was, is] = await Promise.all([before, after].map((hash) => readJudged(store, hash)));
  return was && is && findingChanges(was, is);
}

async function readJudged(store: App["store"], hash: string): Promise<Judged | undefined> {
  const blob = await store.blob(hash);
  if (!blob.ok || !blob.value) return undefined;
  try {
    const judged: unknown = JSON.parse(new TextDecoder().decode(blob.value.bytes));
    // A judgement written by keepJudgedAgain; anything else has no list of faults.
    return typeof judged === "object" && judged !== null && "faults" in judged && Array.isArray(judged.faults)
      ? (judged as Judged)
      : undefined;
  } catch {
    return undefined;
  }
}
