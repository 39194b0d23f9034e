/**
 * Byte budgets (architecture §10), gzipped, read off the built app. tests/e2e/bytes.spec.ts proves in a browser that
 * no more than this is really loaded.
 */
import { readdirSync, readFileSync } from "node:fs";
import {
  FIRST_REPLY,
  FIRST_SCREEN,
  laterParts,
  laterStylesOf,
  readContents,
  scriptsFor,
  stylesOf,
} from "./tests/support/loaded.ts";

const contents = readContents();
const budget = (name, limit, files) => ({ name, limit, path: files.map((file) => `dist/${file}`), gzip: true });

const firstScreen = scriptsFor(contents, FIRST_SCREEN);
const firstReply = scriptsFor(contents, FIRST_REPLY);
/**
 * What is no screen and weighed apart: the judging that is fetched with the first reply, and the parsers and checkers
 * that import a sheet or plan an old edition again. What answers for a sheet under work runs in a worker, a program of
 * its own with the same checkers; the page fetches them only where no worker will run. What opens over a reading is weighed with the whole reading screen
 * and the catalogue of words (the screen itself is there already when it opens), and so are what was judged again before and a visit's own page.
 * The work list and every page of its plan are weighed with what they all share: how a plan is laid out and told, and
 * the catalogue of words; the owner's word with what prices one job anew and what must be opened
 * for it; what comes behind the estimate's figures, and
 * what opens over them, with the whole estimate; the row that takes back, with the kinds of a plan, which the page it
 * stands on has brought already.
 * What plans the demo's open visit is weighed with the whole demo, which is there already when it is fetched.
 * The bench reckoner brings every trade function, so does what was heard (turns and
 * bearing frequencies), and so does the first judgement by a sheet that calls one. What is wearing brings the lines of
 * the trade's trend, and where something is said of it the kinds of a plan.
 * When to look again brings that too, and so does what it adds to a hand-over.
 * What an owner does after a look is weighed with the hand-over it is made from.
 * What makes and draws a hand-over is fetched when its screen stands, and weighed with all it tells in words; the writers
 * of its files with that again. The printing worker is a program of its own, with the library that writes pages.
 * Reading a file in is weighed with the screen of copies, which is there already.
 * The forms of a sheet's items are each weighed with the boxes and the words they all share.
 * The page of one limit is weighed with the units, the line of its figures and the catalogue of words; entering a figure
 * with all that its page has brought already, and the book as a table with that of the whole book.
 * A sheet with its texts is no screen
 * either: a visit freezes it whole.
 */
const APART = {
  judging: "35 kB",
  // With the dialog that finds a name by a word, which the forms it stands in have already.
  "condition-field": "46 kB",
  "item-point": "31 kB",
  "item-job": "30 kB",
  "item-brought": "29 kB",
  "item-limit": "27 kB",
  "plan-editions": "40 kB",
  "sheet-tools": "70 kB",
  "sheet-file": "106 kB",
  "sheet-answers": "154 kB",
  "sheet-try": "60 kB",
  "item-rule": "44 kB",
  "item-case": "64 kB",
  proving: "36 kB",
  "reading-over": "26.5 kB",
  "judged-before": "24 kB",
  "visit-file": "26 kB",
  visit: "24 kB",
  work: "36 kB",
  job: "34 kB",
  part: "34 kB",
  "plan-given": "48 kB",
  "plan-additions": "44 kB",
  "write-plan": "36 kB",
  "owners-word": "32 kB",
  "sign-sheet": "51 kB",
  "answer-sheet": "28 kB",
  "decide-sheet": "48 kB",
  "all-yes-sheet": "46 kB",
  "plan-decisions": "53 kB",
  "hand-over-body": "98 kB",
  "what-now-body": "98 kB",
  "what-now-steps": "114 kB",
  "handover-files": "98 kB",
  "plan-addition": "47 kB",
  "plan-estimate": "40 kB",
  "plan-scope": "36 kB",
  "plan-release": "49 kB",
  "plan-note": "50 kB",
  "viewing-page": "46 kB",
  "release-sheets": "52 kB",
  "complaint-answer": "28 kB",
  plan: "35 kB",
  "undo-row": "28 kB",
  "trade-work": "24 kB",
  heard: "28 kB",
  "read-in": "23 kB",
  wearing: "26 kB",
  "hand-over-wearing": "40 kB",
  looks: "44 kB",
  "due-band": "43 kB",
  "due-begin": "43 kB",
  "due-order": "43 kB",
  wear: "32 kB",
  reckoner: "28 kB",
  reckoning: "36 kB",
  brk: "36 kB",
  cool: "28 kB",
  corr: "24 kB",
  drn: "24 kB",
  eng: "36 kB",
  fuel: "36 kB",
  head: "36 kB",
  legal: "36 kB",
  trans: "36 kB",
  susp: "28 kB",
  "limit-form": "30 kB",
  limit: "24 kB",
  "limits-table": "22 kB",
  "item-gate": "26 kB",
  "item-derived": "26 kB",
  "item-plain": "26 kB",
  tyre: "24 kB",
};
const limitOf = (file) => Object.entries(APART).find(([name]) => file.startsWith(`assets/${name}-`))?.[1] ?? "20 kB";

/** Workers are built apart and are in no list: the one that prints is the largest, the one that checks sheets the next. */
const builtFiles = readdirSync(new URL("dist/assets/", import.meta.url));
const printing = builtFiles
  .filter((file) => /^worker-.*\.js$/.test(file))
  .map((file) => `assets/${file}`)
  .filter((file) => readFileSync(new URL(`dist/${file}`, import.meta.url), "utf8").includes("FontDescriptor"));

const checking = builtFiles.filter((file) => /^sheet-worker-.*\.js$/.test(file)).map((file) => `assets/${file}`);

export default [
  budget("scripts until the first screen", "45 kB", firstScreen),
  budget("scripts, styles and sheet until the first reply", "100 kB", [
    ...firstReply,
    ...stylesOf(contents, firstReply),
  ]),
  budget("all styles", "12 kB", [...stylesOf(contents, Object.keys(contents)), ...laterStylesOf(contents)]),
  // It names every file there is, with its hash: a lazy screen more is 40 bytes more.
  budget("service worker", "12 kB", ["sw.js"]),
  budget("printing worker", "150 kB", printing),
  budget("checking worker", "112 kB", checking),
  budget("printing faces", "32 kB", ["assets/leadlamp-sheet-*.ttf"]),
  ...laterParts(contents, firstReply).map(({ file, adds }) => budget(`later: ${file}`, limitOf(file), adds)),
];
