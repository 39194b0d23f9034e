import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import { TRADE_SIGNATURES, TRADE_WORK } from "../trade/index.js";
import { checkSheet } from "./check.js";
import { copiedSheet } from "./copied.js";
import { pathOnly } from "./source.js";

const { sheet, common } = miniSheets();

test("a copy stands beside the sheet it was made from, with every id its own", () => {
  const copy = copiedSheet(sheet, "ownhub", "My hubs");
  const around = { functions: TRADE_SIGNATURES, work: TRADE_WORK };
  expect(checkSheet(copy, common, [sheet], pathOnly, around)).toMatchObject({ ok: true });
  expect(copy).toMatchObject({ id: "ownhub", label: "My hubs", texts: { en: { title: "My hubs" } } });
  expect(copy.limits.map(({ id }) => id)).toEqual(["lim.ownhub.float"]);
});

test("names are renamed inside conditions, behind relations and in what cases reply and expect", () => {
  const copy = copiedSheet(sheet, "ownhub", "My hubs");
  expect(copy.rules[0]).toMatchObject({
    id: "ownhub.r1",
    fault: "ownhub.race",
    when: 'ownhub.spin == "rough"',
    supports: ['"hum" in ownhub.noise'],
    opens: ["ownhub.float", "ownhub.spin@opposite"],
  });
  expect(copy.derived[0]?.formula).toBe("ownhub.float - opposite.ownhub.float");
  expect(JSON.stringify(copy.cases)).not.toMatch(/"hub\./);
});

test("words that only look like an id stay as they are", () => {
  const limits = sheet.limits.map((limit) => ({ ...limit, source: "makers say hub.float" }));
  const points = { ...sheet.texts["en"]?.points, "hub.spin": { name: "hub.spin by hand", ask: {} } };
  const texts = { en: { ...(sheet.texts["en"] as (typeof sheet.texts)["en"] & object), points } };
  const copy = copiedSheet({ ...sheet, limits, texts }, "ownhub", "My hubs");
  expect(copy.limits[0]?.source).toBe("makers say hub.float");
  expect(copy.texts["en"]?.points["ownhub.spin"]?.name).toBe("hub.spin by hand");
});
