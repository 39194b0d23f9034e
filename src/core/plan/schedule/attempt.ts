/**
 * One run: what can be planned, prepared and searched; again without what would end more than two years on. Knows
 * nothing of how a plan is told.
 */
import { type Problem, problem } from "../../terms/index.js";
import { endOf, type Task } from "./net.js";
import { type Ground, type Prepared, prepare } from "./prepare.js";
import { type Found, search } from "./search.js";

const PASSES = 200;
const NODE_CAP = 200_000;
/** For 'if this part came today' the plan is there already: fewer orders and steps are enough to better it. */
const GAIN_SHARE = 0.1;

export interface Plan {
  readonly prepared: Prepared;
  readonly found: Found;
}

/** The plan of all that ends within two years; what would not is told and left out. */
export function planned(ground: Ground, parts: ReadonlySet<string>) {
  const without = new Set(parts);
  const problems: Problem[] = [];
  for (;;) {
    const plan = planOnce(ground, without);
    const { starts } = plan.found.placing;
    const far = plan.prepared.net.tasks.filter((task, i) => endOf(task, starts[i] ?? 0) > ground.axis.length);
    if (far.length === 0) return { plan, problems, left: without };
    const earliest = far.find(
      (task) => !task.preds.some((pred) => far.includes(plan.prepared.net.tasks[pred] as Task)),
    );
    const job = (earliest ?? far[0])?.id ?? "";
    problems.push(problem("schedule.too-far", {}, { job }));
    without.add(job);
  }
}

/** Prepared and searched. `here`: a part taken to be in hand, a re-run; `order`: tried first in it. */
export function planOnce(ground: Ground, without: ReadonlySet<string>, here?: string, order?: readonly string[]): Plan {
  const { input } = ground;
  const prepared = prepare(ground, without, here);
  const index = new Map(prepared.net.tasks.map(({ id }, i) => [id, i]));
  const before = order ?? input.before;
  const share = here === undefined ? 1 : GAIN_SHARE;
  const found = search(prepared.net, {
    ...(before === undefined ? {} : { before: [...new Set(before)].flatMap((id) => index.get(id) ?? []) }),
    seed: input.seed ?? 1,
    passes: Math.ceil((input.passes ?? PASSES) * share),
    nodeCap: Math.ceil((input.nodeCap ?? NODE_CAP) * share),
    goOn: input.goOn ?? (() => true),
  });
  return { prepared, found };
}
