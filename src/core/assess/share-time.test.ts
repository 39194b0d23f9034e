/** Sharing out a time is exact: held against every way there is to share a small one. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Beginning, type List, shareTime } from "./share-time.js";

/** Lists as looking makes them: every row takes some seconds and is worth something. */
const lists: fc.Arbitrary<readonly List[]> = fc.array(
  fc
    .array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 1, max: 40 })), { maxLength: 5 })
    .chain((rows) =>
      fc.record({ rows: fc.constant(rows), least: fc.integer({ min: 0, max: Math.min(2, rows.length) }) }),
    )
    .map(({ rows, least }) => {
      let sum: Beginning = { seconds: 0, worth: 0 };
      const beginnings = rows.map(([steps, worth]) => {
        sum = { seconds: sum.seconds + steps * 5, worth: sum.worth + worth };
        return sum;
      });
      return { beginnings, least };
    }),
  { maxLength: 4 },
);

const at = ({ beginnings }: List, rows: number): Beginning => beginnings[rows - 1] ?? { seconds: 0, worth: 0 };

/** Every way to take a beginning of every list. */
const ways = (all: readonly List[]): readonly (readonly number[])[] =>
  all.reduce<readonly (readonly number[])[]>(
    (before, { beginnings, least }) =>
      before.flatMap((way) =>
        Array.from({ length: beginnings.length - least + 1 }, (_, more) => way.concat(least + more)),
      ),
    [[]],
  );

test("[VO7] what is worth most together is found, as trying every way finds it", () => {
  fc.assert(
    fc.property(lists, fc.integer({ min: 0, max: 200 }), (all, seconds) => {
      const sums = ways(all)
        .map((way) => way.map((rows, i) => at(all[i] ?? { beginnings: [], least: 0 }, rows)))
        .filter((taken) => taken.reduce((sum, one) => sum + one.seconds, 0) <= Math.floor(seconds / 5) * 5)
        .map((taken) => taken.reduce((sum, one) => sum + one.worth, 0));
      const shared = shareTime(all, seconds);
      expect(shared?.worth).toBe(sums.length === 0 ? undefined : Math.max(...sums));
      const took = all.map((list, i) => at(list, shared?.taken[i] ?? 0));
      expect(took.reduce((sum, one) => sum + one.worth, 0)).toBe(shared?.worth ?? 0);
      expect(took.reduce((sum, one) => sum + one.seconds, 0)).toBeLessThanOrEqual(seconds);
    }),
    { seed: 20261130, numRuns: 400 },
  );
});
