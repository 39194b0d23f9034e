/** Which replies would decide the most, and which points are open next. Decides nothing itself. */
import type { GradeLevel } from "../terms/index.js";
import { standsBack } from "./asked.js";
import type { Opened, Settle } from "./contract.js";
import { readKey } from "./keys.js";
import { worstOf } from "./levels.js";
import type { RuleNode } from "./nodes.js";
import type { Run } from "./run-rule.js";
import type { Site } from "./site.js";

/** A rule not known at a place though a deciding reply is given, or one whose reading is too close to call. */
export interface Waiting {
  readonly node: RuleNode;
  readonly missing: Run["missing"];
}

interface Row {
  readonly point: string;
  readonly place: string;
  closer: boolean;
  readonly walk: number;
  readonly rules: { readonly node: RuleNode; readonly alone: boolean }[];
}

/**
 * Settle-it points, most telling first: the worst grade this reply alone would decide, how many rules it alone would
 * decide, then the same for rules that wait for other replies too, then walking order.
 */
export function settlePoints(site: Site, waiting: readonly Waiting[]): readonly Settle[] {
  const rows = new Map<string, Row>();
  for (const { node, missing } of waiting) {
    const alone = missing.size === 1;
    for (const key of missing) {
      const { point, place, closer } = readKey(key);
      const at = `${point}@${place}`;
      let row = rows.get(at);
      if (row === undefined) {
        row = { point, place, closer, walk: walkOf(site, point, place), rules: [] };
        rows.set(at, row);
      }
      row.closer = row.closer && closer;
      row.rules.push({ node, alone });
    }
  }
  return [...rows.values()]
    .map((row) => ({ row, weight: weightOf(row) }))
    .sort(
      (a, b) =>
        compareWeights(a.weight, b.weight) ||
        a.row.walk - b.row.walk ||
        compareText(a.row.point, b.row.point) ||
        compareText(a.row.place, b.row.place),
    )
    .map(({ row }): Settle => {
      const telling = [...row.rules].sort(
        (a, b) => Number(b.alone) - Number(a.alone) || b.node.rule.worst - a.node.rule.worst || a.node.id - b.node.id,
      );
      const decides = [...new Set(telling.map((r) => r.node.rule.rule.id))];
      return { point: row.point, place: row.place, because: decides[0] ?? "", decides, closer: row.closer };
    });
}

function weightOf(row: Row): readonly number[] {
  const alone = row.rules.filter((r) => r.alone);
  const worst = (rules: typeof row.rules): GradeLevel => worstOf(...rules.map((r) => r.node.rule.worst));
  return [worst(alone), alone.length, worst(row.rules), row.rules.length];
}

function compareWeights(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i += 1) {
    const by = (b[i] ?? 0) - (a[i] ?? 0);
    if (by !== 0) return by;
  }
  return 0;
}
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Walking position of a point; what is not on this car's walk comes last. */
export function walkOf(site: Site, point: string, place: string): number {
  const info = site.model.pointById.get(point.replaceAll("-", "_"));
  return (info && site.spotsOf(info).get(place)?.walk) ?? Number.MAX_SAFE_INTEGER;
}

/**
 * Whether a point still has something to answer: no real answer yet, or it is to be measured again. A stand-in has not
 * while the fuller point can be asked.
 */
export function isUnanswered(site: Site, answered: (spot: number) => boolean): (o: Opened) => boolean {
  return (o) => {
    if (o.again === true) return true;
    const info = site.model.pointById.get(o.point.replaceAll("-", "_"));
    const spot = info && site.spotsOf(info).get(o.place);
    return spot === undefined || !(answered(spot.index) || standsBack(site, spot.point));
  };
}
