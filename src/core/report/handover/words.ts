/**
 * Looks up and fills the words of a hand-over. The table comes in as an argument, one a language; `english.ts` is the
 * first. Holds no words itself.
 */
import type { english } from "./english.js";

export type HandoverKey = keyof typeof english;

export interface HandoverWords {
  /** BCP 47, for the document and for plural forms. */
  readonly lang: string;
  /** Figures carry a decimal comma. Tables for machines always carry a point. */
  readonly decimalComma: boolean;
  readonly texts: Readonly<Record<HandoverKey, string>>;
}

/** Names a text needs: `{n}` and `{n|one=visit|other=visits}` both need `n`. */
type Names<Text extends string> = Text extends `${string}{${infer Inside}}${infer Rest}`
  ? (Inside extends `${infer Name}|${string}` ? Name : Inside) | Names<Rest>
  : never;
type ParamsFor<Key extends HandoverKey> = [Names<(typeof english)[Key]>] extends [never]
  ? []
  : [Readonly<Record<Names<(typeof english)[Key]>, string | number>>];

/** The text of a key with its names filled in. A name without a value is our own mistake and throws. */
export function say<Key extends HandoverKey>(words: HandoverWords, key: Key, ...params: ParamsFor<Key>): string {
  return filled(words, words.texts[key], params[0] ?? {});
}

function filled(words: HandoverWords, text: string, params: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{([^}]+)\}/g, (_, inside: string) => {
    const [name = "", ...forms] = inside.split("|");
    const value = params[name];
    if (value === undefined) throw new Error(`The text "${text}" needs {${name}}`);
    if (forms.length === 0) return String(value);
    const wanted = new Intl.PluralRules(words.lang).select(Number(value));
    const form = forms.find((one) => one.startsWith(`${wanted}=`)) ?? forms.find((one) => one.startsWith("other="));
    return form?.slice(form.indexOf("=") + 1) ?? "";
  });
}
