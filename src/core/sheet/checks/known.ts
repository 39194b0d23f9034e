/** Checks that a name in a sheet means something, and says what was expected. One function a kind of name. */
import type { Problem } from "../../terms/index.js";
import { isQuantity, QUANTITIES, unitOf, unitsOf } from "../../units/index.js";
import type { Lookup, Meant } from "../lookup.js";
import { celName } from "../names.js";
import { nearest } from "../nearest.js";
import type { Report } from "../reporting.js";
import type { Path } from "../source.js";

/** What every check is given: what may be named, where problems go, and the name checks bound to both. */
export interface Checking {
  readonly look: Lookup;
  readonly report: Report;
  readonly known: ReturnType<typeof knownIn>;
}

export const checking = (look: Lookup, report: Report): Checking => ({ look, report, known: knownIn(look, report) });

/** Each reports at `path` and says whether the name is known. */
function knownIn(look: Lookup, report: Report) {
  const refuse = (code: string, found: string, path: Path, all: Iterable<string>) => {
    const expected: Problem["params"] = { found, expected: nearest(found, all) };
    report.problem(code, path, expected);
    return false;
  };
  const oneOf = (code: string) => (all: () => Iterable<string>) => (found: string, path: Path) => {
    const known = new Set(all());
    return known.has(found) || refuse(code, found, path, known);
  };
  /** A name another sheet may hold: a note while that sheet is not loaded. */
  const elsewhere = (found: string, path: Path): boolean => {
    const sheet = look.sheetNotLoaded(found);
    if (sheet === undefined) return false;
    report.note("name-not-loaded", path, { found, sheet });
    return true;
  };

  const { common, tree } = look;
  const placeKinds = () => new Set(tree.all.map((p) => p.kind));
  const relations = () => [
    ...new Set(["here", "axle", "side", "corner", "car", ...tree.all.flatMap((p) => Object.keys(p.relations ?? {}))]),
  ];

  const kind = oneOf("unknown-place-kind")(placeKinds);
  const place = oneOf("unknown-place")(() => tree.all.map((p) => p.id));
  const relation = oneOf("unknown-relation")(relations);
  const relationOrKind = oneOf("unknown-relation")(() => [...relations(), ...placeKinds()]);
  const relationOrPlace = oneOf("unknown-relation")(() => [
    ...relations(),
    ...placeKinds(),
    ...tree.all.map((p) => p.id),
  ]);

  const point = (found: string, path: Path): boolean =>
    look.points.has(found) || elsewhere(found, path) || refuse("unknown-point", found, path, look.points.keys());

  return {
    kind,
    place,
    relation,
    relationOrKind,
    state: oneOf("unknown-state")(() => common.states.map((s) => s.id)),
    caution: oneOf("unknown-caution")(() => common.cautions.map((c) => c.id)),
    access: oneOf("unknown-access")(() => common.access.map((a) => a.id)),
    fact: oneOf("unknown-fact")(() => common.facts.map((f) => f.id)),
    tool: oneOf("unknown-gauge")(() => [...common.gauges.map((g) => g.id), ...(common.aids ?? [])]),
    point,
    /** `point`, or `point@relation` / `point@place` / `point@kind`. */
    pointThere: (found: string, path: Path): boolean => {
      const [id = "", there] = found.split("@");
      const known = point(id, path);
      return (there === undefined || relationOrPlace(there, path)) && known;
    },
    fault: (found: string, path: Path): boolean =>
      look.faults.has(found) || elsewhere(found, path) || refuse("unknown-fault", found, path, look.faults),
    job: (found: string, path: Path): boolean =>
      look.jobs.has(found) || elsewhere(found, path) || refuse("unknown-job", found, path, look.jobs.keys()),
    /** The reading or derived value a limit or a grade names; undefined when told or in a sheet not loaded. */
    reading: (found: string, path: Path): Meant | undefined => {
      const meant = look.meant(found);
      if (meant) return meant;
      if (elsewhere(found, path)) return undefined;
      const names = [...look.points.values()].flatMap((p) => Object.keys(p.fields).map((f) => celName(p, f)));
      refuse("unknown-point", found, path, names);
      return undefined;
    },
    quantity: (found: string, path: Path): boolean =>
      isQuantity(found) || refuse("unknown-quantity", found, path, QUANTITIES),
    /** A unit of this quantity; another quantity's unit is a clash. `what` says whose unit it is. */
    unit: (unit: string, quantity: string, path: Path, what: string): boolean => {
      if (!isQuantity(quantity)) return false;
      const found = unitOf(unit, quantity) ?? unitOf(unit);
      if (!found)
        return refuse(
          "unknown-unit",
          unit,
          path,
          unitsOf(quantity).map((u) => u.code),
        );
      if (found.quantity === quantity) return true;
      clash(
        report,
        path,
        { what, quantity, unit: unitsOf(quantity)[0]?.code ?? "" },
        { other: "its unit", quantity: found.quantity, unit },
      );
      return false;
    },
  };
}

/** One check for every name of a list that may be absent. */
export function each(
  names: readonly string[] | undefined,
  path: Path,
  check: (name: string, path: Path) => boolean,
): void {
  for (const [i, name] of (names ?? []).entries()) check(name, [...path, i]);
}

/** Two quantities that cannot be compared. */
export function clash(
  report: Report,
  path: Path,
  one: { readonly what: string; readonly quantity: string; readonly unit: string },
  two: { readonly other: string; readonly quantity: string; readonly unit: string },
): void {
  report.problem("unit-clash", path, {
    what: one.what,
    quantity: one.quantity,
    unit: one.unit,
    other: two.other,
    otherQuantity: two.quantity,
    otherUnit: two.unit,
  });
}
