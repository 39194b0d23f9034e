/** The verb `assess FILE`: a visit file in, findings and jobs out as JSON. Knows no other verb. */
import { type Checklists, loadChecklists } from "../build/load-checklists.js";
import { assess, prepare, readVisitFile, tellProblem } from "../core/assess/index.js";
import { order } from "../core/plan/index.js";
import { tell } from "../core/sheet/author.js";
import { buildPlaces } from "../core/sheet/run.js";
import { TRADE_WORK } from "../core/trade/index.js";
import { printed } from "./assess-print.js";
import { jsonNear } from "./read-near.js";
import type { Terminal } from "./sheets.js";
import { told } from "./told.js";

const USE = `use: assess FILE [--checklists DIR]
  FILE  a visit file: {"format": "leadlamp-visit/1", "at": …, "who": …, "sheets": […], "replies": […]}
  DIR   the folder of check sheets, else checklists`;

/**
 * Prints `{findings, faults, gates, cautions, jobs, settle, open, coverage, problems}`. A faulty reply is set aside,
 * told on the error side and in `problems`, the rest assessed. Gives 0, 1 for faulty input or sheets, 2 for wrong use.
 */
export async function assessVerb(args: readonly string[], { out, err }: Terminal): Promise<0 | 1 | 2> {
  const called = readArguments(args);
  if (called === undefined) {
    err(USE);
    return 2;
  }
  const data = await jsonNear(called.file, err);
  if (typeof data === "number") return data;
  const { result } = await loadChecklists(called.dir);
  if (result.ok) return assessFile(result.value, data.value, called.file, { out, err });
  for (const p of result.problems) err(tell(p));
  return 1;
}

/** Assesses a parsed visit file with loaded sheets. `file` names it in messages. */
export function assessFile(lists: Checklists, data: unknown, file: string, { out, err }: Terminal): 0 | 1 {
  const { whole: common, wholeWithTexts: commonWithTexts, sheets } = lists;
  const built = sheets.map((s) => s.built);
  const visit = readVisitFile(data, common, built, commonWithTexts.texts[LANGUAGE]);
  if (!visit.ok) {
    for (const p of visit.problems) err(`${file}: ${tellProblem(p)}`);
    return 1;
  }
  const { input } = visit.value;
  const assessment = assess(prepare(common, built, TRADE_WORK), input);
  const { tree } = buildPlaces(common.common.places, input.car.places ?? []);
  const open = built.filter((b) => input.sheets.includes(b.sheet.id));
  const jobs = order(assessment, open, {
    exposure: input.exposure,
    at: input.at,
    ...(input.nextVisit === undefined ? {} : { nextVisit: input.nextVisit }),
    around: tree.around,
  });
  const problems = [...visit.value.problems, ...assessment.problems];
  for (const p of problems) err(`${file}: ${told(p)}`);
  const texts = [commonWithTexts.texts[LANGUAGE], ...sheets.map((s) => s.sheet.texts[LANGUAGE])];
  out(JSON.stringify(printed(assessment, jobs, problems, texts, input.who), null, 2));
  return problems.length > 0 ? 1 : 0;
}

/** The language findings are worded in here; ids and codes are the same in all. */
const LANGUAGE = "en";
const DIR = "checklists";

function readArguments(args: readonly string[]): { readonly file: string; readonly dir: string } | undefined {
  const at = args.indexOf("--checklists");
  const dir = at < 0 ? DIR : args[at + 1];
  const rest = at < 0 ? args : args.filter((_, i) => i !== at && i !== at + 1);
  const [file, ...more] = rest;
  if (file === undefined || dir === undefined || more.length > 0 || file.startsWith("-")) return undefined;
  return { file, dir };
}
