/**
 * What the open sheets and the shared files say, looked up by id and told in the words of who looks.
 * Pure look-ups over loaded data; knows no reply and judges nothing.
 */
import {
  type BareCommon,
  type BareCommonTexts,
  type BareSheet,
  type CarState,
  type Caution,
  type Complaints,
  type Field,
  type Gate,
  type Gauge,
  type Job,
  type Limit,
  type Point,
  type PointText,
  type Rule,
  type SheetTexts,
  withBrought,
  withBroughtTexts,
} from "../../core/sheet/run.js";
import type { Audience } from "../../core/terms/index.js";
import { t } from "../texts/first.js";

/** A sheet of a visit with its words in one language. */
export interface OpenSheet {
  readonly sheet: BareSheet;
  readonly texts: SheetTexts;
}

export interface KnownPoint {
  readonly point: Point;
  readonly text: PointText;
  readonly sheet: string;
}

/** A job in a person's own words; hours as typed. */
export interface OwnJob {
  readonly words: string;
  readonly hours?: string;
}

/** Everything a visit's screens can look up. Gates of the shared files and of the sheets stand together. */
export interface Knowledge {
  readonly common: BareCommon;
  readonly words: BareCommonTexts;
  /** Fetched once a visit has a complaint. */
  readonly complaints?: Complaints;
  readonly sheets: readonly OpenSheet[];
  readonly points: ReadonlyMap<string, KnownPoint>;
  readonly rules: ReadonlyMap<string, Rule>;
  readonly limits: ReadonlyMap<string, Limit>;
  readonly jobs: ReadonlyMap<string, { readonly job: Job; readonly texts: SheetTexts }>;
  /** Jobs of findings off the list. */
  readonly ownJobs?: ReadonlyMap<string, OwnJob>;
  readonly gates: ReadonlyMap<string, Gate>;
  readonly gauges: ReadonlyMap<string, Gauge>;
  readonly cautions: ReadonlyMap<string, Caution>;
  readonly states: ReadonlyMap<string, CarState>;
}

const byId = <Item extends { readonly id: string }>(items: readonly Item[]): ReadonlyMap<string, Item> =>
  new Map(items.map((item) => [item.id, item]));

/**
 * Joins the shared files and the sheets of a visit with what these bring. Where an id occurs twice the first sheet's
 * stands.
 */
export function knowledgeOf(shared: BareCommon, sharedWords: BareCommonTexts, sheets: readonly OpenSheet[]): Knowledge {
  const common = withBrought(
    shared,
    sheets.map(({ sheet }) => sheet),
  );
  const words = withBroughtTexts(
    sharedWords,
    sheets.map(({ texts }) => texts),
  );
  const points = new Map<string, KnownPoint>();
  const jobs = new Map<string, { job: Job; texts: SheetTexts }>();
  for (const { sheet, texts } of sheets) {
    for (const point of sheet.points) {
      const text = texts.points[point.id] ?? { name: point.id, ask: {} };
      if (!points.has(point.id)) points.set(point.id, { point, text, sheet: sheet.id });
    }
    for (const job of sheet.jobs) if (!jobs.has(job.id)) jobs.set(job.id, { job, texts });
  }
  return {
    common,
    words,
    sheets,
    points,
    jobs,
    rules: byId([...common.rules, ...sheets.flatMap(({ sheet }) => sheet.rules)]),
    limits: byId(sheets.flatMap(({ sheet }) => sheet.limits)),
    gates: byId([...common.gates, ...sheets.flatMap(({ sheet }) => sheet.gates)]),
    gauges: byId(common.gauges),
    cautions: byId(common.cautions),
    states: byId(common.states),
  };
}

/** The same with this car's own names for its places. */
export function withPlaceNames(
  known: Knowledge,
  names: ReadonlyMap<string, readonly { readonly value: string }[]>,
): Knowledge {
  if (names.size === 0) return known;
  const places = { ...known.words.places };
  for (const [place, standing] of names) places[place] = standing.at(-1)?.value ?? place;
  return { ...known, words: { ...known.words, places } };
}

/** With its first letter large: sheets write places small, as they stand inside a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `, rear right` behind a name; nothing for the car as a whole. */
export const atPlace = (known: Knowledge, place: string): string =>
  place === "car" ? "" : `, ${placeName(known, place)}`;

export const placeName = (known: Knowledge, place: string): string => known.words.places[place] ?? place;
/** The name of a value worked out. */
export const derivedName = (known: Knowledge, id: string): string =>
  known.sheets.map(({ texts }) => texts.derived?.[id]).find((text) => text !== undefined) ?? id;
export const stateName = (known: Knowledge, state: string): string => known.words.states[state]?.name ?? state;
export const pointName = (known: Knowledge, point: string): string => known.points.get(point)?.text.name ?? point;

/** The question of a point for who looks; the technician's where a sheet words it once for all. */
export function questionOf(text: PointText, who: Audience): string {
  const { technician, buyer, owner } = text.ask;
  const order =
    who === "owner"
      ? [owner, buyer, technician]
      : who === "buyer"
        ? [buyer, technician, owner]
        : [technician, buyer, owner];
  return order.find((ask) => ask !== undefined) ?? text.name;
}

/** A reply word as it is shown. Words of one field may be kept under `field.word` where two fields share a word. */
export function replyWord(text: PointText, field: string, word: string, who: Audience): string {
  const kept = text.words?.[`${field}.${word}`] ?? text.words?.[word];
  if (kept === undefined) return word.replaceAll("-", " ");
  if (typeof kept === "string") return kept;
  return who === "owner" ? kept.owner : kept.technician;
}

/** What the field is called beside others of the same point. */
export const fieldName = (text: PointText, field: string): string => text.fields?.[field] ?? text.name;

/** What a fault is called: the rule's own wording first, then the fault's; owner wording for owners. */
export function faultSays(
  known: Knowledge,
  fault: string,
  rules: readonly string[],
  who: Audience,
): { readonly says: string; readonly cause?: string } {
  const [only] = rules.length === 1 ? rules : [];
  const texts = [known.words, ...known.sheets.map(({ texts: own }) => own)].flatMap((own) => [
    only === undefined ? undefined : own.rules?.[only],
    own.faults?.[fault],
  ]);
  const found = texts.find((text) => text !== undefined);
  if (!found) return { says: plainWord(fault) };
  // A rule's own words for the trade are no words for an owner: where it has none for one, the fault's are told.
  const says = (who === "owner" && texts.find((text) => text?.owner)?.owner) || found.says;
  return found.cause === undefined ? { says } : { says, cause: found.cause };
}

/** What opened a point or would be decided by it: a rule by its finding, a complaint or gate by its name. */
export function becauseSays(known: Knowledge, id: string, who: Audience): string {
  const fault = known.rules.get(id)?.fault;
  if (fault !== undefined) return faultSays(known, fault, [id], who).says;
  return known.complaints?.texts[id]?.name ?? known.words.gates[id]?.name ?? ruleSays(known, id, who);
}

/** An id nobody has words for, at least without its signs: `wheel fixing`. */
export const plainWord = (id: string): string => id.slice(id.lastIndexOf(".") + 1).replaceAll(/[-_]/g, " ");

/** A rule by its own words, else by the fault it names; never by its id. */
export function ruleSays(known: Knowledge, rule: string, who: Audience): string {
  const own = [known.words, ...known.sheets.map(({ texts }) => texts)]
    .map((texts) => texts.rules?.[rule])
    .find((text) => text !== undefined);
  if (own) return who === "owner" && own.owner !== undefined ? own.owner : own.says;
  const fault = known.rules.get(rule)?.fault;
  return fault === undefined ? t("app.a-rule") : faultSays(known, fault, [rule], who).says;
}

/** Which of the five kinds of reply a field takes. */
export type FieldKind = "words" | "reading" | "count" | "yes" | "date-code";
export function fieldKind(field: Field): FieldKind {
  if ("words" in field) return "words";
  if ("quantity" in field) return "reading";
  if ("count" in field) return "count";
  return "yes" in field ? "yes" : "date-code";
}

/** Fields of a point that must be answered before it counts as answered. */
export const requiredFields = (point: Point): readonly string[] =>
  Object.entries(point.fields).flatMap(([name, field]) => (field.optional ? [] : [name]));
