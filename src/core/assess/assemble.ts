/** Puts together what the passes gave into one assessment. Evaluates no condition. */
import { type GradeLevel, levelOf, type Problem } from "../terms/index.js";
import { suggestedBy } from "./complaints.js";
import type { AssessInput, Assessment, Finding, Opened } from "./contract.js";
import type { Engine } from "./engine.js";
import { mergeFaults } from "./faults.js";
import { actOn, type Effects, type Fired } from "./findings.js";
import { cautionsDue, gateStates } from "./gates.js";
import { eachOnce, openedOf, readKey } from "./keys.js";
import { answersOf, lookedAt, type Verdicts } from "./looked.js";
import { conditionOf, runOf } from "./passes.js";
import { type Judged, judge } from "./readings.js";
import { isUnanswered, settlePoints, type Waiting } from "./settle.js";
import type { Site } from "./site.js";
import { ENGINE_VERSION } from "./version.js";
import type { World } from "./world.js";

export function assemble(engine: Engine, input: AssessInput, world: World): Assessment {
  const { site, given } = world;
  const answers = answersOf(site, given);
  const isOpen = isUnanswered(site, (spot) => answers[spot] === "answered");
  const fired: Fired[] = [];
  for (const node of site.rules) {
    const run = runOf(world, node);
    if (run.is === "true") fired.push({ node, run });
  }
  const effects = actOn(site, fired);
  const findings = effects.findings.map((p) => p.finding);
  const faults = mergeFaults(site, effects.findings, isOpen);
  const gates = gateStates({ site, runOf: (n) => conditionOf(world, n), faults, findings, isOpen });
  const judged = judgeAll(world);
  const opened = openedBy(findings, effects, world);
  const verdicts = verdictsOf(world, fired, findings, judged, effects);
  const suggested = suggestedBy(site, input.complaints, isOpen);
  const asking = [...opened, ...suggested, ...gates.filter((g) => g.state === "not cleared").flatMap((g) => g.first)];
  const looked = lookedAt({
    site,
    given,
    answers,
    who: input.who,
    verdicts,
    isShown: shownIn(world),
    opened: asking,
    broken: engine.problems.length > 0,
  });
  return {
    engine: ENGINE_VERSION,
    findings,
    faults,
    gates,
    cautions: cautionsDue(site, findings, gates),
    settle: settlePoints(site, waitingIn(world)),
    open: eachOnce(opened.filter(isOpen)),
    coverage: looked.coverage,
    points: looked.points,
    asked: looked.asked,
    suggested,
    orders: effects.orders,
    readings: judged.flatMap((j) => (j.reading === undefined ? [] : [j.reading])),
    problems: problemsOf(world),
  };
}

/** Hidden points show when their condition is true; those without a condition always. */
function shownIn(world: World): (spot: Site["spots"][number]) => boolean {
  const hidden = new Map(world.site.asked.map((n) => [n.spot, n.id]));
  return (spot) => {
    const id = hidden.get(spot);
    return id === undefined || world.records[id]?.value === true;
  };
}

/** Every reading and derived value with something standing, judged; kept with the other records. */
function judgeAll(world: World): readonly Judged[] {
  const { site, given } = world;
  const out: Judged[] = [];
  const at = (refIndex: number, place: string): void => {
    const ref = site.model.refs[refIndex];
    const node = ref && site.judgedAt(ref, place);
    if (ref === undefined || node === undefined) return;
    let kept = world.records[node.id];
    if (kept === undefined) {
      const { reads, ...value } = judge(world, ref, place);
      kept = { value, reads, problems: [] };
      world.records[node.id] = kept;
    }
    // records of judged nodes are only ever written here
    out.push(kept.value as Judged);
  };
  for (const slot of site.readingSlots) if (given.replies[slot.id] !== undefined) at(slot.ref.index, slot.spot.place);
  for (const ref of site.model.refs)
    if (ref.is === "derived") for (const place of site.tree.ofKind(ref.derived.derived.place)) at(ref.index, place);
  return out;
}

/** What findings, effects and limits open, worst first. */
function openedBy(findings: readonly Finding[], effects: Effects, world: World): readonly Opened[] {
  const found = findings.flatMap((f) => f.opens);
  return [...found, ...effects.opened, ...limitsOpen(world)];
}

/** What would tell which limit applies over a reading that stands. */
function limitsOpen(world: World): readonly Opened[] {
  const out: Opened[] = [];
  for (const node of world.site.nodes) {
    if (node.kind !== "band") continue;
    const record = world.bandRecordOf(node.id);
    if (record === undefined || record.deciding.size === 0) continue;
    const because =
      record.judged.find((j) => j.applies !== true)?.limit.limit.id ?? record.judged[0]?.limit.limit.id ?? "";
    out.push(...openedOf(record.deciding, because));
  }
  return out;
}

/** What rests on each spot: the worst grade, and whether anything over it is open. */
function verdictsOf(
  world: World,
  fired: readonly Fired[],
  findings: readonly Finding[],
  judged: readonly Judged[],
  effects: Effects,
): Verdicts {
  const { site } = world;
  const grades = new Array<GradeLevel | undefined>(site.spots.length).fill(undefined);
  const open = new Array<boolean | undefined>(site.spots.length).fill(undefined);
  const final = new Map(findings.map((f) => [`${f.rule}@${f.place}`, levelOf(f.grade)]));
  const worseAt = (slots: readonly number[], level: GradeLevel) => {
    for (const id of slots) {
      const node = site.nodes[id];
      if (node?.kind === "slot" && level > (grades[node.spot.index] ?? 0)) grades[node.spot.index] = level;
    }
  };
  const openAt = (slots: readonly number[]) => {
    for (const id of slots) {
      const node = site.nodes[id];
      if (node?.kind === "slot") open[node.spot.index] = true;
    }
  };
  for (const { node, run } of fired) {
    for (const d of run.drafts) worseAt(run.under, final.get(`${node.rule.rule.id}@${d.place}`) ?? 0);
    if (node.rule.rule.effect !== "finding") openAt(run.under);
  }
  for (const node of site.rules) {
    const run = runOf(world, node);
    if (run.is === "unknown") openAt(run.under);
  }
  // a limit passed, or not known, without a rule that says so: not sound all the same
  for (const j of judged) if (j.level > 0 || j.open) openAt(j.under);
  return { grades, open, notChecked: effects.notChecked };
}

/** Rules not known although something they look at was answered, and findings too close to call. */
function waitingIn(world: World): readonly Waiting[] {
  const { site, given } = world;
  const isTouched = (id: number) => given.replies[id]?.some((s) => s.nonAnswer === undefined) === true;
  const out: Waiting[] = [];
  for (const node of site.rules) {
    const run = runOf(world, node);
    if (run.is === "unknown" && run.missing.size > 0 && run.under.some(isTouched))
      out.push({ node, missing: run.missing });
    if (run.is !== "true" || !run.drafts.some((d) => d.close)) continue;
    const closer = [...run.missing].filter((key) => readKey(key).closer);
    if (closer.length > 0) out.push({ node, missing: new Set(closer) });
  }
  return out;
}

function problemsOf(world: World): readonly Problem[] {
  const all = [...world.site.problems, ...world.given.problems];
  for (const r of world.records) if (r !== undefined && r.problems.length > 0) all.push(...r.problems);
  if (all.length === 0) return all;
  const seen = new Set<string>();
  return all.filter((p) => {
    const text = JSON.stringify(p);
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}
