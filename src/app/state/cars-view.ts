/** The list of cars from the summaries of the record: own cars by what was last looked at, visits left open. Pure. */
import type { CarSummary, Summary, VisitSummary } from "../../core/record/index.js";
import { day, month, t } from "../texts/first.js";

export interface CarLine {
  readonly stream: string;
  readonly name: string;
  readonly demo: boolean;
  readonly second: string;
  readonly looked: boolean;
  readonly open?: VisitSummary;
  readonly last?: VisitSummary;
}

export const visitsOf = (summaries: readonly Summary[], car: string): readonly VisitSummary[] =>
  summaries
    .flatMap((one) => (one.of === "visit" && one.car === car ? [one] : []))
    .sort((a, b) => (a.on < b.on ? 1 : a.on > b.on ? -1 : a.stream < b.stream ? -1 : 1));

export const carName = (car: Pick<CarSummary, "names">): string => car.names.at(-1) ?? "";

function line(car: CarSummary, visits: readonly VisitSummary[]): CarLine {
  const open = visits.find((visit) => !visit.closed);
  const last = visits[0];
  const second = open
    ? t("cars.open-since", { when: day(Date.parse(open.on)) })
    : last
      ? t("cars.visits", { n: visits.length, when: month(Date.parse(last.on)) })
      : t("cars.not-looked");
  return {
    stream: car.stream,
    name: carName(car),
    demo: car.demo,
    second,
    looked: visits.some((visit) => visit.replies > 0),
    ...(open ? { open } : {}),
    ...(last ? { last } : {}),
  };
}

/** When anything was last entered about a car or in one of its visits. */
const touched = (car: CarSummary, visits: readonly VisitSummary[]): number =>
  Math.max(car.last.wall, ...visits.map((visit) => visit.last.wall));

export interface CarsView {
  /** Own cars, the one last touched first. */
  readonly own: readonly CarLine[];
  readonly demo: readonly CarLine[];
  /** The car that lies in the light. */
  readonly lit?: CarLine;
  /** Visits left open besides the lit car's. */
  readonly leftOpen: readonly { readonly car: CarLine; readonly visit: VisitSummary }[];
}

export function carsView(summaries: readonly Summary[]): CarsView {
  const cars = summaries
    .flatMap((one) => (one.of === "car" ? [{ car: one, visits: visitsOf(summaries, one.stream) }] : []))
    .sort((a, b) => touched(b.car, b.visits) - touched(a.car, a.visits));
  const lines = cars.map(({ car, visits }) => line(car, visits));
  const own = lines.filter((one) => !one.demo);
  const demo = lines.filter((one) => one.demo);
  const lit = own[0] ?? demo[0];
  const leftOpen = lines.flatMap((car) => (car !== lit && car.open ? [{ car, visit: car.open }] : []));
  return { own, demo, ...(lit ? { lit } : {}), leftOpen };
}
