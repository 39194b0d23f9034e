/**
 * Places tasks one by one in a given order, each at its earliest time. A block takes a lift when it is opened and gives
 * it back when it is closed. Knows no better order than the one it is given.
 */
import { Hands } from "./hands.js";
import { Load } from "./load.js";
import { endOf, type Net, type Placing, type Task } from "./net.js";

/**
 * Serial placing: always the first of the list whose predecessors are placed. One that would need a lift which an open
 * block keeps stands back until the block is closed; so every list gives a plan.
 */
export function place(net: Net, list: readonly number[]): Placing {
  const { tasks } = net;
  const hands = new Hands(net);
  const lifts = new Load(net.lifts);
  const starts: number[] = new Array(tasks.length).fill(-1);
  const order: number[] = [];
  const waiting = [...list];
  let finish = 0;

  const startOf = (i: number, task: Task): number | undefined => {
    if (task.preds.some((pred) => starts[pred] === -1)) return undefined;
    let start = Math.max(task.release, ...task.preds.map((pred) => endOf(tasks[pred] as Task, starts[pred] ?? 0)));
    const opens = net.blocks[task.block]?.open === i;
    const takesLift = task.lift || opens;
    for (;;) {
      start = hands.earliest(task, start);
      if (!takesLift) return start;
      const long = opens ? Number.POSITIVE_INFINITY : endOf(task, start) - start;
      const free = lifts.earliest(start, long, 1);
      if (free === undefined || free === start) return free;
      start = free;
    }
  };

  while (waiting.length > 0) {
    let at = -1;
    let start: number | undefined;
    for (let k = 0; k < waiting.length && start === undefined; k += 1) {
      const i = waiting[k] ?? 0;
      start = startOf(i, tasks[i] as Task);
      at = k;
    }
    if (start === undefined) throw new Error("A lift is waited for by what it waits for.");
    const [i = 0] = waiting.splice(at, 1);
    const task = tasks[i] as Task;
    const end = endOf(task, start);
    starts[i] = start;
    order.push(i);
    hands.take(task, start);
    if (task.lift) lifts.add(start, end, 1);
    const held = net.blocks[task.block];
    if (held?.open === i) lifts.add(start, Number.POSITIVE_INFINITY, 1);
    if (held?.close === i) lifts.add(end, Number.POSITIVE_INFINITY, -1);
    finish = Math.max(finish, end);
  }
  return { starts, finish, order };
}

/**
 * Every task as late as its followers, people and tools allow within the finish. Lifts are left out of it: what comes
 * out is an order worth trying and how late a block could be opened, not a plan.
 */
export function asLate(net: Net, { starts, finish }: Placing): readonly number[] {
  const { tasks } = net;
  const hands = new Hands(net);
  const late = [...starts];
  const lastFirst = tasks
    .map((_, i) => i)
    .sort((a, b) => endAt(net, starts, b) - endAt(net, starts, a) || (starts[b] ?? 0) - (starts[a] ?? 0) || b - a);
  for (const i of followersFirst(net, lastFirst)) {
    const task = tasks[i] as Task;
    const before = Math.min(finish, ...task.succs.map((next) => late[next] ?? 0));
    const start = Math.max(starts[i] ?? 0, hands.latest(task, task.latest(before)) ?? 0);
    late[i] = start;
    hands.take(task, start);
  }
  return late;
}

const endAt = (net: Net, starts: readonly number[], i: number): number => endOf(net.tasks[i] as Task, starts[i] ?? 0);

/** The same order, but never a task before all that follow it. */
function followersFirst({ tasks }: Net, order: readonly number[]): readonly number[] {
  const done = new Set<number>();
  const out: number[] = [];
  const visit = (i: number): void => {
    if (done.has(i)) return;
    done.add(i);
    for (const next of tasks[i]?.succs ?? []) visit(next);
    out.push(i);
  };
  for (const i of order) visit(i);
  return out;
}
