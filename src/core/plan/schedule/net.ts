/**
 * Work as numbers: tasks by index, what each takes, which hold a lift together. What searching and placing share;
 * knows no calendar but the waiting handed in, and no parts but as release times.
 */

export interface Task {
  readonly id: string;
  readonly duration: number;
  readonly people: number;
  /** Takes a lift for itself; never true inside a block. */
  readonly lift: boolean;
  /** Index of the tool, -1 none. */
  readonly tool: number;
  /** Working minute before which it may not start. */
  readonly release: number;
  readonly preds: readonly number[];
  readonly succs: readonly number[];
  /** Index of its block, -1 none. */
  readonly block: number;
  readonly due: number;
  /** Minutes of the real clock after its work. */
  readonly wall: number;
  /** When what follows may start, work ending at `finish`. Never earlier than that, never falling. */
  readonly ready: (finish: number) => number;
  /** The latest end of work for which what follows may start at `start`. */
  readonly latest: (start: number) => number;
}

/** A lift held from the start of the first to the end of the last. */
export interface Held {
  readonly open: number;
  readonly close: number;
}

export interface Net {
  readonly tasks: readonly Task[];
  readonly blocks: readonly Held[];
  readonly people: number;
  readonly lifts: number;
  readonly tools: number;
}

/** Every task placed. */
export interface Placing {
  readonly starts: readonly number[];
  readonly finish: number;
  /** In the order they were placed. */
  readonly order: readonly number[];
}

export const endOf = (task: Task, start: number): number => task.ready(start + task.duration);

/** Indexes so that each stands after its predecessors. The net holds no circle. */
export function topological({ tasks }: Net): readonly number[] {
  const left = tasks.map(({ preds }) => preds.length);
  const order = tasks.flatMap(({ preds }, i) => (preds.length === 0 ? [i] : []));
  for (let at = 0; at < order.length; at += 1) {
    for (const next of tasks[order[at] ?? 0]?.succs ?? []) {
      left[next] = (left[next] ?? 0) - 1;
      if (left[next] === 0) order.push(next);
    }
  }
  return order;
}

/** Earliest starts by predecessors and releases alone. */
export function earliestStarts(net: Net, order: readonly number[]): readonly number[] {
  const starts: number[] = new Array(net.tasks.length).fill(0);
  for (const i of order) {
    const task = net.tasks[i] as Task;
    const after = task.preds.map((pred) => endOf(net.tasks[pred] as Task, starts[pred] ?? 0));
    starts[i] = Math.max(task.release, ...after);
  }
  return starts;
}

/** Latest starts for all to end by `finish`, by followers alone. Below a task's earliest start: it cannot be. */
export function latestStarts(net: Net, order: readonly number[], finish: number): readonly number[] {
  const starts: number[] = new Array(net.tasks.length).fill(0);
  for (const i of order.toReversed()) {
    const task = net.tasks[i] as Task;
    const before = Math.min(finish, ...task.succs.map((next) => starts[next] ?? 0));
    starts[i] = task.latest(before) - task.duration;
  }
  return starts;
}

/**
 * No plan ends before this: the longest chain, and what work is left from any time on for so many people, lifts and
 * one of each tool.
 */
export function lowerBound(net: Net): number {
  const order = topological(net);
  const early = earliestStarts(net, order);
  const chain = Math.max(0, ...net.tasks.map((task, i) => endOf(task, early[i] ?? 0)));
  const work = (capacity: number, amount: (task: Task, i: number) => number): number =>
    Math.max(
      0,
      ...early.map((from) => {
        const left = net.tasks.reduce((sum, task, i) => sum + ((early[i] ?? 0) >= from ? amount(task, i) : 0), 0);
        return left === 0 ? 0 : from + Math.ceil(left / capacity);
      }),
    );
  const tools = Array.from({ length: net.tools }, (_, tool) =>
    work(1, (task) => (task.tool === tool ? task.duration : 0)),
  );
  return Math.max(
    chain,
    work(net.people, ({ people, duration }) => people * duration),
    work(Math.max(1, net.lifts), ({ lift, duration }) => (lift ? duration : 0)),
    ...tools,
  );
}
