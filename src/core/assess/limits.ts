/** Which limits are in force over a reading, and where the reading lies among them. Concludes nothing by itself. */
import { type BandSpan, type Measured, NOT_APPLICABLE, type Outcome, Unknown } from "../expr/run.js";
import { type Basis, GRADES, type GradeLevel, levelOf } from "../terms/index.js";
import { type Bands, isUpper, type Span, spanOf } from "./band.js";
import { mildestOf, worstOf } from "./levels.js";
import type { BookFigure, LimitInfo, RefInfo } from "./model.js";
import { aggregate, onlyGrows } from "./reading.js";
import type { Site } from "./site.js";
import type { World } from "./world.js";

/** One limit in force (or that may be), with its edges as they hold here. */
export interface InForce {
  readonly limit: LimitInfo;
  readonly bands: Bands;
  readonly basis: Basis;
  readonly source: string;
  readonly isDefault: boolean;
  /** `true`, or what it waits for. */
  readonly applies: true | Unknown;
}
/** A reading against one limit. */
export interface JudgedBy extends InForce {
  readonly measured: Measured;
  readonly span: Span;
  /** Further readings could still make it worse. */
  readonly incomplete: boolean;
}
export interface BandRecord {
  readonly judged: readonly JudgedBy[];
  /** What a band comparison hears: known only where both ends agree. */
  readonly span: BandSpan;
  /** The same for a band finding: uncertainty counted at its worse end. */
  readonly worseEnd: BandSpan;
  /** The grade a band finding takes. */
  readonly level: GradeLevel;
  /** The better end of the uncertainty would be milder. */
  readonly close: boolean;
  /** A limit that may apply, or readings still to come, would be worse. */
  readonly atLeast: boolean;
  /** What would tell which limit applies, or complete the readings. */
  readonly deciding: ReadonlySet<string>;
}

/** The limits over a reference at a place; figures of the book first. Those known not to apply are left out. */
export function limitsInForce(world: World, info: RefInfo, place: string): readonly InForce[] {
  const { site, given } = world;
  const here = info.limits.filter((l) => holdsAt(site, l, place));
  const booked: InForce[] = [];
  const retired = { upper: false, lower: false };
  for (const limit of here) {
    world.note(site.bookOf(limit).id);
    for (const figure of figuresAt(site, given.book.get(limit.limit.id) ?? [], place)) {
      retired[isUpper(limit.direction) ? "upper" : "lower"] = true;
      booked.push({
        limit,
        bands: figure.bands,
        basis: figure.figure.basis,
        source: figure.figure.source ?? "",
        isDefault: false,
        applies: true,
      });
    }
  }
  const defaults = here
    .filter((l) => !retired[isUpper(l.direction) ? "upper" : "lower"])
    .flatMap((limit): readonly InForce[] => {
      const applies = world.applies(limit, place);
      if (applies !== true && !(applies instanceof Unknown && mayHold(applies))) return [];
      const { basis, source } = limit.limit;
      return [{ limit, bands: limit.bands, basis, source, isDefault: true, applies }];
    });
  return [...booked, ...defaults];
}

/** Not known, but could still be true: something is left to ask. */
const mayHold = (unknown: Unknown): boolean => unknown.missing.size > 0 && unknown.only !== false;

/** A limit holds at places of its class and inside them. */
function holdsAt(site: Site, limit: LimitInfo, place: string): boolean {
  const { class: kind } = limit.limit;
  return site.tree.kindOf(place) === kind || site.tree.around(place, kind) !== undefined;
}

/** Figures for this place: one named for it closest wins; two equally close both stand. */
function figuresAt(site: Site, figures: readonly BookFigure[], place: string): readonly BookFigure[] {
  const fitting = figures.filter((f) => f.figure.place === undefined || site.within(f.figure.place, place));
  const closer = (a: BookFigure, b: BookFigure): boolean => {
    const [x, y] = [a.figure.place, b.figure.place];
    if (x === undefined || x === y) return false;
    return y === undefined || site.within(y, x);
  };
  return fitting.filter((f) => !fitting.some((other) => closer(other, f)));
}

/** Judges a reading (or derived value) against every limit in force over it. */
export function judgeBand(world: World, info: RefInfo, place: string): Outcome<BandRecord> {
  const inForce = limitsInForce(world, info, place);
  if (inForce.length === 0) return NOT_APPLICABLE;
  const judged: JudgedBy[] = [];
  const limits: InForce[] = [];
  const missing = new Set<string>();
  for (const one of inForce) {
    const by = judgeBy(world, info, place, one);
    if (!(by instanceof Unknown)) judged.push(by);
    else {
      limits.push(one);
      for (const key of by.missing) missing.add(key);
    }
  }
  if (judged.length === 0) return new Unknown(missing);
  return together(world, info, place, judged, { limits, missing });
}

/** Limits this reading cannot be held to yet: the mean of readings still to come. */
interface Unjudged {
  readonly limits: readonly InForce[];
  readonly missing: ReadonlySet<string>;
}

/** The worst grade a limit could give. */
const worstEdge = (bands: Bands): GradeLevel => worstOf(...GRADES.filter((g) => bands[g] !== undefined).map(levelOf));

function judgeBy(world: World, info: RefInfo, place: string, one: InForce): JudgedBy | Unknown {
  const { direction, aggregate: how } = one.limit;
  const slot = world.site.slotFor(info, place);
  const standing = slot && world.standing(slot);
  let measured: Outcome<Measured>;
  let incomplete = false;
  if (slot !== undefined && standing?.shots !== undefined) {
    incomplete = standing.shots.values.length < slot.field.shots;
    if (incomplete && !onlyGrows(how, direction)) return slot.unknown;
    measured = aggregate(standing.shots, how, direction) ?? slot.unknown;
  } else measured = world.measuredOf(info, place);
  if (measured instanceof Unknown) return measured;
  return { ...one, measured, span: spanOf(measured.value, measured.u, one.bands, direction), incomplete };
}

/**
 * Limits that certainly apply: the worst rules. Several that may apply and none that certainly does: the mildest
 * grade they agree on. One alone that may apply says nothing for certain. Too much and too little are judged apart:
 * a window is two limits.
 */
function together(
  world: World,
  info: RefInfo,
  place: string,
  judged: readonly JudgedBy[],
  unjudged: Unjudged,
): BandRecord {
  const maybe = judged.filter((j) => j.applies !== true);
  const senses = [judged.filter((j) => isUpper(j.limit.direction)), judged.filter((j) => !isUpper(j.limit.direction))];
  const agree = (levels: (j: JudgedBy) => GradeLevel): GradeLevel =>
    worstOf(
      ...senses.map((sense) => {
        const certain = sense.filter((j) => j.applies === true);
        if (certain.length > 0) return worstOf(...certain.map(levels));
        return sense.length > 1 ? mildestOf(...sense.map(levels)) : 0;
      }),
    );
  const low = agree((j) => j.span.low);
  const level = agree((j) => j.span.high);
  const incomplete = judged.some((j) => j.incomplete);
  const yet = [...judged.filter((j) => j.incomplete), ...unjudged.limits].map((l) => worstEdge(l.bands));
  const highest = worstOf(...judged.map((j) => j.span.high), ...yet);
  const deciding = new Set<string>();
  if (highest > level) {
    for (const key of unjudged.missing) deciding.add(key);
    for (const j of maybe) if (j.applies !== true) for (const key of j.applies.missing) deciding.add(key);
    const slot = incomplete ? world.site.slotFor(info, place) : undefined;
    if (slot !== undefined) deciding.add(slot.key);
  }
  const close = low < level;
  const missing = new Set(deciding);
  if (judged.some((j) => j.span.low !== j.span.high)) for (const key of world.closerKeys(info, place)) missing.add(key);
  const none: ReadonlySet<string> = new Set();
  return {
    judged,
    span: { low, high: highest, missing: low === highest ? none : missing },
    worseEnd: { low: level, high: highest, missing: level === highest ? none : deciding },
    level,
    close,
    atLeast: highest > level,
    deciding,
  };
}

/** The limit that gives the grade: the first with it at the worse end; its edge of that grade. */
export function decisive(record: BandRecord): { readonly by: JudgedBy; readonly edge: number } | undefined {
  for (const by of record.judged) {
    if (by.span.high < record.level || record.level === 0) continue;
    const [grade, edge] = Object.entries(by.bands).find(([g]) => isLevel(g, by.span.high)) ?? [];
    if (grade !== undefined && edge !== undefined) return { by, edge };
  }
  return undefined;
}

function isLevel(grade: string, level: GradeLevel): boolean {
  return (
    (grade === "advisory" || grade === "minor" || grade === "major" || grade === "dangerous") &&
    levelOf(grade) === level
  );
}
