// How pieces are laid on pages: what belongs together, heads repeated, nothing lost.
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Group, laid, type Piece } from "./flow.js";

const piece = (height: number, above = 0): Piece => ({ height, above, draw: () => undefined });
const ROOM = 100;
const shape = (groups: readonly Group[]) => laid(groups, ROOM).map((page) => page.map(({ y }) => y));

test("what fits stands below what was there", () => {
  expect(shape([{ pieces: [piece(30)] }, { pieces: [piece(30, 5)] }])).toEqual([[0, 35]]);
});

test("room above is dropped at the top of a page", () => {
  expect(shape([{ pieces: [piece(90)] }, { pieces: [piece(30, 5)] }])).toEqual([[0], [0]]);
});

test("what belongs together goes to the next page whole", () => {
  expect(shape([{ pieces: [piece(50)] }, { pieces: [piece(30), piece(30)], together: true }])).toEqual([[0], [0, 30]]);
});

test("a heading goes with the first of what follows", () => {
  const heading = { pieces: [piece(10)], together: true, withNext: true };
  expect(shape([{ pieces: [piece(85)] }, heading, { pieces: [piece(10), piece(10)] }])).toEqual([[0], [0, 10, 20]]);
});

test("a head stands again on each page its rows go on, and on no other", () => {
  const head = piece(10);
  const rows = Array.from({ length: 4 }, () => ({ pieces: [piece(40)], together: true, head }));
  expect(shape([...rows, { pieces: [piece(5)] }])).toEqual([
    [0, 10, 50],
    [0, 10, 50, 90],
  ]);
});

test("what is larger than a page is broken between its pieces", () => {
  const large = { pieces: Array.from({ length: 5 }, () => piece(40)), together: true };
  expect(laid([large], ROOM).flat()).toHaveLength(5);
  expect(shape([large])).toEqual([[0, 40], [0, 40], [0]]);
});

test("whatever comes, every piece is laid once, in order, and none over an edge", () => {
  const pieces = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 });
  const group = fc.record({ heights: pieces, together: fc.boolean(), withNext: fc.boolean(), newPage: fc.boolean() });
  fc.assert(
    fc.property(fc.array(group, { maxLength: 20 }), (given) => {
      const groups = given.map(
        ({ heights, ...rest }): Group => ({ pieces: heights.map((one) => piece(one, 3)), ...rest }),
      );
      const pages = laid(groups, ROOM);
      expect(pages.flat().map((one) => one.piece)).toEqual(groups.flatMap((one) => one.pieces));
      for (const page of pages)
        for (const [at, { piece: one, y }] of page.entries()) {
          expect(y + one.height).toBeLessThanOrEqual(ROOM);
          const before = page[at - 1];
          if (before) expect(y).toBeGreaterThanOrEqual(before.y + before.piece.height);
        }
    }),
    { numRuns: 200 },
  );
});
