/** The sheets a visit can be opened with: those of the app and the person's own, each fetched when it is needed. */
import type { HouseState, Store } from "../../core/record/index.js";
import { fail, ok, type Result } from "../../core/terms/index.js";
import { type FrozenSheetFile, readFrozen } from "./frozen.js";
import { LANGUAGE, listedFile, type Shelf } from "./shelf.js";

export interface SheetAtHand {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly edition: string;
  readonly own: boolean;
  readonly file: () => Promise<Result<FrozenSheetFile>>;
}

/** An own sheet takes the place of one of the app with the same id. */
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
    return [{ id, title: kept.label, about: "", edition: kept.edition, own: true, file }];
  });
  const listed = shelf.sheets
    .filter((sheet) => !own.some((one) => one.id === sheet.id))
    .map((sheet) => ({
      id: sheet.id,
      title: sheet.titles[LANGUAGE] ?? sheet.label,
      about: sheet.about[LANGUAGE] ?? "",
      edition: sheet.edition,
      own: false,
      file: async (): Promise<Result<FrozenSheetFile>> => ok(await listedFile(sheet)),
    }));
  return [...listed, ...own];
}
