/**
 * What the checker tells of a sheet under work, as its author knows the things: by the names they gave them, never by the
 * ids the program made of those. Pure.
 */
import type { Common, Sheet, SheetTexts } from "../../core/sheet/run.js";
import type { Problem } from "../../core/terms/index.js";
import { LANGUAGE } from "../state/shelf.js";
import { enSheetTold } from "../texts/en-sheet-told.js";

type Names = ReadonlyMap<string, string>;

/** A token that may be an id, as ids or conditions write it. */
const TOKEN = /[A-Za-z][A-Za-z0-9_]*(?:[._-][A-Za-z0-9_]+)+/g;

function wordsOf({ texts }: Pick<Sheet, "texts">): SheetTexts | undefined {
  return texts[LANGUAGE] ?? Object.values(texts)[0];
}

/** Every id that has a name, by the name; a rule has its number and what its fault says. */
export function namesIn(sheet: Sheet, common: Pick<Common, "texts">, others: readonly Sheet[]): Names {
  const names = new Map<string, string>();
  const add = (id: string, name: string | undefined): void => {
    const plain = name?.trim().replace(/\.$/, "");
    if (!plain) return;
    names.set(id, plain);
    names.set(id.replaceAll("-", "_"), plain);
  };
  for (const [id, caution] of Object.entries(common.texts[LANGUAGE]?.cautions ?? {})) add(id, caution.not);
  for (const one of [...others, sheet]) {
    const words = wordsOf(one);
    if (!words) continue;
    for (const [id, point] of Object.entries(words.points ?? {})) add(id, point?.name);
    for (const [id, job] of Object.entries(words.jobs ?? {})) add(id, job?.name);
    for (const [id, fault] of Object.entries(words.faults ?? {})) add(id, fault?.says);
    for (const [id, gate] of Object.entries(words.gates ?? {})) add(id, gate?.name);
    for (const [id, name] of Object.entries(words.derived ?? {})) add(id, name);
    for (const [id, name] of Object.entries(words.limits ?? {})) add(id, name);
    // Several rules may find one fault: the number they stand at tells them apart.
    for (const [index, rule] of one.rules.entries()) {
      const fault = rule?.fault && names.get(rule.fault);
      if (fault) add(rule.id, `${index + 1}. ${fault}`);
    }
  }
  return names;
}

/** What was taken out of the sheet has no name any more: the words its id was made from stand for it. */
function byName(says: string, names: Names, sheet: string): string {
  const gone = (token: string): string =>
    token.split(".").includes(sheet) ? (token.split(".").at(-1) ?? token).replaceAll(/[_-]/g, " ") : token;
  return says.replace(TOKEN, (token) => names.get(token) ?? gone(token));
}

const isOwn = (code: string): code is keyof typeof enSheetTold => Object.hasOwn(enSheetTold, code);

/** The words of a problem for the screens: the editor's own where the checker speaks of files, ids always by name. */
export const toldByName = ({ code }: Pick<Problem, "code">, says: string, names: Names, sheet: string): string =>
  isOwn(code) ? enSheetTold[code] : byName(says, names, sheet);
