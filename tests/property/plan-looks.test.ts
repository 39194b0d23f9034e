// LA1, LA4, LA6: the earliest wins, one look more moves none later, and no order of telling makes a difference.
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type CarUse,
  dueFirst,
  type LookRow,
  type LooksAgain,
  type LookWanted,
  looksAgain,
} from "../../src/core/plan/index.js";
import { GRADES } from "../../src/core/terms/index.js";

const day = fc
  .integer({ min: 20_000, max: 21_500 })
  .map((one) => new Date(one * 86_400_000).toISOString().slice(0, 10));
const maybe = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(of, { nil: undefined });
const row: fc.Arbitrary<LookRow> = fc.record({
  names: fc.constantFrom("fault" as const, "grade" as const, "job" as const),
  basis: fc.constantFrom("practice" as const, "trend" as const),
  km: maybe(fc.integer({ min: 10, max: 20_000 })),
  months: maybe(fc.integer({ min: 1, max: 48 })),
});
const wanted = fc.uniqueArray(
  fc.record({
    id: fc.integer({ min: 0, max: 99 }).map(String),
    is: fc.constantFrom("finding" as const, "job" as const),
    of: fc.constant("f"),
    place: fc.constant("FL"),
    grade: fc.constantFrom(...GRADES),
    from: fc.record({ on: day, km: maybe(fc.integer({ min: 0, max: 90_000 })) }),
    rows: fc.array(row, { maxLength: 3 }),
    points: fc.constant([]),
  }),
  { selector: ({ id }) => id, minLength: 1, maxLength: 8 },
);
const use: fc.Arbitrary<CarUse> = fc.record({
  today: day,
  since: day,
  odometer: maybe(fc.record({ on: day, km: fc.integer({ min: 0, max: 90_000 }) })),
  pace: maybe(
    fc.tuple(fc.nat(50), fc.integer({ min: 1, max: 50 }), fc.nat(50)).map(([less, likely, more]) => ({
      likely,
      least: Math.max(0, likely - less),
      most: likely + more,
    })),
  ),
});

const LAST = "9999-12-31";
/** Of each look the visit it falls into. */
const visitOf = ({ visits }: LooksAgain, id: string) => visits.find(({ looks }) => looks.some((one) => one.id === id));

test("LA4 one look more never moves another into a later visit", () => {
  fc.assert(
    fc.property(wanted, use, ([more, ...rest], by) => {
      const [before, after] = [looksAgain(rest, by), looksAgain(more ? [...rest, more] : rest, by)];
      for (const { id } of rest) {
        const [was, is] = [visitOf(before, id), visitOf(after, id)];
        expect(is?.id).toBe(was?.id);
        for (const of of ["by", "day"] as const) expect((is?.[of] ?? LAST) <= (was?.[of] ?? LAST)).toBe(true);
        expect((is?.at ?? Infinity) <= (was?.at ?? Infinity)).toBe(true);
        expect((is?.after?.km ?? Infinity) <= (was?.after?.km ?? Infinity)).toBe(true);
      }
    }),
  );
});

test("LA1 the earliest wins: one row more never moves a look later, and no visit is later than any of its looks", () => {
  fc.assert(
    fc.property(wanted, row, use, (all, extra, by) => {
      const [one] = all;
      if (!one) return;
      const due = (of: LookWanted) => looksAgain([of], by).visits[0];
      const [was, is] = [due(one), due({ ...one, rows: [...one.rows, extra] })];
      expect((is?.day ?? LAST) <= (was?.day ?? LAST)).toBe(true);
      expect((is?.looks[0]?.after ?? Infinity) <= (was?.looks[0]?.after ?? Infinity)).toBe(true);
      for (const visit of looksAgain(all, by).visits)
        for (const look of visit.looks) {
          expect((visit.day ?? LAST) <= (look.day ?? LAST)).toBe(true);
          expect((visit.at ?? Infinity) <= (look.at ?? Infinity)).toBe(true);
        }
    }),
  );
});

test("LA6 every look is told once, and in whatever order it was given", () => {
  fc.assert(
    fc.property(wanted, use, (all, by) => {
      const made = looksAgain(all, by);
      const ids = [...made.visits.flatMap(({ looks }) => looks), ...made.unsaid].map(({ id }) => id);
      expect(ids.sort()).toEqual(all.map(({ id }) => id).sort());
      expect(looksAgain([...all].reverse(), by)).toEqual(made);
    }),
  );
});

test("LA3 without the car's own pace no day is made of a distance", () => {
  fc.assert(
    fc.property(wanted, use, (all, { pace: _, ...by }) => {
      const kmOnly = all.map((one) => ({ ...one, rows: one.rows.map(({ months: __, ...rest }) => rest) }));
      for (const { day: told, byUse } of looksAgain(kmOnly, by).visits)
        expect([told, byUse]).toEqual([undefined, undefined]);
    }),
  );
});

test("[LA9] every place is come to once in a car state, and all that was asked still is", () => {
  const asked = fc.uniqueArray(
    fc.record({ state: fc.nat(2).map(String), place: fc.nat(4).map(String), point: fc.nat(4).map(String) }),
    { selector: ({ state, place, point }) => `${state} ${place} ${point}` },
  );
  fc.assert(
    fc.property(asked, fc.func(fc.boolean()), (any, isDue) => {
      const walk = any.toSorted((a, b) =>
        a.state < b.state ? -1 : a.state > b.state ? 1 : a.place < b.place ? -1 : 1,
      );
      const walked = dueFirst(walk, isDue);
      expect(new Set(walked)).toEqual(new Set(walk));
      const stations = walked.map(({ state, place }) => `${state} ${place}`);
      const begun = stations.filter((one, at) => one !== stations[at - 1]);
      expect(new Set(begun).size).toBe(begun.length);
      expect(walked.map(({ state }) => state)).toEqual(walk.map(({ state }) => state));
    }),
  );
});
