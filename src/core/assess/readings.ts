/** Readings as judged, for the screen: value, uncertainty and every limit over it. Concludes nothing. */
import { Unknown } from "../expr/run.js";
import { GRADES, type Grade, type GradeLevel, gradeOf } from "../terms/index.js";
import { isQuantity } from "../units/index.js";
import { type Bands, standingOf } from "./band.js";
import { edgeInUnit, measuredIn } from "./because.js";
import { underEveryChoice } from "./choices.js";
import type { JudgedLimit, JudgedReading } from "./contract.js";
import type { BandRecord, JudgedBy } from "./limits.js";
import type { RefInfo } from "./model.js";
import type { World } from "./world.js";

/** A reading or derived value at a place, as its limits see it. */
export interface Judged {
  readonly reading: JudgedReading | undefined;
  /** Worst grade at the severe end; 0 inside all. */
  readonly level: GradeLevel;
  /** Not known under some choice, too close, or a limit that may apply. */
  readonly open: boolean;
  /** Slots it rests on. */
  readonly under: readonly number[];
}

/** Judges one reference at one place; with differing replies the worst of them counts. */
export function judge(world: World, ref: RefInfo, place: string): Judged & { readonly reads: readonly number[] } {
  const under = new Set<number>();
  const asked = underEveryChoice(world, (): { record: BandRecord | Unknown; reading: JudgedReading | undefined } => {
    const start = world.mark();
    const record = world.bandOf(ref, place);
    const reading = shown(world, ref, place, record);
    for (const id of world.slotsUnder(world.since(start))) under.add(id);
    return { record, reading };
  });
  let level: GradeLevel = 0;
  let open = asked.tooMany.length > 0;
  let reading: JudgedReading | undefined;
  for (const { value } of asked.answers) {
    if (value.record instanceof Unknown) open ||= value.record.missing.size > 0;
    else {
      open ||= value.record.span.low !== value.record.span.high;
      if (value.record.level > level) {
        level = value.record.level;
        reading = value.reading;
      }
    }
    reading ??= value.reading;
  }
  return { reading, level, open, under: [...under], reads: [...new Set(asked.reads)] };
}

function shown(world: World, ref: RefInfo, place: string, record: BandRecord | Unknown): JudgedReading | undefined {
  if (ref.is === "stranger") return undefined;
  const measured = world.measuredOf(ref, place);
  const judged = record instanceof Unknown ? [] : record.judged;
  const first = judged[0]?.measured ?? (measured instanceof Unknown ? undefined : measured);
  if (first === undefined) return undefined;
  const { unit, quantity } = unitOfRef(ref);
  const id = ref.is === "field" ? ref.point.id : ref.derived.derived.id;
  return {
    point: id,
    field: ref.is === "field" ? ref.field.name : "",
    place,
    ...measuredIn(first.value, first.u, unit, quantity),
    unit,
    limits: judged.map(judgedLimit),
  };
}

function unitOfRef(ref: RefInfo & { is: "field" | "derived" }): { readonly unit: string; readonly quantity: string } {
  if (ref.is === "derived") return ref.derived.derived;
  return "quantity" in ref.field.field ? ref.field.field : { unit: "1", quantity: "" };
}

function judgedLimit(by: JudgedBy): JudgedLimit {
  const { limit } = by.limit;
  return {
    limit: limit.id,
    direction: limit.direction,
    bands: bandsInUnit(by),
    unit: limit.unit,
    basis: by.basis,
    source: by.source,
    isDefault: by.isDefault,
    state: by.incomplete && by.span.high < 3 ? "too close" : standingOf(by.span),
    grade: gradeOf(by.span.high),
    applies: by.applies === true ? "yes" : "not known",
  };
}

function bandsInUnit(by: JudgedBy): Bands {
  if (!isQuantity(by.limit.limit.quantity)) return {};
  const out: Partial<Record<Grade, number>> = {};
  for (const grade of GRADES) {
    const edge = by.bands[grade];
    if (edge !== undefined) out[grade] = edgeInUnit(by, edge);
  }
  return out;
}
