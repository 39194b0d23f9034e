/** Days of a car at rest. */
import { expect, test } from "vitest";
import { laidUpDates, monthsOn, springDays } from "./season-dates.js";

const LAID = { on: "2026-11-30", spring: "2027-04-01", today: "2026-11-30", isWorkOpen: true };

test("a look comes every month until the day before it is woken, and the workshop is asked six weeks ahead", () => {
  expect(laidUpDates(LAID).map(({ id, on, monthlyUntil }) => [id, on, monthlyUntil])).toEqual([
    ["season:monthly", "2026-12-28", "2027-03-31"],
    ["season:ask", "2027-02-18", undefined],
    ["season:wake", "2027-04-01", undefined],
  ]);
});

test("without work nobody is asked; what is woken within the month needs no look between", () => {
  expect(laidUpDates({ ...LAID, isWorkOpen: false }).map(({ id }) => id)).toEqual(["season:monthly", "season:wake"]);
  expect(laidUpDates({ ...LAID, spring: "2026-12-20" }).map(({ id }) => id)).toEqual(["season:wake"]);
});

test("a month on keeps the day, which every month has", () => {
  expect([monthsOn("2026-12-05", 1), monthsOn("2027-01-31", 1), monthsOn("2026-11-28", 5)]).toEqual([
    "2027-01-05",
    "2027-02-28",
    "2027-04-28",
  ]);
});

test("spring is offered as the next first days of March, April and May, never one that is gone", () => {
  expect(springDays("2026-11-30").map(({ day }) => day)).toEqual(["2027-03-01", "2027-04-01", "2027-05-01"]);
  expect(springDays("2027-03-15").map(({ day }) => day)).toEqual(["2028-03-01", "2027-04-01", "2027-05-01"]);
});
