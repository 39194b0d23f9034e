// [TR15] [TR16] What is not compared is said: limits that do not say which way is wear, other units, visits not read.
import { expect, test } from "vitest";
import { miniKnowledge, miniTree } from "../../../tests/support/app-bench.js";
import { filledPhone, good } from "../../../tests/support/copies.js";
import type { Grounded, JudgedLimit } from "../../core/assess/index.js";
import { foldCar, foldVisit } from "../../core/record/index.js";
import { allWearing, untoldIn, wayIn } from "./wearing-view.js";
import { type WornCar, type WornVisit, wornVisits } from "./wearing-visits.js";

const limit = (name: string, direction: string): JudgedLimit =>
  ({
    limit: name,
    direction,
    bands: { major: 3 },
    unit: "mm",
    basis: "practice",
    source: "",
    isDefault: true,
    state: "clear",
    grade: null,
    applies: "yes",
    // A newer sheet may bring a direction that is not in the list.
  }) as JudgedLimit;

const visitWith = (at: string, unit: string, limits: readonly JudgedLimit[]): WornVisit => {
  const reading = { point: "hub.thick", field: "", place: "FR", value: 9, uncertainty: 0.1, unit, limits };
  const one: Grounded = { reading, typed: [] };
  return { stream: `visit:${at}`, at, grounds: [one], notFitted: new Set(), found: [] };
};
const carWith = (...visits: readonly WornVisit[]): WornCar => ({
  visits,
  known: miniKnowledge(),
  tree: miniTree(),
  knownAt: new Map(),
  wears: new Map([
    ["lim.a", "use"],
    ["lim.b", "use"],
  ]),
});

test("[TR15] a direction that is unknown, or two that disagree, is never taken for one of them", () => {
  for (const [directions, way] of [
    [["over", "at-or-over"], "up"],
    [["under"], "down"],
    [["over", "under"], undefined],
    [["between"], undefined],
    [["over", "between"], undefined],
    [["toString"], undefined],
    [[], undefined],
  ] as const)
    expect(wayIn(directions.map((one) => limit("lim.a", one)))).toBe(way);
});

test("[TR15] a part whose limits disagree has no forecast, and it is said why", () => {
  const car = carWith(visitWith("2026-01-02T10:00Z", "mm", [limit("lim.a", "over"), limit("lim.b", "under")]));
  expect(allWearing(car, new Map())).toEqual([]);
  expect(untoldIn(car)).toMatchObject([{ why: "way", on: [] }]);
});

test("[TR15] readings in another unit than the newest are named by their visits", () => {
  const under = [limit("lim.a", "under")];
  const car = carWith(visitWith("2025-01-02T10:00Z", "[in_i]", under), visitWith("2026-01-02T10:00Z", "mm", under));
  expect(untoldIn(car)).toMatchObject([{ why: "unit", on: ["2025-01-02T10:00Z"] }]);
  expect(untoldIn(carWith(visitWith("2026-01-02T10:00Z", "mm", under)))).toEqual([]);
});

test("[TR16] a visit whose sheets can't be read is named, with its day and why", async () => {
  const { store, car, visit } = await filledPhone(0);
  const visits = [foldVisit(good(await store.entries(visit)))];
  // Nothing but the store is asked: it does not come to judging.
  const needs = { store } as unknown as Parameters<typeof wornVisits>[0];
  expect(await wornVisits(needs, foldCar(good(await store.entries(car))), visits)).toEqual({
    left: [{ stream: visit, at: "2026-02-03T09:30+01:00", why: "missing" }],
  });
});
