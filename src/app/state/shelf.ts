/**
 * The sheets this app can open: those it comes with, the person's own, and the editions visits froze. Knows how
 * they are told apart (edition, blob), never what they say.
 */
import type { Store } from "../../core/record/index.js";
import {
  type BareCommon,
  type BareCommonTexts,
  type BareSheet,
  type BuiltCommon,
  type BuiltSheet,
  type Complaints,
  isEdition,
  type ListedSheet,
  type SheetTexts,
} from "../../core/sheet/run.js";
import { fail, ok, problem, type Result } from "../../core/terms/index.js";
import { type FrozenCommonFile, type FrozenLimitsFile, type FrozenSheetFile, readFrozen } from "./frozen.js";

/** What the build made: every sheet the app comes with, loaded one by one. */
export interface Shelf {
  readonly sheets: readonly ListedSheet[];
  readonly common: {
    readonly edition: string;
    readonly load: () => Promise<BuiltCommon>;
    /** Without its plans. */
    readonly source: () => Promise<Omit<BuiltCommon, "plans" | "planVersion">>;
    readonly texts: Readonly<Record<string, () => Promise<BareCommonTexts>>>;
  };
  /** The known complaints by language: as they are now, whatever a visit froze, since they judge nothing. */
  readonly complaints: Readonly<Record<string, () => Promise<Complaints>>>;
}

/**
 * Plans the conditions of an edition that has no current plan. Lies with the parser in a piece of its own, so it is
 * handed in; problems name the place in the sheet.
 */
export interface Compiler {
  compile(
    common: FrozenCommonFile,
    sheets: readonly FrozenSheetFile[],
  ): Promise<Result<{ readonly common: BuiltCommon; readonly sheets: readonly BuiltSheet[] }>>;
}

/** The language whose texts are shown; more languages come with more catalogues. */
export const LANGUAGE = "en";

/** A text set in the language shown, else whichever there is. */
function inLanguage<Texts>(texts: Readonly<Record<string, Texts>>): Texts | undefined {
  return texts[LANGUAGE] ?? Object.values(texts)[0];
}

/** A sheet that comes with the app, as it is frozen into a visit. */
export async function listedFile(listed: ListedSheet): Promise<FrozenSheetFile> {
  const built = await listed.source();
  const load = inLanguage(listed.texts);
  return {
    format: "leadlamp-frozen-sheet/1",
    edition: built.edition,
    sheet: built.sheet,
    texts: load ? { [LANGUAGE]: await load() } : {},
  };
}

/** The shared files that come with the app, as they are frozen into a visit. */
export async function commonFile(shelf: Shelf): Promise<FrozenCommonFile> {
  const built = await shelf.common.source();
  const load = inLanguage(shelf.common.texts);
  return {
    format: "leadlamp-frozen-common/1",
    edition: built.edition,
    common: built.common,
    texts: load ? { [LANGUAGE]: await load() } : {},
  };
}

/** The known complaints in the language shown. */
export const complaintsOf = async ({ complaints }: Pick<Shelf, "complaints">): Promise<Complaints | undefined> =>
  inLanguage(complaints)?.();

/** Everything a visit froze, read back. */
export interface FrozenSet {
  readonly common: FrozenCommonFile;
  readonly sheets: readonly FrozenSheetFile[];
  readonly limits: FrozenLimitsFile;
}

type Blobs = Pick<Store, "blob">;

async function frozenFile<Format extends Parameters<typeof readFrozen>[0]>(
  store: Blobs,
  format: Format,
  hash: string,
): Promise<ReturnType<typeof readFrozen<Format>>> {
  const kept = await store.blob(hash);
  if (!kept.ok) return kept;
  if (!kept.value) return fail(problem("app.frozen-missing", {}, { blob: hash }));
  return readFrozen(format, kept.value.bytes);
}

/** Reads the frozen blobs of a visit. */
export async function readFrozenSet(
  store: Blobs,
  hashes: { readonly common: string; readonly limits: string; readonly sheets: readonly string[] },
): Promise<Result<FrozenSet>> {
  const common = await frozenFile(store, "leadlamp-frozen-common/1", hashes.common);
  const limits = await frozenFile(store, "leadlamp-frozen-limits/1", hashes.limits);
  const sheets: FrozenSheetFile[] = [];
  for (const hash of hashes.sheets) {
    const sheet = await frozenFile(store, "leadlamp-frozen-sheet/1", hash);
    if (!sheet.ok) return sheet;
    sheets.push(sheet.value);
  }
  if (!common.ok) return common;
  if (!limits.ok) return limits;
  return ok({ common: common.value, limits: limits.value, sheets });
}

/**
 * The frozen set with plans: those the app comes with where the edition is the same, else made again. The plans
 * belong to one set, so one foreign edition has all of them made again.
 */
export async function plannedSet(
  shelf: Shelf,
  compiler: Compiler,
  frozen: FrozenSet,
): Promise<Result<{ readonly common: BuiltCommon; readonly sheets: readonly BuiltSheet[] }>> {
  const listed = frozen.sheets.map((sheet) =>
    shelf.sheets.find((one) => one.id === sheet.sheet.id && isEdition(sheet.edition, one.edition)),
  );
  if (isEdition(frozen.common.edition, shelf.common.edition) && listed.every((one) => one !== undefined)) {
    const [common, ...sheets] = await Promise.all([shelf.common.load(), ...listed.map((one) => one.load())]);
    return ok({ common, sheets });
  }
  return compiler.compile(frozen.common, frozen.sheets);
}

export const textsOf = (file: FrozenSheetFile): SheetTexts => inLanguage(file.texts) ?? noTexts(file.sheet);
export const commonTextsOf = (file: FrozenCommonFile): BareCommonTexts =>
  inLanguage(file.texts) ?? noCommonTexts(file.common);

/** A sheet without words in any language shows its ids: better than nothing, and visibly wrong. */
const noTexts = (sheet: BareSheet): SheetTexts => ({
  language: LANGUAGE,
  title: sheet.id,
  about: "",
  points: {},
  faults: {},
  jobs: {},
});
const noCommonTexts = (_: BareCommon): BareCommonTexts => ({
  language: LANGUAGE,
  places: {},
  states: {},
  cautions: {},
  gates: {},
  gauges: {},
  access: {},
  facts: {},
});
