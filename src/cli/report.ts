/** The verb `report FILE --as …`: a visit file in, its hand-over out. What only the app's record knows is not in it. */
import { type Checklists, loadChecklists } from "../build/load-checklists.js";
import { assess, prepare, readVisitFile, tellProblem, worthOf } from "../core/assess/index.js";
import { type OrderSetting, order } from "../core/plan/index.js";
import {
  english,
  gathered,
  type HandoverModel,
  type HandoverWords,
  handover,
  handoverPages,
  readingsCsv,
  toHtml,
  toIcs,
  toText,
  unseenCsv,
  workCsv,
} from "../core/report/index.js";
import { tell } from "../core/sheet/author.js";
import { buildPlaces } from "../core/sheet/run.js";
import { AUDIENCES, type Audience } from "../core/terms/index.js";
import { TRADE_WORK } from "../core/trade/index.js";
import { jsonNear } from "./read-near.js";
import { looksIn } from "./report-looks.js";
import { namesOf } from "./report-names.js";
import type { Terminal } from "./sheets.js";
import { told as toldProblem } from "./told.js";

const USE = `use: report FILE --as html|csv|ics|text [--for technician|owner|buyer] [--csv readings|work|unseen] [--checklists DIR]
  FILE   a visit file: {"format": "leadlamp-visit/1", …}
  --for  who reads it, else who looked
  --csv  which table, else work`;

const FORMS = ["html", "csv", "ics", "text"] as const;
const TABLES = ["readings", "work", "unseen"] as const;
const DIR = "checklists";
const LANGUAGE = "en";
const WORDS: HandoverWords = { lang: LANGUAGE, decimalComma: false, texts: english };

interface Called {
  readonly file: string;
  readonly as: (typeof FORMS)[number];
  readonly table: (typeof TABLES)[number];
  readonly reader?: Audience;
  readonly dir: string;
}

/** Prints the hand-over. Gives 0, 1 for faulty input or sheets (what is sound is printed all the same), 2 for wrong use. */
export async function reportVerb(args: readonly string[], { out, err }: Terminal): Promise<0 | 1 | 2> {
  const called = readArguments(args);
  if (called === undefined) {
    err(USE);
    return 2;
  }
  const data = await jsonNear(called.file, err);
  if (typeof data === "number") return data;
  const { result } = await loadChecklists(called.dir);
  if (result.ok) return reportFile(result.value, data.value, called, { out, err });
  for (const p of result.problems) err(tell(p));
  return 1;
}

function reportFile(lists: Checklists, data: unknown, called: Called, { out, err }: Terminal): 0 | 1 {
  const { whole: common, wholeWithTexts: commonWithTexts, sheets } = lists;
  const built = sheets.map((one) => one.built);
  // Complaints stay as they were spoken: they stand on the first page.
  const spoken = readVisitFile(data, common, built);
  const visit = readVisitFile(data, common, built, commonWithTexts.texts[LANGUAGE]);
  if (!visit.ok || !spoken.ok) {
    for (const p of visit.ok ? [] : visit.problems) err(`${called.file}: ${tellProblem(p)}`);
    return 1;
  }
  const { input } = visit.value;
  const engine = prepare(common, built, TRADE_WORK);
  const assessment = assess(engine, input);
  const { tree } = buildPlaces(common.common.places, input.car.places ?? []);
  const open = built.filter(({ sheet }) => input.sheets.includes(sheet.id));
  const setting: OrderSetting = {
    exposure: input.exposure,
    at: input.at,
    ...(input.nextVisit === undefined ? {} : { nextVisit: input.nextVisit }),
    around: tree.around,
  };
  const jobs = order(assessment, open, setting);
  const reader = called.reader ?? input.who;
  const complaints = commonWithTexts.texts[LANGUAGE]?.complaints;
  const told = gathered({
    for: reader,
    // The file says no other day, and asking the clock would make two hand-overs of one file differ.
    madeAt: input.at,
    visit: called.file.replace(/^.*[/\\]/, ""),
    car: carName(data),
    input: { ...input, complaints: spoken.value.input.complaints.map((one) => complaints?.[one]?.name ?? one) },
    assessment,
    jobs,
    editions: new Map(open.map(({ sheet, edition }) => [sheet.id, { edition, label: sheet.label }])),
    worth: worthOf(engine, common, built),
    names: namesOf(lists, reader),
  });
  const model = handover({ ...told, looks: looksIn(input, assessment, open, setting, told) });
  const problems = [...visit.value.problems, ...assessment.problems];
  for (const p of problems) err(`${called.file}: ${toldProblem(p)}`);
  out(written(model, called).replace(/\r?\n$/, ""));
  return problems.length > 0 ? 1 : 0;
}

const CSV = { readings: readingsCsv, work: workCsv, unseen: unseenCsv };

function written(model: HandoverModel, { as, table }: Called): string {
  switch (as) {
    case "html":
      return toHtml(handoverPages(model, WORDS), WORDS);
    case "text":
      return toText(handoverPages(model, WORDS), WORDS);
    case "ics":
      return toIcs(model, WORDS);
    case "csv":
      return CSV[table](model, WORDS);
  }
}

/** A visit file names no car; one that does all the same is called so. */
function carName(data: unknown): string {
  const car: unknown = typeof data === "object" && data !== null && "car" in data ? data.car : undefined;
  const name: unknown = typeof car === "object" && car !== null && "name" in car ? car.name : undefined;
  return typeof name === "string" && name !== "" ? name : "Car";
}

const OPTIONS = ["--as", "--for", "--csv", "--checklists"];

function readArguments(args: readonly string[]): Called | undefined {
  const given = new Map<string, string>();
  const rest: string[] = [];
  for (let at = 0; at < args.length; at += 1) {
    const name = args[at] ?? "";
    if (!OPTIONS.includes(name)) rest.push(name);
    else {
      at += 1;
      const value = args[at];
      if (value === undefined || given.has(name)) return undefined;
      given.set(name, value);
    }
  }
  const [file, ...more] = rest;
  const as = FORMS.find((one) => one === given.get("--as"));
  const table = TABLES.find((one) => one === (given.get("--csv") ?? "work"));
  const reader = AUDIENCES.find((one) => one === given.get("--for"));
  if (file === undefined || more.length > 0 || file.startsWith("-") || as === undefined || table === undefined)
    return undefined;
  if ((given.has("--for") && reader === undefined) || (given.has("--csv") && as !== "csv")) return undefined;
  return { file, as, table, dir: given.get("--checklists") ?? DIR, ...(reader === undefined ? {} : { reader }) };
}
