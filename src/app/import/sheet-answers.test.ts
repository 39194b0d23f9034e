// What the worker of the sheet editor answers: the sheet it holds checked, planned and proved.
import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { sheetAnswering } from "./sheet-answers.js";
import type { SheetAsked, SheetCame } from "./sheet-messages.js";

const { sheet, common } = miniSheets();
const on = { bare: { ...common, texts: {}, cases: [], complaints: [] }, others: [] };

/** Asks, and takes the answer as it comes out of a worker. */
async function asking() {
  const answer = sheetAnswering();
  let id = 0;
  return async (
    asked: SheetAsked,
    sent: { sheet?: typeof sheet; on?: typeof on } = {},
  ): Promise<SheetCame | string> => {
    id += 1;
    const came = structuredClone(await answer({ id, asked, ...sent }));
    expect(came.id).toBe(id);
    return "came" in came ? came.came : came.broke;
  };
}

test("a sheet sent once is checked, planned and proved; what comes of it can leave the worker", async () => {
  const ask = await asking();
  expect(await ask({ do: "check" }, { sheet, on })).toEqual({ check: { told: [] } });
  expect(await ask({ do: "plan" })).toMatchObject({ plan: { sheets: [{ sheet: { id: "hub" } }] } });
  const proved = await ask({ do: "prove", cases: sheet.cases });
  expect(proved).toMatchObject({ prove: sheet.cases.map(() => ({ failures: [] })) });
  expect(sheet.cases.length).toBeGreaterThan(0);
});

test("while cases are proved it is told after each that it goes on", async () => {
  let told = 0;
  const request = { id: 1, asked: { do: "prove", cases: sheet.cases }, sheet, on } as const;
  await sheetAnswering()(request, () => {
    told += 1;
  });
  expect(told).toBe(sheet.cases.length);
});

test("a changed sheet takes the place of the one before", async () => {
  const ask = await asking();
  await ask({ do: "check" }, { sheet, on });
  const limits = sheet.limits.map((limit) => ({ ...limit, bands: {} }));
  expect(await ask({ do: "check" }, { sheet: { ...sheet, limits } })).toMatchObject({
    check: { told: [{ is: "problem", code: "bands-empty", path: ["limits", 0, "bands"] }] },
  });
});

test("what breaks is told, and the next request is answered", async () => {
  const ask = await asking();
  expect(await ask({ do: "check" })).toBe("asked about no sheet");
  const points = sheet.points.filter(({ id }) => id !== "hub.noise");
  expect(await ask({ do: "plan" }, { sheet: { ...sheet, points }, on })).toContain("could not be planned");
  expect(await ask({ do: "plan" }, { sheet })).toHaveProperty("plan");
});
