/**
 * Proves that the import rules see the whole tree and that each of them bites: a checker that looks at
 * nothing passes everything.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const checker = join(root, "node_modules", "dependency-cruiser", "bin", "dependency-cruise.mjs");
const rules = join(root, ".dependency-cruiser.mjs");

interface Dependency {
  readonly resolved: string;
  readonly dependencyTypes: readonly string[];
}
interface Cruise {
  readonly modules: readonly { readonly source: string; readonly dependencies: readonly Dependency[] }[];
  readonly summary: {
    readonly violations: readonly {
      readonly from: string;
      readonly to: string;
      readonly rule: { readonly name: string };
    }[];
  };
}

/** Within npm test the tree was looked at already: what was seen holds for files that are the same to the letter. */
const SEEN = process.env["LEADLAMP_IMPORTS_SEEN"];

function cruise(folder: string, parts: readonly string[], more: readonly string[] = []): Cruise {
  const words = [checker, "--config", rules, "--output-type", "json", ...parts, ...more];
  const run = spawnSync(process.execPath, words, {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  // The checker's own output format, read here only.
  return JSON.parse(run.stdout) as Cruise;
}

function sourcesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(tsx?|mjs)$/.test(name))
    .map((name) => join(folder, name));
}

/** One planted offence for each rule: the file that offends and what it imports. */
const PLANTED: Readonly<Record<string, readonly [file: string, imports: string]>> = {
  "terms-imports": ["src/core/terms/a.ts", "../units/index.js"],
  "units-imports": ["src/core/units/a.ts", "../expr/index.js"],
  "expr-imports": ["src/core/expr/a.ts", "../sheet/run.js"],
  "trade-imports": ["src/core/trade/a.ts", "../expr/index.js"],
  "sheet-imports": ["src/core/sheet/a.ts", "../assess/index.js"],
  "assess-imports": ["src/core/assess/a.ts", "../record/index.js"],
  "trend-imports": ["src/core/trend/a.ts", "../assess/index.js"],
  "plan-imports": ["src/core/plan/a.ts", "../expr/index.js"],
  "plan-types-only": ["src/core/plan/b.ts", "../assess/index.js"],
  "record-imports": ["src/core/record/a.ts", "../assess/index.js"],
  "record-types-only": ["src/core/record/b.ts", "../sheet/run.js"],
  "report-imports": ["src/core/report/a.ts", "../../device/store/index.js"],
  "report-types-only": ["src/core/report/b.ts", "../assess/index.js"],
  "store-imports": ["src/device/store/a.ts", "../photo/index.js"],
  "files-imports": ["src/device/files/a.ts", "idb"],
  "sound-imports": ["src/device/sound/a.ts", "idb"],
  "device-imports": ["src/device/photo/a.ts", "idb"],
  "pdf-imports": ["src/device/pdf/a.ts", "../photo/index.js"],
  "texts-imports": ["src/app/texts/a.ts", "../state/index.js"],
  "parts-imports": ["src/app/parts/a.tsx", "../state/index.js"],
  "parts-types-only": ["src/app/parts/b.tsx", "../../core/assess/index.js"],
  "screens-imports": ["src/app/screens/a.tsx", "idb"],
  "state-imports": ["src/app/state/a.ts", "../screens/index.js"],
  "app-imports": ["src/app/main.tsx", "../cli/index.js"],
  "no-node-in-browser": ["src/app/b.ts", "node:fs"],
  "only-main-joins": ["src/app/a.ts", "../device/store/index.js"],
  "sw-imports": ["src/sw/a.ts", "../core/record/index.js"],
  "core-from-outside": ["src/core/assess/b.ts", "preact"],
  "zod-mini-only": ["src/core/sheet/b.ts", "zod"],
  doors: ["src/core/assess/c.ts", "../sheet/inside.js"],
  "doors-from-outside": ["src/app/state/b.ts", "../../core/sheet/inside.js"],
  "parsers-only-when-asked": ["src/app/c.ts", "../core/sheet/author.js"],
  "cli-imports": ["src/cli/a.ts", "../app/state/index.js"],
  "build-imports": ["src/build/a.ts", "../device/store/index.js"],
  "no-cycles": ["src/core/units/b.ts", "./c.js"],
  "no-unresolved": ["src/core/units/d.ts", "./nowhere.js"],
  "no-tests-in-product": ["src/core/record/c.ts", "vitest"],
};

/** What the planted files import; nothing in them offends. */
const INNOCENT: readonly string[] = [
  ...["units", "expr", "assess", "record"].map((folder) => `src/core/${folder}/index.ts`),
  ...["src/core/sheet/run.ts", "src/core/sheet/author.ts", "src/core/sheet/inside.ts"],
  ...["src/device/store/index.ts", "src/device/photo/index.ts"],
  ...["src/app/state/index.ts", "src/app/screens/index.ts", "src/cli/index.ts"],
];

/** The tree itself, as the checker sees it. */
let tree: Cruise;
let planted: string;
let caught: ReadonlySet<string>;

const write = (file: string, text: string): void => {
  const full = join(planted, file);
  mkdirSync(dirname(full), { recursive: true });
  writeFileSync(full, text);
};

beforeAll(() => {
  planted = mkdtempSync(join(tmpdir(), "leadlamp-planted-"));
  for (const file of INNOCENT) write(file, "export const one = 1;\n");
  for (const [file, imports] of Object.values(PLANTED))
    write(file, `import * as it from "${imports}";\nexport { it };\n`);
  write("src/core/units/c.ts", 'import * as it from "./b.js";\nexport { it };\n');
  for (const name of ["idb", "zod", "preact", "vitest"]) {
    write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: "1.0.0", main: "index.js" }));
    write(`node_modules/${name}/index.js`, "export const one = 1;\n");
  }
  write(
    "package.json",
    JSON.stringify({ type: "module", dependencies: { idb: "1", zod: "1", preact: "1", vitest: "1" } }),
  );
  write("tsconfig.json", JSON.stringify({ compilerOptions: { module: "ESNext", moduleResolution: "bundler" } }));
  caught = new Set(cruise(planted, ["src"]).summary.violations.map((it) => `${it.rule.name} ${it.from}`));
  tree = cruise(root, ["src", "tests"], SEEN === undefined ? [] : ["--cache", SEEN, "--cache-strategy", "content"]);
}, 120_000);

afterAll(() => rmSync(planted, { recursive: true, force: true }));

test("the import checker sees every source file of the tree", () => {
  const expected = [...sourcesIn("src"), ...sourcesIn("tests")];
  const seen = new Set(tree.modules.map((it) => it.source));
  expect(expected.length).toBeGreaterThan(60);
  expect(expected.filter((file) => !seen.has(file.replaceAll("\\", "/")))).toEqual([]);
});

test("every import rule there is has its planted offence", async () => {
  const { default: config }: { default: { forbidden: readonly { name: string }[] } } = await import(rules);
  expect(config.forbidden.map((rule) => rule.name).sort()).toEqual(Object.keys(PLANTED).sort());
});

test.each(Object.entries(PLANTED))("the rule %s catches its planted offence", (rule, [file]) => {
  expect([...caught]).toContain(`${rule} ${file}`);
});

test("files that break no rule are not accused", () => {
  const accused = new Set([...caught].map((it) => it.split(" ")[1]));
  expect(INNOCENT.filter((file) => accused.has(file))).toEqual([]);
});

/** Modules reached from the app's start without passing through what is only loaded to import or edit a sheet. */
function reachedBeforeAuthoring({ modules }: Cruise): Set<string> {
  const byName = new Map(modules.map((it) => [it.source, it.dependencies]));
  const reached = new Set<string>();
  const waiting = ["src/app/main.tsx"];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (reached.has(next) || next.startsWith("src/app/import/")) continue;
    reached.add(next);
    for (const to of byName.get(next) ?? []) if (!to.dependencyTypes.includes("type-only")) waiting.push(to.resolved);
  }
  return reached;
}

test("no screen but importing a sheet reaches a parser or a checker", () => {
  const reached = [...reachedBeforeAuthoring(tree)];
  expect(reached.length).toBeGreaterThan(30);
  expect(reached.filter((it) => /(expr|sheet)\/author\.ts$|node_modules\/(@marcbachmann|zod|yaml)\//.test(it))).toEqual(
    [],
  );
});
