/**
 * The words on the screens: looks up a key in the catalogue and fills in its names. The compiler knows
 * every key and the names it needs. Holds no words itself; sheets bring their own.
 */
import { en } from "./en.js";
import { figure } from "./figures.js";

export type TextKey = keyof typeof en;

/** Names a text needs: `{n}` and `{n|one=visit|other=visits}` both need `n`. */
type Names<Text extends string> = Text extends `${string}{${infer Inside}}${infer Rest}`
  ? (Inside extends `${infer Name}|${string}` ? Name : Inside) | Names<Rest>
  : never;
type Needs<Key extends TextKey> = Names<(typeof en)[Key]>;
export type TextParams<Key extends TextKey> = [Needs<Key>] extends [never]
  ? []
  : [Readonly<Record<Needs<Key>, string | number>>];

/** Keys whose text needs no names: for tables that choose between words. */
export type PlainKey = { [Key in TextKey]: [Needs<Key>] extends [never] ? Key : never }[TextKey];

const PLURALS = new Intl.PluralRules("en");

/** Fills `text`: numbers as figures, plural forms by the language's own rules; a missing name is our mistake. */
export function fill(text: string, params: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{([^}]+)\}/g, (_, inside: string) => {
    const [name = "", ...forms] = inside.split("|");
    const value = params[name];
    if (value === undefined) throw new Error(`The text "${text}" needs {${name}}`);
    if (forms.length === 0) return typeof value === "number" ? figure(value) : value;
    const wanted = PLURALS.select(Number(value));
    const form = forms.find((one) => one.startsWith(`${wanted}=`)) ?? forms.find((one) => one.startsWith("other="));
    return form?.slice(form.indexOf("=") + 1) ?? "";
  });
}

/** The text of a key with its names filled in. */
export function t<Key extends TextKey>(key: Key, ...params: TextParams<Key>): string {
  return fill(en[key], params[0] ?? {});
}

/** Whether a text is kept for this key: for keys put together from a grade, a reason, a kind. */
export const isTextKey = (key: string): key is TextKey & string => Object.hasOwn(en, key);

export { clock, day, decimalComma, figure, month, rounded } from "./figures.js";
