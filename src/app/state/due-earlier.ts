/** Reads and judges the visits before one, once while the app runs, for what is due in it. Knows no screen. */
import { computed, effect, type ReadonlySignal, signal } from "@preact/signals";
import { type CarState, lookedOn, type PlanState, type VisitState } from "../../core/record/index.js";
import { visitsOf } from "./cars-view.js";
import type { DeskNeeds } from "./desk.js";
import { type DueLooks, type DueUnknown, dueLooks } from "./due-points.js";
import type { Opened } from "./journal.js";
import type { LooksOf } from "./looks-ground.js";
import { kmAt } from "./rechecks-in.js";
import { isViewing } from "./way.js";
import { allWearing } from "./wearing-view.js";
import { type LeftVisit, wornVisits } from "./wearing-visits.js";

type Needs = Omit<DeskNeeds, "remembered">;
interface Known {
  readonly of: Omit<LooksOf, "today">;
  /** Work lists that could not be read. */
  readonly plans: number;
}
/** Undefined until they are judged; null where nobody looked before. */
type Earlier = Known | DueUnknown | null | undefined;

const UNKNOWN: DueUnknown = { unread: { visits: "all", plans: 0 } };

/**
 * What a later window or a plan changes meanwhile counts from the next start on: the walk must not shift under the hand.
 * Only what could not be read is taken in as soon as it can be.
 */
const made = new WeakMap<DeskNeeds["journal"], Map<string, ReadonlySignal<Earlier>>>();

const dayOf = (visit: VisitState): string => lookedOn(visit).slice(0, 10);

function earlierOf(needs: Needs, visit: VisitState): ReadonlySignal<Earlier> {
  const own = made.get(needs.journal) ?? new Map<string, ReadonlySignal<Earlier>>();
  made.set(needs.journal, own);
  const there = own.get(visit.stream) ?? begun(needs, visit);
  own.set(visit.stream, there);
  return there;
}

/** The car and the visits before one, as far as they could be read. */
interface Read {
  readonly car: Opened<CarState>;
  readonly before: readonly {
    readonly stream: string;
    readonly visit: Opened<VisitState>;
    readonly plan: Opened<PlanState>;
  }[];
}

function readBefore({ journal }: Needs, visit: VisitState): Read | undefined {
  const stream = visit.opened?.value.car ?? "";
  const before = visitsOf(journal.summaries.value ?? [], stream).flatMap((one) =>
    one.stream !== visit.stream && one.on < lookedOn(visit)
      ? [
          {
            stream: one.stream,
            visit: journal.keptVisit(one.stream).value,
            plan: journal.keptPlan(one.stream).value,
          },
        ]
      : [],
  );
  const car = journal.keptCar(stream).value;
  const isOpening = [car, ...before.flatMap((one) => [one.visit, one.plan])].some(({ is }) => is === "opening");
  return isOpening ? undefined : { car, before };
}

/** Changes with what can be read, and with nothing that is said in it. */
const standOf = ({ car, before }: Read): string =>
  [car.is, ...before.map(({ stream, visit, plan }) => `${stream} ${visit.is} ${plan.is}`)].join();

async function judged(needs: Needs, { car, before }: Read): Promise<Earlier> {
  if (before.length === 0 || car.is === "missing") return null;
  if (car.is !== "open") return UNKNOWN;
  const open = before.flatMap(({ visit }) => (visit.is === "open" ? [visit.state] : []));
  const said = new Map(
    before.flatMap(({ stream, plan }) => (plan.is === "open" ? [[stream, plan.state] as const] : [])),
  );
  // One taken for missing is deleted: nothing of it is left to ask for anything.
  const unread = before.flatMap(({ stream, visit }): readonly LeftVisit[] =>
    visit.is === "trouble" ? [{ stream, why: "unread" }] : [],
  );
  const { worn, left: unjudged } = await wornVisits(needs, car.state, open);
  const left = [...unread, ...unjudged];
  if (!worn) return left.length === 0 ? null : { unread: { visits: left.length, plans: 0 } };
  return {
    of: { worn, all: allWearing(worn, said), left, visits: open, plans: said, car: car.state },
    plans: before.filter(({ visit, plan }) => visit.is === "open" && plan.is === "trouble").length,
  };
}

const isWhole = (now: Earlier): boolean =>
  now === null || (now !== undefined && "of" in now && now.of.left.length === 0 && now.plans === 0);

function begun(needs: Needs, visit: VisitState): ReadonlySignal<Earlier> {
  const { journal } = needs;
  const found = signal<Earlier>(undefined);
  const read = computed(() => (journal.summaries.value ? readBefore(needs, visit) : undefined));
  let tried: string | undefined;
  const stop = effect(() => {
    const now = read.value;
    const stand = now && standOf(now);
    if (!now || stand === tried) return;
    tried = stand;
    judged(needs, now).then(
      (is) => {
        if (tried !== stand) return;
        found.value = is;
        if (isWhole(is)) stop();
      },
      () => {
        if (tried !== stand) return;
        // Tried again as soon as anything of it changes.
        tried = undefined;
        found.value = found.peek() ?? UNKNOWN;
      },
    );
  });
  const isListed = (): void => {
    if (!journal.summaries.peek()) found.value = UNKNOWN;
  };
  if (!journal.summaries.peek()) journal.refresh().then(isListed, isListed);
  return found;
}

const lastMade = new WeakMap<Known, { readonly key: string; readonly now: DueLooks }>();

/**
 * What is due in a visit, with what of the visits before could not be read; undefined until that is known, null where nobody
 * looked before, and at a viewing. Read in effects and screens.
 */
export function dueIn(needs: Needs, visit: VisitState): DueLooks | DueUnknown | null | undefined {
  if (isViewing(visit)) return null;
  const earlier = earlierOf(needs, visit).value;
  if (!earlier || !("of" in earlier)) return earlier;
  const [on, km] = [dayOf(visit), kmAt(visit)];
  const key = `${on} ${km}`;
  const last = lastMade.get(earlier);
  if (last?.key === key) return last.now;
  const now = dueLooks({ ...earlier.of, today: on }, km === undefined ? undefined : { on, km }, earlier.plans);
  lastMade.set(earlier, { key, now });
  return now;
}
