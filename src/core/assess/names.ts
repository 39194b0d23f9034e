/** Names in conditions to what they stand for. Knows no plan and no reply. */
import type { Ref } from "../expr/run.js";
import { findField } from "../sheet/run.js";
import { type DerivedInfo, type LimitInfo, type PointInfo, plainId, type RefInfo } from "./model.js";

/** Names to what they stand for. Strangers are added as conditions ask for them. */
export function nameTable(points: readonly PointInfo[], derived: readonly DerivedInfo[], limits: readonly LimitInfo[]) {
  const refs: RefInfo[] = [];
  const byName = new Map<string, RefInfo>();
  const declared = points.map((p) => p.point);
  const nameOf = (of: string): string => {
    const field = findField(declared, of);
    return field === undefined ? `${plainId(of)}|` : `${plainId(field.point)}|${plainId(field.field)}`;
  };
  const over = new Map<string, LimitInfo[]>();
  for (const l of limits) over.set(nameOf(l.limit.of), [...(over.get(nameOf(l.limit.of)) ?? []), l]);
  const add = (
    key: string,
    make: (index: number, name: string, limits: readonly LimitInfo[]) => RefInfo,
    name: string,
  ) => {
    const info = make(refs.length, name, over.get(key) ?? []);
    refs.push(info);
    byName.set(key, info);
    return info;
  };
  for (const point of points)
    point.fields.forEach((field, i) => {
      const name = i === 0 ? point.id : `${point.id}_${field.name}`;
      add(
        `${plainId(point.id)}|${plainId(field.name)}`,
        (index, n, l) => ({ index, name: n, limits: l, is: "field", point, field }),
        name,
      );
    });
  for (const d of derived)
    add(
      `${plainId(d.derived.id)}|`,
      (index, n, l) => ({ index, name: n, limits: l, is: "derived", derived: d }),
      d.derived.id,
    );
  const known = new WeakMap<Ref, RefInfo>();
  const refOf = (ref: Ref): RefInfo => {
    const before = known.get(ref);
    if (before !== undefined) return before;
    const { point, field } = ref;
    const key = `${plainId(point)}|${plainId(field)}`;
    const info =
      byName.get(key) ??
      add(
        key,
        (index, name) => ({ index, name, limits: [], is: "stranger", point, field }),
        `${point}${field === "" ? "" : `_${field}`}`,
      );
    known.set(ref, info);
    return info;
  };
  return { refs, named: (name: string) => byName.get(nameOf(name)), refOf };
}
