/**
 * Dates: activities, parts, suppliers and opening times in; when each job is done, what holds the car up and until when
 * to order out. What is faulty is told and left out with what waits for it; the rest is planned. No clock, no chance.
 */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import { type Plan, planned } from "./attempt.js";
import { localTime, workAxis } from "./calendar.js";
import type { Schedule, ScheduleInput } from "./contract.js";
import { DAY_MINUTES, dayNumber } from "./days.js";
import { elapsed } from "./elapsed.js";
import { gained } from "./gains.js";
import { holdsOf } from "./holds.js";
import { type Coming, comingOf, nowhere } from "./parts.js";
import type { Ground } from "./prepare.js";
import { lastOf, liftsOf, ordersOf, rowsOf } from "./shown.js";
import { tightened } from "./tighten.js";

/** Plans. Fails only where there is no workshop or day to plan on; everything else is told in `problems`. */
export function schedule(input: ScheduleInput): Result<Schedule> {
  const axis = workAxis(input.calendar, input.from);
  const [today, first] = [dayNumber(input.today), dayNumber(input.from.date)];
  if (!axis.ok) return axis;
  if (today === undefined || first === undefined) return fail(problem("schedule.no-day", {}, { named: input.today }));
  const { later, problems: clockProblems } = elapsed(input.clockChanges ?? []);
  const { coming, without, problems: partProblems } = comingParts(input, today);
  const begins = first * DAY_MINUTES + input.from.minute;
  const ground: Ground = { input, axis: axis.value, later, begins, coming };
  const { plan, problems: farProblems, left } = planned(ground, without);
  const problems = [...clockProblems, ...partProblems, ...farProblems, ...plan.prepared.problems];
  return ok(told(ground, plan, left, today, problems));
}

function comingParts(input: ScheduleInput, today: number) {
  const jobs = new Set(input.activities.map(({ id }) => id));
  const parts = (input.parts ?? []).filter(({ job }) => jobs.has(job));
  const coming: Coming[] = [];
  const problems: Problem[] = [...nowhere(input.parts ?? [], jobs)];
  const without = new Set<string>();
  for (const need of parts) {
    const day = comingOf(need, input.suppliers ?? [], today);
    if (day.ok) coming.push(day.value);
    else {
      problems.push(...day.problems);
      without.add(need.job);
    }
  }
  return { coming, without, problems };
}

function told(
  ground: Ground,
  plan: Plan,
  without: ReadonlySet<string>,
  today: number,
  problems: readonly Problem[],
): Schedule {
  const { prepared, found } = plan;
  const { net, leftOut } = prepared;
  const order = found.placing.order.map((i) => net.tasks[i]?.id ?? "");
  if (order.length === 0) {
    const none = { activities: [], lifts: [], holds: [], orders: [], gained: [], order };
    return { ...none, proven: found.proven, leftOut, problems, stopped: found.stopped };
  }
  const shown = tightened(
    net,
    found.placing,
    prepared.spells.flatMap(({ kept }, block) => (kept === "at-once" ? [] : block)),
  );
  const { at: finish, task: last } = lastOf(ground, prepared, found.placing.starts);
  const met = found.placing.finish <= found.bound;
  const gains = gained(ground, plan, without, order, finish);
  return {
    finish: localTime(finish),
    proven: found.proven,
    bound: localTime(met ? finish : ground.axis.endsAt(found.bound)),
    activities: rowsOf(ground, prepared, shown),
    lifts: liftsOf(ground, prepared, shown),
    holds: holdsOf(ground, prepared, found.placing.starts, last),
    orders: ordersOf(ground, prepared, shown, today),
    gained: gains.gained,
    leftOut,
    problems,
    order,
    stopped: found.stopped || gains.stopped,
  };
}
