import * as fc from "fast-check";
import { expect, test } from "vitest";
import { compareStamps, FIRST_STAMP, FOLLOW_AT_MOST_MS, latestFollowed, stampNext } from "./time.js";

const NOW = 1_770_000_000_000;

test("[RC6] the next stamp takes the clock when it has moved on, else counts", () => {
  expect(stampNext({ wall: NOW - 1, count: 7 }, NOW)).toEqual({ wall: NOW, count: 0 });
  expect(stampNext({ wall: NOW, count: 7 }, NOW)).toEqual({ wall: NOW, count: 8 });
  expect(stampNext(FIRST_STAMP, NOW)).toEqual({ wall: NOW, count: 0 });
});

test("[RC6] a clock set back by a day keeps counting after what it wrote", () => {
  expect(stampNext({ wall: NOW, count: 0 }, NOW - FOLLOW_AT_MOST_MS)).toEqual({ wall: NOW, count: 1 });
});

test("[RC7] a stamp one day ahead is followed, one ms more is not", () => {
  expect(stampNext({ wall: NOW + FOLLOW_AT_MOST_MS, count: 3 }, NOW)).toEqual({
    wall: NOW + FOLLOW_AT_MOST_MS,
    count: 4,
  });
  expect(stampNext({ wall: NOW + FOLLOW_AT_MOST_MS + 1, count: 3 }, NOW)).toEqual({ wall: NOW, count: 0 });
});

test("[RC7] of stamps seen, the latest one that is followed counts", () => {
  const tenYears = { wall: NOW + 3650 * FOLLOW_AT_MOST_MS, count: 0 };
  expect(latestFollowed([{ wall: NOW - 5, count: 1 }, tenYears, { wall: NOW - 5, count: 2 }], NOW)).toEqual({
    wall: NOW - 5,
    count: 2,
  });
  expect(latestFollowed([tenYears], NOW)).toEqual(FIRST_STAMP);
});

test("[RC6] whatever was followed, the next stamp comes after it; and it is never more than a day ahead of the clock", () => {
  const wall = fc.integer({ min: 0, max: 4_000_000_000_000 });
  fc.assert(
    fc.property(wall, fc.nat(), wall, (before, count, now) => {
      const next = stampNext({ wall: before, count }, now);
      expect(next.wall - now).toBeLessThanOrEqual(FOLLOW_AT_MOST_MS);
      if (before - now <= FOLLOW_AT_MOST_MS) expect(compareStamps(next, { wall: before, count })).toBeGreaterThan(0);
    }),
    { seed: 6 },
  );
});

test("a broken clock gives a whole number all the same", () => {
  expect(stampNext(FIRST_STAMP, -5.5)).toEqual({ wall: 0, count: 1 });
  expect(stampNext(FIRST_STAMP, NOW + 0.9)).toEqual({ wall: NOW, count: 0 });
});
