// Holds an answer against figures as a source prints them: to the last digit it prints, not beyond.
import { expect } from "vitest";

const HALF = 0.5000001;

/** Every field of `facts` must be there; a number as printed, all else exactly. Further fields are passed over. */
export function expectAsPrinted(answer: unknown, facts: unknown, path = ""): void {
  if (typeof facts === "number") {
    const decimals = String(facts).split(".")[1]?.length ?? 0;
    expect(typeof answer, path).toBe("number");
    expect(Math.abs(Number(answer) - facts), `${path}: ${answer} for ${facts}`).toBeLessThan(HALF * 10 ** -decimals);
  } else if (typeof facts === "object" && facts !== null) {
    if (Array.isArray(facts)) expect(answer, path).toHaveLength(facts.length);
    expect(typeof answer === "object" && answer !== null, path).toBe(true);
    // an object by the line above
    const fields = answer as Readonly<Record<string, unknown>>;
    for (const [key, fact] of Object.entries(facts)) expectAsPrinted(fields[key], fact, `${path}.${key}`);
  } else expect(answer, path).toEqual(facts);
}

/** The same facts with every number and text off by something: what no answer may be read from. */
export function spoilt(facts: unknown): unknown {
  if (typeof facts === "number") return facts * 3 + 7;
  if (typeof facts === "string") return `not ${facts}`;
  if (typeof facts === "boolean") return !facts;
  if (Array.isArray(facts)) return facts.map(spoilt);
  if (typeof facts !== "object" || facts === null) return "planted";
  return Object.fromEntries(Object.entries(facts).map(([key, value]) => [key, spoilt(value)]));
}
