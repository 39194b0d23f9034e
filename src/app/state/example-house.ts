/**
 * Rates, days and suppliers the demo plans with while the house has said none of its own: invented, and written into
 * nobody's record. Knows no real workshop.
 */
import type { HouseState, Stands } from "../../core/record/index.js";

const said = <T>(value: T): readonly Stands<T>[] => [
  { id: "example", value, at: { wall: 0, count: 0 }, by: "example" },
];
const DAY: readonly (readonly [number, number])[] = [
  [8 * 60, 12 * 60],
  [13 * 60, 17 * 60],
];
const WEEKDAYS = [1, 2, 3, 4, 5];

/** What the house has said itself goes before every example. */
export function withExamples(house: HouseState): HouseState {
  return {
    ...house,
    terms:
      house.terms.length > 0
        ? house.terms
        : said({
            currency: "EUR",
            labourRates: [{ id: "workshop", name: "Workshop", perHour: 8500 }],
            tax: {
              label: "Example",
              groups: [{ id: "full", name: "Full rate", basisPoints: 2000 }],
              labourGroup: "full",
              partsGroup: "full",
              rounding: "half-up" as const,
              level: "invoice" as const,
            },
          }),
    calendar:
      house.calendar.length > 0
        ? house.calendar
        : said({ zone: "Etc/UTC", week: [DAY, DAY, DAY, DAY, DAY, [], []], closed: [], people: 1, lifts: 1 }),
    suppliers:
      house.suppliers.size > 0
        ? house.suppliers
        : new Map([
            ["maker", said({ id: "maker", name: "Maker of the old parts", week: WEEKDAYS, closed: [], leadDays: 15 })],
            ["trade", said({ id: "trade", name: "Parts trade", week: WEEKDAYS, closed: [], leadDays: 2 })],
          ]),
  };
}
