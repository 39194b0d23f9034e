/**
 * Runs the cases of a sheet: each must conclude what it expects, and its near miss must make the rule false, not merely
 * unknown. Reads no file; what failed comes back as data.
 */
import type { Rule, SheetCase } from "../sheet/run.js";
import { type Lookup, readCaseReply, type Typed } from "../sheet/work.js";
import type { AssessInput, Assessment, StandingReply } from "./contract.js";
import type { Engine } from "./engine.js";
import { type Explained, explainIn } from "./explain.js";
import { judgeOn, reassess, type Session, start } from "./session.js";

/** Day on which cases are looked at: any would do, but it must not move. */
const DAY = "2026-06-01T10:00:00Z";
const NO_SPOT = () => ({});
/** A visit with nothing said in it yet. */
export const NOTHING_SAID: Omit<AssessInput, "sheets"> = {
  at: DAY,
  who: "technician",
  car: { facts: {}, limits: [] },
  complaints: [],
  replies: [],
  earlier: [],
  exposure: 0,
};

/** What cases of one part run against. */
export interface Proving {
  /** A visit nobody has answered anything in: a case carries on from it, so only what rests on its replies is worked out. */
  readonly untouched: Session;
  readonly look: Lookup;
  readonly sheets: readonly string[];
}

/** `sheets` are those the engine holds. */
export const proving = (engine: Engine, look: Lookup, sheets: readonly string[]): Proving => ({
  untouched: start(engine, { ...NOTHING_SAID, sheets }),
  look,
  sheets,
});

/** Why a case does not hold. */
export type CaseFailure =
  | { readonly is: "assessing"; readonly code: string }
  /** `found`: what stands there instead; nothing is an empty text. */
  | { readonly is: "expected"; readonly key: string; readonly wanted: string; readonly found: string }
  /** Other rules conclude what was expected, the rule of the case does not. */
  | { readonly is: "by-others" }
  /** It names something that is not open here. */
  | { readonly is: "not-open" }
  | ({ readonly is: "near-miss"; readonly place: string } & NotFalse);
interface NotFalse {
  readonly rule: Exclude<Explained["is"], "false">;
  readonly missing: readonly string[];
}

export interface CaseRan {
  readonly failures: readonly CaseFailure[];
  /** What comes out with the replies of the case. */
  readonly outcome?: Assessment;
}

/** Key of the case a failure is about. */
export const keyOfFailure = ({ is }: CaseFailure): "replies" | "expect" | "near-miss" =>
  is === "near-miss" ? "near-miss" : is === "assessing" || is === "not-open" ? "replies" : "expect";

/** Runs one case. */
export function runCase(one: SheetCase, ran: Proving): CaseRan {
  const input = inputOf(one, one.replies, one.facts ?? {}, ran);
  const rule = ran.look.part.rules.find((r) => r.id === one.fires);
  const open = rule === undefined || ran.untouched.kept.site.rules.some((node) => node.rule.rule.id === rule.id);
  if (input === undefined || !open) return { failures: [{ is: "not-open" }] };
  const fired = reassess(ran.untouched, input);
  const outcome = fired.assessment;
  const told = outcome.problems.map((p): CaseFailure => ({ is: "assessing", code: p.code }));
  const wrong = Object.entries(one.expect).flatMap(([key, wanted]): readonly CaseFailure[] => {
    const found = foundAt(key, wanted, rule, outcome);
    return found === wanted ? [] : [{ is: "expected", key, wanted, found }];
  });
  const silent: readonly CaseFailure[] =
    rule && wrong.length === 0 && !firesItself(one, rule, outcome) ? [{ is: "by-others" }] : [];
  return { failures: [...told, ...wrong, ...silent, ...nearMiss(one, rule, fired, ran)], outcome };
}

/** What stands where something was expected, in the words of `expect`; nothing is an empty text. */
function foundAt(key: string, wanted: string, rule: Rule | undefined, outcome: Assessment): string {
  if (key === "at") {
    const places = outcome.findings.filter((f) => f.rule === rule?.id).map((f) => f.place);
    return places.includes(wanted) ? wanted : places.join(", ");
  }
  if (key.startsWith("gate.")) return outcome.gates.find((g) => g.gate === key)?.state ?? "no such gate";
  const [fault, place = "car"] = key.split("@");
  const own = outcome.findings.find((f) => f.rule === rule?.id && f.fault === fault && f.place === place);
  const grade = own ? own.grade : outcome.faults.find((f) => f.fault === fault && f.place === place)?.grade;
  return grade ?? "";
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
function nearMiss(one: SheetCase, rule: Rule | undefined, fired: Session, ran: Proving): readonly CaseFailure[] {
  const replies = one["near-miss"] ?? {};
  const facts = one["near-miss-facts"] ?? {};
  if (Object.keys(replies).length + Object.keys(facts).length === 0) return [];
  const input = inputOf(one, { ...one.replies, ...replies }, { ...one.facts, ...facts }, ran);
  if (input === undefined) return [{ is: "not-open" }];
  const missed = judgeOn(fired, input);
  const places = rule ? firingPlaces(one, rule, fired, ran) : ["car"];
  return places.flatMap((place): readonly CaseFailure[] => {
    const { is, missing } = explainIn(missed, one.fires, place);
    return is === "false" ? [] : [{ is: "near-miss", place, rule: is, missing }];
  });
}

/** Where the rule itself holds in the firing case: the place expected, or with `at` every place of its scope where it does. */
function firingPlaces(one: SheetCase, rule: Rule, fired: Session, ran: Proving): readonly string[] {
  const holds = (place: string) => explainIn(fired, rule.id, place).is === "true";
  const all = ran.look.tree.ofKind(rule.scope);
  if (rule.at !== undefined) return all.filter(holds);
  const expected = Object.entries(one.expect).flatMap(([key, value]) =>
    key === "at" ? [value] : [key.split("@")[1] ?? "car"],
  );
  // Asked only where it is expected: elsewhere it may hold for replies the near miss leaves alone.
  return all.filter((place) => expected.includes(place) && holds(place));
}

/** The visit a case speaks of; undefined where it names something that is not there. */
function inputOf(
  one: SheetCase,
  replies: Readonly<Record<string, Typed>>,
  facts: AssessInput["car"]["facts"],
  { look, sheets }: Proving,
): AssessInput | undefined {
  const odometer = (km: number | undefined) => (km === undefined ? {} : { odometer: { value: km, unit: "km" } });
  const said = caseReplies(replies, look);
  const earlier = (one.earlier ?? []).map((e) => ({ ...e, said: caseReplies(e.replies, look) }));
  if (said === undefined || earlier.some((visit) => visit.said === undefined)) return undefined;
  return {
    ...NOTHING_SAID,
    ...odometer(one.odometer),
    car: { facts, limits: [] },
    sheets,
    replies: said,
    earlier: earlier.map((visit) => ({ at: visit.at, ...odometer(visit.odometer), replies: visit.said ?? [] })),
  };
}

/** Replies as a case writes them; undefined where one names something that is not there. */
export function caseReplies(
  replies: Readonly<Record<string, Typed>>,
  look: Lookup,
): readonly StandingReply[] | undefined {
  const read = Object.entries(replies).map(([name, typed]) => ({
    id: name,
    made: readCaseReply(name, typed, look, [name], NO_SPOT),
  }));
  const said = read.flatMap(({ id, made }) => (made.ok ? [{ ...made.value, id }] : []));
  return said.length === read.length ? said : undefined;
}
