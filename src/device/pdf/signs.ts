/**
 * Text as the printing face can show it: one form of each letter, nothing invisible, and a crossed box for every sign it
 * has none for, so that nothing goes missing without being seen. Refuses to know fonts: it asks whether one has a sign.
 */

/** Stands for a sign the face has none for. */
export const NO_SIGN = "\ufffd";

/** Signs that look the same and have one code point in the face. */
const ALIKE: Readonly<Record<string, string>> = {
  "\u202f": "\u2009",
  "\u2007": " ",
  "\u2010": "-",
  "\u2011": "-",
  "\u2012": "–",
  "\u2126": "Ω",
  "\u03bc": "µ",
  "\u2028": " ",
  "\u2029": " ",
  "\t": " ",
  "\n": " ",
};
/** Shown by nothing: joins, marks of direction, variants of the sign before. */
const UNSEEN = /\p{Cf}|\p{Cc}|[\ufe00-\ufe0f]/u;

export interface Printable {
  readonly text: string;
  readonly missing: readonly string[];
}

/** `has`: whether the face has this code point. */
export function printable(given: string, has: (code: number) => boolean): Printable {
  const missing: string[] = [];
  let text = "";
  for (const sign of given.normalize("NFC")) {
    const alike = ALIKE[sign] ?? sign;
    if (has(alike.codePointAt(0) ?? 0)) text += alike;
    else if (!UNSEEN.test(sign)) {
      missing.push(sign);
      text += NO_SIGN;
    }
  }
  return { text, missing };
}
