/**
 * Vite plugin: check sheets as modules of checked JSON, so that the app carries no parser. A faulty sheet stops the
 * build with file:line:column. Knows nothing of screens.
 */
import { isAbsolute, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plugin, ViteDevServer } from "vite";
import { type Surroundings, tell, weave } from "../core/sheet/author.js";
import { type BareCommonTexts, type Common, type Complaints, EDITION_LISTED, type Plans } from "../core/sheet/run.js";
import { type Checklists, type Loading, loadChecklists } from "./load-checklists.js";

/** Modules are named `virtual:leadlamp/…`; see virtual.d.ts for what each exports. */
const NAME = "virtual:leadlamp/";
/** What takes woven modules apart on the phone. */
const WOVEN = fileURLToPath(new URL("../core/sheet/weave.ts", import.meta.url));
/** Rollup's mark for modules without a file. */
const RESOLVED = "\0";

export interface ChecklistOptions extends Surroundings {
  /** The checklists folder. */
  readonly dir: string;
}

export function checklists({ dir, ...around }: ChecklistOptions): Plugin {
  const top = resolve(dir);
  let loading: Promise<Loading> | undefined;
  const load = () => (loading ??= loadChecklists(top, around));
  const isOurs = (file: string) => isAbsolute(file) && resolve(file).startsWith(top + sep);
  return {
    name: "leadlamp-checklists",
    buildStart() {
      loading = undefined;
    },
    resolveId(id) {
      return id.startsWith(NAME) ? RESOLVED + id : undefined;
    },
    async load(id) {
      if (!id.startsWith(RESOLVED + NAME)) return undefined;
      const { result, files } = await load();
      for (const file of files) this.addWatchFile(file);
      if (!result.ok) this.error(result.problems.map(tell).join("\n"));
      const code = moduleOf(id.slice(RESOLVED.length + NAME.length), result.value);
      if (code === undefined) this.error(`There is no module ${id.slice(RESOLVED.length)}.`);
      return { code, map: null, moduleSideEffects: false };
    },
    watchChange(file) {
      if (isOurs(file)) loading = undefined;
    },
    configureServer(server) {
      server.watcher.add(top);
      for (const event of ["add", "change", "unlink"] as const)
        server.watcher.on(event, (file) => {
          if (!isOurs(file)) return;
          loading = undefined;
          forget(server);
        });
    },
  };
}

/** Every module of ours is read again and the page loaded anew. */
function forget(server: ViteDevServer): void {
  for (const [id, node] of server.moduleGraph.idToModuleMap)
    if (id.startsWith(RESOLVED + NAME)) server.moduleGraph.invalidateModule(node);
  server.ws.send({ type: "full-reload" });
}

/** The code of one module, or undefined when nothing has that name. */
export function moduleOf(name: string, lists: Checklists): string | undefined {
  const [first, second, third] = name.split("/");
  if (name === "index") return indexModule(lists);
  if (name === "cases") return casesIndex(lists);
  if (name === "common")
    return wovenModule("common", lists.common.edition, lists.common.common, commonTexts(lists.commonWithTexts));
  if (name === "plans/common") return dataModule("plans", plansOf(lists.common));
  if (first === "complaints" && second !== undefined) return complaintsModule(second, lists.commonWithTexts);
  if (first === "cases") {
    const proved = lists.sheets.find((s) => s.sheet.id === second);
    return proved && dataModule("cases", proved.sheet.cases);
  }
  if (first === "sheet" || first === "plans") {
    const listed = lists.sheets.find((s) => s.sheet.id === second);
    if (!listed) return undefined;
    return first === "sheet"
      ? wovenModule(listed.sheet.id, listed.built.edition, listed.built.sheet, listed.sheet.texts)
      : dataModule("plans", plansOf(listed.built));
  }
  if (first !== "texts" || second === undefined) return undefined;
  const texts =
    third === "common"
      ? commonTexts(lists.commonWithTexts)
      : lists.sheets.find((s) => s.sheet.id === third)?.sheet.texts;
  if (!texts || !Object.hasOwn(texts, second)) return undefined;
  return second === wovenLanguage(texts) ? undefined : dataModule("texts", texts[second]);
}

interface Planned {
  readonly plans: Plans;
  readonly planVersion: number;
}
const plansOf = ({ plans, planVersion }: Planned): Planned => ({ plans, planVersion });

/** Shown texts of the shared files by language, without those of the complaints. */
const commonTexts = ({ texts }: Common): Readonly<Record<string, BareCommonTexts>> =>
  each(texts, ({ complaints: _, ...bare }) => bare);

/** The complaints and their words lie in one piece: whoever hears the one needs the other. */
function complaintsModule(language: string, { complaints: listed, texts }: Common): string | undefined {
  const words = texts[language];
  return words && dataModule("complaints", { listed, texts: words.complaints } satisfies Complaints);
}

/** One JSON text parsed at run time is quicker to start than the same as a literal of this size. */
const dataModule = (name: string, data: unknown): string =>
  `export const ${name} = JSON.parse(${JSON.stringify(JSON.stringify(data))});\n`;

/** The language whose texts lie beside what they are of. */
const wovenLanguage = (texts: Readonly<Record<string, unknown>>): string => Object.keys(texts).sort()[0] ?? "";

/**
 * What a visit freezes and its words as one text: an id beside its words squeezes best. The index takes them apart. A
 * literal, unlike the rest: its bytes are on the way to the first reply, and unquoted names save some.
 */
function wovenModule(id: string, edition: string, data: object, texts: Readonly<Record<string, object>>): string {
  const woven = weave({ ...data } as Readonly<Record<string, unknown>>, { ...texts[wovenLanguage(texts)] });
  return [
    `export const woven = ${JSON.stringify(woven)};`,
    `export const edition = ${JSON.stringify(edition)};`,
    `export const plans = ${fetching(`plans/${id}`)};`,
    "",
  ].join("\n");
}

function indexModule(lists: Checklists): string {
  const sheets = lists.sheets.map(({ built, sheet: { id, "opens-for": opensFor, texts } }) => {
    const head = { id, "opens-for": opensFor, titles: each(texts, (t) => t.title) };
    return `  { ...${JSON.stringify(head)}, ...${sourceCode("sheet", `sheet/${id}`, id, built.edition, texts)} }`;
  });
  const { texts } = lists.commonWithTexts;
  const common = sourceCode("common", "common", "common", lists.common.edition, texts);
  const complaints = loaders(Object.keys(texts).sort(), (language) =>
    importing(`complaints/${language}`, "complaints"),
  );
  return [
    `import { wovenSource } from ${JSON.stringify(WOVEN)};`,
    `export const sheets = [\n${sheets.join(",\n")},\n];`,
    `export const common = ${common};`,
    `export const complaints = ${complaints};`,
    "",
  ].join("\n");
}

/** Where the cases of each sheet lie; wanted by who changes one, so it is no part of the index. */
const casesIndex = (lists: Checklists): string =>
  `export const casesOf = { ${lists.sheets
    .map(({ sheet: { id } }) => `${JSON.stringify(id)}: ${importing(`cases/${id}`, "cases")}`)
    .join(", ")} };\n`;

/** Code that makes the loaders of a woven module: `name` is what its data is called, `id` that of its plans and texts. */
function sourceCode(
  name: string,
  module: string,
  id: string,
  edition: string,
  texts: Readonly<Record<string, unknown>>,
): string {
  const own = wovenLanguage(texts);
  const others = Object.keys(texts)
    .sort()
    .filter((language) => language !== own);
  const head = JSON.stringify([name, edition.slice(0, EDITION_LISTED), own]);
  const otherTexts = loaders(others, (language) => importing(`texts/${language}/${id}`, "texts"));
  return `wovenSource(${head}, ${fetching(module)}, ${otherTexts})`;
}

/** A loader for each language, as code. */
const loaders = (languages: readonly string[], load: (language: string) => string): string =>
  `{ ${languages.map((language) => `${JSON.stringify(language)}: ${load(language)}`).join(", ")} }`;

const fetching = (module: string): string => `() => import(${JSON.stringify(NAME + module)})`;

const importing = (module: string, exported: string): string => `${fetching(module)}.then((m) => m.${exported})`;

const each = <T, R>(of: Readonly<Record<string, T>>, take: (one: T) => R): Readonly<Record<string, R>> =>
  Object.fromEntries(Object.entries(of).map(([key, one]) => [key, take(one)]));
