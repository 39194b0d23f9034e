/**
 * How a point is looked at, over all shipped sheets: in its own words. What is said word for word at many points is read at
 * none of them. Judges no car.
 */
import { expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const said = result.value.sheets.flatMap(({ sheet }) =>
  Object.entries(sheet.texts["en"]?.points ?? {}).flatMap(([point, { how, trap }]) =>
    [how, trap].flatMap((text) => (text === undefined ? [] : [{ point, text }])),
  ),
);

/** A short one may fit three points; more is a sentence nobody wrote for them. */
const MOST = 3;

function atPoints(pieces: (text: string) => readonly string[]): ReadonlyMap<string, readonly string[]> {
  const at = new Map<string, string[]>();
  for (const { point, text } of said)
    for (const piece of pieces(text)) at.set(piece, [...(at.get(piece) ?? []), point]);
  return at;
}

test("no two points are looked at in the same words, or have the same trap", () => {
  expect(said.length).toBeGreaterThan(1000);
  expect([...atPoints((text) => [text])].filter(([, points]) => points.length > 1)).toEqual([]);
});

test("no sentence stands at more than a few points", () => {
  const sentences = atPoints((text) => text.split(/(?<=[.!?])\s+/));
  expect([...sentences].filter(([, points]) => points.length > MOST)).toEqual([]);
});
