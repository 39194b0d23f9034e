// Every default limit of the sheets against a second writing-down of it (limits-facts.ts): edges, unit, how they are
// passed, on what they rest.
import { beforeAll, expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import type { Limit } from "../../src/core/sheet/run.js";
import { GRADES, levelOf } from "../../src/core/terms/index.js";
import { LIMIT_FACTS } from "./limits-facts.js";
import { differences } from "./limits-held.js";

let limits: readonly Limit[];
beforeAll(async () => {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  limits = result.value.sheets.flatMap(({ sheet }) => sheet.limits);
}, 240_000);

test("each limit has one row of facts, and no row is about a limit that is gone", () => {
  const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id).sort();
  expect(ids(LIMIT_FACTS.map(({ limit }) => ({ id: limit })))).toEqual(ids(limits));
});

test.each(LIMIT_FACTS)("$limit says what its facts say", (fact) => {
  const limit = limits.find(({ id }) => id === fact.limit);
  expect(limit && differences(limit, fact)).toEqual([]);
});

test("a difference on purpose carries its reason in words", () => {
  const without = LIMIT_FACTS.filter(({ ours }) => ours !== undefined && ours.because.split(" ").length < 4);
  expect(without).toEqual([]);
});

test("what is published names document and clause; what is not says so", () => {
  const unnamed = LIMIT_FACTS.filter(({ rests }) =>
    rests.basis === "published" ? !/(\d\.\d|\d{4})/.test(rests.source) : !/[a-z]{4}/.test(rests.source),
  );
  expect(unnamed).toEqual([]);
});

test("edges get worse in the order of the grades", () => {
  for (const { id, bands, direction } of limits) {
    const edges = GRADES.flatMap((grade) => (bands[grade] === undefined ? [] : [{ at: bands[grade], grade }]));
    const sign = direction === "over" || direction === "at-or-over" ? 1 : -1;
    const sorted = [...edges].sort((a, b) => sign * (a.at - b.at));
    expect([id, sorted.map(({ grade }) => levelOf(grade))]).toEqual([id, edges.map(({ grade }) => levelOf(grade))]);
  }
});
