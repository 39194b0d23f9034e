/** One car as its screen shows it: visits, what is known about it, what is still open. Pure. */
import type { Assessment } from "../../core/assess/contract.js";
import type { CarState, Summary, VisitSummary } from "../../core/record/index.js";
import type { BareCommon } from "../../core/sheet/run.js";
import { day, t } from "../texts/round.js";
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

/** Whether a judged visit has anything to come back to. */
export const openFaults = (assessment: Assessment | undefined): Assessment["faults"] => assessment?.faults ?? [];
