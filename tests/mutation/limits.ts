/**
 * Changes every edge of every default limit, one at a time and in memory only, and says which changes neither the table
 * of facts nor any case of the sheets notices. Writes nothing.
 */
import { type Checklists, type LoadedSheet, loadChecklists } from "../../src/build/load-checklists.js";
import { runCases } from "../../src/cli/run-cases.js";
import type { Limit } from "../../src/core/sheet/run.js";
import { GRADES, type Grade } from "../../src/core/terms/index.js";
import { LIMIT_FACTS } from "../reference/limits-facts.js";
import { differences } from "../reference/limits-held.js";
import { type Survivor, steps, type Tally } from "./tally.js";

interface Mutant {
  readonly limit: Limit;
  readonly grade: Grade;
  readonly from: number;
  readonly to: number;
}

/** Two tallies: what the table of facts misses, and what the sheets' own cases alone miss. */
export async function mutateLimits(sheets: readonly string[], say: (text: string) => void): Promise<readonly Tally[]> {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  const lists = result.value;
  const tallies: Tally[] = [];
  for (const loaded of lists.sheets) {
    if (sheets.length > 0 && !sheets.includes(loaded.sheet.id)) continue;
    say(`limits of ${loaded.sheet.id} …`);
    const mutants = loaded.sheet.limits.flatMap(mutantsOf);
    const pastFacts = mutants.filter((mutant) => !factsNotice(mutant));
    const notByCases = mutants.filter((mutant) => !casesNotice(lists, loaded, mutant));
    const tally = (of: string, survivors: readonly Mutant[]): Tally => ({
      of: `${loaded.sheet.id} limits, ${of}`,
      mutated: mutants.length,
      survivors: survivors.map(survivor),
    });
    tallies.push(
      tally(
        "facts and cases",
        pastFacts.filter((mutant) => notByCases.includes(mutant)),
      ),
      tally("cases alone", notByCases),
    );
    say(`  ${mutants.length} changed, ${pastFacts.length} past the facts, ${notByCases.length} past the cases`);
  }
  return tallies;
}

const survivor = ({ limit, grade, from, to }: Mutant): Survivor => ({
  where: limit.id,
  what: `${grade} ${from} → ${to} ${limit.unit}`,
});

const mutantsOf = (limit: Limit): readonly Mutant[] =>
  GRADES.flatMap((grade) => {
    const from = limit.bands[grade];
    return from === undefined ? [] : steps(from).map((to) => ({ limit, grade, from, to }));
  });

const changed = ({ limit, grade, to }: Mutant): Limit => ({ ...limit, bands: { ...limit.bands, [grade]: to } });

function factsNotice(mutant: Mutant): boolean {
  const fact = LIMIT_FACTS.find(({ limit }) => limit === mutant.limit.id);
  return fact !== undefined && differences(changed(mutant), fact).length > 0;
}

/** Its own sheet alone first, which is quick; what survives that meets the cases of all sheets. */
function casesNotice(lists: Checklists, own: LoadedSheet, mutant: Mutant): boolean {
  const touches = touching(namesUnder(lists, mutant.limit.of));
  const alone = only(lists, [own], touches, own.sheet.id);
  return turns(alone, mutant) || turns(only(lists, lists.sheets, touches), mutant);
}

/** Only what passes unchanged can tell that something has changed. */
const turns = (lists: Checklists, mutant: Mutant): boolean => fails(lists, mutant) && !fails(lists);

function fails(lists: Checklists, mutant?: Mutant): boolean {
  const under = mutant === undefined ? lists : withMutant(lists, mutant);
  return runCases(under).length > 0;
}

type Case = LoadedSheet["sheet"]["cases"][number];
type Touches = (one: Case) => boolean;

/** The lists with the cases that touch the limit; `within`: those that name no other sheet. */
function only(lists: Checklists, sheets: readonly LoadedSheet[], touches: Touches, within?: string): Checklists {
  const stays = (one: Case) =>
    touches(one) && (within === undefined || keysOf(one).every((key) => key.startsWith(`${within}.`)));
  return {
    ...lists,
    commonWithTexts: {
      ...lists.commonWithTexts,
      cases: within === undefined ? lists.commonWithTexts.cases.filter(touches) : [],
    },
    sheets: sheets.map((one) => ({ ...one, sheet: { ...one.sheet, cases: one.sheet.cases.filter(stays) } })),
  };
}

function withMutant(lists: Checklists, mutant: Mutant): Checklists {
  const swap = (limits: readonly Limit[]) =>
    limits.map((limit) => (limit.id === mutant.limit.id ? changed(mutant) : limit));
  return {
    ...lists,
    sheets: lists.sheets.map((one) => ({
      ...one,
      sheet: { ...one.sheet, limits: [...swap(one.sheet.limits)] },
      built: { ...one.built, sheet: { ...one.built.sheet, limits: [...swap(one.built.sheet.limits)] } },
    })),
  };
}

const plain = (name: string): string => name.replaceAll("-", "_");
const keysOf = (one: Case): readonly string[] => [
  ...Object.keys(one.replies),
  ...Object.keys(one["near-miss"] ?? {}),
  ...(one.earlier ?? []).flatMap((visit) => Object.keys(visit.replies)),
];
const touching =
  (names: ReadonlySet<string>): Touches =>
  (one) =>
    keysOf(one).some((key) => names.has(plain(key.split(/[@#]/)[0] ?? "")));

/** A reading, or every reading a derived value is made of, however far down. */
function namesUnder(lists: Checklists, of: string): ReadonlySet<string> {
  const ids = lists.sheets.map(({ sheet }) => sheet.id).join("|");
  const derived = new Map(lists.sheets.flatMap(({ sheet }) => sheet.derived.map((one) => [plain(one.id), one])));
  const names = new Set<string>();
  const add = (name: string): void => {
    if (names.has(name)) return;
    names.add(name);
    const made = derived.get(name);
    for (const inner of made?.prefer ?? []) add(plain(inner));
    for (const [inner] of (made?.formula ?? "").matchAll(new RegExp(`\\b(?:${ids})\\.[a-z0-9_]+`, "g"))) add(inner);
  };
  add(plain(of));
  return names;
}
