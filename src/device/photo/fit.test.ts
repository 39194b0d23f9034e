import fc from "fast-check";
import { expect, test } from "vitest";
import { fitInto, turnFor, upright } from "./fit.js";

test("a twelve-megapixel picture is fitted to 2048 on its longest side, upright or lying", () => {
  expect(fitInto({ width: 4032, height: 3024 }, 2048)).toEqual({ width: 2048, height: 1536 });
  expect(fitInto({ width: 3024, height: 4032 }, 2048)).toEqual({ width: 1536, height: 2048 });
});

test("a small picture is not enlarged, and a hair-thin one keeps a pixel", () => {
  expect(fitInto({ width: 300, height: 200 }, 2048)).toEqual({ width: 300, height: 200 });
  expect(fitInto({ width: 20_000, height: 3 }, 320)).toEqual({ width: 320, height: 1 });
});

test("any picture stays within the longest side and keeps its shape to a pixel", () => {
  const side = fc.integer({ min: 1, max: 30_000 });
  fc.assert(
    fc.property(side, side, fc.constantFrom(320, 2048), (width, height, longest) => {
      const fitted = fitInto({ width, height }, longest);
      expect(Math.max(fitted.width, fitted.height)).toBeLessThanOrEqual(Math.max(longest, 1));
      const factor = Math.min(1, longest / Math.max(width, height));
      expect(Math.abs(fitted.width - width * factor)).toBeLessThanOrEqual(1);
      expect(Math.abs(fitted.height - height * factor)).toBeLessThanOrEqual(1);
    }),
    { seed: 2026 },
  );
});

/** Where the four corners (top left, top right, bottom right, bottom left) of a stored picture land, by EXIF's own table. */
const CORNERS: Readonly<Record<number, readonly [string, string, string, string]>> = {
  1: ["TL", "TR", "BR", "BL"],
  2: ["TR", "TL", "BL", "BR"],
  3: ["BR", "BL", "TL", "TR"],
  4: ["BL", "BR", "TR", "TL"],
  5: ["TL", "BL", "BR", "TR"],
  6: ["TR", "BR", "BL", "TL"],
  7: ["BR", "TR", "TL", "BL"],
  8: ["BL", "TL", "TR", "BR"],
};

test.each([1, 2, 3, 4, 5, 6, 7, 8])("orientation %i puts each corner where EXIF says", (orientation) => {
  const stored = { width: 40, height: 30 };
  const shown = upright(stored, orientation);
  const [a, b, c, d, e, f] = turnFor(orientation, stored);
  const land = (x: number, y: number): string => {
    const [toX, toY] = [a * x + c * y + e, b * x + d * y + f];
    expect([0, shown.width]).toContain(toX);
    expect([0, shown.height]).toContain(toY);
    return `${toY === 0 ? "T" : "B"}${toX === 0 ? "L" : "R"}`;
  };
  expect([land(0, 0), land(40, 0), land(40, 30), land(0, 30)]).toEqual(CORNERS[orientation]);
});
