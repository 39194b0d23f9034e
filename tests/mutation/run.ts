/**
 * `npm run mutate [limits|trade] [name …]`: changes each limit's edges and each number of the trade functions by a
 * tenth and prints what no test notices. Not part of `npm test`: it takes minutes.
 */
import { existsSync } from "node:fs";
import { mutateLimits } from "./limits.js";
import { told } from "./tally.js";
import { mutateTrade } from "./trade.js";

const [half, ...names] = process.argv.slice(2);
const say = (text: string): void => console.error(text);

if (half !== undefined && half !== "limits" && half !== "trade") {
  say("use: npm run mutate [limits|trade] [name …]   (names: sheets, or trade files without .ts)");
  process.exitCode = 2;
} else {
  const limits = half === "trade" ? [] : await mutateLimits(names, say);
  const trade = half === "limits" || !existsSync("src/core/trade") ? [] : await mutateTrade(names, say);
  console.log(told([...limits, ...trade]).join("\n"));
}
