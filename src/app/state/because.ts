/**
 * The because of a finding in words: what was seen, heard, felt or measured, which limit with its figure and
 * basis, and so. Pure; concludes nothing of its own.
 */
import type { Because, Fault, Finding } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import { type Audience, GRADES, levelOf, type ReplyKey } from "../../core/terms/index.js";
import { decimalsOf, show } from "../../core/units/index.js";
import { clock, day, decimalComma, type PlainKey, t } from "../texts/index.js";
import { unitShown } from "../texts/units.js";
import { atPlace, derivedName, faultSays, type Knowledge, plainWord, pointName, ruleSays } from "./knowledge.js";
import { odometerText } from "./odometer.js";
import { to } from "./routes.js";
import { replyText } from "./telling.js";
import { valueText } from "./worked-figures.js";

/** Conditions write `_` where ids of facts have `-`. */
const factId = (name: string): string => name.replaceAll("_", "-");

/** One step, with the address of what it rests on. */
export interface Step {
  readonly id: string;
  readonly kind: string;
  readonly says: string;
  readonly aside?: string;
  readonly concludes?: boolean;
  readonly href?: string;
  /** A value worked out: its formula can be opened. */
  readonly worked?: { readonly id: string; readonly place: string };
}

/** What the sense is by the aid a point names; an aid not listed is looked with. */
const SENSE: readonly (readonly [RegExp, PlainKey])[] = [
  [/stethoscope|ear|listen|phone|rod/, "finding.heard"],
  [/hand|palm|helper|finger|foot/, "finding.felt"],
  [/paper|book|talk|owner/, "finding.told"],
];
/** What is only said or heard in these car states, where a point names no aid. */
const STATE_SENSE: Readonly<Record<string, PlainKey>> = { "w0-talk": "finding.told", "w4-road": "finding.heard" };

/** Seen, heard, felt, told or measured, as a text key. */
export function senseOf(known: Knowledge, key: ReplyKey, isReading: boolean): PlainKey {
  if (isReading) return "finding.measured";
  const tool = known.points.get(key.point)?.point.tool ?? "";
  const found = SENSE.find(([pattern]) => pattern.test(tool))?.[1];
  return found ?? STATE_SENSE[key.state] ?? "finding.seen";
}

const written = (value: number, like: number): string => show(value, Math.max(decimalsOf(like), 2), decimalComma.value);

/** What the trace is told from. */
/** A person's own words as a sentence of its own. */
const ended = (words: string): string => (/[.!?]$/.test(words) ? words : `${words}.`);

export interface Telling {
  readonly known: Knowledge;
  readonly who: Audience;
  /** Visit and car in addresses. */
  readonly visit: string;
  readonly car: string;
  readonly pictures: VisitState["pictures"];
}

function pictureAside({ pictures }: Telling, key: ReplyKey): string | undefined {
  const count = pictures.filter(({ value }) => value.point === key.point && value.place === key.place).length;
  return count > 0 ? t("round.pictures", { n: count }) : undefined;
}

/** One step of a because in words. */
export function stepOf(telling: Telling, because: Because, fault: { readonly place: string }, id: string): Step {
  const { known, who, visit } = telling;
  switch (because.kind) {
    case "reply": {
      const { key } = because;
      const point = known.points.get(key.point);
      const elsewhere = key.place === fault.place ? "" : atPlace(known, key.place);
      const aside = because.supports ? t("finding.supports") : pictureAside(telling, key);
      return {
        id,
        kind: t(senseOf(known, key, because.value.type === "reading")),
        says: `${pointName(known, key.point)}: ${replyText(point, key.field, because.value, who)}${elsewhere}`,
        ...(aside === undefined ? {} : { aside }),
        href: to("point", { visit, state: key.state, place: key.place, point: key.point }),
      };
    }
    case "fact": {
      const text = known.words.facts[factId(because.name)];
      const value =
        typeof because.value === "string"
          ? (text?.words?.[because.value] ?? because.value)
          : typeof because.value === "boolean"
            ? t(because.value ? "app.yes" : "app.no")
            : String(because.value);
      return { id, kind: t("finding.fact"), says: `${text?.name ?? plainWord(because.name)}: ${value}` };
    }
    case "limit": {
      const over = known.limits.get(because.limit)?.direction.includes("under") ? "under" : "over";
      const edge = written(because.edge, because.edge);
      const basis = t(`basis.${because.basis}`);
      return {
        id,
        kind: t("finding.limit"),
        says: `${t(`finding.limit.${over}`, { edge, unit: unitShown(because.unit) })}: ${t(`grade.${because.grade}`)}. ${t("finding.limit.says", { value: written(because.value, because.edge), uncertainty: written(because.uncertainty, because.edge), unit: unitShown(because.unit) })}`,
        aside: [basis, ...(because.isDefault ? [t("basis.default")] : [])].join(", "),
        href: to("limit", { car: telling.car, limit: because.limit }),
      };
    }
    case "derived": {
      const { value, uncertainty, place } = because;
      return {
        id,
        kind: t("finding.derived"),
        says: `${derivedName(known, because.id)}: ${valueText(value, uncertainty, because.unit)}`,
        worked: { id: because.id, place },
      };
    }
    case "earlier": {
      const { key } = because;
      const point = known.points.get(key.point);
      const elsewhere = key.place === fault.place ? "" : atPlace(known, key.place);
      const on = day(Date.parse(because.at));
      return {
        id,
        kind: t("finding.earlier"),
        says: `${pointName(known, key.point)}: ${replyText(point, key.field, because.value, who)}${elsewhere}`,
        aside:
          because.odometer === undefined
            ? on
            : `${on}, ${odometerText({ ...because.odometer, value: String(because.odometer.value) })}`,
      };
    }
    case "found":
      return {
        id,
        kind: t("finding.found"),
        says: `${faultSays(known, because.fault, [], who).says}${atPlace(known, because.place)}`,
      };
    case "own-words":
      return {
        id,
        kind: t("finding.seen"),
        says: ended(because.words),
        aside: [
          ...(because.reason === "" ? [] : [ended(because.reason)]),
          t("off-list.by", {
            name: because.by || t("differ.nameless"),
            when: `${day(because.at)}, ${clock(because.at)}`,
          }),
        ].join(" "),
      };
    case "raised":
      return {
        id,
        kind: t("finding.raised"),
        says: t("finding.raised.says", { why: ruleSays(known, because.rule, who) }),
      };
  }
}

/** A reply or limit named by several rules stands once in the trace. */
function onceEach(all: readonly Because[]): readonly Because[] {
  const seen = new Set<string>();
  return all.filter((one) => {
    const text = one.kind === "reply" ? JSON.stringify([one.kind, one.key, one.value]) : JSON.stringify(one);
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}

/** What decided the rules of the worst grade; limits and raising stay, replies beyond the first few do not. */
function cut(own: readonly Finding[]): readonly Because[] {
  const worst = Math.max(...own.map((one) => levelOf(one.grade)));
  const told = onceEach(own.filter((one) => levelOf(one.grade) === worst).flatMap((one) => one.because));
  const deciding = told.filter((one) => one.kind !== "reply" || !one.supports);
  const isKept = (one: Because): boolean => one.kind === "limit" || one.kind === "raised";
  const stays = deciding.filter(isKept);
  const rest = deciding.filter((one) => !isKept(one));
  return [...rest.slice(0, Math.max(1, SHORT - stays.length)), ...stays];
}

const ORDER: readonly Because["kind"][] = [
  "own-words",
  "reply",
  "fact",
  "derived",
  "earlier",
  "found",
  "limit",
  "raised",
];

/** Each once, in the order it is told: what was replied, what it rests on, which limit. */
export const inTelling = (all: readonly Because[]): readonly Because[] =>
  [...onceEach(all)].sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));

/** Steps shown where a finding lies open among others; its own page shows all. */
const SHORT = 6;

/**
 * The trace of a fault: what was replied, what it is, and what would settle it. `short`: only what decided the rules
 * of the worst grade; else every step of every rule that names it.
 */
export function traceOf(telling: Telling, fault: Fault, findings: readonly Finding[], short = false): readonly Step[] {
  const own = findings.filter(
    (one) => one.fault === fault.fault && fault.rules.includes(one.rule) && one.place === fault.place,
  );
  const steps = inTelling(short ? cut(own) : own.flatMap((one) => one.because)).map((one, index) =>
    stepOf(telling, one, fault, String(index)),
  );
  const atLeast = own.some((one) => one.atLeast) && !own.some((one) => !one.atLeast && one.grade === fault.grade);
  const grade = t(`grade.${fault.grade}`);
  const said = atLeast ? t("findings.at-least", { grade }) : grade;
  const so: Step = {
    id: "so",
    kind: t("finding.so"),
    says: fault.close
      ? t("finding.so.close", { grade: said })
      : t("finding.so.says", { grade: said, sure: t(`sure.${fault.sure}`) }),
    ...(fault.provisional ? { aside: t("findings.provisional") } : {}),
    concludes: true,
  };
  const settle =
    fault.sure === "certain"
      ? []
      : answerable(telling, fault.settle)
          .slice(0, 2)
          .map(
            (one, index): Step => ({
              id: `settle-${index}`,
              kind: t("finding.to-settle"),
              says: settleText(telling, one),
              ...settleHref(telling, one),
            }),
          );
  return [...steps, so, ...settle];
}

/** Facts about the car come as points of this kind. */
const FACT = "car.";
const factOf = (point: string): string | undefined => (point.startsWith(FACT) ? point.slice(FACT.length) : undefined);

/** `Spin by hand, rear left`; a fact about the car by its name. */
export function settleText(
  { known }: Pick<Telling, "known">,
  one: { readonly point: string; readonly place: string },
): string {
  const fact = factOf(one.point);
  if (fact !== undefined) return known.words.facts[factId(fact)]?.name ?? plainWord(fact);
  return `${pointName(known, one.point)}${atPlace(known, one.place)}`;
}

/** The address where an opened point is answered: in its first car state; facts on the car's own page. */
export function settleHref(
  { known, visit, car }: Pick<Telling, "known" | "visit" | "car">,
  one: { readonly point: string; readonly place: string },
): { readonly href?: string } {
  if (factOf(one.point) !== undefined) return { href: to("facts", { car }) };
  const state = known.points.get(one.point)?.point.states[0];
  return state === undefined ? {} : { href: to("point", { visit, state, place: one.place, point: one.point }) };
}

/** Those that can be answered in this visit: a point of a sheet that is not open has neither words nor a place here. */
export const answerable = <One extends { readonly point: string; readonly place: string }>(
  telling: Pick<Telling, "known" | "visit" | "car">,
  all: readonly One[],
): readonly One[] => all.filter((one) => settleHref(telling, one).href !== undefined);

/** Faults worst first, then surer first, then as they stand in the round. */
export function worstFirst(faults: readonly Fault[]): readonly Fault[] {
  return [...faults].sort(
    (a, b) =>
      GRADES.indexOf(b.grade) - GRADES.indexOf(a.grade) || a.position - b.position || (a.fault < b.fault ? -1 : 1),
  );
}
