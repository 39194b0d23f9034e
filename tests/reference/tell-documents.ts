/** `npm run -s documents`: the outside documents, how far each was seen, and how many lean on it. */
import { documents, type Seen } from "./documents.js";

const all = await documents();
const line = (cells: readonly (string | number)[]): string =>
  cells.map((cell, i) => (i === 0 ? String(cell).padEnd(76) : String(cell).padStart(9))).join(" ");
console.log(line(["", "seen", "functions", "limits", "tests"]));
for (const { document, seen, functions, limits, tests } of all)
  console.log(line([document, seen, functions, limits, tests]));

const many = (seen: Seen): number => all.filter((one) => one.seen === seen).length;
const named = all.filter(({ canBeFetched }) => canBeFetched).length;
console.log(`\n${all.length} documents, ${named} of them by number, title or author.`);
console.log(`${many("opened")} opened, ${many("quoted")} quoted or reprinted in part, ${many("memory")} from memory.`);
