/** Ids: prefix, no two alike, no two that conditions would spell alike. Knows no meaning of any. */
import type { Lookup } from "../lookup.js";
import { celName, mainField } from "../names.js";
import type { Report } from "../reporting.js";
import type { Path } from "../source.js";
import type { Checking } from "./known.js";

/** Sheet ids that conditions or other ids give a meaning of their own. */
const RESERVED: ReadonlySet<string> = new Set(
  "car here opposite axle side corner places common x lim job gate cau sym true false null in".split(" "),
);

export function checkSheetIds(c: Checking): void {
  const { part } = c.look;
  if (RESERVED.has(part.prefix)) c.report.problem("reserved-id", ["id"], { id: part.prefix });
  const own = `${part.prefix}.`;
  checkIds("points", part.points, own, c);
  checkIds("derived", part.derived, own, c);
  checkIds("rules", part.rules, own, c);
  checkIds("limits", part.limits, "lim.", c);
  checkIds("jobs", part.jobs, "job.", c);
  checkIds("gates", part.gates, "gate.", c);
  checkNames(c.look, c.report);
}

type List = "points" | "derived" | "rules" | "limits" | "jobs" | "gates";

/** Prefix, and no id twice in this list here or in another loaded sheet; `-` and `_` count as equal. */
function checkIds(list: List, things: readonly { readonly id: string }[], prefix: string, c: Checking): void {
  checkPrefix(list, things, prefix, c.report);
  const taken = new Map<string, { readonly id: string; readonly where: string }>();
  for (const other of c.look.others)
    for (const thing of other[list]) taken.set(plain(thing.id), { id: thing.id, where: `sheet ${other.prefix}` });
  things.forEach((thing, i) => {
    const path: Path = [list, i, "id"];
    const first = taken.get(plain(thing.id));
    if (!first) taken.set(plain(thing.id), { id: thing.id, where: spotText(c.report, path) });
    else if (first.id === thing.id) c.report.problem("duplicate-id", path, { id: thing.id, first: first.where });
    else c.report.problem("names-collide", path, { first: first.id, second: thing.id, name: plain(thing.id) });
  });
}

const pathTo = (list: string | Path): Path => (typeof list === "string" ? [list] : list);
const plain = (id: string) => id.replaceAll("-", "_");

export function checkPrefix(
  list: string | Path,
  things: readonly { readonly id: string }[],
  prefix: string,
  report: Report,
): void {
  things.forEach((thing, i) => {
    if (!thing.id.startsWith(prefix)) report.problem("id-prefix", [...pathTo(list), i, "id"], { id: thing.id, prefix });
  });
}

/** No id twice within one list of the shared files. */
export function checkUnique(
  list: string | Path,
  ids: readonly string[],
  report: Report,
  key: readonly string[] = ["id"],
): void {
  const at = pathTo(list);
  ids.forEach((id, i) => {
    const first = ids.indexOf(id);
    if (first === i) return;
    report.problem("duplicate-id", [...at, i, ...key], { id, first: spotText(report, [...at, first, ...key]) });
  });
}

function spotText(report: Report, path: Path): string {
  const { file, line, path: inside } = report.spotOf(path);
  return file === undefined ? (inside ?? "") : `${file}:${line ?? 0}`;
}

/** A further field (`whl.heat_air`) may spell what another point or derived value is called. */
function checkNames(look: Lookup, report: Report): void {
  const { points, derived } = look.part;
  const names = new Map([...points, ...derived].map((thing) => [plain(thing.id), thing.id] as const));
  points.forEach((point, i) => {
    for (const field of Object.keys(point.fields)) {
      if (field === mainField(point)) continue;
      const name = celName(point, field);
      const first = names.get(name);
      const second = `${point.id} › ${field}`;
      if (first === undefined) names.set(name, second);
      else report.problem("names-collide", ["points", i, "fields", field], { first, second, name }, "key");
    }
  });
  derived.forEach((d, i) => {
    const point = points.find((p) => plain(p.id) === plain(d.id));
    if (point)
      report.problem("names-collide", ["derived", i, "id"], { first: point.id, second: d.id, name: plain(d.id) });
  });
}
