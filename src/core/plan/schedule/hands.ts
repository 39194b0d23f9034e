/** People and special tools over time, as tasks take them. Knows no lifts and no order of work. */
import { Load } from "./load.js";
import type { Net, Task } from "./net.js";

export class Hands {
  readonly #people: Load;
  readonly #tools: readonly Load[];

  constructor(net: Pick<Net, "people" | "tools">) {
    this.#people = new Load(net.people);
    this.#tools = Array.from({ length: net.tools }, () => new Load(1));
  }

  /** The first start, `from` or later, with hands and tool free for all of the task. */
  earliest(task: Task, from: number): number {
    const tool = this.#tools[task.tool];
    for (let start = from; ; ) {
      const now = start;
      // A task never takes more than there is, and nobody keeps people or a tool for good: there is always a time.
      start = this.#people.earliest(start, task.duration, task.people) ?? start;
      start = tool?.earliest(start, task.duration, 1) ?? start;
      if (start === now) return start;
    }
  }

  /** The last start with the work over by `end`; undefined: none from nought on. */
  latest(task: Task, end: number): number | undefined {
    const tool = this.#tools[task.tool];
    for (let by = end; ; ) {
      let start = this.#people.latest(by, task.duration, task.people);
      if (start !== undefined && tool !== undefined) start = tool.latest(start + task.duration, task.duration, 1);
      if (start === undefined || start + task.duration === by) return start;
      by = start + task.duration;
    }
  }

  take(task: Task, start: number): void {
    this.#people.add(start, start + task.duration, task.people);
    this.#tools[task.tool]?.add(start, start + task.duration, 1);
  }
}
