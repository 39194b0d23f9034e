/** Points: kind of place, car states, fields and their words, units, gauge, what ‘no fault seen’ enters. */
import { NON_ANSWERS } from "../../terms/index.js";
import { isQuantity } from "../../units/index.js";
import type { Field, Point } from "../schema-types.js";
import type { Path } from "../source.js";
import { type Checking, clash, each } from "./known.js";

export function checkPoints(c: Checking): void {
  for (const [i, point] of c.look.part.points.entries()) checkPoint(point, ["points", i], c);
}

function checkPoint(point: Point, path: Path, c: Checking): void {
  const { known } = c;
  known.kind(point.place, [...path, "place"]);
  each(point.states, [...path, "states"], known.state);
  twice(point.states, [...path, "states"], c);
  const fields = Object.entries(point.fields);
  if (fields.length === 0) c.report.problem("no-field", [...path, "fields"], { point: point.id });
  for (const [name, field] of fields) checkField(name, field, [...path, "fields", name], c);
  checkUnremarkable(point, [...path, "unremarkable"], c);
  checkTool(point, path, c);
  for (const key of ["same-entry", "instead-of"] as const)
    if (point[key] !== undefined) known.point(point[key], [...path, key]);
  const readings = fields.filter(([, f]) => "quantity" in f);
  if (point.needs?.includes("reading") && readings.length === 0) c.report.problem("needs-reading", [...path, "needs"]);
}

function checkField(name: string, field: Field, path: Path, c: Checking): void {
  const { known } = c;
  if ("words" in field) {
    checkWords(field.words, [...path, "words"], c);
    const { exclusive = [] } = field;
    if (exclusive.length > 0 && !field.several) c.report.problem("exclusive-alone", [...path, "exclusive"]);
    for (const [i, word] of exclusive.entries()) declared(word, field.words, [...path, "exclusive", i], c);
    twice(exclusive, [...path, "exclusive"], c);
  }
  if ("quantity" in field) {
    if (known.quantity(field.quantity, [...path, "quantity"]))
      known.unit(field.unit, field.quantity, [...path, "unit"], `field “${name}”`);
    range(field.window[0], field.window[1], [...path, "window"], c);
    checkWords(field.results ?? [], [...path, "results"], c);
  }
  if ("count" in field) range(field.count.from, field.count.to, [...path, "count"], c);
}

const NOT_WORDS: ReadonlySet<string> = new Set(NON_ANSWERS);

function checkWords(words: readonly string[], path: Path, c: Checking): void {
  words.forEach((word, i) => {
    if (NOT_WORDS.has(word)) c.report.problem("reserved-word", [...path, i], { word });
  });
  twice(words, path, c);
}

function twice(words: readonly string[], path: Path, c: Checking): void {
  words.forEach((word, i) => {
    if (words.indexOf(word) !== i) c.report.problem("duplicate-word", [...path, i], { word });
  });
}

function declared(word: string, words: readonly string[], path: Path, c: Checking): void {
  if (!words.includes(word)) c.report.problem("unknown-word", path, { found: word, expected: words });
}

function range(from: number, to: number, path: Path, c: Checking): void {
  if (!(from < to)) c.report.problem("window-order", path, { from, to });
}

function checkUnremarkable(point: Point, path: Path, c: Checking): void {
  if (point.unremarkable === undefined) return;
  for (const [name, said] of Object.entries(point.unremarkable)) {
    const field = Object.hasOwn(point.fields, name) ? point.fields[name] : undefined;
    const at = [...path, name];
    if (field === undefined) {
      c.report.problem("unknown-field", at, { found: name, expected: Object.keys(point.fields) }, "key");
    } else if (!("words" in field)) {
      c.report.problem("unremarkable-measured", at, { field: name });
    } else if (typeof said === "string") {
      declared(said, field.words, at, c);
    } else {
      if (!field.several) c.report.problem("unremarkable-several", at, { field: name });
      for (const [i, word] of said.entries()) declared(word, field.words, [...at, i], c);
    }
  }
  for (const [name, field] of Object.entries(point.fields))
    if (!field.optional && !Object.hasOwn(point.unremarkable, name))
      c.report.problem("unremarkable-gap", path, { field: name });
}

function checkTool(point: Point, path: Path, c: Checking): void {
  const readings = Object.entries(point.fields).flatMap(([name, f]) => ("quantity" in f ? [{ name, field: f }] : []));
  const gauge = c.look.common.gauges.find((g) => g.id === point.tool);
  if (point["set-up-error"] !== undefined && (readings.length === 0 || !gauge))
    c.report.problem("set-up-alone", [...path, "set-up-error"]);
  if (point.tool === undefined || !c.known.tool(point.tool, [...path, "tool"])) return;
  const [first] = readings;
  // A quantity nobody knows is told at its field.
  if (!gauge || !first || readings.some((r) => !isQuantity(r.field.quantity))) return;
  if (readings.some((r) => r.field.quantity === gauge.quantity)) return;
  clash(
    c.report,
    [...path, "tool"],
    { what: `gauge “${gauge.id}”`, quantity: gauge.quantity, unit: gauge.unit },
    { other: `field “${first.name}”`, quantity: first.field.quantity, unit: first.field.unit },
  );
}
