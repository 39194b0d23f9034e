/** One rule at one place: whether it fires, what it then says, and what it waits for when not known. Merges nothing. */
import { type Evaluate, type Outcome, Unknown } from "../expr/run.js";
import { type Grade, type GradeLevel, gradeOf, levelOf, SURENESS, type Sure } from "../terms/index.js";
import { becauseOf } from "./because.js";
import { type Choice, type UnderChoice, underEveryChoice } from "./choices.js";
import type { Because } from "./contract.js";
import { type Kept, NO_PROBLEMS } from "./ledger.js";
import { worstOf } from "./levels.js";
import type { RuleInfo } from "./model.js";
import type { RuleNode } from "./nodes.js";
import type { Standing } from "./understand.js";
import type { World } from "./world.js";

/** What a firing rule says at one place, before the third pass. */
export interface Draft {
  readonly place: string;
  /** null for an effect other than a finding. */
  readonly grade: Grade | null;
  readonly close: boolean;
  readonly atLeast: boolean;
  readonly sure: Sure;
  readonly because: readonly Because[];
  /** Ids of the replies chosen among differing ones, when other choices would say less. */
  readonly differ: readonly string[];
}

export interface Run {
  readonly is: "true" | "false" | "unknown" | "none";
  /** Keys of replies it waits for; of a firing rule: what would make it surer or worse. */
  readonly missing: ReadonlySet<string>;
  /** Slots and facts its condition looked at, under any choice. */
  readonly under: readonly number[];
  readonly drafts: readonly Draft[];
}

type Once = Omit<Run, "under">;

const NOTHING: ReadonlySet<string> = new Set();
const NO_DRAFTS: readonly Draft[] = [];
const FALSE: Once = { is: "false", missing: NOTHING, drafts: NO_DRAFTS };
const NONE: Once = { is: "none", missing: NOTHING, drafts: NO_DRAFTS };

/** Runs a rule where it stands, under every choice among differing replies. */
export function runRule(world: World, node: RuleNode): Kept<Run> {
  return plainly(world, node) ?? thoroughly(world, node);
}

/** Most rules, most of the time: replies agree and it does not fire. Undefined when there is more to it. */
function plainly(world: World, { rule, place }: RuleNode): Kept<Run> | undefined {
  if (rule.when === undefined || rule.pass === 1) return undefined;
  world.begin();
  world.worseEnd = rule.limitOf;
  const outcome = rule.when(world, place);
  world.worseEnd = undefined;
  if (outcome === true || world.torn || world.problems.length > 0) return undefined;
  const reads = world.since(0);
  const { is, missing } = outcome instanceof Unknown ? waits(outcome, false) : FALSE;
  return { value: { is, missing, under: world.slotsUnder(reads), drafts: NO_DRAFTS }, reads, problems: NO_PROBLEMS };
}

function thoroughly(world: World, node: RuleNode): Kept<Run> {
  const deciding = new Set<number>();
  const problems = world.problems;
  world.problems = [];
  const asked = underEveryChoice(world, () => once(world, node, deciding));
  const told = world.problems;
  world.problems = problems;
  const reads = [...new Set(asked.reads)];
  const value = { ...combine(world, asked.answers, asked.tooMany), under: [...deciding] };
  return { value, reads, problems: told };
}

function once(world: World, node: RuleNode, deciding: Set<number>): Once {
  const { rule, place } = node;
  if (rule.when === undefined) return { is: "unknown", missing: NOTHING, drafts: NO_DRAFTS };
  const start = world.mark();
  const told = world.problems.length;
  world.raw = rule.pass === 1;
  world.worseEnd = rule.limitOf;
  const outcome = rule.when(world, place);
  world.worseEnd = undefined;
  const reads = world.since(start);
  for (const id of world.slotsUnder(reads)) deciding.add(id);
  try {
    if (outcome === false) return FALSE;
    if (outcome instanceof Unknown) return waits(outcome, world.problems.length > told);
    return rule.rule.effect === "finding" ? find(world, node, reads) : act(world, node, reads);
  } finally {
    world.raw = false;
  }
}

/** Not known with nothing left to ask: the rule does not apply here, unless a value could not be worked out. */
function waits(outcome: Unknown, failed: boolean): Once {
  if (outcome.missing.size === 0) return failed ? { is: "unknown", missing: NOTHING, drafts: NO_DRAFTS } : NONE;
  if (outcome.only === false) return FALSE;
  return { is: "unknown", missing: outcome.missing, drafts: NO_DRAFTS };
}

function find(world: World, node: RuleNode, reads: readonly number[]): Once {
  const { rule, place } = node;
  const missing = new Set<string>();
  const start = world.mark();
  const graded = gradeFor(world, rule, place, missing);
  if (graded instanceof Unknown) return waits(graded, false);
  if (graded.level === 0) return FALSE;
  const judged = world.since(start);
  return conclude(world, node, [...reads, ...judged], missing, graded);
}

function act(world: World, node: RuleNode, reads: readonly number[]): Once {
  return conclude(world, node, reads, new Set(), { level: 0, close: false, atLeast: false });
}

interface Graded {
  readonly level: GradeLevel;
  readonly close: boolean;
  readonly atLeast: boolean;
}

function gradeFor(world: World, rule: RuleInfo, place: string, missing: Set<string>): Graded | Unknown {
  let graded: Graded = { level: levelOf(rule.fixed ?? null), close: false, atLeast: false };
  if (rule.limitOf !== undefined) {
    const least = levelOf(rule.atLeast ?? null);
    const band = world.bandOf(rule.limitOf, place);
    if (band instanceof Unknown) {
      if (least === 0) return band;
      for (const key of band.missing) missing.add(key);
      graded = { level: least, close: false, atLeast: band.missing.size > 0 };
    } else {
      for (const key of band.deciding) missing.add(key);
      if (band.close) for (const key of world.closerKeys(rule.limitOf, place)) missing.add(key);
      graded = { level: worstOf(band.level, least), close: band.close && band.level > least, atLeast: band.atLeast };
    }
  }
  const { worse } = rule;
  if (worse?.when === undefined || levelOf(worse.grade) <= graded.level) return graded;
  const holds = worse.when(world, place);
  if (holds === true) return { ...graded, level: levelOf(worse.grade) };
  if (holds instanceof Unknown) for (const key of holds.missing) missing.add(key);
  return graded;
}

function conclude(world: World, node: RuleNode, reads: readonly number[], missing: Set<string>, graded: Graded): Once {
  const { rule, place } = node;
  const because = [...becauseOf(world, reads)];
  let sure = SURENESS.indexOf(rule.rule.sure ?? "possible");
  for (const support of rule.supports) {
    const holds = asked(world, support, place, missing);
    if (holds.outcome !== true) continue;
    sure += 1;
    because.push(...becauseOf(world, holds.reads, true));
  }
  const said = {
    grade: gradeOf(graded.level),
    close: graded.close,
    atLeast: graded.atLeast,
    sure: SURENESS[Math.min(sure, SURENESS.length - 1)] ?? "certain",
    differ: [],
  };
  const drafts = concludedAt(world, node, missing).map(({ at, reads: more }) => ({
    ...said,
    place: at,
    because: withoutRepeats(more.length === 0 ? because : [...because, ...becauseOf(world, more)]),
  }));
  return drafts.length === 0 ? NONE : { is: "true", missing, drafts };
}

function asked(
  world: World,
  condition: Evaluate | undefined,
  place: string,
  missing: Set<string>,
): { outcome: Outcome; reads: readonly number[] } {
  if (condition === undefined) return { outcome: false, reads: [] };
  const start = world.mark();
  const outcome = condition(world, place);
  if (outcome instanceof Unknown) for (const key of outcome.missing) missing.add(key);
  return { outcome, reads: world.since(start) };
}

interface Concluded {
  readonly at: string;
  /** What pointed to this place. */
  readonly reads: readonly number[];
}

/** Here; at the places a relation leads to; or at every place inside the wider one where `where` holds, else there. */
function concludedAt(world: World, node: RuleNode, missing: Set<string>): readonly Concluded[] {
  const { at } = node.rule.rule;
  const { site } = world;
  const plain = (places: readonly string[]) => places.map((p): Concluded => ({ at: p, reads: [] }));
  if (at === undefined) return plain([node.place]);
  if (typeof at === "string") return plain(placesAt(site, at, node.place));
  const wider = placesAt(site, at.else, node.place);
  const inside = site.tree.ofKind(at.each).filter((p) => wider.some((w) => site.within(w, p)));
  const told = inside.flatMap((p): readonly Concluded[] => {
    const holds = asked(world, node.rule.where, p, missing);
    return holds.outcome === true ? [{ at: p, reads: holds.reads }] : [];
  });
  return told.length > 0 ? told : plain(wider);
}

/** A wider kind around the place, else where the relation of that name leads. */
export function placesAt(site: World["site"], name: string, place: string): readonly string[] {
  if (name === "here") return [place];
  const around = site.tree.kindOf(place) === name ? place : site.tree.around(place, name);
  return around === undefined ? site.related(name, place) : [around];
}

/** The same step once; as deciding when it was both. */
function withoutRepeats(because: readonly Because[]): readonly Because[] {
  const seen = new Set<string>();
  return because.filter((b) => {
    const text = b.kind === "reply" ? `reply ${b.id} ${b.key.field}` : JSON.stringify(b);
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}

/** Fires if any choice makes it fire: at each place the worst that is said, naming the replies it rests on. */
function combine(world: World, answers: readonly UnderChoice<Once>[], tooMany: readonly number[]): Once {
  if (tooMany.length > 0)
    return { is: "unknown", missing: new Set(tooMany.map((id) => keyOf(world, id))), drafts: NO_DRAFTS };
  const first = answers[0]?.value ?? NONE;
  if (answers.length === 1) return first;
  const firing = answers.filter((a) => a.value.is === "true");
  const missing = new Set<string>();
  if (firing.length > 0) {
    for (const a of firing) for (const key of a.value.missing) missing.add(key);
    return { is: "true", missing, drafts: worstOfChoices(world, answers, firing) };
  }
  const open = answers.filter((a) => a.value.is === "unknown");
  if (open.length > 0) {
    for (const a of open) for (const key of a.value.missing) missing.add(key);
    return { is: "unknown", missing, drafts: NO_DRAFTS };
  }
  return answers.some((a) => a.value.is === "false") ? FALSE : NONE;
}

function worstOfChoices(
  world: World,
  answers: readonly UnderChoice<Once>[],
  firing: readonly UnderChoice<Once>[],
): readonly Draft[] {
  const places = [...new Set(firing.flatMap((a) => a.value.drafts.map((d) => d.place)))];
  return places.flatMap((place) => {
    const said = firing.flatMap((a) =>
      a.value.drafts.filter((d) => d.place === place).map((draft) => ({ draft, choice: a.choice })),
    );
    const worst = said.reduce<(typeof said)[number] | undefined>(
      (w, s) => (w === undefined || isWorse(s.draft, w.draft) ? s : w),
      undefined,
    );
    if (worst === undefined) return [];
    const alike = said.length === answers.length && said.every((s) => s.draft.grade === worst.draft.grade);
    return [alike ? worst.draft : { ...worst.draft, differ: chosenIds(world, worst.choice) }];
  });
}

function isWorse(a: Draft, b: Draft): boolean {
  const by = levelOf(a.grade) - levelOf(b.grade) || SURENESS.indexOf(a.sure) - SURENESS.indexOf(b.sure);
  return by > 0;
}

/** Ids of the replies a choice took where two stand on one key. */
function chosenIds(world: World, choice: Choice): readonly string[] {
  return [...choice].flatMap(([node, at]) => {
    const all = repliesOf(world, node);
    const taken = all?.[at];
    if (all === undefined || taken === undefined)
      return world.given.facts[node]?.[at] === undefined ? [] : [keyOf(world, node)];
    return all.some((s) => s !== taken && s.key.state === taken.key.state) ? [taken.id] : [];
  });
}

/** Of a slot, in this visit or when it was last replied to. */
function repliesOf(world: World, id: number): readonly Standing[] | undefined {
  const node = world.site.nodes[id];
  return node?.kind === "last" ? world.given.earlier(node)?.standing : world.given.replies[id];
}

function keyOf(world: World, id: number): string {
  const node = world.site.nodes[id];
  if (node?.kind === "last") return node.slot.key;
  return node?.kind === "slot" || node?.kind === "fact" ? node.key : "";
}
