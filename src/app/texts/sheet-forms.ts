/** The words of the forms a check sheet's items are changed in; looked up as in index.ts. */
import { enSheetForms } from "./en-sheet-forms.js";
import { fill, type ParamsFor } from "./fill.js";

type SheetFormsKey = keyof typeof enSheetForms;

export function t<Key extends SheetFormsKey>(key: Key, ...params: ParamsFor<(typeof enSheetForms)[Key]>): string {
  return fill(enSheetForms[key], params[0] ?? {});
}
