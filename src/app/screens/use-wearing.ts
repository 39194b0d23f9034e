/** What is wearing on a car, judged visit by visit once the screen stands; undefined until it is known. */
import { useEffect, useMemo } from "preact/hooks";
import type { CarState, PlanState, VisitState } from "../../core/record/index.js";
import { useApp } from "../state/app.js";
import { visitsOf } from "../state/cars-view.js";
import { wayOf } from "../state/way.js";
import { allWearing, type Wearing } from "../state/wearing-view.js";
import { type WornCar, wornCar } from "../state/wearing-visits.js";
import { useLoaded } from "./use-loaded.js";

export interface WearingNow {
  readonly all: readonly Wearing[];
  readonly worn: WornCar;
  readonly plans: ReadonlyMap<string, PlanState>;
  /** Who looked at the newest visit is still looking, with the seller beside it. */
  readonly covered: boolean;
}

/** Changes whenever anything does that readings are judged by. */
const keyOf = (car: CarState, visits: readonly VisitState[]): string =>
  [car, ...visits].map(({ stream, ledger }) => `${stream} ${ledger.log.size}`).join();

const NONE: readonly VisitState[] = [];

/** Null: there is no visit that can be read. */
export function useWearing(car: CarState): WearingNow | null | undefined {
  const app = useApp();
  const { journal, remembered } = app;
  useEffect(() => void journal.refresh(), [journal]);
  const streams = journal.summaries.value && visitsOf(journal.summaries.value, car.stream).map(({ stream }) => stream);
  const opened = streams?.map((stream) => journal.keptVisit(stream).value);
  const isRead = opened?.every(({ is }) => is !== "opening") ?? false;
  const visits = isRead ? (opened ?? []).flatMap((one) => (one.is === "open" ? [one.state] : [])) : NONE;
  const plans = new Map(
    (streams ?? []).flatMap((stream) => {
      const plan = journal.keptPlan(stream).value;
      return plan.is === "open" ? [[stream, plan.state] as const] : [];
    }),
  );
  const worn = useLoaded(
    async () => (isRead ? { car: await wornCar(app, car, visits) } : undefined),
    isRead ? keyOf(car, visits) : "",
  );
  const said = [...plans].map(([stream, { ledger }]) => `${stream} ${ledger.log.size}`).join();
  return useMemo(() => {
    if (!worn) return undefined;
    if (!worn.car) return null;
    const newest = visits.find(({ stream }) => stream === streams?.[0]);
    const covered = newest !== undefined && !newest.closed && wayOf(remembered, newest).quiet;
    return { all: allWearing(worn.car, plans), worn: worn.car, plans, covered };
  }, [worn, said]);
}
