/**
 * Looks at every order of a small plan that could still be better, in the order of starts. Ends with the best there is,
 * or at its cap with the best so far. Knows tasks as numbers only.
 */
import { earliestStarts, endOf, latestStarts, type Net, type Task, topological } from "./net.js";

export interface ExactEnd {
  /** A better order, where one was found. */
  readonly order: readonly number[] | undefined;
  /** Every order was looked at: nothing is better. */
  readonly ended: boolean;
  readonly nodes: number;
}

/** How often `goOn` is asked. */
const ASK_EVERY = 256;

/**
 * Searches for a plan that ends before `finish`. Starts never fall from one placed task to the next, which is enough:
 * the best plan, its tasks taken by start, is among these.
 */
export function exact(net: Net, finish: number, bound: number, cap: number, goOn: () => boolean): ExactEnd {
  const { tasks } = net;
  const order = topological(net);
  const early = earliestStarts(net, order);
  let best: readonly number[] | undefined;
  let target = finish - 1;
  let late = latestStarts(net, order, target);
  let nodes = 0;
  let ended = true;
  const path: number[] = [];
  const starts: number[] = new Array(tasks.length).fill(-1);
  const placed = (): readonly number[] => path;

  const startOf = (i: number, task: Task, floor: number): number | undefined => {
    let start = Math.max(floor, early[i] ?? 0);
    for (const pred of task.preds) start = Math.max(start, endOf(tasks[pred] as Task, starts[pred] ?? 0));
    for (;;) {
      const next = clash(net, starts, placed(), i, task, start);
      if (next === undefined) return start;
      if (next === Number.POSITIVE_INFINITY) return undefined;
      start = next;
    }
  };

  const go = (floor: number, last: number, reached: number): void => {
    if (path.length === tasks.length) {
      best = [...path];
      target = reached - 1;
      late = latestStarts(net, order, target);
      return;
    }
    if (!hasRoom(net, starts, floor, target)) return;
    for (let i = 0; i < tasks.length; i += 1) {
      const task = tasks[i] as Task;
      if (starts[i] !== -1 || task.preds.some((pred) => starts[pred] === -1)) continue;
      const start = startOf(i, task, floor);
      if (start === undefined || isSameAsOther(net, starts, last, i, start)) continue;
      const end = Math.max(reached, endOf(task, start));
      if (end > target || start > (late[i] ?? 0)) continue;
      nodes += 1;
      if (nodes > cap || (nodes % ASK_EVERY === 0 && !goOn())) ended = false;
      if (!ended || target < bound) return;
      starts[i] = start;
      path.push(i);
      if (isInTime(net, starts, start, late)) go(start, i, end);
      path.pop();
      starts[i] = -1;
      if (!ended || target < bound) return;
    }
  };
  go(0, -1, 0);
  return { order: best, ended, nodes };
}

/** Undefined: nothing is in the way at this start; else the next time worth trying, `Infinity` where there is none. */
function clash(
  net: Net,
  starts: readonly number[],
  path: readonly number[],
  i: number,
  task: Task,
  at: number,
): number | undefined {
  const isOpener = net.blocks[task.block]?.open === i;
  let [people, lifts] = [0, 0];
  let isToolTaken = false;
  let next = Number.POSITIVE_INFINITY;
  for (const k of path) {
    const other = net.tasks[k] as Task;
    const worked = (starts[k] ?? 0) + other.duration;
    if (worked > at) {
      people += other.people;
      isToolTaken ||= other.tool === task.tool && task.tool !== -1;
      next = Math.min(next, worked);
    }
    if (!isOpener && !task.lift) continue;
    const until = liftUntil(net, starts, k, other);
    if (until > at) {
      lifts += 1;
      next = Math.min(next, until);
    }
  }
  const takesTime = task.duration > 0;
  const isFree =
    (!takesTime || (people + task.people <= net.people && !isToolTaken)) &&
    (!(isOpener || (task.lift && endOf(task, at) > at)) || lifts < net.lifts);
  return isFree ? undefined : next;
}

/** Until when a placed task keeps a lift; an open block for good; nought for one that keeps none. */
function liftUntil(net: Net, starts: readonly number[], k: number, task: Task): number {
  if (task.lift) return endOf(task, starts[k] ?? 0);
  const held = net.blocks[task.block];
  if (held?.open !== k) return 0;
  const closed = starts[held.close] ?? -1;
  return closed === -1 ? Number.POSITIVE_INFINITY : endOf(net.tasks[held.close] as Task, closed);
}

/** Whether the people's time from here to the target is enough for the work that is left. */
function hasRoom(net: Net, starts: readonly number[], floor: number, target: number): boolean {
  let left = net.people * (target - floor);
  net.tasks.forEach((task, i) => {
    const start = starts[i] ?? -1;
    const work = start === -1 ? task.duration : Math.max(0, start + task.duration - floor);
    left -= work * task.people;
  });
  return left >= 0;
}

/** Whether every task that is left can still start in time, nothing starting before the last one placed. */
function isInTime(net: Net, starts: readonly number[], floor: number, late: readonly number[]): boolean {
  return net.tasks.every((task, i) => {
    if (starts[i] !== -1) return true;
    const ready = task.preds.map((pred) =>
      starts[pred] === -1 ? 0 : endOf(net.tasks[pred] as Task, starts[pred] ?? 0),
    );
    return Math.max(floor, ...ready) <= (late[i] ?? 0);
  });
}

/** Two plain tasks that start together are taken in one order only. */
function isSameAsOther(net: Net, starts: readonly number[], last: number, i: number, start: number): boolean {
  if (last === -1 || i > last || starts[last] !== start) return false;
  const [a, b] = [net.tasks[last] as Task, net.tasks[i] as Task];
  const isPlain = (task: Task): boolean => task.duration > 0 && task.block === -1;
  return isPlain(a) && isPlain(b) && !b.preds.includes(last);
}
