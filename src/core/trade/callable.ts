/** The table as conditions use it: what they may call, and what works it out. Adds nothing of its own. */
import { calculate } from "./calculate.js";
import type { Calculated, Given, TradeFunction } from "./contract.js";
import { TRADE_TABLE } from "./table.js";

/** By name, as signatures: arguments with their ranges, what is given, words. */
export const TRADE_SIGNATURES: Readonly<Record<string, TradeFunction>> = Object.fromEntries(TRADE_TABLE);

/** By name, ready to be called; a refusal says why. */
export const TRADE_WORK: Readonly<Record<string, (given: readonly Given[]) => Calculated>> = Object.fromEntries(
  [...TRADE_TABLE].map(([name, fn]) => [name, (given) => calculate(fn, given)]),
);
