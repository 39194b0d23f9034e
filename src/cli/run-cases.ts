/**
 * Runs the cases of all check sheets of a folder and tells what failed at the line of its case. Reads no file and prints
 * nothing.
 */
import type { Checklists, LoadedSheet } from "../build/load-checklists.js";
import {
  type CaseFailure,
  keyOfFailure,
  type Proving,
  proving,
  caseReplies as readReplies,
  runCase,
} from "../core/assess/author.js";
import { type AssessInput, prepare, type StandingReply } from "../core/assess/index.js";
import { type Lookup, lookupFor, partOfCommon, partOfSheet, type SpotOf, type Typed } from "../core/sheet/author.js";
import type { SheetCase } from "../core/sheet/run.js";
import { type Problem, problem } from "../core/terms/index.js";
import { TRADE_WORK } from "../core/trade/index.js";

/**
 * Every case of every loaded sheet and of the shared files; each failure at the case's own line. With `only`, the cases
 * of that sheet: what somebody who writes one runs after each change.
 *
 * A sheet's cases are run with the sheets it names open, which is a tenth of the work of having all of them open; cases
 * of the shared files, and those that ask for a shared gate, are run with all.
 */
export function runCases(lists: Checklists, only?: string): readonly Problem[] {
  const common = lists.wholeWithTexts;
  const parts = lists.sheets.map((s) => partOfSheet(s.sheet));
  const withOpen = (open: readonly LoadedSheet[], look: Lookup): Proving =>
    proving(
      prepare(
        lists.whole,
        open.map((s) => s.built),
        TRADE_WORK,
      ),
      look,
      open.map((s) => s.sheet.id),
    );
  let whole: Proving | undefined;
  const withAll = (look: Lookup): Proving => {
    whole ??= withOpen(lists.sheets, look);
    return { ...whole, look };
  };
  const shared = lookupFor(partOfCommon(common), common, parts);
  const failuresIn = (s: LoadedSheet): readonly Problem[] => {
    if (s.sheet.cases.length === 0) return [];
    const look = lookupFor(partOfSheet(s.sheet), common, parts);
    const own = withOpen(namedBy(s, lists.sheets), look);
    return failuresOf(s.sheet.cases, (one) => (asksSharedGate(one, s) ? withAll(look) : own), s.spotOf);
  };
  const sheets = lists.sheets.filter((s) => only === undefined || s.sheet.id === only);
  return [
    ...(only === undefined ? failuresOf(common.cases, () => withAll(shared), lists.commonSpotOf) : []),
    ...sheets.flatMap(failuresIn),
  ];
}

/** The sheet itself and every sheet whose points or values stand anywhere in it. */
function namedBy(own: LoadedSheet, all: readonly LoadedSheet[]): readonly LoadedSheet[] {
  const { texts: _, ...data } = own.sheet;
  const said = JSON.stringify(data);
  return all.filter((s) => s === own || new RegExp(`(?<![\\w.-])${s.sheet.id}\\.[a-z]`).test(said));
}

/** Whether it expects something of a gate of the shared files, which any sheet may clear or trip. */
const asksSharedGate = (one: SheetCase, { sheet }: LoadedSheet): boolean =>
  [one.fires, ...Object.keys(one.expect)].some(
    (key) => key.startsWith("gate.") && !sheet.gates.some(({ id }) => id === key),
  );

const failuresOf = (
  cases: readonly SheetCase[],
  provingOf: (one: SheetCase) => Proving,
  spotOf: SpotOf,
): readonly Problem[] =>
  cases.flatMap((one, index) =>
    runCase(one, provingOf(one)).failures.map((failure) =>
      problem("case-failed", spotOf(["cases", index, keyOfFailure(failure)], "key"), {
        rule: one.fires,
        message: tellFailure(failure),
      }),
    ),
  );

function tellFailure(failure: CaseFailure): string {
  switch (failure.is) {
    case "assessing":
      return `assessing says ${failure.code}`;
    case "expected":
      return `expected ${failure.key}: ${failure.wanted}, found ${failure.found || "nothing"}`;
    case "by-others":
      return "others conclude this, the rule itself does not";
    case "not-open":
      return "it names something that is not open here";
    case "near-miss": {
      const waits = failure.missing.length > 0 ? `, waiting for ${failure.missing.join(", ")}` : "";
      return `near miss at ${failure.place}: the rule is ${failure.rule}${waits}, not false`;
    }
  }
}

/** What each case says, firing and near miss, as replies and facts: for who goes through them with another person. */
export function caseReplies(
  lists: Checklists,
): readonly { readonly replies: readonly StandingReply[]; readonly facts: AssessInput["car"]["facts"] }[] {
  const common = lists.wholeWithTexts;
  const parts = lists.sheets.map((s) => partOfSheet(s.sheet));
  const said = (cases: readonly SheetCase[], look: Lookup) =>
    cases.flatMap((one) => {
      const facts = one.facts ?? {};
      const missed = { ...one.replies, ...one["near-miss"] };
      return [
        { replies: standing(one.replies, look), facts },
        { replies: standing(missed, look), facts: { ...facts, ...one["near-miss-facts"] } },
      ];
    });
  return [
    ...said(common.cases, lookupFor(partOfCommon(common), common, parts)),
    ...lists.sheets.flatMap((s) => said(s.sheet.cases, lookupFor(partOfSheet(s.sheet), common, parts))),
  ];
}

function standing(replies: Readonly<Record<string, Typed>>, look: Lookup): readonly StandingReply[] {
  const read = readReplies(replies, look);
  if (read === undefined) throw new Error("Replies of a case were checked when the sheet was loaded.");
  return read;
}
