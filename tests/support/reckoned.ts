/** A trade function's answer for a test, by the words a person would type. Refuses to hide a refusal. */
import { reckon, tellTrade } from "../../src/core/trade/index.js";

/** The number a reckoning gives. */
export function figure(text: string): number {
  const { value } = answer(text);
  if (typeof value !== "number") throw new Error(`${text} gives ${String(value)}, no number`);
  return value;
}

/** Whatever a reckoning gives. */
export function answer(text: string): { readonly value: number | string | boolean } {
  const reckoned = reckon(text);
  if (!reckoned.ok) throw new Error(reckoned.problems.map(tellTrade).join(" "));
  return { value: reckoned.value.value };
}

/** The codes of what a reckoning refuses; empty when it has an answer. */
export function refused(text: string): readonly string[] {
  const reckoned = reckon(text);
  return reckoned.ok ? [] : reckoned.problems.map(({ code }) => code);
}

/** What a person reads where a reckoning is refused; empty when it has an answer. */
export function told(text: string): string {
  const reckoned = reckon(text);
  return reckoned.ok ? "" : reckoned.problems.map(tellTrade).join(" ");
}
