/** The sheets a visit can be opened with: those of the app and the person's own, each fetched when it is needed. */
import type { HouseState, Store } from "../../core/record/index.js";
import { isEdition, withBrought, withBroughtTexts } from "../../core/sheet/run.js";
import { fail, ok, type Problem, type Purpose, problem, type Result } from "../../core/terms/index.js";
import { type FrozenCommonFile, type FrozenSheetFile, readFrozen } from "./frozen.js";
import { commonTextsOf, LANGUAGE, listedFile, type Shelf, textsOf } from "./shelf.js";

export interface SheetAtHand {
  readonly id: string;
  readonly title: string;
  readonly edition: string;
  readonly own: boolean;
  /** What a visit is for that opens with it; every visit where nothing is said. */
  readonly opensFor?: readonly Purpose[] | undefined;
  readonly file: () => Promise<Result<FrozenSheetFile>>;
}

export interface SheetsRead {
  readonly files: readonly FrozenSheetFile[];
  readonly problems: readonly Problem[];
}

/** Reads these sheets whole; one that can't be read is left out and told. */
export async function readSheets(sheets: readonly SheetAtHand[]): Promise<SheetsRead> {
  const unread = (error: unknown): Result<FrozenSheetFile> => fail(problem("app.mistake", {}, { says: String(error) }));
  const read = await Promise.all(sheets.map((sheet) => sheet.file().catch(unread)));
  return {
    files: read.flatMap((one) => (one.ok ? [one.value] : [])),
    problems: read.flatMap((one) => (one.ok ? [] : one.problems)),
  };
}

/** An own sheet takes the place of one of the app with the same id, and opens for the same visits. */
export function sheetsAtHand(
  shelf: Shelf,
  house: HouseState | undefined,
  store: Pick<Store, "blob">,
): readonly SheetAtHand[] {
  const own = [...(house?.sheets ?? [])].flatMap(([id, standing]) => {
    const kept = standing.at(-1)?.value;
    if (!kept) return [];
    const file = async (): Promise<Result<FrozenSheetFile>> => {
      const blob = await store.blob(kept.blob);
      if (!blob.ok) return blob;
      if (!blob.value) return fail({ code: "app.frozen-missing", where: {}, params: { blob: kept.blob } });
      return readFrozen("leadlamp-frozen-sheet/1", blob.value.bytes);
    };
    const opensFor = shelf.sheets.find((sheet) => sheet.id === id)?.["opens-for"];
    return [{ id, title: kept.label, edition: kept.edition, own: true, opensFor, file }];
  });
  const listed = shelf.sheets
    .filter((sheet) => !own.some((one) => one.id === sheet.id))
    .map((sheet) => ({
      id: sheet.id,
      title: sheet.titles[LANGUAGE] ?? sheet.id,
      edition: sheet.edition,
      own: false,
      opensFor: sheet["opens-for"],
      file: async (): Promise<Result<FrozenSheetFile>> => ok(await listedFile(sheet)),
    }));
  return [...listed, ...own];
}

/** Whether the app's edition of this sheet is another than the one an own edition goes back to. */
export const isNewer = ({ sheets }: Pick<Shelf, "sheets">, { sheet, begunFrom }: FrozenSheetFile): boolean =>
  begunFrom !== undefined && sheets.some(({ id, edition }) => id === sheet.id && !isEdition(begunFrom, edition));

/** The shared files with what these sheets bring; its edition stays that of the shared files, so it is never frozen. */
export const wholeCommonFile = (file: FrozenCommonFile, sheets: readonly FrozenSheetFile[]): FrozenCommonFile => ({
  ...file,
  common: withBrought(
    file.common,
    sheets.map(({ sheet }) => sheet),
  ),
  texts: { ...file.texts, [LANGUAGE]: withBroughtTexts(commonTextsOf(file), sheets.map(textsOf)) },
});
