/**
 * The words on the screens: looks up a key in the catalogue and fills in its names. The compiler knows every key and
 * the names it needs. Holds no words itself; sheets bring their own. The first screen uses first.ts instead.
 */
import { en } from "./en.js";
import { fill, type Names, type ParamsFor } from "./fill.js";

export type TextKey = keyof typeof en;
export type TextParams<Key extends TextKey> = ParamsFor<(typeof en)[Key]>;

/** Keys whose text needs no names: for tables that choose between words. */
export type PlainKey = { [Key in TextKey]: [Names<(typeof en)[Key]>] extends [never] ? Key : never }[TextKey];

/** The text of a key with its names filled in. */
export function t<Key extends TextKey>(key: Key, ...params: TextParams<Key>): string {
  return fill(en[key], params[0] ?? {});
}

/** Whether a text is kept for this key: for keys put together from a grade, a reason, a kind. */
export const isTextKey = (key: string): key is TextKey & string => Object.hasOwn(en, key);

export { clock, day, decimalComma, figure, rounded } from "./figures.js";
export { fill } from "./fill.js";
