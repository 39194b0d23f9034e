/** Findings that name the same fault at the same place are one fault. Grades nothing anew. */
import { GRADES, type Grade, SURENESS } from "../terms/index.js";
import type { Fault, Opened } from "./contract.js";
import type { Placed } from "./findings.js";
import { eachOnce } from "./keys.js";
import type { Site } from "./site.js";

/** Stated by every checked rule; these stand in where nobody states them, on the careful side. */
export const CONSEQUENCE: Readonly<Record<Grade, Fault["consequence"]>> = {
  dangerous: 1,
  major: 2,
  minor: 3,
  advisory: 4,
};
export const LIKELIHOOD: Fault["likelihood"] = "C";

interface Group {
  readonly fault: string;
  readonly place: string;
  readonly parts: readonly Placed[];
}

/**
 * Faults, worst first. A fault at a place inside that of the same fault takes the wider one in: noise from the right
 * side and a rough race at the front right are one bearing.
 */
export function mergeFaults(site: Site, findings: readonly Placed[], isOpen: (o: Opened) => boolean): readonly Fault[] {
  const groups = new Map<string, { fault: string; place: string; parts: Placed[] }>();
  for (const one of findings) {
    const { fault, grade, place } = one.finding;
    if (fault === null || grade === null) continue;
    const at = `${fault}@${place}`;
    const group = groups.get(at) ?? { fault, place, parts: [] };
    group.parts.push(one);
    groups.set(at, group);
  }
  const byFault = new Map<string, Group[]>();
  for (const group of groups.values()) {
    const row = byFault.get(group.fault);
    if (row === undefined) byFault.set(group.fault, [group]);
    else row.push(group);
  }
  return [...byFault.values()]
    .flatMap((alike) => absorbed(site, alike).map((g) => faultOf(g, isOpen)))
    .sort(compareFaults);
}

/** Of one fault's places, those with no narrower one inside, each with what the wider ones found. */
function absorbed(site: Site, alike: readonly Group[]): readonly Group[] {
  if (alike.length === 1) return alike;
  const isWider = (a: Group, b: Group) => a.place !== b.place && site.within(a.place, b.place);
  // only a place with others inside can be wider; on most cars a fault has none such
  const wide = alike.filter((g) => alike.some((other) => isWider(g, other)));
  if (wide.length === 0) return alike;
  return alike
    .filter((g) => !wide.includes(g))
    .map((g) => ({ ...g, parts: [...g.parts, ...wide.filter((w) => isWider(w, g)).flatMap((w) => w.parts)] }));
}

function faultOf(group: Group, isOpen: (o: Opened) => boolean): Fault {
  const parts = [...group.parts].sort((a, b) => rank(b) - rank(a) || a.rule.order - b.rule.order);
  const grade = parts[0]?.finding.grade ?? "advisory";
  const worst = parts.filter((p) => p.finding.grade === grade);
  const sure = SURENESS[Math.max(...parts.map((p) => SURENESS.indexOf(p.finding.sure)))] ?? "possible";
  const likelihoods = parts.map((p) => p.rule.rule.likelihood ?? LIKELIHOOD).sort();
  const consequences = parts.map((p) => p.rule.rule.consequence ?? CONSEQUENCE[grade]);
  const unique = (pick: (p: Placed) => readonly string[]) => [...new Set(parts.flatMap(pick))];
  return {
    fault: group.fault,
    place: group.place,
    grade,
    sure,
    close: worst.every((p) => p.finding.close),
    provisional: worst.every((p) => p.finding.provisional),
    rules: unique((p) => [p.finding.rule]),
    jobs: unique((p) => p.finding.jobs),
    cautions: unique((p) => p.finding.cautions),
    consequence: consequences.sort((a, b) => a - b)[0] ?? CONSEQUENCE[grade],
    likelihood: likelihoods[0] ?? LIKELIHOOD,
    mustStand: parts.some((p) => p.rule.rule["must-stand"] === true),
    position: Math.min(...parts.map((p) => p.walk)),
    settle: sure === "certain" ? [] : eachOnce(parts.flatMap((p) => p.finding.opens).filter(isOpen)),
  };
}

const rank = (p: Placed): number => (p.finding.grade === null ? -1 : GRADES.indexOf(p.finding.grade));

export function compareFaults(a: Fault, b: Fault): number {
  const by = GRADES.indexOf(b.grade) - GRADES.indexOf(a.grade) || a.position - b.position;
  if (by !== 0) return by;
  const [x, y] = [`${a.fault}@${a.place}`, `${b.fault}@${b.place}`];
  return x < y ? -1 : x > y ? 1 : 0;
}
