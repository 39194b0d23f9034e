/**
 * What holds the car up: from the last end back, at each job the cause that keeps it from starting earlier. Knows a
 * plan that is finished and searches nothing.
 */
import type { Hold } from "./contract.js";
import { DAY_MINUTES } from "./days.js";
import { endOf, type Task } from "./net.js";
import { shutDays } from "./parts.js";
import type { Ground, Prepared, Wait } from "./prepare.js";

/** One step back: the hold, and the task it leads to or the day waited for; neither where the chain begins. */
interface Back {
  readonly hold: Hold;
  readonly to?: number;
  readonly wait?: Wait;
}

/** The chain of causes of a plan in which every task starts as early as its order lets it. */
export function holdsOf(ground: Ground, prepared: Prepared, starts: readonly number[], last: number): readonly Hold[] {
  const { axis, begins } = ground;
  const { tasks } = prepared.net;
  const seen = new Set<number>();
  const holds: Hold[] = [];
  for (let at: number | undefined = last; at !== undefined && !seen.has(at); ) {
    seen.add(at);
    const task = tasks[at] as Task;
    const { hold, to, wait } = backFrom(prepared, starts, at);
    const from = to === undefined ? begins : axis.endsAt((starts[to] ?? 0) + (tasks[to]?.duration ?? 0));
    const since = wait === undefined ? from : wait.day * DAY_MINUTES;
    const until = axis.endsAt((starts[at] ?? 0) + task.duration);
    const closed = axis.closed.filter((one) => one.from * DAY_MINUTES < until && since < (one.to + 1) * DAY_MINUTES);
    holds.push(...closed.map((one): Hold => ({ job: task.id, cause: "calendar", closed: shutDays(one) })), hold);
    at = to;
  }
  return holds;
}

function backFrom(prepared: Prepared, starts: readonly number[], i: number): Back {
  const { tasks } = prepared.net;
  const task = tasks[i] as Task;
  const start = starts[i] ?? 0;
  const job = task.id;
  if (start === 0) return { hold: { job, cause: "start" } };
  const pred = task.preds.find((k) => endOf(tasks[k] as Task, starts[k] ?? 0) === start);
  if (pred !== undefined) {
    const before = tasks[pred] as Task;
    const cause = (starts[pred] ?? 0) + before.duration === start ? "job" : "process";
    return { hold: { job, cause, by: before.id }, to: pred };
  }
  const wait = prepared.waits[i]?.find(({ at }) => at === start);
  if (wait !== undefined) return { hold: wait.hold, wait };
  return takenUntil(prepared, starts, i) ?? { hold: { job, cause: "start" } };
}

/** Who kept people, tool or lift until just then. */
function takenUntil({ net, spells }: Prepared, starts: readonly number[], i: number): Back | undefined {
  const task = net.tasks[i] as Task;
  const start = starts[i] ?? 0;
  const worked = (k: number): number => (starts[k] ?? 0) + (net.tasks[k]?.duration ?? 0);
  const ending = net.tasks.flatMap((_, k) => (k !== i && (starts[k] ?? 0) < start && worked(k) === start ? k : []));
  const busy = net.tasks.reduce(
    (sum, { people }, k) => sum + ((starts[k] ?? 0) < start && worked(k) >= start ? people : 0),
    task.people,
  );
  const found = (cause: "person" | "tool" | "lift", k: number, by = net.tasks[k]?.id ?? ""): Back => ({
    hold: { job: task.id, cause, by },
    to: k,
  });
  const person = ending.find((k) => (net.tasks[k]?.people ?? 0) > 0);
  if (busy > net.people && person !== undefined) return found("person", person);
  const tool = ending.find((k) => task.tool !== -1 && net.tasks[k]?.tool === task.tool);
  if (tool !== undefined) return found("tool", tool);
  const closing = net.blocks.findIndex(({ close }) => endOf(net.tasks[close] as Task, starts[close] ?? 0) === start);
  if (closing !== -1) return found("lift", net.blocks[closing]?.close ?? i, spells[closing]?.id);
  const lift = net.tasks.findIndex((other, k) => other.lift && k !== i && endOf(other, starts[k] ?? 0) === start);
  return lift === -1 ? undefined : found("lift", lift);
}
