/** `npm run -s leadlamp -- VERB …`: data on standard output, messages on standard error. Dispatches; knows no verb inside. */
import process from "node:process";
import { assessVerb } from "./assess.js";
import { calcVerb } from "./calc.js";
import { checkFileVerb } from "./check-file.js";
import { planVerb } from "./plan.js";
import { reportVerb } from "./report.js";
import { sheetsVerb, type Terminal } from "./sheets.js";

/** 0 done, 1 faulty input or sheets, 2 wrong use. */
type Verb = (args: readonly string[], terminal: Terminal) => Promise<0 | 1 | 2>;

const VERBS: Readonly<Record<string, Verb>> = {
  assess: assessVerb,
  calc: calcVerb,
  "check-file": checkFileVerb,
  plan: planVerb,
  report: reportVerb,
  sheets: sheetsVerb,
};

const USE = `use: leadlamp VERB …
  assess FILE     assess a visit file (leadlamp-visit/1)
  calc 'NAME(…)'  work out a trade function; calc --list names them all
  check-file FILE open a copy, check every byte of it and count what it holds
  plan FILE       work out questions of planning: order, limits, trend, access, budget, estimate, dates
  report FILE     write a visit file's hand-over: --as html|csv|ics|text
  sheets [DIR]    check the sheets of a folder and run their cases`;

/** Runs one verb and gives its exit code. */
export async function main(args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> {
  const [name, ...rest] = args;
  const verb = name !== undefined && Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
  if (verb !== undefined) return verb(rest, terminal);
  terminal.err(USE);
  return 2;
}

/** Whether this file is what Node was told to run. */
const isProgram = process.argv[1] !== undefined && import.meta.filename === process.argv[1];
if (isProgram)
  process.exitCode = await main(process.argv.slice(2), {
    out: (text) => process.stdout.write(`${text}\n`),
    err: (text) => process.stderr.write(`${text}\n`),
  });
