/** A problem met while assessing in one sentence, whichever part of core raised it. Adds no meaning. */
import { tellProblem } from "../core/assess/index.js";
import { tell } from "../core/sheet/author.js";
import type { Problem } from "../core/terms/index.js";
import { tellTrade } from "../core/trade/index.js";

/** In words; what a trade function refused, and what came out as no number, is said to be not worked out. */
export function told(problem: Problem): string {
  const { code, params } = problem;
  if (!code.startsWith("trade.") && !code.startsWith("expr.")) return tellProblem(problem);
  const what = [params["value"], params["place"]].filter((one) => one !== undefined && one !== "").join(" at ");
  const why = code.startsWith("trade.") ? tellTrade(problem) : tell({ ...problem, where: {} });
  return `${what === "" ? "" : `${what} `}cannot be worked out: ${why}`;
}
