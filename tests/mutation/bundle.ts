/**
 * Puts the tests of one file and all they import into one script that can be run again and again in this process. A
 * run stops at the first check that fails: whether a change is noticed is all that is asked.
 */
import { resolve } from "node:path";
import { Script } from "node:vm";
import * as fastCheck from "fast-check";
import { build } from "vite";
import { expect } from "vitest";

type Check = (...given: readonly unknown[]) => void;
interface Collected {
  readonly name: string;
  readonly check: () => void;
}

/** A run that takes longer has lost its way, which counts as noticed. */
const LONGEST_MS = 20_000;
const TESTS = "leadlampTests";
const FAST_CHECK = "leadlampFastCheck";

/** What is said of the first check that fails; nothing when all pass. */
export type Run = () => string | undefined;

/** `changed`: the text that stands in for one file, by its path. */
export async function bundled(tests: readonly string[], changed: ReadonlyMap<string, string>): Promise<Run> {
  const entry = "virtual:tests";
  const texts = new Map([...changed].map(([path, text]) => [resolve(path), text]));
  const made = await build({
    configFile: false,
    logLevel: "error",
    root: process.cwd(),
    build: {
      write: false,
      minify: false,
      target: "esnext",
      rolldownOptions: {
        input: entry,
        external: ["vitest", "fast-check"],
        // A test file is nothing but side effects, which the package says its source has none of.
        treeshake: false,
        output: { format: "iife", name: "run", globals: { vitest: TESTS, "fast-check": FAST_CHECK } },
      },
    },
    plugins: [
      {
        name: "texts",
        enforce: "pre",
        resolveId: (id) => (id === entry ? `\0${entry}` : undefined),
        load: (id) =>
          id === `\0${entry}`
            ? tests.map((path) => `import ${JSON.stringify(resolve(path))};`).join("\n")
            : texts.get(id),
      },
    ],
  });
  const output = [made].flat().flatMap((one) => ("output" in one ? one.output : []));
  const code = output.flatMap((one) => (one.type === "chunk" ? [one.code] : [])).join("\n");
  const script = new Script(code);
  return () => ran(script);
}

function ran(script: Script): string | undefined {
  const collected: Collected[] = [];
  Reflect.set(globalThis, TESTS, { expect, test: collector(collected) });
  Reflect.set(globalThis, FAST_CHECK, fastCheck);
  let last = "loads";
  try {
    script.runInThisContext({ timeout: LONGEST_MS });
    Reflect.set(globalThis, TESTS, () => {
      for (const { name, check } of collected) {
        last = name;
        check();
      }
    });
    new Script(`${TESTS}()`).runInThisContext({ timeout: LONGEST_MS });
    return undefined;
  } catch (error) {
    return `${last}: ${String(error)}`;
  }
}

/** `test` and `test.each` as far as tests of pure functions use them. */
function collector(collected: Collected[]) {
  const test = (name: string, check: Check): void => {
    collected.push({ name, check: () => check() });
  };
  const each = (rows: readonly unknown[]) => (name: string, check: Check) => {
    for (const row of rows)
      collected.push({ name: `${name} ${JSON.stringify(row)}`, check: () => check(...[row].flat(1)) });
  };
  return Object.assign(test, { each });
}
