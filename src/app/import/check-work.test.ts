import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { checkWork } from "./check-work.js";

const { sheet, common } = miniSheets();

test("a point looked at elsewhere is told against the edition before, and of a sheet without one it is not", async () => {
  const limits = sheet.limits.map((limit) => ({ ...limit, of: "hub.odd" }));
  const codes = async (before?: typeof sheet) =>
    (await checkWork({ ...sheet, limits }, common, [], before)).told.map(({ code, path }) => [code, path]);
  expect(await codes(sheet)).toContainEqual(["id-other-subject", ["limits", 0, "of"]]);
  expect((await codes()).flat()).not.toContain("id-other-subject");
  const fields = null as unknown as (typeof sheet.points)[number]["fields"];
  const shapeless = { ...sheet, points: sheet.points.map((point) => ({ ...point, fields })) };
  expect((await checkWork(shapeless, common, [], sheet)).told[0]?.is).toBe("problem");
});
