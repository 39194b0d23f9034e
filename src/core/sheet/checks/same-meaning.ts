/**
 * An id keeps its meaning from edition to edition: what visits replied under it must stay what it was. Compares a sheet
 * with an edition before it; knows no visit.
 */
import type { Problem } from "../../terms/index.js";
import { problem } from "../../terms/index.js";
import { mainField } from "../names.js";
import type { Derived, Field, Limit, Point, Sheet } from "../schema-types.js";
import type { Path, SpotOf } from "../source.js";

type Tell = (code: string, path: Path, params: Problem["params"]) => void;

/** What stands against `sheet` as the next edition after `before`. */
export function checkSameMeaning(sheet: Sheet, before: Sheet, spotOf: SpotOf): readonly Problem[] {
  const told: Problem[] = [];
  const tell: Tell = (code, path, params) => void told.push(problem(code, spotOf(path), params));
  each(sheet.points, before.points, (now, was, i) => comparePoints(now, was, ["points", i], tell));
  each(sheet.derived, before.derived, (now, was, i) => compareDerived(now, was, ["derived", i], tell));
  each(sheet.limits, before.limits, (now, was, i) => compareLimits(now, was, ["limits", i], tell));
  return told;
}

function each<T extends { readonly id: string }>(
  now: readonly T[],
  before: readonly T[],
  compare: (now: T, was: T, index: number) => void,
): void {
  now.forEach((one, i) => {
    const was = before.find(({ id }) => id === one.id);
    if (was) compare(one, was, i);
  });
}

function comparePoints(now: Point, was: Point, path: Path, tell: Tell): void {
  const { id } = now;
  if (now.place !== was.place) tell("id-other-place", [...path, "place"], { id, before: was.place, now: now.place });
  const [main, before] = [mainField(now), mainField(was)];
  if (main !== before) tell("id-other-field", [...path, "fields"], { id, before, now: main });
  for (const [name, field] of Object.entries(now.fields)) {
    const old = was.fields[name];
    if (old) compareFields(id, field, old, [...path, "fields", name], tell);
  }
}

function compareFields(id: string, now: Field, was: Field, path: Path, tell: Tell): void {
  const [kind, before] = [kindOf(now), kindOf(was)];
  if (kind !== before) tell("id-other-reply", path, { id, before, now: kind });
  if ("quantity" in now && "quantity" in was && now.quantity !== was.quantity)
    tell("id-other-quantity", [...path, "quantity"], { id, before: was.quantity, now: now.quantity });
  if (kind !== before || !("words" in now) || !("words" in was)) return;
  const gone = was.words.filter((word) => !now.words.includes(word));
  if (gone.length > 0) tell("id-words-gone", [...path, "words"], { id, words: gone });
}

/** What a field is answered with. */
function kindOf(field: Field): string {
  if ("words" in field) return field.several ? "several words" : "one word";
  if ("quantity" in field) return "a reading";
  if ("count" in field) return "a count";
  return "yes" in field ? "yes or no" : "a date code";
}

function compareDerived(now: Derived, was: Derived, path: Path, tell: Tell): void {
  const { id } = now;
  if (now.place !== was.place) tell("id-other-place", [...path, "place"], { id, before: was.place, now: now.place });
  if (now.quantity !== was.quantity)
    tell("id-other-quantity", [...path, "quantity"], { id, before: was.quantity, now: now.quantity });
}

function compareLimits(now: Limit, was: Limit, path: Path, tell: Tell): void {
  const { id } = now;
  if (now.of !== was.of) tell("id-other-subject", [...path, "of"], { id, before: was.of, now: now.of });
  if (now.class !== was.class) tell("id-other-place", [...path, "class"], { id, before: was.class, now: now.class });
}
