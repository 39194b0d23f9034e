/**
 * Proves that a rule can never fire by trying every reply it could hear. Silent where it cannot prove it: readings,
 * earlier visits and findings may say anything.
 */
import {
  type BandSpan,
  link,
  type Outcome,
  type Plan,
  type Ref,
  readsOf,
  type Scope,
  Unknown,
  type Value,
} from "../../expr/run.js";
import { GRADES, type GradeLevel, levelOf } from "../../terms/index.js";
import type { Lookup } from "../lookup.js";
import { fieldOf } from "../names.js";
import type { Fact, Field, Rule } from "../schema-types.js";
import { seesFindings } from "./conditions.js";
import type { Checking } from "./known.js";

/** Beyond this many trials nothing is proven. */
const MOST_TRIALS = 20_000;
/** Beyond this many replies to one question they are not tried one by one. */
const MOST_REPLIES = 64;

export function checkRulesFire(plans: Readonly<Record<string, Plan>>, c: Checking): void {
  c.look.part.rules.forEach((rule, i) => {
    const plan = plans[`rules/${rule.id}/when`];
    if (!plan || !provable(rule, plan) || canFire(rule, plan, c.look)) return;
    const reads = readsOf(plan);
    const names = [...new Set([...reads.refs.map((r) => r.point), ...reads.facts.map((f) => `car.${f}`)])];
    c.report.problem("never-fires", ["rules", i, "when"], { rule: rule.id, names });
  });
}

/** Silence of a reply and findings are not replies that could be tried. */
const provable = (rule: Rule, plan: Plan) =>
  !rule.provisional && !seesFindings(rule) && readsOf(plan).faults.length === 0;

function canFire(rule: Rule, plan: Plan, look: Lookup): boolean {
  // A trade function is not known here: what rests on it may be anything.
  const linked = link(plan);
  if (!linked.ok) return true;
  const places = look.tree.ofKind(rule.scope);
  if (places.length === 0) return true;
  const trials = { left: MOST_TRIALS };
  return places.some((here) => {
    const said = new Map<string, Trial>();
    return search((scope) => linked.value(scope, here), said, look, trials);
  });
}

/** What one question was answered with: a reply or the grade its reading reaches. */
type Trial = Value;

function search(
  ask: (scope: Scope) => Outcome,
  said: Map<string, Trial>,
  look: Lookup,
  trials: { left: number },
): boolean {
  if (trials.left-- <= 0) return true;
  const open = new Map<string, readonly Trial[]>();
  const outcome = ask(trialScope(said, open, look));
  if (!(outcome instanceof Unknown)) return outcome === true;
  if (outcome.only === false) return false;
  const next = [...open].find(([key, replies]) => outcome.missing.has(key) && replies.length > 0);
  if (!next) return outcome.missing.size > 0;
  const [key, replies] = next;
  const found = replies.some((reply) => search(ask, said.set(key, reply), look, trials));
  said.delete(key);
  return found;
}

/** A world where only what was tried is known; what is asked beyond it goes into `open` with its possible replies. */
function trialScope(said: ReadonlyMap<string, Trial>, open: Map<string, readonly Trial[]>, look: Lookup): Scope {
  const ask = <T extends Trial>(key: string, replies: readonly T[], is: (x: Trial) => x is T): Outcome<T> => {
    const reply = said.get(key);
    if (reply !== undefined && is(reply)) return reply;
    open.set(key, replies);
    return new Unknown(new Set([key]));
  };
  const anything = (x: Trial): x is Trial => x !== undefined;
  const place = (ref: Ref, here: string) => look.tree.around(here, kindOf(ref, look) ?? "") ?? here;
  const keyOf = (ref: Ref, here: string) =>
    `${ref.last === true ? "last " : ""}${ref.point}.${ref.field}@${place(ref, here)}`;
  return {
    read: (ref, here) => ask(keyOf(ref, here), repliesTo(ref, look), anything),
    measured: (ref, here) => new Unknown(new Set([keyOf(ref, here)])),
    band: (ref, here) => {
      const level = ask(`${keyOf(ref, here)} band`, LEVELS, isLevel);
      return level instanceof Unknown ? level : ({ low: level, high: level, missing: new Set() } satisfies BandSpan);
    },
    unanswered: () => false,
    sinceLast: (ref, here) => new Unknown(new Set([`since ${keyOf(ref, here)}`])),
    fact: (name) => ask(`car.${name}`, factValues(look, name), anything),
    related: (relation, here) => look.tree.related(relation, here),
    places: (kind) => look.tree.ofKind(kind),
    found: () => false,
  };
}

function kindOf(ref: Ref, look: Lookup): string | undefined {
  const meant = look.meant(ref.point);
  return meant?.is === "derived" ? meant.derived.place : look.points.get(ref.point)?.place;
}

function repliesTo(ref: Ref, look: Lookup): readonly Trial[] {
  const point = look.points.get(ref.point);
  const field = point && fieldOf(point, ref.field);
  return field ? few(repliesOf(field)) : [];
}

function repliesOf(field: Field): readonly Trial[] {
  if ("words" in field) return field.several ? choicesOf(field.words, field.exclusive ?? []) : field.words;
  if ("yes" in field) return [true, false];
  if ("count" in field && field.count.to - field.count.from < MOST_REPLIES)
    return Array.from({ length: field.count.to - field.count.from + 1 }, (_, i) => field.count.from + i);
  return [];
}

/** Every set of words that may be replied together: each exclusive word alone, every other set of the rest. */
function choicesOf(words: readonly string[], exclusive: readonly string[]): readonly (readonly string[])[] {
  const free = words.filter((w) => !exclusive.includes(w));
  if (2 ** free.length > MOST_REPLIES) return [];
  const sets = Array.from({ length: 2 ** free.length }, (_, bits) => free.filter((_w, i) => (bits >> i) % 2 === 1));
  return [...exclusive.map((w) => [w]), ...sets.filter((set) => set.length > 0)];
}

const few = (replies: readonly Trial[]) => (replies.length <= MOST_REPLIES ? replies : []);

/** Every grade: the car's own limits book may state an edge the default limits leave out. */
const LEVELS: readonly GradeLevel[] = [0, ...GRADES.map(levelOf)];
const isLevel = (x: Trial): x is GradeLevel => x === 0 || x === 1 || x === 2 || x === 3 || x === 4;

function factValues(look: Lookup, name: string): readonly Trial[] {
  const fact: Fact | undefined = look.common.facts.find((f) => f.id.replaceAll("-", "_") === name);
  if (fact?.kind === "yes") return [true, false];
  return fact?.kind === "word" ? (fact.words ?? []) : [];
}
