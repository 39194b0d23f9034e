import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { checkWork } from "./check-work.js";
import { namesIn, toldByName } from "./told-names.js";

const { sheet, common } = miniSheets();

test("a point looked at elsewhere is told against the edition before, and of a sheet without one it is not", () => {
  const limits = sheet.limits.map((limit) => ({ ...limit, of: "hub.odd" }));
  const codes = (before?: typeof sheet) =>
    checkWork({ ...sheet, limits }, common, [], before).told.map(({ code, path }) => [code, path]);
  expect(codes(sheet)).toContainEqual(["id-other-subject", ["limits", 0, "of"]]);
  expect(codes().flat()).not.toContain("id-other-subject");
  const fields = null as unknown as (typeof sheet.points)[number]["fields"];
  const shapeless = { ...sheet, points: sheet.points.map((point) => ({ ...point, fields })) };
  expect(checkWork(shapeless, common, [], sheet).told[0]?.is).toBe("problem");
});

test("what is told names things as their author named them, and no id", () => {
  const limits = sheet.limits.map((limit) => ({ ...limit, bands: {}, source: "" }));
  const { told } = checkWork({ ...sheet, limits }, common, []);
  expect(told.find(({ code }) => code === "bands-empty")?.says).toBe("No edge is given yet: it needs at least one.");
  const { told: without } = checkWork({ ...sheet, cases: [], rules: sheet.rules.toReversed() }, common, []);
  const ids = [sheet.points, sheet.rules, sheet.limits, sheet.jobs].flatMap((list) => list.map(({ id }) => id));
  expect(without.length).toBeGreaterThan(0);
  for (const { says } of without) expect(ids.filter((id) => says.includes(id))).toEqual([]);
});

test("a circle is told by the names of what stands in it; what was taken out by the words of its name", () => {
  const names = namesIn(sheet, common, []);
  const [point] = sheet.points;
  const called = point && sheet.texts["en"]?.points[point.id]?.name;
  const says = toldByName({ code: "cycle" }, `a circle: ${point?.id} → job.hub.old-nut → brk.pad`, names, "hub");
  expect(says).toBe(`a circle: ${called} → old nut → brk.pad`);
});
