/** One car as its screen shows it: visits, what is known about it, what is still open. Pure. */
import type { Assessment } from "../../core/assess/contract.js";
import type { CarState, Summary, VisitState, VisitSummary } from "../../core/record/index.js";
import type { BareCommon, CommonTexts } from "../../core/sheet/run.js";
import { day, t } from "../texts/index.js";
import { visitsOf } from "./cars-view.js";
import { odometerText } from "./odometer.js";

export const carTitle = (car: CarState): string => car.names.at(-1)?.value ?? "";

/** Two names that both stand, told so that someone settles it. */
export function namesThatDiffer(car: CarState): string | undefined {
  const names = [...new Set(car.names.map(({ value }) => value))];
  return names.length > 1 ? t("car.differ-names", { names: names.join(", ") }) : undefined;
}

export interface VisitLine {
  readonly stream: string;
  readonly title: string;
  readonly second: string;
  readonly closed: boolean;
}

const visitLine = (visit: VisitSummary): VisitLine => ({
  stream: visit.stream,
  title: `${t(`purpose.${visit.purpose}`)}, ${day(Date.parse(visit.on))}`,
  second: [
    t(`who.${visit.who}`),
    ...(visit.odometer ? [odometerText(visit.odometer)] : []),
    visit.closed ? t("visit.closed-short") : t("visit.open-short"),
  ].join(", "),
  closed: visit.closed,
});

export const visitLines = (summaries: readonly Summary[], car: string): readonly VisitLine[] =>
  visitsOf(summaries, car).map(visitLine);

/** How many facts the rules may ask for are known. */
export function factsKnown(car: CarState, common: BareCommon): string {
  const known = common.facts.filter((fact) => (car.facts.get(fact.id)?.length ?? 0) > 0).length;
  return t("car.facts.says", { known, all: common.facts.length });
}

export const limitsKnown = (car: CarState): string =>
  car.limits.size === 0 ? t("car.limits.none") : t("car.limits.some", { n: car.limits.size });

export interface FactLine {
  readonly id: string;
  readonly name: string;
  readonly kind: "word" | "number" | "year" | "yes";
  readonly unit?: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly words: string }[];
}

/** Every fact the shared files know, with what stands for it as a text. */
export function factLines(car: CarState, common: BareCommon, words: CommonTexts): readonly FactLine[] {
  return common.facts.map((fact) => {
    const text = words.facts[fact.id];
    const stands = car.facts.get(fact.id)?.at(-1)?.value;
    const unknown = { value: "", words: t("facts.unknown") };
    const yesNo = [
      { value: "true", words: t("app.yes") },
      { value: "false", words: t("app.no") },
    ];
    const choices = (fact.words ?? []).map((word) => ({ value: word, words: text?.words?.[word] ?? word }));
    return {
      id: fact.id,
      name: text?.name ?? fact.id,
      kind: fact.kind,
      ...(fact.unit === undefined ? {} : { unit: fact.unit }),
      value: stands === undefined ? "" : String(stands),
      options: fact.kind === "word" ? [unknown, ...choices] : fact.kind === "yes" ? [unknown, ...yesNo] : [],
    };
  });
}

/** A fact's text as its value; null takes it back, undefined is no value of this kind. */
export function factValue(kind: FactLine["kind"], text: string): string | number | boolean | null | undefined {
  if (text.trim() === "") return null;
  switch (kind) {
    case "word":
      return text;
    case "yes":
      return text === "true";
    case "year":
      return /^(18|19|20)\d\d$/.test(text.trim()) ? Number(text.trim()) : undefined;
    case "number": {
      const value = Number(text.trim().replace(",", "."));
      return Number.isFinite(value) ? value : undefined;
    }
  }
}

export interface StillOpen {
  readonly id: string;
  readonly title: string;
  readonly second: string;
}

/** Complaints of the last visit; they stay open until they are answered. */
export const openComplaints = (visit: VisitState | undefined): readonly StillOpen[] =>
  (visit?.complaints ?? []).map(({ id, value }) => ({ id, title: `“${value.text}”`, second: t("car.complaint") }));

/** Whether a judged visit has anything to come back to. */
export const openFaults = (assessment: Assessment | undefined): Assessment["faults"] => assessment?.faults ?? [];
