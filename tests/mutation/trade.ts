/**
 * Changes every number written in the trade functions, one at a time and in memory only, and says which changes no test
 * of that subject notices. Writes nothing.
 */
import { readdir, readFile } from "node:fs/promises";
import { bundled } from "./bundle.js";
import { type Switch, switchable, WHICH } from "./literals.js";
import type { Tally } from "./tally.js";

const TRADE = "src/core/trade";
const REFERENCE = "tests/reference";
/** What holds for the whole table. */
const OF_ALL = [`${REFERENCE}/ranges.test.ts`, `${TRADE}/calculate.test.ts`];

/** Two tallies a file, its figures and the ranges of its arguments; `files`: their names without ending, else all. */
export async function mutateTrade(files: readonly string[], say: (text: string) => void): Promise<readonly Tally[]> {
  const names = (await readdir(TRADE)).filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts")).sort();
  const reference = await referenceTests();
  const tallies: Tally[] = [];
  for (const name of names.map((one) => one.slice(0, -".ts".length))) {
    if (files.length > 0 && !files.includes(name)) continue;
    const file = `${TRADE}/${name}.ts`;
    const source = await readFile(file, "utf8");
    const { switches, source: changed } = switchable(file, source);
    if (switches.length === 0) continue;
    const run = await bundled([...testsOf(name, source, reference), ...OF_ALL], new Map([[file, changed]]));
    const survived = survivors(file, switches, run);
    say(`${name}: ${switches.length} changed, ${survived.size} survived`);
    for (const range of [false, true]) {
      const those = switches.filter((one) => one.range === range);
      if (those.length > 0)
        tallies.push(tally(`${name}, ${range ? "ranges of arguments" : "figures"}`, file, those, survived));
    }
  }
  return tallies;
}

type Texts = ReadonlyMap<string, string>;

/** The reference tests of trade functions, by path. */
async function referenceTests(): Promise<Texts> {
  const paths = (await readdir(REFERENCE))
    .filter((name) => name.endsWith(".test.ts"))
    .map((name) => `${REFERENCE}/${name}`);
  const texts = await Promise.all(paths.map(async (path) => [path, await readFile(path, "utf8")] as const));
  return new Map(
    texts.filter(([path, text]) => !OF_ALL.includes(path) && /support\/reckoned\.js|core\/trade\//.test(text)),
  );
}

/** Those that reckon with a function of this file or fetch it; all when it has no function of its own. */
function testsOf(name: string, source: string, reference: Texts): readonly string[] {
  const functions = [...source.matchAll(/\bname: ["`]([a-z0-9_]+)/g)].map(([, name]) => name ?? "");
  const about = [...reference].filter(([, text]) =>
    [`trade/${name}.js`, ...functions].some((called) => text.includes(called)),
  );
  return (functions.length === 0 ? [...reference] : about).map(([path]) => path);
}

/** Runs the tests unchanged first, when they must pass, then once a change. */
function survivors(file: string, switches: readonly Switch[], run: () => string | undefined): ReadonlySet<number> {
  const withChange = (id: number): string | undefined => {
    Reflect.set(globalThis, WHICH, id);
    return run();
  };
  const wrong = withChange(0);
  if (wrong !== undefined) throw new Error(`${file}: its tests do not pass unchanged. ${wrong}`);
  return new Set(switches.map(({ id }) => id).filter((id) => withChange(id) === undefined));
}

const tally = (of: string, file: string, those: readonly Switch[], survived: ReadonlySet<number>): Tally => ({
  of,
  mutated: those.length,
  survivors: those
    .filter(({ id }) => survived.has(id))
    .map(({ line, from, to, text }) => ({ where: `${file}:${line}`, what: `${from} → ${to}   ${text}` })),
});
