/**
 * Which built files are loaded by when, read off the list the build writes (src/build/chunk-contents.ts). Names the
 * screens on the way to the first reply; refuses to know any budget.
 */
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type ChunkContents, CONTENTS_FILE } from "../../src/build/chunk-contents.js";

/** Built file → what it holds. */
export type Contents = Readonly<Record<string, ChunkContents>>;

export const builtFolder = fileURLToPath(new URL("../../dist/", import.meta.url));

/** The list of the app as built last. */
export function readContents(): Contents {
  const file = builtFolder + CONTENTS_FILE;
  if (!existsSync(file)) throw new Error("There is no built app to weigh: run `npm run build` first.");
  // Written by our own build.
  return JSON.parse(readFileSync(file, "utf8")) as Contents;
}

const START = "src/app/main.tsx";

/** Modules that must be there, apart from the start, when the first screen stands. */
export const FIRST_SCREEN: readonly string[] = ["src/app/screens/cars.tsx"];

/**
 * Modules that must be there when the first reply is pressed: the screens on the way and one sheet in one language (a
 * visit fetches the sheets it opens, no others). What judges comes with that press: before it there is nothing to judge.
 */
export const FIRST_REPLY: readonly string[] = [
  ...FIRST_SCREEN,
  ...["new-car", "car", "new-visit", "round"].map((name) => `src/app/screens/${name}.tsx`),
  "virtual:leadlamp/common",
  "virtual:leadlamp/sheet/whl",
];

/** The built file that holds a module; our own mistake when none does. */
export function fileWith(contents: Contents, module: string): string {
  const found = Object.entries(contents).find(([, chunk]) => chunk.modules.includes(module))?.[0];
  if (found === undefined)
    throw new Error(`No built file holds ${module}: tests/support/loaded.ts names a module that is gone.`);
  return found;
}

/** A file and all it is loaded together with. */
export function withImports(contents: Contents, files: readonly string[]): readonly string[] {
  const all = new Set<string>();
  const add = (file: string): void => {
    if (all.has(file)) return;
    all.add(file);
    for (const next of contents[file]?.imports ?? []) add(next);
  };
  for (const file of files) add(file);
  return [...all];
}

/** Every script loaded by the time `modules` are there. */
export const scriptsFor = (contents: Contents, modules: readonly string[]): readonly string[] =>
  withImports(
    contents,
    [START, ...modules].map((module) => fileWith(contents, module)),
  );

/** The styles that come with these scripts. */
export const stylesOf = (contents: Contents, scripts: readonly string[]): readonly string[] => [
  ...new Set(scripts.flatMap((file) => contents[file]?.css ?? [])),
];

/** The styles put in before the first screen that is not on the way to the first reply. */
export const laterStylesOf = (contents: Contents): readonly string[] => [
  ...new Set(Object.values(contents).flatMap(({ laterCss }) => laterCss)),
];

/** What is loaded later: for each file fetched on demand, itself and whatever comes with it that is not there yet. */
export function laterParts(
  contents: Contents,
  already: readonly string[],
): readonly { readonly file: string; readonly adds: readonly string[] }[] {
  const onDemand = new Set(Object.values(contents).flatMap((chunk) => chunk.later));
  return [...onDemand]
    .filter((file) => !already.includes(file))
    .map((file) => ({ file, adds: withImports(contents, [file]).filter((part) => !already.includes(part)) }));
}
