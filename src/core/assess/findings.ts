/** From what rules said to findings: the third pass raises grades and lowers how sure. Merges no faults. */
import { GRADES, type Grade, type Sure } from "../terms/index.js";
import type { Finding, JobOrder, Opened } from "./contract.js";
import { eachOnce, openedOf } from "./keys.js";
import type { RuleInfo } from "./model.js";
import type { RuleNode, Spot } from "./nodes.js";
import { type Draft, placesAt, type Run } from "./run-rule.js";
import type { Site } from "./site.js";

/** A rule that fired, where it stood. */
export interface Fired {
  readonly node: RuleNode;
  readonly run: Run;
}
/** A finding with what ordering and merging need of its rule. */
export interface Placed {
  readonly finding: Finding;
  readonly rule: RuleInfo;
  /** Walking position of the first thing it rests on. */
  readonly walk: number;
}
export interface Effects {
  readonly findings: readonly Placed[];
  /** Points whose answers cannot count, by index of the spot. */
  readonly notChecked: ReadonlySet<number>;
  readonly opened: readonly Opened[];
  readonly orders: readonly JobOrder[];
}

/** Lets the effects act once on what the second pass concluded. None looks at what another effect did. */
export function actOn(site: Site, fired: readonly Fired[]): Effects {
  const raises: { readonly fault: string; readonly place: string; readonly rule: string }[] = [];
  const lowers: { readonly spots: ReadonlySet<number> }[] = [];
  const notChecked = new Set<number>();
  const opened: Opened[] = [];
  const orders: JobOrder[] = [];
  for (const { node, run } of fired) {
    const { effect, id } = node.rule.rule;
    if (typeof effect !== "object") continue;
    for (const { place } of run.drafts) {
      if ("raise" in effect) raises.push({ fault: effect.raise, place, rule: id });
      else if ("lower-sure" in effect)
        lowers.push({ spots: spotsNamed(site, effect["lower-sure"], node.place, place) });
      else if ("not-checked" in effect)
        for (const at of spotsNamed(site, effect["not-checked"], node.place, place)) notChecked.add(at);
      else if ("open" in effect)
        opened.push(...effect.open.flatMap((name) => pointsNamed(site, name, node.place, place, id)));
      else if ("order" in effect) orders.push({ ...effect.order, place, rule: id });
      else for (const spot of spotsOfName(site, effect["discard-reading"], place)) notChecked.add(spot.index);
    }
  }
  const findings = fired.flatMap(({ node, run }) => run.drafts.map((draft) => placed(site, node, run, draft)));
  const acted = mergeAlike(findings).map((one) => lowered(site, raised(site, one, raises), lowers));
  return { findings: acted.sort(compareFindings), notChecked, opened, orders };
}

function placed(site: Site, node: RuleNode, run: Run, draft: Draft): Placed {
  const { rule } = node.rule;
  const walks = run.under.flatMap((id) => {
    const slot = site.nodes[id];
    return slot?.kind === "slot" ? [slot.spot.walk] : [];
  });
  const wanted = (rule.opens ?? []).flatMap((name) => pointsNamed(site, name, node.place, draft.place, rule.id));
  const finding: Finding = {
    rule: rule.id,
    fault: rule.fault ?? null,
    place: draft.place,
    grade: draft.grade,
    ...(typeof rule.effect === "object" ? { effect: Object.keys(rule.effect)[0] ?? "" } : {}),
    sure: draft.sure,
    provisional: rule.provisional === true,
    close: draft.close,
    atLeast: draft.atLeast,
    differ: draft.differ,
    because: draft.because,
    jobs: rule.jobs ?? [],
    cautions: rule.cautions ?? [],
    opens: eachOnce([...openedOf(run.missing, rule.id), ...wanted]),
  };
  return { finding, rule: node.rule, walk: walks.length === 0 ? Number.MAX_SAFE_INTEGER : Math.min(...walks) };
}

/** The same rule concluding at one place from several: once, with every because. */
function mergeAlike(all: readonly Placed[]): readonly Placed[] {
  const byPlace = new Map<string, Placed>();
  for (const one of all) {
    const at = `${one.finding.rule}@${one.finding.place}`;
    const before = byPlace.get(at);
    byPlace.set(at, before === undefined ? one : joined(before, one));
  }
  return [...byPlace.values()];
}

function joined(a: Placed, b: Placed): Placed {
  const [worse, other] = rankOf(b.finding.grade) > rankOf(a.finding.grade) ? [b, a] : [a, b];
  const steps = new Map(
    [...worse.finding.because, ...other.finding.because].map((step) => [JSON.stringify(step), step]),
  );
  return {
    ...worse,
    walk: Math.min(a.walk, b.walk),
    finding: {
      ...worse.finding,
      because: [...steps.values()],
      differ: [...new Set([...a.finding.differ, ...b.finding.differ])],
      opens: eachOnce([...worse.finding.opens, ...other.finding.opens]),
    },
  };
}
const rankOf = (grade: Grade | null): number => (grade === null ? -1 : GRADES.indexOf(grade));

/** One step worse in all, however many raise it; never above dangerous. */
function raised(
  site: Site,
  one: Placed,
  raises: readonly { readonly fault: string; readonly place: string; readonly rule: string }[],
): Placed {
  const { finding } = one;
  if (finding.grade === null) return one;
  const by = raises.filter((r) => r.fault === finding.fault && site.within(r.place, finding.place));
  if (by.length === 0) return one;
  const grade = GRADES[Math.min(GRADES.indexOf(finding.grade) + 1, GRADES.length - 1)] ?? "dangerous";
  return {
    ...one,
    finding: {
      ...finding,
      grade,
      because: [...finding.because, ...by.map((r) => ({ kind: "raised", rule: r.rule }) as const)],
    },
  };
}

/** A finding that rests on one of these points is no more than possible. */
function lowered(site: Site, one: Placed, lowers: readonly { readonly spots: ReadonlySet<number> }[]): Placed {
  const rests = (spots: ReadonlySet<number>) =>
    one.finding.because.some((step) => {
      if (step.kind !== "reply" || step.supports) return false;
      const point = site.model.pointById.get(step.key.point.replaceAll("-", "_"));
      const spot = point && site.spotsOf(point).get(step.key.place);
      return spot !== undefined && spots.has(spot.index);
    });
  const sure: Sure = "possible";
  return one.finding.grade !== null && lowers.some((l) => rests(l.spots))
    ? { ...one, finding: { ...one.finding, sure } }
    : one;
}

/** Worst first, then in walking order; effects that are no findings last. */
function compareFindings(a: Placed, b: Placed): number {
  const by = rankOf(b.finding.grade) - rankOf(a.finding.grade) || a.walk - b.walk || a.rule.order - b.rule.order;
  return by !== 0 ? by : a.finding.place < b.finding.place ? -1 : a.finding.place > b.finding.place ? 1 : 0;
}

function spotsNamed(site: Site, names: readonly string[], here: string, concluded: string): ReadonlySet<number> {
  return new Set(names.flatMap((name) => spotsOfName(site, name, concluded, here).map((s) => s.index)));
}

const named = new WeakMap<Site, Map<string, readonly Spot[]>>();

/** Spots of `point` seen from a place, or of `point@there`. */
export function spotsOfName(site: Site, name: string, concluded: string, here = concluded): readonly Spot[] {
  const table = named.get(site) ?? new Map<string, readonly Spot[]>();
  named.set(site, table);
  const key = `${name} ${concluded} ${here}`;
  const spots = table.get(key) ?? findSpots(site, name, concluded, here);
  table.set(key, spots);
  return spots;
}

function findSpots(site: Site, name: string, concluded: string, here: string): readonly Spot[] {
  const [id = "", there] = name.split("@");
  const ref = site.model.pointById.get(id.replaceAll("-", "_")) ?? fieldPoint(site, id);
  if (ref === undefined) return [];
  const places = there === undefined ? [concluded] : placesThere(site, there, here, concluded);
  return [...new Set(places.flatMap((p) => site.spotsFor(ref, p)))];
}

function fieldPoint(site: Site, name: string) {
  const ref = site.model.named(name);
  return ref?.is === "field" ? ref.point : undefined;
}

/** `@opposite`, `@corner`, `@FR`: a relation from where the rule stands, every place of a kind, or one place. */
function placesThere(site: Site, there: string, here: string, concluded: string): readonly string[] {
  for (const from of [here, concluded]) {
    const led = placesAt(site, there, from);
    if (led.length > 0) return led;
    const inside = site.tree.ofKind(there).filter((p) => site.within(from, p));
    if (inside.length > 0) return inside;
  }
  return site.tree.has(there) ? [there] : [];
}

/** Points to open by name; one of a sheet that is not loaded is named all the same, where the rule concludes. */
export function pointsNamed(
  site: Site,
  name: string,
  here: string,
  concluded: string,
  because: string,
): readonly Opened[] {
  const spots = spotsOfName(site, name, concluded, here);
  if (spots.length > 0) return spots.map((s) => ({ point: s.point.id, place: s.place, because }));
  const [id = "", there] = name.split("@");
  if (site.model.pointById.has(id.replaceAll("-", "_"))) return [];
  const places = there === undefined ? [concluded] : placesThere(site, there, here, concluded);
  return places.map((place) => ({ point: id, place, because }));
}
