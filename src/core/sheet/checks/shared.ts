/**
 * Places, gauges, access and facts, whether the shared files hold them or a sheet brings them. Names may lead to whatever
 * the part under check can see.
 */
import type { Brings } from "../schema-types.js";
import type { Path } from "../source.js";
import { circle } from "./cycles.js";
import { type Checking, each } from "./known.js";
import { checkMinutes } from "./rules.js";

/** `at`: where the lists stand in what is checked. */
export function checkShared(things: Brings, c: Checking, at: Path = []): void {
  checkPlaces(things.places ?? [], c, [...at, "places"]);
  checkGauges(things.gauges ?? [], c, [...at, "gauges"]);
  checkAccess(things.access ?? [], c, [...at, "access"]);
  checkFacts(things.facts ?? [], c, [...at, "facts"]);
}

function checkPlaces(places: NonNullable<Brings["places"]>, c: Checking, at: Path): void {
  places.forEach((place, i) => {
    if (place.in !== undefined) c.known.place(place.in, [...at, i, "in"]);
    for (const [name, to] of Object.entries(place.relations ?? {}))
      if (typeof to === "string") c.known.place(to, [...at, i, "relations", name]);
      else each(to, [...at, i, "relations", name], c.known.place);
  });
  const chain = circle(new Map(places.map((p) => [p.id, p.in === undefined ? [] : [p.in]])));
  if (chain) {
    const first = places.findIndex((p) => p.id === chain[0]);
    c.report.problem("cycle", [...at, first, "in"], { chain: chain.join(" → ") });
  }
}

function checkGauges(gauges: NonNullable<Brings["gauges"]>, c: Checking, at: Path): void {
  gauges.forEach((gauge, i) => {
    const path = [...at, i];
    if (c.known.quantity(gauge.quantity, [...path, "quantity"]))
      c.known.unit(gauge.unit, gauge.quantity, [...path, "unit"], `gauge “${gauge.id}”`);
    for (const key of ["resolution", "error"] as const)
      if (!(gauge[key] >= 0)) c.report.problem("gauge-step", [...path, key], { key, found: gauge[key] });
    if (gauge.source.trim() === "") c.report.problem("source-missing", [...path, "source"], { id: gauge.id });
  });
}

function checkAccess(access: NonNullable<Brings["access"]>, c: Checking, at: Path): void {
  access.forEach((access, i) => {
    const path = [...at, i];
    c.known.kind(access.place, [...path, "place"]);
    each(access.needs, [...path, "needs"], c.known.access);
    checkMinutes(access.setUp, [...path, "setUp"], c);
    checkMinutes(access.putBack, [...path, "putBack"], c);
  });
  const chain = circle(new Map(access.map((a) => [a.id, a.needs ?? []])));
  if (!chain) return;
  const first = access.findIndex((a) => a.id === chain[0]);
  c.report.problem("cycle", [...at, first, "needs"], { chain: chain.join(" → ") });
}

function checkFacts(facts: NonNullable<Brings["facts"]>, c: Checking, at: Path): void {
  facts.forEach((fact, i) => {
    const path = [...at, i];
    if (fact.kind === "word" && (fact.words ?? []).length < 2)
      c.report.problem("too-few", path, { key: "words", least: 2 });
    if (fact.quantity === undefined) return;
    if (c.known.quantity(fact.quantity, [...path, "quantity"]))
      c.known.unit(fact.unit ?? "", fact.quantity, [...path, "unit"], `car fact “${fact.id}”`);
  });
}
