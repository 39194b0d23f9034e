/**
 * `npm run bench [NAME…]`: runs the bench files and prints one table, ours beside its peers. Never fails on time; fails
 * only when a bench cannot be run. Refuses to judge.
 */
import { readdirSync } from "node:fs";
import { cpus } from "node:os";
import { fileURLToPath } from "node:url";
import type { Bench, BenchRow } from "./row.js";

const folder = fileURLToPath(new URL(".", import.meta.url));
const wanted = process.argv.slice(2);

const shown = (value: number): string =>
  Number.isInteger(value) || value >= 100 ? value.toFixed(0) : value >= 1 ? value.toFixed(2) : value.toPrecision(2);

function tell(row: BenchRow): void {
  const [ours] = Object.values(row.figures);
  // Counts and parts of a whole are no contenders.
  const isCompared = row.unit !== "" && row.unit !== "min";
  console.log(`\n${row.what}`);
  for (const [name, value] of Object.entries(row.figures)) {
    const beside = isCompared && ours !== undefined && value !== ours ? `   ${shown(value / ours)} × the first` : "";
    console.log(`  ${name.padEnd(44)} ${shown(value).padStart(10)} ${row.unit}${beside}`);
  }
  if (row.goal) console.log(`  goal: ${row.goal}`);
  if (row.note) console.log(`  ${row.note}`);
}

const files = readdirSync(folder)
  .filter((name) => name.endsWith(".bench.ts"))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)));

console.log(`Node ${process.versions.node}, ${cpus().length} × ${cpus()[0]?.model ?? "unknown processor"}`);
for (const file of files) {
  const { bench }: { bench: Bench } = await import(new URL(file, import.meta.url).href);
  for (const row of await bench()) tell(row);
}
if (files.length === 0) {
  console.error(`No bench named ${wanted.join(", ") || "anything"} in tests/bench.`);
  process.exitCode = 2;
}
