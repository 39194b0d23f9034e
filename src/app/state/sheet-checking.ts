/**
 * What the checker told last of the sheet under work, for every screen of the editor. What was asked last is what counts:
 * an answer about an older sheet is dropped, and one asked for on a screen that was left is there on the next.
 */
import { type ReadonlySignal, signal } from "@preact/signals";
import type { Sheet } from "../../core/sheet/run.js";
import type { App } from "./app.js";
import type { WorkChecked } from "./sheet-tools.js";
import type { SheetWork } from "./sheet-work.js";

type Checking = Pick<SheetWork, "draft" | "sheet" | "on">;
interface LastChecked {
  readonly draft: string;
  /** The sheet as it was then. */
  readonly sheet: Sheet;
  readonly outcome: WorkChecked;
}

const last = signal<LastChecked | undefined>(undefined);
export const lastChecked: ReadonlySignal<LastChecked | undefined> = last;
let asked: { readonly sheet: Sheet; readonly answered: Promise<void> } | undefined;

async function check(sheetTools: App["sheetTools"], { draft, sheet, on }: Checking): Promise<void> {
  try {
    const outcome = await (await sheetTools()).checkWork({ sheet, on });
    if (outcome && asked?.sheet === sheet) last.value = { draft, sheet, outcome };
  } catch (error) {
    // Asked again by the next screen that stands.
    if (asked?.sheet === sheet) asked = undefined;
    throw error;
  }
}

/** Has a sheet checked as it is now; where it was or is being checked, only waits for that. Fails when the checker broke. */
export function checkNext(sheetTools: App["sheetTools"], work: Checking): Promise<void> {
  if (asked?.sheet !== work.sheet) asked = { sheet: work.sheet, answered: check(sheetTools, work) };
  return asked.answered;
}
