/** Mark-up made of text: everything a person wrote is escaped here and nowhere else. Knows no section. */

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
/** Text as it may stand between tags and in quoted attributes. */
export const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? sign);

/** One element; attribute values are escaped, what lies in it is mark-up already. */
export function element(
  tag: string,
  attrs: Readonly<Record<string, string | undefined>>,
  ...inside: readonly string[]
): string {
  const written = Object.entries(attrs)
    .flatMap(([name, value]) => (value === undefined ? [] : [` ${name}="${escaped(value)}"`]))
    .join("");
  return `<${tag}${written}>${inside.join("")}</${tag}>`;
}

/** A person's words, with the direction they are written in. */
export const words = (tag: string, text: string, className?: string): string =>
  element(tag, { dir: "auto", class: className }, escaped(text));

const ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
/** Bytes as base64: neither the page nor the terminal is asked for it. */
export function base64(bytes: Uint8Array): string {
  const out: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const bits = (a << 16) | (b << 8) | c;
    const have = bytes.length - at;
    const digit = (shift: number): string => ALPHABET[(bits >> shift) & 63] ?? "";
    out.push(digit(18), digit(12), have > 1 ? digit(6) : "=", have > 2 ? digit(0) : "=");
  }
  return out.join("");
}

const DATA_IMAGE = /^data:image\/(?:jpeg|png|webp|avif|gif);base64,[A-Za-z0-9+/]+={0,2}$/;
/** Whether an address is a picture in itself: anything else would be asked for somewhere. */
export const isDataImage = (url: string): boolean => DATA_IMAGE.test(url);
