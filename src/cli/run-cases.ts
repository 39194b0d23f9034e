/**
 * Runs the cases of check sheets: each must conclude what it expects, and its near miss must make the rule false, not
 * merely unknown. Reads no file and prints nothing.
 */
import type { Checklists, LoadedSheet } from "../build/load-checklists.js";
import {
  type AssessInput,
  type Assessment,
  explainIn,
  prepare,
  reassess,
  type Session,
  type StandingReply,
  start,
} from "../core/assess/index.js";
import {
  type Lookup,
  lookupFor,
  partOfCommon,
  partOfSheet,
  readCaseReply,
  type SpotOf,
  type Typed,
} from "../core/sheet/author.js";
import type { Rule, SheetCase } from "../core/sheet/run.js";
import { type Problem, problem } from "../core/terms/index.js";
import { TRADE_WORK } from "../core/trade/index.js";

/** Day on which cases are looked at: any would do, but it must not move. */
const DAY = "2026-06-01T10:00:00Z";
const NO_SPOT: SpotOf = () => ({});
const NOTHING_SAID: Omit<AssessInput, "sheets"> = {
  at: DAY,
  who: "technician",
  car: { facts: {}, limits: [] },
  complaints: [],
  replies: [],
  earlier: [],
  exposure: 0,
};

/** Every case of every loaded sheet and of the shared files; each failure at the case's own line. */
export function runCases(lists: Checklists): readonly Problem[] {
  const engine = prepare(
    lists.whole,
    lists.sheets.map((s) => s.built),
    TRADE_WORK,
  );
  const common = lists.wholeWithTexts;
  const parts = lists.sheets.map((s) => partOfSheet(s.sheet));
  const sheets = lists.sheets.map((s) => s.sheet.id);
  const shared: Ran = {
    untouched: start(engine, { ...NOTHING_SAID, sheets }),
    look: lookupFor(partOfCommon(common), common, parts),
    sheets,
    spotOf: lists.commonSpotOf,
  };
  const own = (s: LoadedSheet): Ran => ({
    ...shared,
    look: lookupFor(partOfSheet(s.sheet), common, parts),
    spotOf: s.spotOf,
  });
  return [
    ...common.cases.flatMap((one, i) => runCase(one, i, shared)),
    ...lists.sheets.flatMap((s) => s.sheet.cases.flatMap((one, i) => runCase(one, i, own(s)))),
  ];
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
        { replies: standing(one.replies, { look }), facts },
        { replies: standing(missed, { look }), facts: { ...facts, ...one["near-miss-facts"] } },
      ];
    });
  return [
    ...said(common.cases, lookupFor(partOfCommon(common), common, parts)),
    ...lists.sheets.flatMap((s) => said(s.sheet.cases, lookupFor(partOfSheet(s.sheet), common, parts))),
  ];
}

/** What cases of one file run against. */
interface Ran {
  /** A visit nobody has answered anything in: a case carries on from it, so only what rests on its replies is worked out. */
  readonly untouched: Session;
  readonly look: Lookup;
  readonly sheets: readonly string[];
  readonly spotOf: SpotOf;
}

function runCase(one: SheetCase, index: number, ran: Ran): readonly Problem[] {
  const failed = (message: string, key: string) =>
    problem("case-failed", ran.spotOf(["cases", index, key], "key"), { rule: one.fires, message });
  const fired = reassess(ran.untouched, inputOf(one, one.replies, one.facts ?? {}, ran));
  const outcome = fired.assessment;
  const told = outcome.problems.map((p) => failed(`assessing says ${p.code}`, "replies"));
  const rule = ran.look.part.rules.find((r) => r.id === one.fires);
  const wrong = Object.entries(one.expect).flatMap(([key, wanted]) => {
    const found = foundAt(key, wanted, rule, outcome);
    return found === wanted ? [] : [failed(`expected ${key}: ${wanted}, found ${found}`, "expect")];
  });
  const silent =
    rule && wrong.length === 0 && !firesItself(one, rule, outcome)
      ? [failed("others conclude this, the rule itself does not", "expect")]
      : [];
  return [
    ...told,
    ...wrong,
    ...silent,
    ...nearMiss(one, rule, fired, ran).map((message) => failed(message, "near-miss")),
  ];
}

/** What stands where something was expected, in the words of `expect`. */
function foundAt(key: string, wanted: string, rule: Rule | undefined, outcome: Assessment): string {
  if (key === "at") {
    const places = outcome.findings.filter((f) => f.rule === rule?.id).map((f) => f.place);
    return places.includes(wanted) ? wanted : places.join(", ") || "nothing";
  }
  if (key.startsWith("gate.")) return outcome.gates.find((g) => g.gate === key)?.state ?? "no such gate";
  const [fault, place = "car"] = key.split("@");
  const own = outcome.findings.find((f) => f.rule === rule?.id && f.fault === fault && f.place === place);
  const grade = own ? own.grade : outcome.faults.find((f) => f.fault === fault && f.place === place)?.grade;
  return grade ?? "nothing";
}

/** A fault may be named by several rules: one of the places expected must be concluded by the rule the case fires. */
function firesItself(one: SheetCase, rule: Rule, outcome: Assessment): boolean {
  return outcome.findings.some(
    (f) =>
      f.rule === rule.id &&
      (rule.fault === undefined ||
        Object.hasOwn(one.expect, `${f.fault}@${f.place}`) ||
        Object.hasOwn(one.expect, f.fault ?? "")),
  );
}

/** Why the near miss is none; empty when it is one, or when the case has none. */
function nearMiss(one: SheetCase, rule: Rule | undefined, fired: Session, ran: Ran): readonly string[] {
  const replies = one["near-miss"] ?? {};
  const facts = one["near-miss-facts"] ?? {};
  if (Object.keys(replies).length + Object.keys(facts).length === 0) return [];
  const missed = reassess(fired, inputOf(one, { ...one.replies, ...replies }, { ...one.facts, ...facts }, ran));
  const places = rule ? firingPlaces(one, rule, fired, ran) : ["car"];
  return places.flatMap((place) => {
    const { is, missing } = explainIn(missed, one.fires, place);
    if (is === "false") return [];
    const waits = missing.length > 0 ? `, waiting for ${missing.join(", ")}` : "";
    return [`near miss at ${place}: the rule is ${is}${waits}, not false`];
  });
}

/** Where the rule itself holds in the firing case: the place expected, or with `at` every place of its scope where it does. */
function firingPlaces(one: SheetCase, rule: Rule, fired: Session, ran: Ran): readonly string[] {
  const holds = (place: string) => explainIn(fired, rule.id, place).is === "true";
  const all = ran.look.tree.ofKind(rule.scope);
  if (rule.at !== undefined) return all.filter(holds);
  const expected = Object.entries(one.expect).flatMap(([key, value]) =>
    key === "at" ? [value] : [key.split("@")[1] ?? "car"],
  );
  // Asked only where it is expected: elsewhere it may hold for replies the near miss leaves alone.
  return all.filter((place) => expected.includes(place) && holds(place));
}

function inputOf(
  one: SheetCase,
  replies: Readonly<Record<string, Typed>>,
  facts: AssessInput["car"]["facts"],
  ran: Ran,
): AssessInput {
  const odometer = (km: number | undefined) => (km === undefined ? {} : { odometer: { value: km, unit: "km" } });
  return {
    ...NOTHING_SAID,
    ...odometer(one.odometer),
    car: { facts, limits: [] },
    sheets: ran.sheets,
    replies: standing(replies, ran),
    earlier: (one.earlier ?? []).map((e) => ({ at: e.at, ...odometer(e.odometer), replies: standing(e.replies, ran) })),
  };
}

function standing(replies: Readonly<Record<string, Typed>>, { look }: Pick<Ran, "look">): readonly StandingReply[] {
  return Object.entries(replies).flatMap(([name, typed]) => {
    const read = readCaseReply(name, typed, look, [name], NO_SPOT);
    if (!read.ok) throw new Error(`${name} was checked when the sheet was loaded.`);
    return [{ ...read.value, id: name }];
  });
}
