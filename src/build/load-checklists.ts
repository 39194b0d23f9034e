/**
 * Loads a folder of check sheets from disk: joins the parts, checks everything against everything, plans the conditions.
 * Shared by the build, the command line and the tests. Runs no case.
 */
import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { relative } from "node:path/posix";
import {
  type Checked,
  checkCommon,
  checkSheet,
  type Digest,
  parseCommon,
  parseSheet,
  type SpotOf,
  type Surroundings,
  sealCommon,
  sealSheet,
} from "../core/sheet/author.js";
import {
  type BuiltCommon,
  type BuiltSheet,
  type Common,
  type Sheet,
  withBrought,
  withBroughtTexts,
} from "../core/sheet/run.js";
import { fail, ok, type Problem, problem, type Result } from "../core/terms/index.js";
import { TRADE_SIGNATURES, TRADE_WORK } from "../core/trade/index.js";
import { COMMON_PARTS, joinParts, type PartFile, SHEET_PARTS } from "./sheet-parts.js";
import type { YamlText } from "./yaml-source.js";

export interface LoadedSheet {
  readonly built: BuiltSheet;
  /** The sheet with its texts. */
  readonly sheet: Sheet;
  readonly spotOf: SpotOf;
}

export interface Checklists {
  readonly common: BuiltCommon;
  readonly commonWithTexts: Common;
  /** The same with all that the sheets bring: what a terminal with every sheet at hand looks things up in. */
  readonly whole: BuiltCommon;
  readonly wholeWithTexts: Common;
  readonly commonSpotOf: SpotOf;
  /** By id. */
  readonly sheets: readonly LoadedSheet[];
  /** Remarks: names of sheets not loaded, limits no rule uses. */
  readonly notes: readonly Problem[];
}

export interface Loading {
  readonly result: Result<Checklists>;
  /** Every file read, for watching, as absolute or `dir`-relative paths as given. */
  readonly files: readonly string[];
}

/** SHA-256 in hex on Node. */
export const digest: Digest = async (text) => createHash("sha256").update(text, "utf8").digest("hex");

/** Folder name of what all sheets share. */
const COMMON = "common";

interface FolderRead {
  readonly folder: string;
  readonly parts: readonly PartFile[];
}

/** What each folder was when it was loaded last, and what came of it. */
const last = new Map<string, { readonly of: string; readonly loading: Promise<Loading> }>();

/**
 * Loads `dir` (`common/` and one folder a sheet); conditions may call every trade function. Messages name files as
 * `dir` was given. Files are read each time; what is the same to the letter as the last time is not checked anew, which
 * takes seconds and is asked dozens of times by one run of the tests.
 */
export async function loadChecklists(dir: string, around?: Surroundings): Promise<Loading> {
  const folders = await foldersOf(dir);
  if (!folders.ok) return { result: folders, files: [] };
  const read: readonly FolderRead[] = await Promise.all(
    folders.value.map(async (folder) => ({ folder, parts: await partsOf(join(dir, folder)) })),
  );
  // What surrounds the sheets may be functions, which have no letters to compare.
  if (around !== undefined) return checkRead(dir, read, around);
  const of = JSON.stringify(read);
  const before = last.get(dir);
  if (before?.of === of) return before.loading;
  const loading = checkRead(dir, read, {});
  last.set(dir, { of, loading });
  return loading;
}

/** Joins the parts of every folder and checks them all. */
async function checkRead(dir: string, read: readonly FolderRead[], around: Surroundings): Promise<Loading> {
  const joined = read.map(({ folder, parts }) => {
    const layout = folder === COMMON ? COMMON_PARTS : SHEET_PARTS;
    return { folder, part: joinParts(parts, layout, join(dir, folder)) };
  });
  const files = read.flatMap(({ parts }) => parts.map(({ file }) => file));
  return { result: await checkAll(joined, dir, { functions: TRADE_SIGNATURES, work: TRADE_WORK, ...around }), files };
}

async function foldersOf(dir: string): Promise<Result<readonly string[]>> {
  try {
    const entries = await readdir(dir, { withFileTypes: true });
    const folders = entries.filter((e) => e.isDirectory()).map((e) => e.name);
    if (folders.includes(COMMON)) return ok(folders.sort());
    return fail(problem("missing-file", { file: dir }, { found: COMMON }));
  } catch (error) {
    return fail(problem("unreadable-file", { file: dir }, { found: dir, message: messageOf(error) }));
  }
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Every file of a folder and of its `texts`; README.md is for people. */
async function partsOf(folder: string): Promise<readonly PartFile[]> {
  const entries = await readdir(folder, { withFileTypes: true, recursive: true });
  const names = entries
    .filter((e) => e.isFile() && e.name !== "README.md")
    .map((e) => join(e.parentPath, e.name))
    .sort();
  return Promise.all(
    names.map(async (file) => ({
      name: relative(folder, file).replaceAll("\\", "/"),
      file,
      text: await readFile(file, "utf8"),
    })),
  );
}

/** In each language of the shared files. */
const wholeTexts = (texts: Common["texts"], sheets: readonly Sheet[]): Common["texts"] =>
  Object.fromEntries(
    Object.entries(texts).map(([language, words]) => [
      language,
      withBroughtTexts(
        words,
        sheets.flatMap((sheet) => sheet.texts[language] ?? []),
      ),
    ]),
  );

async function checkAll(
  joined: readonly { readonly folder: string; readonly part: Result<YamlText> }[],
  dir: string,
  around: Surroundings,
): Promise<Result<Checklists>> {
  const problems: Problem[] = [];
  const read = joined.flatMap(({ folder, part }) => {
    if (!part.ok) problems.push(...part.problems);
    return part.ok ? [{ folder, ...part.value }] : [];
  });
  const shared = read.find((r) => r.folder === COMMON);
  const shapedCommon = shared && parseCommon(shared.value, shared.spotOf);
  const shaped = read.filter((r) => r.folder !== COMMON).map((r) => ({ ...r, sheet: parseSheet(r.value, r.spotOf) }));
  for (const s of shaped) if (!s.sheet.ok) problems.push(...s.sheet.problems);
  if (shapedCommon && !shapedCommon.ok) problems.push(...shapedCommon.problems);
  // Cross-checks need every shape to be right: a missing point would be told a hundred times over.
  if (problems.length > 0 || !shared || !shapedCommon?.ok) return fail(...problems);
  const common = shapedCommon.value;
  const sheets = shaped.flatMap((s) => (s.sheet.ok ? [{ ...s, sheet: s.sheet.value }] : []));
  for (const { folder, sheet, spotOf } of sheets)
    if (sheet.id !== folder)
      problems.push(problem("folder-name", spotOf(["id"]), { id: sheet.id, folder: join(dir, folder) }));

  const all = sheets.map((s) => s.sheet);
  const checkedCommon = checkCommon(shared.value, all, shared.spotOf, around);
  if (!checkedCommon.ok) problems.push(...checkedCommon.problems);
  const checked: { readonly checked: Checked; readonly spotOf: SpotOf }[] = [];
  for (const { sheet, spotOf } of sheets) {
    const result = checkSheet(
      sheet,
      common,
      all.filter((s) => s !== sheet),
      spotOf,
      around,
    );
    if (result.ok) checked.push({ checked: result.value, spotOf });
    else problems.push(...result.problems);
  }
  if (problems.length > 0 || !checkedCommon.ok) return fail(...problems);
  const sealed = await sealCommon(checkedCommon.value, digest);
  return ok({
    common: sealed,
    commonWithTexts: common,
    whole: { ...sealed, common: withBrought(sealed.common, all) },
    wholeWithTexts: { ...withBrought(common, all), texts: wholeTexts(common.texts, all) },
    commonSpotOf: shared.spotOf,
    sheets: await Promise.all(
      checked.map(async (c) => ({
        built: await sealSheet(c.checked, digest),
        sheet: c.checked.sheet,
        spotOf: c.spotOf,
      })),
    ),
    notes: [...checkedCommon.value.notes, ...checked.flatMap((c) => c.checked.notes)],
  });
}
