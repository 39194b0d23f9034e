/** A finished plan in local days and times: jobs, lifts, orders. Searches nothing. */
import { type LocalMinute, localTime } from "./calendar.js";
import type { LiftUse, PartOrder, Planned } from "./contract.js";
import { DAY_MINUTES } from "./days.js";
import { endOf, type Task } from "./net.js";
import { orderOf } from "./parts.js";
import type { Ground, Prepared } from "./prepare.js";

/** End of a task with its process, on the real clock. */
function readyAt({ axis, later }: Ground, { duration, wall }: Task, start: number): LocalMinute {
  const end = axis.endsAt(start + duration);
  return wall === 0 ? end : later(end, wall);
}

/** The task that ends last on the real clock, and when. */
export function lastOf(ground: Ground, { net }: Prepared, starts: readonly number[]) {
  return net.tasks.reduce(
    (best, task, i) => {
      const at = readyAt(ground, task, starts[i] ?? 0);
      return at > best.at ? { at, task: i } : best;
    },
    { at: Number.NEGATIVE_INFINITY, task: 0 },
  );
}

/** When each job is done, by start. */
export function rowsOf(ground: Ground, { net }: Prepared, starts: readonly number[]): readonly Planned[] {
  const { axis } = ground;
  return net.tasks
    .map((task, i) => ({ task, start: starts[i] ?? 0 }))
    .sort((a, b) => a.start - b.start || a.start + a.task.duration - (b.start + b.task.duration))
    .map(({ task, start }) => ({
      id: task.id,
      start: localTime(axis.startsAt(start)),
      end: localTime(axis.endsAt(start + task.duration)),
      ready: localTime(readyAt(ground, task, start)),
    }));
}

/** When a lift is taken and by what. */
export function liftsOf(ground: Ground, { net, spells }: Prepared, starts: readonly number[]): readonly LiftUse[] {
  const { axis } = ground;
  const use = (from: number, last: number, inside: readonly number[]) => {
    const task = net.tasks[last] as Task;
    const to = endOf(task, starts[last] ?? 0);
    const times = { from: localTime(axis.startsAt(from)), to: localTime(readyAt(ground, task, starts[last] ?? 0)) };
    return { at: from, ...times, held: to - from, idle: to - from - workedIn(net.tasks, starts, inside) };
  };
  const blocks = spells.map(({ id, kept }, block) => {
    const { open = 0, close = 0 } = net.blocks[block] ?? {};
    const inside = net.tasks.flatMap((task, i) => (task.block === block ? i : []));
    return { by: id, gate: kept, ...use(starts[open] ?? 0, close, inside) };
  });
  const single = net.tasks.flatMap((task, i) => (task.lift ? { by: task.id, ...use(starts[i] ?? 0, i, [i]) } : []));
  return [...blocks, ...single].sort((a, b) => a.at - b.at).map(({ at: _, ...row }) => row);
}

/** Minutes in which at least one of these is worked on. */
function workedIn(tasks: readonly Task[], starts: readonly number[], inside: readonly number[]): number {
  let [sum, until] = [0, 0];
  for (const i of [...inside].sort((a, b) => (starts[a] ?? 0) - (starts[b] ?? 0))) {
    const end = (starts[i] ?? 0) + ((tasks[i]?.people ?? 0) > 0 ? (tasks[i]?.duration ?? 0) : 0);
    sum += Math.max(0, end - Math.max(until, starts[i] ?? 0));
    until = Math.max(until, end);
  }
  return sum;
}

/** Until when each part that is not ordered yet must be. */
export function ordersOf(
  ground: Ground,
  { net, spells }: Prepared,
  starts: readonly number[],
  today: number,
): readonly PartOrder[] {
  return ground.coming.flatMap((coming) => {
    const i = net.tasks.findIndex(({ id }) => id === coming.need.job);
    if (i === -1) return [];
    const block = net.tasks[i]?.block ?? -1;
    // In hand before the block is opened, where that is its gate.
    const by = spells[block]?.kept === "parts-in-hand" ? (net.blocks[block]?.open ?? i) : i;
    const day = Math.floor(ground.axis.startsAt(starts[by] ?? 0) / DAY_MINUTES);
    return orderOf(coming, day, today) ?? [];
  });
}
