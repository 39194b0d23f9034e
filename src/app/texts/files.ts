/** The words of copies, handing on and deleting, with those of the first screens; looked up as in index.ts. */
import { enFiles } from "./en-files.js";
import { enFirst } from "./en-first.js";
import { day, rounded } from "./figures.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enFiles };
type FilesKey = keyof typeof words;

export function t<Key extends FilesKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

/** What is wrong with a file, and what to do, by the code of a problem; lines of a journal share one text. */
export function refusedWords(code: string): { readonly says: string; readonly todo: string } {
  const plain: Readonly<Record<string, string>> = words;
  const own = Object.hasOwn(plain, `refused.${code}`) ? code : isLine(code) ? "record" : "other";
  return { says: plain[`refused.${own}`] ?? "", todo: plain[`refused.${own}.do`] ?? "" };
}

/** Problems of the storage have codes beside those of lines. */
const isLine = (code: string): boolean => code.startsWith("record.") && !code.startsWith("record.store-");

/** A calendar day, wherever the phone is: its noon is never another day. */
export const calendarDay = (on: string): string => day(Date.parse(`${on}T12:00`));

export { day, rounded };
