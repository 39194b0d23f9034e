/**
 * The outside documents that the trade functions, the default limits and the reference tests are checked against: how
 * far each was seen, and who leans on it. Derived from what functions, limits and tests themselves name.
 */
import { readdir, readFile } from "node:fs/promises";
import { TRADE_TABLE } from "../../src/core/trade/index.js";
import { LIMIT_FACTS } from "./limits-facts.js";

/**
 * `opened`: the text or a reprint of the table was read; `quoted`: read on a page that quotes or reprints part of it;
 * `memory`: not seen, its figures hold because they were recomputed.
 */
export type Seen = "opened" | "quoted" | "memory";

/** A document, how far it was seen, and how those who lean on it name it. */
type Row = readonly [document: string, seen: Seen, named: RegExp];

/** With a number, a title or an author of their own. */
const NUMBERED: readonly Row[] = [
  ["49 CFR 570, vehicle in use inspection standards (United States)", "quoted", /CFR 570/],
  ["49 CFR 571.116 (FMVSS 116), motor vehicle brake fluids", "quoted", /571\.116/],
  ["49 CFR 574.5, tyre identification", "quoted", /574\.5/],
  ["Abramowitz and Stegun, Handbook of mathematical functions, 7.1.26", "memory", /Abramowitz/],
  ["API 510, pressure vessel inspection code", "quoted", /API 570 and 510|API 570\/510/],
  ["API 570, piping inspection code", "quoted", /API 570/],
  ["ASTM D610, degree of rusting on painted steel, table 1", "opened", /ASTM D610/],
  ["COM(2012)382, proposal on roadside inspection, annex I", "opened", /COM\(2012\)382/],
  ["Directive 2010/48/EU (brake effort across an axle)", "quoted", /2010\/48/],
  ["Directive 2014/45/EU, annex I", "opened", /2014\/45/],
  ["EN 10210-2, hot finished hollow sections", "quoted", /EN 10210-2/],
  ["EN 10219-2, cold formed hollow sections", "quoted", /EN 10219-2/],
  ["Encyclopaedia Britannica, 11th ed. (1911), Hydraulics", "opened", /Encyclopaedia Britannica/],
  ["FAA AC 43.13-1B, 8-14, differential compression test", "quoted", /AC\s+(?:\/\/ )?43\.13-1B/],
  ["Fieller 1954, Some problems in interval estimation", "memory", /Fieller/],
  ["Handbook of chemistry, 15th edition, table 5.13", "opened", /handbook of chemistry/i],
  ["ILAC-G8:09/2019, decision rules", "quoted", /ILAC-G8/],
  ["International yard and pound agreement, 1959", "quoted", /yard and pound agreement/],
  ["Introduction to Management Science (Cengage 2014), chapter 9", "opened", /Cengage 2014/],
  ["ISO 2533, standard atmosphere", "memory", /ISO 2533/],
  ["ISO 4217, codes for currencies", "memory", /ISO 4217/],
  ["ISO 4628-3, degree of rusting of coatings", "quoted", /ISO 4628-3/],
  ["ISO 8502-4, dew point before painting", "memory", /ISO 8502-4/],
  ["ISO 21771, gears: concepts and geometry", "memory", /ISO 21771/],
  ["JCGM 100:2008, expression of uncertainty in measurement", "memory", /JCGM 100/],
  ["JCGM 106:2012, uncertainty in conformity assessment", "quoted", /JCGM 106/],
  ["MIL-STD-882D, system safety, tables A-III and A-IV", "quoted", /MIL-STD-882D/],
  ["MIL-STD-882E, system safety, table III", "quoted", /MIL-STD-882E/],
  ["NIST SP 811 (2008), use of the SI, appendix B.8", "quoted", /NIST SP 811/],
  ["Sen 1968, Estimates of the regression coefficient based on Kendall's tau", "memory", /\bSen 1968/],
  ["TM 5-3895-359, army technical manual", "opened", /TM 5-3895-359/],
  [
    "UK car test inspection manual of before 2018",
    "opened",
    /inspection manual,? (?:3|2|of before|2012)|car test inspection manual/,
  ],
  ["UK Construction and Use Regulations 1986, reg. 27", "quoted", /Construction and Use Regulations/],
  ["UK inspection manual for cars of 2018 and after", "opened", /UK inspection manual (?:for cars )?[17]\./],
  ["UK ministry note of June 2013 on brake imbalance", "quoted", /ministry note/],
  ["UN Regulation No. 30, annex 4, load-capacity index", "quoted", /Regulation No\. 30|UN R30/],
  ["WMO-No. 8, Guide to instruments and methods of observation, annex 4.B", "quoted", /WMO-No\. 8/],
];
/** Known by what they are: makers and authors are left out on purpose. */
const UNNAMED: readonly Row[] = [
  ["Bearing data sets of two universities", "opened", /data sets of two universities|two university data sets/],
  ["Calculus textbook, a tank that empties", "quoted", /calculus textbook/],
  ["Gear design textbook, helical gears", "opened", /[Gg]ear design textbook|design textbook/],
  ["Stock gear catalogue", "opened", /stock gear catalogue/],
  ["Starter circuit test manual", "opened", /[Ss]tarter (?:circuit test )?manual/],
  ["Sound speeds in materials, a gauge maker's table", "opened", /table of sound speeds/],
  ["Textbook chapter on tank drainage and variable head flow", "quoted", /chapter on tank drainage/],
  [
    "Freezing points of ethylene glycol solutions, a table",
    "opened",
    /ethylene glycol solutions|rows of ethylene|ethylene by mass/,
  ],
  ["Rest voltage of lead-acid batteries, two tables", "opened", /tables of rest voltage/],
  ["Tyre textbook, load at high speed", "opened", /Tyre textbook/],
  ["Ultrasonic thickness gauge manuals", "opened", /gauge (?:operating )?manuals/],
  ["Workshop manuals: compression, shims, liners, faces", "opened", /[Ww]orkshop manual/],
];

export interface Document {
  readonly document: string;
  readonly seen: Seen;
  /** Has a number, a title or an author by which anyone can fetch it. */
  readonly canBeFetched: boolean;
  /** How many trade functions, default limits and files of tests name it. */
  readonly functions: number;
  readonly limits: number;
  readonly tests: number;
}

const sources = [...TRADE_TABLE.values()].map(({ source }) => Object.values(source).join("; "));
/** What a limit names where it names a document at all. */
const limits = LIMIT_FACTS.map(({ rests }) => rests.source);

/** Every document with who leans on it. */
export async function documents(): Promise<readonly Document[]> {
  const tests = await testTexts();
  const count = (texts: readonly string[], named: RegExp): number => texts.filter((text) => named.test(text)).length;
  const told =
    (canBeFetched: boolean) =>
    ([document, seen, named]: Row): Document => ({
      document,
      seen,
      canBeFetched,
      functions: count(sources, named),
      limits: count(limits, named),
      tests: count(tests, named),
    });
  return [...NUMBERED.map(told(true)), ...UNNAMED.map(told(false))];
}

/** Sources of trade functions that say they are published, and limits that do, but stand in no row here. */
export function unlisted(): readonly string[] {
  const published = [...TRADE_TABLE.values()].filter(({ source }) => source.basis === "published");
  const texts = [
    ...published.map(({ source }) => Object.values(source).join("; ")),
    ...LIMIT_FACTS.filter(({ rests }) => rests.basis === "published").map(({ rests }) => rests.source),
  ];
  return texts.filter((text) => ![...NUMBERED, ...UNNAMED].some(([, , named]) => named.test(text)));
}

/** The reference tests and those of units, with the data they read. */
async function testTexts(): Promise<readonly string[]> {
  const folders = ["tests/reference", "src/core/units"];
  const paths = await Promise.all(
    folders.map(async (folder) =>
      (await readdir(folder))
        .filter((name) => /\.test\.ts$|^roadworthiness\.json$/.test(name))
        .map((name) => `${folder}/${name}`),
    ),
  );
  return Promise.all(paths.flat().map((path) => readFile(path, "utf8")));
}
