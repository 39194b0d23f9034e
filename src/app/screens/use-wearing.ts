/** What is wearing on a car, judged visit by visit once the screen stands; undefined until it is known. */
import { useEffect, useMemo } from "preact/hooks";
import type { CarState, PlanState, VisitState } from "../../core/record/index.js";
import { useApp } from "../state/app.js";
import { visitsOf } from "../state/cars-view.js";
import { wayOf } from "../state/way.js";
import { allWearing, type Untold, untoldIn, type Wearing } from "../state/wearing-view.js";
import { type LeftVisit, type WornCar, wornVisits } from "../state/wearing-visits.js";
import { useLoaded } from "./use-loaded.js";

export interface WearingNow {
  readonly all: readonly Wearing[];
  /** Parts that can't be compared, or not at every visit. */
  readonly untold: readonly Untold[];
  /** Visits that can't be compared. */
  readonly left: readonly LeftVisit[];
  readonly worn: WornCar;
  readonly plans: ReadonlyMap<string, PlanState>;
  readonly visits: readonly VisitState[];
  /** Who looked at the newest visit is still looking, with the seller beside it. */
  readonly covered: boolean;
}

/** Changes whenever anything does that readings are judged by. */
const keyOf = (car: CarState, visits: readonly VisitState[]): string =>
  [car, ...visits].map(({ stream, ledger }) => `${stream} ${ledger.log.size}`).join();

const NONE: readonly VisitState[] = [];

/** There is no visit that can be read: nothing to compare, and these are why. */
export interface NoWearing {
  readonly worn?: never;
  readonly all?: never;
  readonly covered?: never;
  readonly left: readonly LeftVisit[];
}

/** As {@link useWearingVisits}; null where no visit can be read. */
export function useWearing(car: CarState): WearingNow | null | undefined {
  const now = useWearingVisits(car);
  return now && !now.worn ? null : now;
}

/** What is wearing, with every visit that is not compared. */
export function useWearingVisits(car: CarState): WearingNow | NoWearing | undefined {
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
  // One taken for missing is deleted: nothing of it is left to compare.
  const unread = (streams ?? []).flatMap((stream, i): readonly LeftVisit[] =>
    opened?.[i]?.is === "trouble" ? [{ stream, why: "unread" }] : [],
  );
  const worn = useLoaded(
    async () => (isRead ? await wornVisits(app, car, visits) : undefined),
    isRead ? keyOf(car, visits) : "",
  );
  const said = [...plans].map(([stream, { ledger }]) => `${stream} ${ledger.log.size}`).join();
  return useMemo(() => {
    if (!worn) return undefined;
    const left = [...unread, ...worn.left];
    if (!worn.worn) return { left };
    const newest = visits.find(({ stream }) => stream === streams?.[0]);
    const covered = newest !== undefined && !newest.closed && wayOf(remembered, newest).quiet;
    const told = worn.worn;
    return { all: allWearing(told, plans), untold: untoldIn(told), left, worn: told, plans, visits, covered };
  }, [worn, said, unread.length]);
}
