import { expect, test } from "vitest";
import { BEARING, EUROS, pricedVisit, TERMS } from "../../../tests/support/priced-visit.js";
import { planPart } from "./plan-acts.js";
import { asideLines, estimateGroups, estimateProblems, oldPrices, sumRows } from "./plan-estimate-view.js";

test("each line says what it rests on: the work, each opening once, the part, its carriage and its deposit", async () => {
  const { on, visit, sayTerms, now } = await pricedVisit();
  await sayTerms();
  await planPart(on.journal, visit, BEARING, {
    count: 2,
    price: [4000, 5000, 7000],
    carriage: 900,
    deposit: 1500,
    pricedOn: "2026-11-20",
  });
  const groups = estimateGroups(await now(), EUROS);
  expect(groups.map(({ heading, rows }) => [heading, rows.map(({ title, figure }) => `${title} ${figure}`)])).toEqual([
    ["Work", ["Renew the bearing, Front right €45.00"]],
    // 20 and 20 minutes for the hub, 8 and 8 for the wheel
    ["Opening up", [expect.stringMatching(/€16\.00$/), expect.stringMatching(/€40\.00$/)]],
    ["Parts", ["Bearing €100.00"]],
    ["Carriage", ["Bearing €9.00"]],
    ["Deposits", ["Bearing €30.00"]],
  ]);
  expect(groups[0]?.rows[0]?.because).toEqual([
    "30 min, 45 min or 1.5 h of work at Bench work, €60.00 an hour.",
    "From €30.00 to €90.00, likely €45.00.",
  ]);
  expect(groups[2]?.rows[0]).toMatchObject({
    second: "Renew the bearing, Front right",
    because: [
      "2 at €40.00, €50.00 or €70.00 each.",
      "Asked for on 20 Nov 2026.",
      "From €80.00 to €140.00, likely €100.00.",
    ],
  });
});

test("the sums tell tax by rate, the middle and what is kept four times in five, and no other share", async () => {
  const { on, visit, sayTerms, now } = await pricedVisit();
  await sayTerms();
  await planPart(on.journal, visit, BEARING, { count: 1, price: [5000, 5000, 5000], deposit: 1500 });
  const { plan } = await now();
  if (!plan.estimate) throw new Error("the house has said its terms");
  const rows = sumRows(plan.estimate, EUROS);
  expect(rows.map(({ id }) => id)).toEqual(["net", "tax full", "gross", "p50", "p80", "outlay"]);
  // 45 + 40 + 16 + 50, and a fifth
  expect(rows.slice(0, 3).map(({ title, figure }) => [title, figure])).toEqual([
    ["Without tax", "€151.00"],
    ["Full rate, 20 %", "€30.20"],
    ["With tax, likely", "€181.20"],
  ]);
  expect(rows[1]?.because).toEqual([
    "On €151.00. Worked out once on the whole, rounded to the nearest, halves up (Bookkeeper).",
  ]);
  expect(rows.at(-1)?.figure).toBe("€196.20");
});

test("a part without a price is in no sum, and the sums say that they are too low", async () => {
  const { on, visit, sayTerms, now } = await pricedVisit();
  await sayTerms();
  expect(asideLines(await now())).toEqual([
    {
      id: "price job.hub.renew@FR",
      job: "job.hub.renew@FR",
      title: "Renew the bearing, Front right",
      wants: "nobody has said a price: Bearing",
    },
  ]);
  await planPart(on.journal, visit, BEARING, { count: 1, price: [5000, 5000, 5000], pricedOn: "2026-11-20" });
  expect(asideLines(await now())).toEqual([]);
});

test("old and undated prices are told with what to do", async () => {
  const { on, visit, sayTerms, now } = await pricedVisit();
  await sayTerms();
  const figures = { count: 1, price: [5000, 5000, 5000] } as const;
  await planPart(on.journal, visit, BEARING, figures);
  expect(oldPrices(await now()).map(({ wants }) => wants)).toEqual(["Nobody noted when it was asked for"]);
  await planPart(on.journal, visit, BEARING, { ...figures, pricedOn: "2026-09-27" });
  expect(oldPrices(await now()).map(({ wants }) => wants)).toEqual(["Asked for on 27 Sept 2026, 61 days ago"]);
  await planPart(on.journal, visit, BEARING, { ...figures, pricedOn: "2026-12-24" });
  expect(oldPrices(await now()).map(({ wants }) => wants)).toEqual(["Dated 24 Dec 2026, which is still to come"]);
});

test("terms that can't be reckoned with are told, and no figure is made up", async () => {
  const { sayTerms, now } = await pricedVisit();
  await sayTerms({ ...TERMS, labourRates: [] });
  const told = await now();
  expect(told.plan.estimate).toBeUndefined();
  expect(estimateProblems(told)).toEqual(["The house has no labour rate. Give one."]);
});
