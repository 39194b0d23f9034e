/** Words ordered by how likely they were meant. Knows no list of its own. */

/** Known words, nearest to what was found first (edits between them), ties in the order given. */
export function nearest(found: string, known: Iterable<string>): readonly string[] {
  const scored = [...new Set(known)].map((word, i) => ({ word, i, far: edits(found, word) }));
  return scored.sort((a, b) => a.far - b.far || a.i - b.i).map((s) => s.word);
}

/** Longer words are no slip of the pen. */
const LONGEST = 64;

/** Letters to change, add or drop to make one word of the other (Levenshtein distance). */
function edits(a: string, b: string): number {
  if (a.length > LONGEST || b.length > LONGEST) return Math.max(a.length, b.length);
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
