/** The choice within a budget, and the cheapest step to a better one. Says honestly when it was not searched to the end. */
import { ok, type Result } from "../../terms/index.js";
import { leastCost, mostWorth } from "./aims.js";
import type { ChoiceProblem, ChoiceResult, GoOn, NextStep } from "./contract.js";
import type { Item } from "./item.js";
import { networkOf, planOf } from "./network.js";
import { type Best, type Found, search } from "./search.js";

/** Steps of the search before it ends with what it has. */
const NODE_CAP = 200_000;

/**
 * The jobs worth most together that the budget pays, opening each state once, and of equals the cheapest. Mandatory
 * jobs are always in; when they alone exceed the budget, only what costs nothing more joins them.
 */
export function choose(asked: ChoiceProblem, goOn?: GoOn): Result<ChoiceResult> {
  const network = networkOf(asked);
  if (!network.ok) return network;
  const items = network.value;
  const must = items.reduce((sum, item) => sum + (item.mark === "in" ? item.cost : 0), 0);
  const limit = Math.max(asked.budget, must);
  const aim = mostWorth(items, limit, must);
  const nodeCap = asked.nodeCap ?? NODE_CAP;
  const found = search(items, aim, { nodeCap, goOn }, known(items, aim.gain));
  const cheapest = aim.hasTie || !found.proven ? found : cheapestOfEqual(asked, found, nodeCap, goOn);
  const plan = planOf(cheapest.best?.items ?? []);
  return ok({
    ...plan,
    bound: found.proven
      ? plan.value
      : Math.max(plan.value, Math.floor((found.bound + (aim.hasTie ? limit : 0)) / aim.factor)),
    proven: cheapest.proven,
    ...(must > asked.budget ? { overBy: must - asked.budget } : {}),
    nodes: cheapest.nodes,
  });
}

/** What is mandatory is always a plan. */
function known(items: readonly Item[], gain: (item: Item) => number): Best {
  const inAlready = items.filter((item) => item.mark === "in");
  return { items: inAlready, gain: inAlready.reduce((sum, item) => sum + gain(item), 0) };
}

/** Where worth times cost is too large to be one number, ties are broken by a search of their own. */
function cheapestOfEqual(asked: ChoiceProblem, found: Found, nodeCap: number, goOn: GoOn | undefined): Found {
  const network = networkOf(asked);
  if (!network.ok) return found;
  const worth = planOf(found.best?.items ?? []).value;
  const aim = leastCost(network.value, worth);
  const again = search(network.value, aim, { nodeCap: Math.max(1, nodeCap - found.nodes), goOn });
  const nodes = found.nodes + again.nodes;
  if (again.best === undefined) return { ...found, proven: false, nodes };
  const isCheaper = planOf(again.best.items).cost < planOf(found.best?.items ?? []).cost;
  return { ...found, best: isCheaper || again.proven ? again.best : found.best, proven: again.proven, nodes };
}

/**
 * The cheapest plan worth more than `present`: how much more budget a better list needs, what joins and what gives way.
 * `present` is what `choose` answered for the same problem.
 */
export function nextStep(asked: ChoiceProblem, present: ChoiceResult, goOn?: GoOn): Result<NextStep> {
  const network = networkOf(asked);
  if (!network.ok) return network;
  const wanted = present.value + 1;
  const aim = leastCost(network.value, wanted);
  const found = search(network.value, aim, { nodeCap: asked.nodeCap ?? NODE_CAP, goOn });
  const nothing = { added: [], leftOut: [], proven: found.proven, nodes: found.nodes };
  const reached = aim.hasTie ? wanted : 0;
  const atLeast = Math.ceil((reached - found.bound) / aim.factor);
  if (found.best === undefined) return ok(found.proven ? nothing : { ...nothing, atLeast });
  const plan = planOf(found.best.items);
  return ok({
    plan,
    more: Math.max(0, plan.cost - asked.budget),
    added: plan.chosen.filter((id) => !present.chosen.includes(id)),
    leftOut: present.chosen.filter((id) => !plan.chosen.includes(id)),
    atLeast: found.proven ? plan.cost : Math.min(plan.cost, atLeast),
    proven: found.proven,
    nodes: found.nodes,
  });
}
