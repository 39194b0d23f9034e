import { expect, test } from "vitest";
import { PLAN_BODIES } from "../../../tests/store/sample-plan.js";
import { bench, until } from "../../../tests/support/app-bench.js";
import { dropSupplier, keepCalendar, keepSupplier, keepTerms } from "./house-terms-acts.js";

test("[RC18] terms, days and suppliers of a house are kept, replaced and taken back", async () => {
  const { journal } = bench();
  const house = async () => {
    const opened = await until(journal.house(), ({ is }) => is === "open");
    if (opened.is !== "open") throw new Error("no house");
    return opened.state;
  };
  const { terms } = PLAN_BODIES["house.terms"];
  const { calendar } = PLAN_BODIES["house.calendar"];
  const { supplier } = PLAN_BODIES["house.supplier"];
  if (!terms || !calendar || !supplier) throw new Error("no samples");
  await keepTerms(journal, terms);
  await keepTerms(journal, { ...terms, currency: "GBP" });
  await keepCalendar(journal, calendar);
  await keepSupplier(journal, undefined, supplier);
  const [id = ""] = (await house()).suppliers.keys();
  await keepSupplier(journal, id, { ...supplier, name: "The southern stores" });
  const kept = await house();
  expect(kept.terms.map(({ value }) => value.currency)).toEqual(["GBP"]);
  expect(kept.calendar.map(({ value }) => value)).toEqual([calendar]);
  expect(kept.suppliers.get(id)?.map(({ value }) => value.name)).toEqual(["The southern stores"]);
  await dropSupplier(journal, id);
  await keepTerms(journal, null);
  await keepCalendar(journal, null);
  const after = await house();
  expect([after.terms, after.calendar, after.suppliers.size]).toEqual([[], [], 0]);
});
