/** The verb `check-file`: opens a copy, checks all of it as the app does, and counts what it holds. Changes nothing. */
import { readFile } from "node:fs/promises";
import process from "node:process";
import { byCode, isEntry, type Logged } from "../core/record/index.js";
import type { Problem } from "../core/terms/index.js";
import { openCopy } from "../device/files/open.js";
import type { Terminal } from "./sheets.js";

const USE = `use: check-file FILE    a copy the app made; LEADLAMP_PASSPHRASE holds the passphrase of a locked one`;

/** `journal.jsonl:4 record.bad-entry expected a name`. */
function told({ code, where: { file, line, path }, params }: Problem): string {
  const spot = [file, line].filter((one) => one !== undefined).join(":");
  const more = Object.entries(params).map(([name, value]) => `${name} ${String(value)}`);
  return [spot, code, path, ...more].filter((one) => one !== undefined && one !== "").join(" ");
}

/** How many entries there are of each kind. */
function byKind(log: readonly Logged[]): Readonly<Record<string, number>> {
  const kinds = new Map<string, number>();
  for (const one of log) {
    const kind = isEntry(one) ? one.kind : "erased";
    kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  }
  return Object.fromEntries([...kinds].sort(([a], [b]) => byCode(a, b)));
}

/** Prints the manifest and counts. Gives 0, 1 when the file is refused, 2 when called wrongly. */
export async function checkFileVerb(args: readonly string[], { out, err }: Terminal): Promise<0 | 1 | 2> {
  const [path, ...rest] = args;
  const bytes = path === undefined || rest.length > 0 ? undefined : await readFile(path).catch(() => undefined);
  if (path === undefined || bytes === undefined) {
    err(path === undefined || rest.length > 0 ? USE : `${path} cannot be read`);
    return path !== undefined && rest.length === 0 ? 1 : 2;
  }
  const opened = await openCopy(new Blob([bytes]), process.env["LEADLAMP_PASSPHRASE"]);
  if (!opened.ok) {
    out(JSON.stringify({ problems: opened.problems }, null, 2));
    for (const problem of opened.problems) err(`${path}: ${told(problem)}`);
    return 1;
  }
  const { manifest, log } = opened.value;
  const { files, ...head } = manifest;
  out(JSON.stringify({ ...head, files: files.length, kinds: byKind(log) }, null, 2));
  return 0;
}
