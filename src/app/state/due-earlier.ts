/** Reads and judges the visits before one, once while the app runs, for what is due in it. Knows no screen. */
import { computed, effect, type ReadonlySignal, signal } from "@preact/signals";
import { lookedOn, type VisitState } from "../../core/record/index.js";
import { visitsOf } from "./cars-view.js";
import type { DeskNeeds } from "./desk.js";
import { type DueLooks, dueLooks } from "./due-points.js";
import type { LooksOf } from "./looks-ground.js";
import { kmAt } from "./rechecks-in.js";
import { isViewing } from "./way.js";
import { allWearing } from "./wearing-view.js";
import { type LeftVisit, wornVisits } from "./wearing-visits.js";

type Needs = Omit<DeskNeeds, "remembered">;
type Earlier = Omit<LooksOf, "today">;

/** What a later window or a plan changes meanwhile counts from the next start on: the walk must not shift under the hand. */
const made = new WeakMap<DeskNeeds["journal"], Map<string, ReadonlySignal<Earlier | null | undefined>>>();

const dayOf = (visit: VisitState): string => lookedOn(visit).slice(0, 10);

/** Undefined until they are judged; null where there is none, or none that can be read. */
function earlierOf(needs: Needs, visit: VisitState): ReadonlySignal<Earlier | null | undefined> {
  const own = made.get(needs.journal) ?? new Map<string, ReadonlySignal<Earlier | null | undefined>>();
  made.set(needs.journal, own);
  const there = own.get(visit.stream) ?? begun(needs, visit);
  own.set(visit.stream, there);
  return there;
}

function begun(needs: Needs, visit: VisitState): ReadonlySignal<Earlier | null | undefined> {
  const { journal } = needs;
  const found = signal<Earlier | null | undefined>(undefined);
  const stream = visit.opened?.value.car ?? "";
  const read = computed(() => {
    const before = (journal.summaries.value ? visitsOf(journal.summaries.value, stream) : []).flatMap((one) =>
      one.stream !== visit.stream && one.on < lookedOn(visit) ? [one.stream] : [],
    );
    const [car, visits, plans] = [
      journal.keptCar(stream).value,
      before.map((one) => journal.keptVisit(one).value),
      before.map((one) => journal.keptPlan(one).value),
    ];
    const isOpening = !journal.summaries.value || [car, ...visits, ...plans].some(({ is }) => is === "opening");
    return isOpening ? undefined : { before, car, visits, plans };
  });
  let isBegun = false;
  const stop = effect(() => {
    const all = read.value;
    if (!all || isBegun) return;
    isBegun = true;
    const { before, car, visits, plans } = all;
    if (car.is !== "open") {
      found.value = null;
      return;
    }
    const open = visits.flatMap((one) => (one.is === "open" ? [one.state] : []));
    const said = new Map(
      before.flatMap((one, at) => {
        const plan = plans[at];
        return plan?.is === "open" ? [[one, plan.state] as const] : [];
      }),
    );
    const unread = before.flatMap((one, at): readonly LeftVisit[] =>
      visits[at]?.is === "trouble" ? [{ stream: one, why: "unread" }] : [],
    );
    wornVisits(needs, car.state, open).then(
      ({ worn, left }) => {
        stop();
        found.value = worn
          ? { worn, all: allWearing(worn, said), left: [...unread, ...left], visits: open, plans: said, car: car.state }
          : null;
      },
      () => {
        found.value = null;
      },
    );
  });
  if (!journal.summaries.peek()) void journal.refresh();
  return found;
}

const lastMade = new WeakMap<Earlier, { readonly key: string; readonly now: DueLooks }>();

/** What is due in a visit; undefined until that is known, null where nobody looked before, and at a viewing. Read in effects and screens. */
export function dueIn(needs: Needs, visit: VisitState): DueLooks | null | undefined {
  if (isViewing(visit)) return null;
  const earlier = earlierOf(needs, visit).value;
  if (!earlier) return earlier;
  const [on, km] = [dayOf(visit), kmAt(visit)];
  const key = `${on} ${km}`;
  const last = lastMade.get(earlier);
  if (last?.key === key) return last.now;
  const now = dueLooks({ ...earlier, today: on }, km === undefined ? undefined : { on, km });
  lastMade.set(earlier, { key, now });
  return now;
}
