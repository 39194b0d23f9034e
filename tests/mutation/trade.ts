/**
 * Changes every number written in the trade functions, one at a time in a scratch copy, and says which changes no
 * reference test notices. All changes of a file are tried in one process: the copy asks as it loads which number is to
 * be another, and is loaded again for each.
 */
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startVitest, type TestModule } from "vitest/node";
import { type Switchable, switchable, WHICH } from "./literals.js";
import type { Tally } from "./tally.js";

const TRADE = "src/core/trade";
const REFERENCE = "tests/reference";
/** Workers; the machine this is made for has two cores. */
const AT_ONCE = 2;

interface Tried extends Switchable {
  readonly file: string;
  readonly tests: readonly string[];
}

/** One tally a file; `files`: their names without ending, else all. */
export async function mutateTrade(files: readonly string[], say: (text: string) => void): Promise<readonly Tally[]> {
  const scratch = await mkdtemp(join(tmpdir(), "leadlamp-mutants-"));
  try {
    const tried = await lay(scratch, files);
    say(`${tried.map(({ file }) => file).join(", ")} …`);
    return await run(scratch, tried);
  } finally {
    await rm(scratch, { recursive: true, force: true });
  }
}

/** Copies what is needed and writes one test file a trade file. */
async function lay(scratch: string, files: readonly string[]): Promise<readonly Tried[]> {
  for (const folder of ["src/core", "tests/support", REFERENCE])
    await cp(folder, join(scratch, folder), { recursive: true });
  for (const file of ["package.json", "tsconfig.json"]) await cp(file, join(scratch, file));
  await symlink(join(process.cwd(), "node_modules"), join(scratch, "node_modules"));
  await mkdir(join(scratch, "mutants"));
  const names = (await readdir(TRADE)).filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts")).sort();
  const chosen = names.filter((name) => files.length === 0 || files.includes(name.slice(0, -".ts".length)));
  const reference = await referenceTests();
  const tried: Tried[] = [];
  let id = 1;
  for (const name of chosen) {
    const file = `${TRADE}/${name}`;
    const source = await readFile(file, "utf8");
    const made = switchable(file, source, id);
    const tests = testsOf(source, reference);
    id += made.switches.length;
    if (made.switches.length === 0 || tests.length === 0) continue;
    await writeFile(join(scratch, file), made.source);
    await writeFile(join(scratch, "mutants", name.replace(/\.ts$/, ".test.ts")), wrapper(made, tests));
    tried.push({ ...made, file, tests });
  }
  return tried;
}

type Texts = ReadonlyMap<string, string>;

/** The reference tests of trade functions, by file. */
async function referenceTests(): Promise<Texts> {
  const names = (await readdir(REFERENCE)).filter((name) => name.endsWith(".test.ts"));
  const texts = await Promise.all(
    names.map(async (name) => [name, await readFile(join(REFERENCE, name), "utf8")] as const),
  );
  return new Map(texts.filter(([, text]) => text.includes("support/reckoned.js") || text.includes("core/trade/")));
}

/** Those that reckon with a function of this file; all when it has no function of its own. */
function testsOf(source: string, reference: Texts): readonly string[] {
  const functions = [...source.matchAll(/\bname: "([a-z0-9_]+)"/g)].map(([, name]) => `${name}(`);
  const about = [...reference].filter(([, text]) => functions.some((called) => text.includes(called)));
  return (functions.length === 0 ? [...reference] : about).map(([name]) => name);
}

/** Loads the tests anew for each change, and once without any: those must pass. */
const wrapper = (
  { switches }: Switchable,
  tests: readonly string[],
): string => `import { describe, test, vi } from "vitest";
for (const id of [0, ${switches.map(({ id }) => id).join(", ")}])
  describe(String(id), async () => {
    Reflect.set(globalThis, "${WHICH}", id);
    vi.resetModules();
    try {
${tests.map((name) => `      await import("../${REFERENCE}/${name}");`).join("\n")}
    } catch (error) {
      test("loads", () => { throw error; });
    }
  });
`;

async function run(scratch: string, tried: readonly Tried[]): Promise<readonly Tally[]> {
  const vitest = await startVitest("test", [], {
    root: scratch,
    config: false,
    watch: false,
    include: ["mutants/*.test.ts"],
    reporters: [{}],
    pool: "forks",
    maxWorkers: AT_ONCE,
    testTimeout: 60_000,
  });
  const exit = process.exitCode;
  try {
    return tried.flatMap((one) => {
      const name = one.file.slice(TRADE.length + 1).replace(/\.ts$/, ".test.ts");
      const module = vitest.state.getTestModules().find((it) => it.moduleId.endsWith(`/mutants/${name}`));
      const states = new Map([...(module?.children.suites() ?? [])].map((suite) => [suite.name, suite.state()]));
      if (states.get("0") !== "passed")
        throw new Error(`${one.file}: its tests do not pass unchanged. ${whyFailed(module)}`);
      return [false, true].map((ranges) => {
        const those = one.switches.filter(({ range }) => range === ranges);
        return {
          of: `${name.replace(/\.test\.ts$/, "")}, ${ranges ? "ranges of arguments" : "figures"}`,
          mutated: those.length,
          survivors: those
            .filter(({ id }) => states.get(String(id)) === "passed")
            .map(({ line, from, to, text }) => ({ where: `${one.file}:${line}`, what: `${from} → ${to}   ${text}` })),
        };
      });
    });
  } finally {
    await vitest.close();
    // Failing is what these tests are for.
    process.exitCode = exit === 1 ? 0 : exit;
  }
}

/** The first thing that went wrong. */
function whyFailed(module: TestModule | undefined): string {
  const failed = [...(module?.children.allTests("failed") ?? [])][0];
  const error = failed?.result().errors?.[0] ?? module?.errors()[0];
  return `${failed?.fullName ?? ""}: ${error?.message ?? "no tests were found"}`;
}
