/** The verb `sheets [DIR]`: checks every sheet of a folder and runs its cases. Knows no other verb. */
import { loadChecklists } from "../build/load-checklists.js";
import { tell } from "../core/sheet/author.js";
import type { Problem } from "../core/terms/index.js";
import { runCases } from "./run-cases.js";

/** Where a verb prints: data and messages apart. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

const USE = `use: sheets [DIR] [--cases-of SHEET]
  DIR: the folder of check sheets, else checklists. Everything is checked against everything; with --cases-of only that
  sheet's cases are run.`;

/**
 * Prints `{sheets, unused, notLoaded, problems}` as JSON and each problem as `file:line:column message` on the error
 * side. Gives 0 when all stands, 1 when a sheet or a case is faulty, 2 when called wrongly.
 */
export async function sheetsVerb(args: readonly string[], { out, err }: Terminal): Promise<0 | 1 | 2> {
  const read = readArguments(args);
  if (read === undefined) {
    err(USE);
    return 2;
  }
  const { result } = await loadChecklists(read.dir);
  if (result.ok && read.casesOf !== undefined && !result.value.sheets.some(({ sheet }) => sheet.id === read.casesOf)) {
    err(`There is no sheet ${read.casesOf} in ${read.dir}.\n${USE}`);
    return 2;
  }
  const problems = result.ok ? runCases(result.value, read.casesOf) : result.problems;
  const notes = result.ok ? result.value.notes : [];
  const sheets = result.ok ? result.value.sheets : [];
  for (const p of problems) err(tell(p));
  const report = {
    sheets: sheets.map(({ built, sheet }) => ({
      id: sheet.id,
      label: sheet.label,
      edition: built.edition,
      points: sheet.points.length,
      limits: sheet.limits.length,
      derived: sheet.derived.length,
      rules: sheet.rules.length,
      jobs: sheet.jobs.length,
      gates: sheet.gates.length,
      cases: sheet.cases.length,
      languages: Object.keys(sheet.texts),
    })),
    unused: notes.filter((n) => n.code === "unused-limit").map((n) => n.params["limit"]),
    notLoaded: namesBySheet(notes),
    problems: problems.map((p) => ({ code: p.code, ...p.where, message: tell({ ...p, where: {} }) })),
  };
  out(JSON.stringify(report, null, 2));
  return problems.length > 0 ? 1 : 0;
}

function readArguments(args: readonly string[]): { readonly dir: string; readonly casesOf?: string } | undefined {
  const at = args.indexOf("--cases-of");
  const [dir = "checklists", ...rest] = at < 0 ? args : [...args.slice(0, at), ...args.slice(at + 2)];
  const casesOf = at < 0 ? undefined : args[at + 1];
  if (rest.length > 0 || dir.startsWith("-") || (at >= 0 && casesOf === undefined)) return undefined;
  return { dir, ...(casesOf === undefined ? {} : { casesOf }) };
}

/** How many names of each sheet that is not loaded are used. */
function namesBySheet(notes: readonly Problem[]): Readonly<Record<string, number>> {
  const counts = new Map<string, number>();
  for (const { code, params } of notes)
    if (code === "name-not-loaded" || code === "expr.sheet-not-loaded") {
      const sheet = String(params["sheet"]);
      counts.set(sheet, (counts.get(sheet) ?? 0) + 1);
    }
  return Object.fromEntries([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));
}
