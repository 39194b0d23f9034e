/** Whether a working copy may be kept as an edition: what is missing in words, and where it stands. Keeps nothing itself. */
import type { Sheet } from "../../core/sheet/run.js";
import type { DraftList } from "../../core/sheet/work.js";
import { t } from "../texts/sheet-work.js";
import type { App } from "./app.js";
import type { FrozenSheetFile } from "./frozen.js";
import { type ItemTold, itemsIn, type SheetWork } from "./sheet-work.js";
import { fileOf } from "./sheet-work-acts.js";

/** Where what is missing can be mended; absent where it is about the sheet as a whole. */
export interface Lacks {
  readonly says: string;
  readonly list?: DraftList;
  readonly item?: string;
}
export type MayKeep =
  | { readonly is: "sound"; readonly file: FrozenSheetFile }
  | { readonly is: "lacks"; readonly lacks: Lacks };

const firstOf = (told: readonly ItemTold[]): Lacks | undefined => {
  const problems = told.filter(({ is }) => is === "problem");
  const [first] = problems;
  if (!first) return undefined;
  const says = t("sheet-edition.lacks.problems", { n: problems.length, says: first.says });
  return { says, ...(first.about ? { list: first.about.list, item: first.about.item } : {}) };
};

/** `Hubs 1` → `Hubs 2`, `Hubs` → `Hubs 2`; a label the person changed stays as they wrote it. */
export function nextLabel(before: string, now: string): string {
  if (now !== before) return now;
  const [, name = now, number] = /^(.*?)(?:\s+(\d+))?$/.exec(now) ?? [];
  return `${name} ${number === undefined ? 2 : Number(number) + 1}`;
}

/**
 * Checks that nothing stands against the sheet as it is now, runs its cases, and gives the file to keep. `follows`: an
 * edition of this sheet is there already, so that its label counts up.
 */
export async function mayKeep(
  { sheetTools, phone }: Pick<App, "sheetTools" | "phone">,
  work: SheetWork,
  follows: boolean,
): Promise<MayKeep> {
  const { sheet } = work;
  const checking: MayKeep = { is: "lacks", lacks: { says: t("sheet-work.checking") } };
  if (work.checked !== "now") return checking;
  const lacks = firstOf(work.told);
  if (lacks) return { is: "lacks", lacks };
  const { proveCases } = await sheetTools();
  const ran = await proveCases(work, sheet.cases);
  if (!ran) return checking;
  const failed = ran.flatMap(({ failures }, i) => (failures.length > 0 ? [i] : []));
  const [first] = failed;
  if (first !== undefined) {
    const says = t("sheet-edition.lacks.cases", { n: failed.length });
    const item = [...itemsIn(work, "cases").keys()][first];
    return { is: "lacks", lacks: { says, list: "cases", ...(item === undefined ? {} : { item }) } };
  }
  const labelled: Sheet = follows ? { ...sheet, label: nextLabel(work.base.label, sheet.label) } : sheet;
  const from = work.begunFrom === undefined ? {} : { begunFrom: work.begunFrom };
  return { is: "sound", file: { ...(await fileOf(phone, labelled)), ...from } };
}
