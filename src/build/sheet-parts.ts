/** Joins the YAML parts of one folder into one object whose spots lead back to the files. Reads no disk. */
import { COMMON_LISTS, isCondition, pathText, SHEET_LISTS, type SpotOf, withEmptyLists } from "../core/sheet/author.js";
import { fail, ok, type Problem, problem, type Result } from "../core/terms/index.js";
import { readYaml, type YamlText } from "./yaml-source.js";

/** One file of a folder: its name inside it (`rules.yaml`, `texts/en.yaml`), how messages name it, and its text. */
export interface PartFile {
  readonly name: string;
  readonly file: string;
  readonly text: string;
}

/** File name (without .yaml) → the keys of the joined object it holds. */
type Layout = Readonly<Record<string, readonly string[]>>;

/** Parts of a sheet's folder. All but `sheet` may be left out: a sheet without gates needs no gates.yaml. */
export const SHEET_PARTS: Layout = {
  sheet: ["format", "id", "label", "opens-for"],
  points: ["points"],
  limits: ["limits"],
  derived: ["derived"],
  rules: ["rules"],
  jobs: ["jobs"],
  gates: ["gates"],
  nextlooks: ["nextLooks"],
  cases: ["cases"],
  brings: ["brings"],
};

/** Parts of the shared folder. */
export const COMMON_PARTS: Layout = {
  common: ["format"],
  places: ["places"],
  states: ["states"],
  gauges: ["gauges", "aids"],
  cautions: ["cautions"],
  gates: ["gates"],
  access: ["access"],
  facts: ["facts"],
  complaints: ["complaints"],
  rules: ["rules"],
  cases: ["cases"],
};

const TEXTS = /^texts\/([a-z]{2,3}(?:-[A-Za-z0-9]+)*)\.yaml$/;

/** The joined object and its spots. Every list a sheet may go without is there, empty. */
export function joinParts(files: readonly PartFile[], layout: Layout, folder: string): Result<YamlText> {
  const problems: Problem[] = [];
  const value: Record<string, unknown> = {};
  const texts: Record<string, unknown> = {};
  const spots = new Map<string, { readonly from: SpotOf; readonly drop: number }>();
  for (const { name, file, text } of files) {
    const language = TEXTS.exec(name)?.[1];
    const keys = layout[name.replace(/\.yaml$/, "")];
    if (language === undefined && (keys === undefined || !name.endsWith(".yaml"))) {
      const expected = [...Object.keys(layout).map((part) => `${part}.yaml`), "texts/LANGUAGE.yaml"];
      problems.push(problem("stray-file", { file }, { found: name, expected }));
      continue;
    }
    const read = readYaml(text, file, language === undefined ? { isCondition } : {});
    if (!read.ok) {
      problems.push(...read.problems);
    } else if (language !== undefined) {
      texts[language] = read.value.value;
      spots.set(language, { from: read.value.spotOf, drop: 2 });
    } else {
      problems.push(...takeKeys(read.value, keys ?? [], value));
      for (const key of keys ?? []) spots.set(key, { from: read.value.spotOf, drop: 0 });
    }
  }
  if (problems.length > 0) return fail(...problems);
  const lists = layout === SHEET_PARTS ? SHEET_LISTS : COMMON_LISTS;
  return ok({ value: withEmptyLists({ ...value, texts }, lists), spotOf: joinedSpots(spots, folder) });
}

function takeKeys(
  { value, spotOf }: YamlText,
  keys: readonly string[],
  into: Record<string, unknown>,
): readonly Problem[] {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return [problem("part-mapping", spotOf([]), { expected: keys.map((key) => `“${key}:”`) })];
  return Object.entries(value).flatMap(([key, part]) => {
    if (!keys.includes(key)) return [problem("unknown-key", spotOf([key], "key"), { key, expected: keys })];
    into[key] = part;
    return [];
  });
}

/** Each key leads to its file; texts by language; what no file holds leads to the folder. */
function joinedSpots(
  spots: ReadonlyMap<string, { readonly from: SpotOf; readonly drop: number }>,
  folder: string,
): SpotOf {
  return (path, at) => {
    const key = path[0] === "texts" ? path[1] : path[0];
    const source = key === undefined ? undefined : spots.get(String(key));
    if (!source) return { file: folder, path: pathText(path) };
    return { ...source.from(path.slice(source.drop), at), path: pathText(path) };
  };
}
