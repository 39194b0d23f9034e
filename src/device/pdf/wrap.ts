/** Breaks a text into lines of a width. Refuses to know fonts: widths of words are asked for. */

/** Space that may become the end of a line; spaces that hold a figure and its unit together may not. */
const BREAKABLE = / +/;

/** Lines no wider than `room`; a word wider than that is broken where it must be. One empty line for no words. */
export function wrapped(text: string, room: number, width: (text: string) => number): readonly string[] {
  const lines: string[] = [];
  const space = width(" ");
  let line = "";
  let used = 0;
  const put = (word: string, wide: number): void => {
    const added = line === "" ? wide : used + space + wide;
    if (line === "" || added <= room) {
      line = line === "" ? word : `${line} ${word}`;
      used = added;
      return;
    }
    lines.push(line);
    line = word;
    used = wide;
  };
  for (const word of text.split(BREAKABLE).filter((one) => one !== "")) {
    const wide = width(word);
    if (wide <= room) put(word, wide);
    else for (const piece of broken(word, room, width)) put(piece, width(piece));
  }
  return [...lines, line];
}

/** A word too wide for a line, in pieces that fit; at least one sign each. */
function broken(word: string, room: number, width: (text: string) => number): readonly string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const sign of word) {
    if (piece !== "" && width(piece + sign) > room) {
      pieces.push(piece);
      piece = "";
    }
    piece += sign;
  }
  return [...pieces, piece];
}
