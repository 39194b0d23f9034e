// Asks the command line about planning, as a file would; and holds a section against facts and against planted lies.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect } from "vitest";
import { main } from "../../src/cli/main.js";
import { expectAsPrinted, spoilt } from "./as-printed.js";

export async function askedText(text: string, ...more: readonly string[]) {
  const scratch = await mkdtemp(join(tmpdir(), "plan-"));
  const file = join(scratch, "asked.json");
  await writeFile(file, text);
  const [out, err]: [string[], string[]] = [[], []];
  const exit = await main(["plan", file, ...more], { out: (line) => out.push(line), err: (line) => err.push(line) });
  await rm(scratch, { recursive: true });
  return {
    exit,
    answer: out.length > 0 ? (JSON.parse(out.join("\n")) as unknown) : undefined,
    err: err.join("\n").replaceAll(file, "FILE"),
  };
}
export const askedFor = (value: unknown) => askedText(JSON.stringify(value));

/** A section with what must come out. */
export interface Asked {
  readonly section: string;
  /** What must be read from the file. */
  readonly given: readonly string[];
  readonly facts: Readonly<Record<string, unknown>> | readonly unknown[];
}
/** The section with every figure wrong but those that must be read. */
function planted({ given, facts }: Asked): unknown {
  const keep = new Set(given);
  const go = (value: unknown, within: string): unknown => {
    if (Array.isArray(value)) return value.map((one) => go(one, within));
    if (typeof value !== "object" || value === null) return spoilt(value);
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [
        key,
        keep.has(key) || keep.has(`${within}.${key}`) ? one : go(one, key),
      ]),
    );
  };
  return go(facts, "");
}

/** The answer to a section alone is as printed outside; under its name, its other figures all lies, it is the same. */
export async function expectWorkedOut(asking: Asked): Promise<void> {
  const alone = await askedFor(asking.facts);
  expect({ exit: alone.exit, err: alone.err }).toEqual({ exit: 0, err: "" });
  expectAsPrinted(alone.answer, asking.facts, asking.section);
  const wrong = await askedFor({ [asking.section]: planted(asking) });
  expect({ exit: wrong.exit, err: wrong.err }).toEqual({ exit: 0, err: "" });
  expect(wrong.answer).toEqual({ [asking.section]: alone.answer });
}

/** One case on its own. */
export async function expectCase(facts: unknown): Promise<void> {
  const { exit, answer, err } = await askedFor(facts);
  expect({ exit, err }).toEqual({ exit: 0, err: "" });
  expectAsPrinted(answer, facts);
}
