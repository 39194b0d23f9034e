/** Laws of what is usual for a figure, over every limit of the sheets: it asks alike in every unit and never guesses. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "yaml";
import type { Limit, Point } from "../../src/core/sheet/run.js";
import { oddFigure, usualWindows } from "../../src/core/sheet/run.js";
import { GRADES } from "../../src/core/terms/index.js";
import { isQuantity, type Quantity, toCanonical, unitsOf } from "../../src/core/units/index.js";

const SEED = 20_261_129;
const folder = new URL("../../checklists/", import.meta.url);
const part = (sheet: string, name: string): Readonly<Record<string, unknown>> =>
  parse(readFileSync(new URL(`${sheet}/${name}.yaml`, folder), "utf8"));
const sheets = readdirSync(folder).filter((name) => name !== "common" && !name.includes("."));
// The sheets' own check holds them to their shape.
const limits = sheets.flatMap((sheet) => {
  const points = part(sheet, "points")["points"] as readonly Point[];
  return (part(sheet, "limits")["limits"] as readonly Limit[]).map((limit) => ({ limit, points }));
});
const quantityOf = ({ quantity }: Limit): Quantity => {
  if (!isQuantity(quantity)) throw new Error(`${quantity} is none`);
  return quantity;
};
const typed = (limit: Limit, canonical: number, unit: string) => {
  const one = toCanonical(1, unit, quantityOf(limit)) - toCanonical(0, unit, quantityOf(limit));
  return { value: (canonical - toCanonical(0, unit, quantityOf(limit))) / one, unit, canonical };
};

test("every default of every sheet is usual for itself, in every unit", () => {
  expect(limits.length).toBeGreaterThan(250);
  for (const { limit, points } of limits)
    for (const grade of GRADES) {
      const edge = limit.bands[grade];
      if (edge === undefined) continue;
      const canonical = toCanonical(edge, limit.unit, quantityOf(limit));
      for (const { code } of unitsOf(quantityOf(limit)))
        expect(oddFigure(typed(limit, canonical, code), limit, points, grade), `${limit.id} ${grade}`).toBe(undefined);
    }
});

const one = fc.constantFrom(...limits);
const size = fc.tuple(fc.integer({ min: -6, max: 6 }), fc.double({ min: 1, max: 9.99, noNaN: true }), fc.boolean());
const figure = size.map(([power, digits, below]) => (below ? -1 : 1) * digits * 10 ** power);

test("whether a figure is odd does not hang on the unit it is typed in, and the ends are told in order", () => {
  fc.assert(
    fc.property(one, figure, fc.nat(), ({ limit, points }, canonical, at) => {
      const units = unitsOf(quantityOf(limit));
      const own = oddFigure(typed(limit, canonical, units[0]?.code ?? ""), limit, points, "major");
      const other = oddFigure(typed(limit, canonical, units[at % units.length]?.code ?? ""), limit, points, "major");
      expect(other === undefined).toBe(own === undefined);
      if (other) expect(other.low).toBeLessThanOrEqual(other.high);
    }),
    { seed: SEED, numRuns: 2000 },
  );
});

test("a slip that is named would bring the figure inside, and no more than three are", () => {
  fc.assert(
    fc.property(one, figure, ({ limit, points }, canonical) => {
      const quantity = quantityOf(limit);
      const was = typed(limit, canonical, limit.unit);
      const odd = oddFigure(was, limit, points, "major");
      expect(odd?.slips.length ?? 0).toBeLessThanOrEqual(3);
      for (const slip of odd?.slips ?? []) {
        const meant =
          slip.is === "unit"
            ? toCanonical(was.value, slip.unit, quantity)
            : slip.is === "factor"
              ? toCanonical(was.value / slip.factor, was.unit, quantity)
              : -canonical;
        for (const { low, high } of usualWindows(limit, points)) {
          expect(meant).toBeGreaterThanOrEqual(low);
          expect(meant).toBeLessThanOrEqual(high);
        }
      }
    }),
    { seed: SEED + 1, numRuns: 2000 },
  );
});
