/** A problem of a planning file in one sentence, whichever part of core raised it. Adds no meaning. */
import { tellPlan } from "../core/plan/index.js";
import type { Problem } from "../core/terms/index.js";
import { tellTrade } from "../core/trade/index.js";

const MESSAGES: Readonly<Record<string, string>> = {
  "plan-file.expected": "{found} does not fit; expected {expected}",
  "plan-file.missing": "is missing; expected {expected}",
  "plan-file.no-instances":
    "holds results of benchmarks and no instance of one: nothing can be worked out; leave it out",
  "plan-file.no-job": "{id} asks for {found}, which is no job here; expected {expected}",
  "plan-file.no-limit": "has neither a lower nor an upper limit; give one",
  "plan-file.no-section": "is no section; nearest {expected}",
  "plan-file.no-threshold": "no reading is past this limit for certain; give a smaller uncertainty or confidence",
  "plan-file.nothing-known": "this holds no section of planning and no case of one; expected {expected}",
  "plan-file.twice": "“{id}” stands twice; the second is left out",
};

/** Where it stands, then what is wrong. */
export function tellPlanFile(problem: Problem): string {
  const { path = "" } = problem.where;
  return `${path}${path === "" ? "" : ": "}${said(problem)}`;
}

function said(problem: Problem): string {
  const { code, params } = problem;
  if (code.startsWith("trade.")) return tellTrade(problem);
  const message = MESSAGES[code];
  if (message === undefined) return tellPlan(problem);
  return message.replace(/\{(\w+)\}/g, (_, key: string) => [params[key] ?? ""].flat().join(", "));
}
