// Each limit at each of its edges, just under and just over, through the whole of assessing with the shipped sheets:
// the grade is the one its facts (limits-facts.ts) give. Readings are taken with a gauge without any error, so none is
// too close to call.
import { beforeAll, expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import {
  type Engine,
  prepare,
  reassess,
  type Session,
  type StandingReply,
  start,
} from "../../src/core/assess/index.js";
import type { BuiltSheet, Limit } from "../../src/core/sheet/run.js";
import { GRADES, type Grade } from "../../src/core/terms/index.js";
import { TRADE_WORK } from "../../src/core/trade/index.js";
import { replies, visit } from "../support/small-car.js";
import type { LimitFact, Sense } from "./limit-fact.js";
import { APPLIES, BROUGHT, BROUGHT_FOR } from "./limits-brought.js";
import { LIMIT_FACTS } from "./limits-facts.js";

let engine: Engine;
let untouched: Session;
let limits: ReadonlyMap<string, Limit>;
beforeAll(async () => {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  engine = prepare(
    result.value.common,
    result.value.sheets.map(({ built }) => withoutSetUp(built)),
    TRADE_WORK,
  );
  const sheets = result.value.sheets.map(({ sheet }) => sheet.id);
  untouched = start(engine, visit([], { sheets }));
  limits = new Map(result.value.sheets.flatMap(({ sheet }) => sheet.limits.map((limit) => [limit.id, limit])));
}, 240_000);

/** A set-up without error: with one, a reading at an edge is too close to call and proves nothing about it. */
function withoutSetUp(built: BuiltSheet): BuiltSheet {
  const points = built.sheet.points.map(({ "set-up-error": _none, ...point }) => point);
  return { ...built, sheet: { ...built.sheet, points } };
}

/** A gauge that is never wrong. */
const ideal = (reply: StandingReply): StandingReply =>
  reply.value.type === "reading" ? { ...reply, value: { ...reply.value, gauge: { resolution: 0, error: 0 } } } : reply;

/** What the limit says of a value; "no reading" when it was not judged at all. */
function gradeAt(limit: Limit, value: number): Grade | null | "no reading" | "not ruled" {
  const brought = BROUGHT_FOR[limit.id] ?? BROUGHT[limit.of];
  if (brought === undefined) throw new Error(`limits-brought.ts does not say how ${limit.of} is brought about`);
  const { says = {}, facts = {} } = APPLIES[limit.id] ?? {};
  const said = replies(engine, { ...brought.says(value), ...says }).map(ideal);
  const before = brought.before && replies(engine, brought.before).map(ideal);
  const { assessment } = reassess(untouched, {
    ...untouched.input,
    odometer: { value: 101_000, unit: "km" },
    earlier: before ? [{ at: "2025-06-01T10:00:00Z", odometer: { value: 100_000, unit: "km" }, replies: before }] : [],
    car: { facts, limits: [] },
    replies: said,
  });
  expect(assessment.problems).toEqual([]);
  const judged = assessment.readings
    .filter((reading) => reading.place === brought.at)
    .flatMap((reading) => reading.limits)
    .find((it) => it.limit === limit.id);
  if (judged === undefined) return "no reading";
  return judged.applies === "yes" ? judged.grade : "not ruled";
}

/** The worst edge passed, by the facts alone. */
function expected(fact: LimitFact, value: number): Grade | null {
  const edges = fact.ours?.edges ?? fact.edges;
  const passed: Readonly<Record<Sense, (edge: number) => boolean>> = {
    ">": (edge) => value > edge,
    "≥": (edge) => value >= edge,
    "<": (edge) => value < edge,
    "≤": (edge) => value <= edge,
  };
  const isPassed = (edge: number | null | undefined) => typeof edge === "number" && passed[fact.sense](edge);
  return GRADES.findLast((_, i) => isPassed(edges[i])) ?? null;
}

/** Far less than the way between two edges. */
const STEP = 1 / 1024;

const ROWS = LIMIT_FACTS.flatMap((fact) =>
  (fact.ours?.edges ?? fact.edges).flatMap((edge, i) =>
    edge === null ? [] : [{ limit: fact.limit, grade: GRADES[i] ?? "advisory", edge, fact }],
  ),
);

test.each(ROWS)("$limit, $grade at $edge: under, at and over", ({ limit: id, edge, fact }) => {
  const limit = limits.get(id);
  if (limit === undefined) throw new Error(`no limit ${id}`);
  const counted = limit.of === "brk.park_clicks";
  const step = counted ? 1 : STEP * (Math.abs(edge) || 1);
  const share = fact.unit === "%" && limit.unit === "1" ? 100 : 1;
  // Nothing is shallower than dry.
  const values = [edge - step, edge, edge + step].filter((value) => value >= 0 || limit.of !== "drn.depth");
  expect(values.map((value) => [value, gradeAt(limit, value / share)])).toEqual(
    values.map((value) => [value, expected(fact, value)]),
  );
});
