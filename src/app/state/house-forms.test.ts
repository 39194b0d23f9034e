import { expect, test } from "vitest";
import { PLAN_BODIES } from "../../../tests/store/sample-plan.js";
import { daysForm, daysFrom, daysWant, supplierForm, supplierFrom, supplierWants } from "./house-days-form.js";
import { scaled, shutOf, spansOf, spansText, unscaled } from "./house-figures.js";
import { digitsOf, freeId, termsForm, termsFrom, termsWant, withGroups } from "./house-terms-form.js";

const terms = PLAN_BODIES["house.terms"].terms ?? undefined;
const days = PLAN_BODIES["house.calendar"].calendar ?? undefined;
const supplier = PLAN_BODIES["house.supplier"].supplier ?? undefined;

test("money is read with point or comma into whole coins, and never rounded", () => {
  expect(["68", "68.5", "68,50", "0.05", ".5", "68.505", "-1", "1e3", ""].map((text) => scaled(text, 2))).toEqual([
    6800,
    6850,
    6850,
    5,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  expect([unscaled(6850, 2), unscaled(5, 2), unscaled(0, 2), unscaled(7, 0), unscaled(1, 3)]).toEqual([
    "68.50",
    "0.05",
    "0.00",
    "7",
    "0.001",
  ]);
});

test("opening times are read in order and apart, an empty day is shut", () => {
  expect(spansOf("8:00-12:00, 13:00-17:00")).toEqual([
    [480, 720],
    [780, 1020],
  ]);
  expect(spansOf("8-12; 13.30\u201317")).toEqual([
    [480, 720],
    [810, 1020],
  ]);
  expect(spansOf(" ")).toEqual([]);
  for (const wrong of ["8", "12-8", "8-12, 11-17", "8:70-9", "8-25", "8-9,"])
    expect(spansOf(wrong), wrong).toBeUndefined();
  expect(spansText([[485, 720]])).toBe("8:05-12:00");
});

test("shut days run forwards; an empty row is none, half a row can't be read", () => {
  expect(
    shutOf([
      { from: "2026-08-01", to: "2026-08-31" },
      { from: "", to: "" },
    ]),
  ).toHaveLength(1);
  expect(shutOf([{ from: "2026-08-31", to: "2026-08-01" }])).toBeUndefined();
  expect(shutOf([{ from: "", to: "2026-08-01" }])).toBeUndefined();
});

test("terms come out of their form as they went in, and not while a figure is wanting", () => {
  const form = termsForm(terms);
  // The digits of a known currency are its own: they are not kept beside it.
  const { digits: _own, ...rest } = terms ?? {};
  expect(termsFrom(form, terms)).toEqual(rest);
  expect(termsFrom({ ...form, rates: [{ id: "r1", name: "Bench", figure: "" }] }, terms)).toBeUndefined();
  expect(termsFrom({ ...form, currency: "E" }, terms)).toBeUndefined();
  expect(termsFrom({ ...form, groups: [] }, terms)).toBeUndefined();
  expect(termsFrom({ ...form, labourGroup: "gone" }, terms)).toBeUndefined();
});

test("labour whose rate of tax is taken away takes the first that is left", () => {
  const form = termsForm(terms);
  const left = withGroups(form, form.groups.slice(0, 1));
  expect([left.labourGroup, left.partsGroup]).toEqual(["full", "full"]);
});

test("a currency not known here is asked for its digits", () => {
  expect(digitsOf({ currency: "EUR", digits: "" })).toBe(2);
  expect(digitsOf({ currency: "XXQ", digits: "" })).toBeUndefined();
  expect(digitsOf({ currency: "XXQ", digits: "3" })).toBe(3);
  const form = { ...termsForm(terms), currency: "XXQ", digits: "3" };
  expect(termsFrom(form, undefined)).toMatchObject({ digits: 3, labourRates: [{ perHour: 68_000 }] });
});

test("days and supplier come out of their forms as they went in", () => {
  expect(daysFrom(daysForm(days, "UTC"))).toEqual(days);
  expect(daysFrom(daysForm(undefined, "UTC"))).toBeUndefined();
  expect(daysFrom({ ...daysForm(days, "UTC"), people: "0" })).toBeUndefined();
  expect({ id: "north", ...supplierFrom(supplierForm(supplier)) }).toEqual(supplier);
  expect(supplierFrom({ ...supplierForm(supplier), lead: "" })).not.toHaveProperty("leadDays");
  expect(supplierFrom({ ...supplierForm(supplier), lead: "soon" })).toBeUndefined();
  expect(supplierFrom({ ...supplierForm(supplier), week: [] })).toBeUndefined();
});

test("a form that can't be kept says what is wanted first", () => {
  const [money, week, one] = [termsForm(terms), daysForm(days, "UTC"), supplierForm(supplier)];
  expect([termsWant(money), daysWant(week), supplierWants(one)]).toEqual([undefined, undefined, undefined]);
  expect(termsWant(termsForm(undefined))).toBe("currency");
  expect(termsWant({ ...money, currency: "XXQ", digits: "" })).toBe("digits");
  expect(termsWant({ ...money, rates: [{ id: "r1", name: "", figure: "60" }] })).toBe("rates");
  expect(termsWant({ ...money, groups: [] })).toBe("tax");
  expect(daysWant({ ...week, week: ["8", "", "", "", "", "", ""] })).toBe("times");
  expect(daysWant(daysForm(undefined, "UTC"))).toBe("open-day");
  expect(daysWant({ ...week, people: "0" })).toBe("people");
  expect(daysWant({ ...week, lifts: "" })).toBe("lifts");
  expect(daysWant({ ...week, zone: " " })).toBe("zone");
  const backwards = [{ from: "2026-08-31", to: "2026-08-01" }];
  expect([daysWant({ ...week, shut: backwards }), supplierWants({ ...one, shut: backwards })]).toEqual([
    "shut",
    "shut",
  ]);
  expect(supplierWants({ ...one, name: "" })).toBe("name");
  expect(supplierWants({ ...one, lead: "soon" })).toBe("lead");
  expect(supplierWants({ ...one, carriage: "-1" })).toBe("carriage");
  expect(supplierWants({ ...one, week: [] })).toBe("open-day");
});

test("a new row takes the next free name", () => {
  expect(freeId("r", [{ id: "r1" }, { id: "r3" }])).toBe("r4");
  expect(freeId("r", [{ id: "r2" }])).toBe("r3");
});
