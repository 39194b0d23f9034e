/** Which known words lie nearest to one that is not known. Knows only letters. */

/** More help than this is noise; also bounds the work on hostile text. */
const MOST = 6;
const LONGEST = 48;

/** Candidates from near to far by letters changed, added, lost or swapped; equals in alphabetical order. */
export function nearest(word: string, candidates: Iterable<string>, most = MOST): readonly string[] {
  const wanted = word.slice(0, LONGEST).toLowerCase();
  return [...new Set(candidates)]
    .map((text) => ({ text, far: distance(wanted, text.slice(0, LONGEST).toLowerCase()) }))
    .sort((a, b) => a.far - b.far || (a.text < b.text ? -1 : 1))
    .slice(0, most)
    .map(({ text }) => text);
}

/** Letters changed, added, lost or two neighbours swapped. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min(change, (last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      row.push(best);
    }
    [before, last] = [last, row];
  }
  return last[b.length] ?? 0;
}
