// When parts come: days of a supplier counted by hand on the calendars of 2025.

export const AUGUST = [{ from: "2025-08-01", to: "2025-08-31", why: "summer" }];

/** By hand, Monday to Friday, the day of the order not counted. */
export const ARRIVALS = [
  ["2025-07-28", 10, [], "2025-08-11"],
  ["2025-07-18", 5, AUGUST, "2025-07-25"],
  ["2025-07-17", 10, AUGUST, "2025-07-31"],
  ["2025-07-31", 1, AUGUST, "2025-09-01"],
  ["2025-08-14", 1, AUGUST, "2025-09-01"],
  ["2025-07-18", 10, AUGUST, "2025-09-01"],
  ["2025-07-28", 10, AUGUST, "2025-09-09"],
] as const;
