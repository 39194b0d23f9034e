/**
 * Free words made fit for a document: no control characters, nothing that turns the writing direction of what stands
 * around, no half characters. Loses no letter and shortens nothing.
 */

const CONTROLS = /(?![\t\n])\p{Cc}|[\ufeff\ufffe\uffff]/gu;
/** Turn the direction of everything after them until somebody turns it back. */
const TURNING = /[\u202a-\u202e\u2066-\u2069]/g;
/** In Unicode mode only a half pair is a surrogate. */
const HALVES = /\p{Cs}/gu;
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;
const ISOLATE = "\u2068";
const END_ISOLATE = "\u2069";

/** One text on one line. */
export const oneLine = (text: string): string => clean(text).replace(/\s*\n\s*/g, " ");

/** Words written from the right are set apart, so that figures after them stay where they are. */
function clean(text: string): string {
  const plain = text
    .replace(/\r\n?|[\u0085\u2028\u2029]/g, "\n")
    .replace(/\t/g, " ")
    .replace(CONTROLS, "")
    .replace(TURNING, "")
    .replace(HALVES, "\ufffd")
    .trim();
  return RIGHT_TO_LEFT.test(plain) ? `${ISOLATE}${plain}${END_ISOLATE}` : plain;
}

/** Every text of plain data cleaned; its shape stays. */
export function cleaned<T>(value: T): T {
  const walk = (one: unknown): unknown => {
    if (typeof one === "string") return oneLine(one);
    if (Array.isArray(one)) return one.map(walk);
    if (typeof one !== "object" || one === null) return one;
    return Object.fromEntries(Object.entries(one).map(([key, inner]) => [key, walk(inner)]));
  };
  // plain data in, the same shape out: only texts are changed
  return walk(value) as T;
}
