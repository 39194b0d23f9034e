/**
 * Opens each block no earlier than its closing needs, so that the lift is not held for nothing. Moves nothing outside
 * the block and no end of the plan.
 */
import { Hands } from "./hands.js";
import type { Net, Placing, Task } from "./net.js";

/** Starts with the inside of these blocks moved late; a block that gains nothing stays as it was. */
export function tightened(net: Net, { starts, order }: Placing, blocks: readonly number[]): readonly number[] {
  return blocks.reduce<readonly number[]>((now, block) => {
    const opens = net.blocks[block]?.open ?? -1;
    const moved = movedLate(net, now, order, block);
    return moved !== undefined && (moved[opens] ?? 0) > (now[opens] ?? 0) ? moved : now;
  }, starts);
}

function movedLate(
  net: Net,
  starts: readonly number[],
  order: readonly number[],
  block: number,
): readonly number[] | undefined {
  const closes = net.blocks[block]?.close;
  const hands = new Hands(net);
  const isMoving = (i: number): boolean => net.tasks[i]?.block === block && i !== closes;
  net.tasks.forEach((task, i) => {
    if (!isMoving(i)) hands.take(task, starts[i] ?? 0);
  });
  const moved = [...starts];
  // Placed in an order that keeps predecessors first, so the other way round followers come first.
  for (const i of order.toReversed().filter(isMoving)) {
    const task = net.tasks[i] as Task;
    const by = task.latest(Math.min(...task.succs.map((next) => moved[next] ?? 0)));
    const start = hands.latest(task, by);
    if (start === undefined || start < (starts[i] ?? 0)) return undefined;
    moved[i] = start;
    hands.take(task, start);
  }
  return moved;
}
