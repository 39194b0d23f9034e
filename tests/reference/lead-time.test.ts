// When parts come: days of a supplier counted by hand on the calendars of 2025.
import { expect, test } from "vitest";
import { arrivesOn, orderBefore, orderBy } from "../../src/core/plan/index.js";
import { ARRIVALS, AUGUST } from "./facts/lead-time.js";

const supplier = (leadDays: number, closed: typeof AUGUST, carriageDays = 0) => ({
  id: "castings",
  week: [1, 2, 3, 4, 5],
  closed,
  leadDays,
  carriageDays,
});

test.each(ARRIVALS)("[PD4] ordered %s with %i days of lead", (ordered, leadDays, closed, arrives) => {
  expect(arrivesOn(supplier(leadDays, [...closed]), ordered)).toEqual({ ok: true, value: arrives });
});

test("[PD5] ten days of lead and August shut: the last day that beats the closure is Thursday 17 July 2025", () => {
  const ten = supplier(10, AUGUST);
  expect(orderBefore(ten, { from: "2025-08-01" })).toEqual({ ok: true, value: "2025-07-17" });
  expect(orderBy(ten, "2025-07-31")).toEqual({ ok: true, value: "2025-07-17" });
  expect(orderBy(ten, "2025-08-29")).toEqual({ ok: true, value: "2025-07-17" });
  expect(orderBy(ten, "2025-09-01")).toEqual({ ok: true, value: "2025-07-18" });
  expect(orderBy(ten, "2025-09-09")).toEqual({ ok: true, value: "2025-07-28" });
});

test("[PD4] carriage is counted in days of the calendar after the supplier has sent it, shut or not", () => {
  const ten = supplier(10, AUGUST, 4);
  expect(arrivesOn(ten, "2025-07-17")).toEqual({ ok: true, value: "2025-08-04" });
  expect(orderBy(ten, "2025-08-04")).toEqual({ ok: true, value: "2025-07-17" });
  expect(orderBy(ten, "2025-08-03")).toEqual({ ok: true, value: "2025-07-16" });
  expect(orderBefore(ten, { from: "2025-08-01" })).toEqual({ ok: true, value: "2025-07-17" });
});
