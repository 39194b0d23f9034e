// Laws of the trend that hold for any readings: [TR1] order, shift and scale, [TR9] thinner is never later, [TR14] half.
import fc from "fast-check";
import { expect, test } from "vitest";
import { medianLine } from "../../src/core/trade/index.js";
import { type Seen, type SeriesInput, seriesOf } from "../../src/core/trend/index.js";
import { edge, seenAt, seriesFrom } from "../support/worn-series.js";

/** Readings that mostly wear down from 12, 2000 km or more apart. */
const wearing = fc
  .array(fc.record({ gap: fc.integer({ min: 2, max: 20 }), drop: fc.integer({ min: -10, max: 150 }) }), {
    minLength: 2,
    maxLength: 8,
  })
  .map((steps) => {
    let [thousand, value] = [0, 12];
    return steps.map(({ gap, drop }): readonly [number, number] => {
      thousand += gap;
      value -= drop / 100;
      return [thousand, value];
    });
  });
const along = (input: SeriesInput) => seriesOf(input).reaches[0]?.along;
const moved = (input: SeriesInput, change: (seen: Seen) => Partial<Seen>): SeriesInput => ({
  ...input,
  seen: input.seen.map((seen) => ({ ...seen, ...change(seen) })),
});
const isNear = (a: number | undefined, b: number | undefined): boolean =>
  a === b || (a !== undefined && b !== undefined && Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a), Math.abs(b)));

test("[TR1] readings in any order give the same series", () => {
  fc.assert(
    fc.property(wearing, fc.integer(), (numbers, seed) => {
      const input = seriesFrom(numbers);
      const shuffled = [...input.seen].sort((a, b) => Math.sin(seed + a.day) - Math.sin(seed + b.day));
      expect(seriesOf({ ...input, seen: shuffled })).toEqual(seriesOf(input));
    }),
  );
});

test("a part thicker by as much as its limit, and one measured in another unit, reach it at the same distance", () => {
  fc.assert(
    fc.property(
      wearing,
      fc.integer({ min: -50, max: 50 }),
      fc.integer({ min: 1, max: 40 }),
      (numbers, shift, scale) => {
        const input = seriesFrom(numbers);
        const before = along(input);
        const shifted = along(
          moved(input, ({ value }) => ({ value: value + shift, edges: [edge("major", 3 + shift)] })),
        );
        const scaled = along(
          moved(input, ({ value, uncertainty }) => ({
            value: value * scale,
            uncertainty: uncertainty * scale,
            edges: [edge("major", 3 * scale)],
          })),
        );
        for (const end of ["likely", "earliest", "latest"] as const) {
          expect(isNear(before?.[end], shifted?.[end]), `${end} shifted`).toBe(true);
          expect(isNear(before?.[end], scaled?.[end]), `${end} scaled`).toBe(true);
        }
      },
    ),
  );
});

test("what wears up is what wears down, seen in a mirror", () => {
  fc.assert(
    fc.property(wearing, (numbers) => {
      const input = seriesFrom(numbers);
      const up = moved({ ...input, way: "up" }, ({ value }) => ({ value: -value, edges: [edge("major", -3)] }));
      expect(along(up)).toEqual(along(input));
    }),
  );
});

test("[TR9] a clock that began later moves every distance as far", () => {
  fc.assert(
    fc.property(wearing, fc.integer({ min: 1, max: 90 }), (numbers, by) => {
      const input = seriesFrom(numbers);
      const [before, after] = [along(input), along(moved(input, ({ km = 0 }) => ({ km: km + by * 1000 })))];
      for (const end of ["likely", "earliest", "latest"] as const)
        expect(isNear((before?.[end] ?? Number.NaN) + by * 1000, after?.[end] ?? Number.NaN) || !before?.[end]).toBe(
          true,
        );
    }),
  );
});

test("[TR9] earliest, likely and latest stand in that order, never before the newest reading", () => {
  fc.assert(
    fc.property(wearing, (numbers) => {
      const found = along(seriesFrom(numbers));
      const { earliest, likely, latest } = found ?? {};
      const newest = (numbers.at(-1)?.[0] ?? 0) * 1000;
      if (earliest !== undefined) expect(earliest).toBeGreaterThanOrEqual(newest);
      if (likely !== undefined) expect(earliest).toBeLessThanOrEqual(likely);
      if (latest !== undefined) expect(latest).toBeGreaterThanOrEqual(likely ?? 0);
    }),
  );
});

test("[TR9] of two readings a thinner newer one never comes to a later earliest", () => {
  fc.assert(
    fc.property(fc.integer({ min: 310, max: 1190 }), fc.integer({ min: 310, max: 1190 }), (a, b) => {
      const at = (value: number) =>
        along(
          seriesFrom([
            [0, 12],
            [10, value / 100],
          ]),
        )?.earliest ?? Number.POSITIVE_INFINITY;
      expect(at(Math.min(a, b))).toBeLessThanOrEqual(at(Math.max(a, b)) + 1e-6);
    }),
  );
});

test("[TR14] the next look lies no further than half of the way to the earliest", () => {
  fc.assert(
    fc.property(wearing, (numbers) => {
      const found = along(seriesFrom(numbers));
      const newest = seenAt(numbers.at(-1)?.[0] ?? 0, 0);
      const { look, earliest } = found ?? {};
      if (earliest === undefined) return;
      const km = newest.km ?? 0;
      expect(look?.km).toBeLessThanOrEqual((km + earliest) / 2 + 1e-6);
      expect(look?.km).toBeGreaterThanOrEqual(km);
      expect((look?.km ?? 0) - km).toBeLessThanOrEqual(20_000);
    }),
  );
});

test("[TR8] one wild reading among five or more leaves the median slope within those of the sound pairs", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 5, max: 9 }),
      fc.integer({ min: 0, max: 8 }),
      fc.integer({ min: -500, max: 500 }),
      (count, at, wild) => {
        const x = Array.from({ length: count }, (_, i) => i * 10 + (i % 3));
        const y = x.map((one, i) => 12 - 0.1 * one + (i % 2) * 0.05);
        const bad = y.map((value, i) => (i === at % count ? value + wild / 10 : value));
        const slopes = x.flatMap((xi, i) =>
          x.slice(i + 1).map((xj, k) => ((y[i + 1 + k] ?? 0) - (y[i] ?? 0)) / (xj - xi)),
        );
        const found = medianLine(x, bad)?.slope ?? Number.NaN;
        expect(found).toBeGreaterThanOrEqual(Math.min(...slopes) - 1e-9);
        expect(found).toBeLessThanOrEqual(Math.max(...slopes) + 1e-9);
      },
    ),
  );
});
