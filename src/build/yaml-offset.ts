/** From a character of a text value to the character of the file it was written with. Knows only how YAML writes text. */

/**
 * Offset in `source` of the character at `offset` of `value`, written between `range` in the given style. Quotes,
 * escapes, indents and folded line ends are stepped over: each letter of the value is found in turn.
 */
export function offsetInSource(
  source: string,
  range: readonly [number, number, number],
  style: string | undefined,
  value: string,
  offset: number,
): number {
  const [start, end] = range;
  const block = style === "BLOCK_LITERAL" || style === "BLOCK_FOLDED";
  const quoted = style === "QUOTE_SINGLE" || style === "QUOTE_DOUBLE";
  const newline = source.indexOf("\n", start);
  let at = block && newline >= 0 ? newline + 1 : quoted ? start + 1 : start;
  let found = at;
  for (let i = 0; i <= offset && i < value.length; i++) {
    const letter = value[i];
    const blank = letter === " " || letter === "\n" || letter === "\t";
    // A blank may be a folded line end: the letters on either side hold the place.
    if (blank && source[at] !== letter) continue;
    while (at < end && source[at] !== letter) at++;
    if (at >= end) break;
    found = at++;
  }
  return offset >= value.length ? Math.min(at, end) : found;
}
