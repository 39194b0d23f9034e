/** Checks the small sheets with one thing changed, and gives the whole text of what is said about it. */
import { COMMON_PARTS, joinParts, type PartFile, SHEET_PARTS } from "../../src/build/sheet-parts.js";
import type { YamlText } from "../../src/build/yaml-source.js";
import { checkCommon, checkSheet, parseCommon, parseSheet, tell } from "../../src/core/sheet/author.js";
import type { Common, Sheet } from "../../src/core/sheet/run.js";
import type { Problem, Result } from "../../src/core/terms/index.js";
import { TRADE_SIGNATURES, TRADE_WORK } from "../../src/core/trade/index.js";
import { MINI_COMMON, MINI_SHEET } from "./mini-parts.js";

/** In one part, this text becomes that one; a text that does not stand there once is a mistake of the test. */
export interface Change {
  readonly part: string;
  /** Absent: the whole part. */
  readonly from?: string;
  /** Absent with `from` absent too: the part is left out. */
  readonly to?: string;
}

function joined(parts: Readonly<Record<string, string>>, folder: string, changes: readonly Change[]): Result<YamlText> {
  const names = new Set([...Object.keys(parts), ...changes.map((c) => c.part)]);
  const files = [...names].flatMap((name): readonly PartFile[] => {
    const mine = changes.filter((c) => c.part === name);
    const text = mine.reduce(replaceOnce, parts[name]);
    return text === undefined ? [] : [{ name, file: `${folder}/${name}`, text }];
  });
  return joinParts(files, folder === "common" ? COMMON_PARTS : SHEET_PARTS, folder);
}

function replaceOnce(text: string | undefined, { part, from, to }: Change): string | undefined {
  if (from === undefined || to === undefined || text === undefined) return to;
  const at = text.indexOf(from);
  if (at < 0 || text.indexOf(from, at + 1) >= 0) throw new Error(`“${from}” must stand once in ${part}.`);
  return text.slice(0, at) + to + text.slice(at + from.length);
}

function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(tell).join("\n"));
  return result.value;
}

/** The small shared files and sheet as they stand. */
export function miniSheets(): { readonly common: Common; readonly sheet: Sheet } {
  whole ??= readWhole();
  return whole;
}
let whole: { readonly common: Common; readonly sheet: Sheet } | undefined;

function readWhole() {
  const common = must(joined(MINI_COMMON, "common", []));
  const sheet = must(joined(MINI_SHEET, "hub", []));
  return { common: must(parseCommon(common.value, common.spotOf)), sheet: must(parseSheet(sheet.value, sheet.spotOf)) };
}

interface Said {
  /** One line a problem: `hub/rules.yaml:4:12 message`. */
  readonly problems: readonly string[];
  readonly notes: readonly string[];
  /** The codes of both. */
  readonly codes: readonly string[];
}
const said = (problems: readonly Problem[], notes: readonly Problem[] = []): Said => ({
  problems: problems.map(tell),
  notes: notes.map(tell),
  codes: [...problems, ...notes].map((p) => p.code),
});

/** What is said about the sheet with these changes, the shared files being as they are. */
export function sheetSays(...changes: readonly Change[]): Said {
  const read = joined(MINI_SHEET, "hub", changes);
  if (!read.ok) return said(read.problems);
  const result = checkSheet(read.value.value, miniSheets().common, [], read.value.spotOf, {
    functions: TRADE_SIGNATURES,
    work: TRADE_WORK,
  });
  return result.ok ? said([], result.value.notes) : said(result.problems);
}

/** What is said about the shared files with these changes, the sheet being as it is. */
export function commonSays(...changes: readonly Change[]): Said {
  const read = joined(MINI_COMMON, "common", changes);
  if (!read.ok) return said(read.problems);
  const result = checkCommon(read.value.value, [miniSheets().sheet], read.value.spotOf);
  return result.ok ? said([], result.value.notes) : said(result.problems);
}
