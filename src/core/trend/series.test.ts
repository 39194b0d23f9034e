// [TR1]–[TR5] Where the readings of one part are no longer readings of one part.
import { expect, test } from "vitest";
import { edge, seenAt, seriesFrom } from "../../../tests/support/worn-series.js";
import { type SeriesInput, seriesOf } from "./index.js";

const worn = [
  [0, 10],
  [5, 8],
  [10, 6],
] as const;
const renewed = [
  [0, 10],
  [5, 8],
  [10, 9.5],
  [15, 8.1],
] as const;
const runs = (input: SeriesInput) => seriesOf(input).runs.map((run) => run.map(({ value }) => value));
const breaks = (input: SeriesInput) => seriesOf(input).breaks.map(({ visit, kind }) => `${kind} ${visit}`);

test("[TR1] readings of any order make the same series", () => {
  const input = seriesFrom(renewed);
  expect(seriesOf({ ...input, seen: [...input.seen].reverse() })).toEqual(seriesOf(input));
});

test("[TR2] a step back against the wear by more than chance begins a new run, which way is not guessed", () => {
  expect(breaks(seriesFrom(worn))).toEqual([]);
  expect(breaks(seriesFrom(renewed))).toEqual(["unsaid 10"]);
  expect(runs(seriesFrom(renewed))).toEqual([
    [10, 8],
    [9.5, 8.1],
  ]);
  // √2 · 0.13 is 0.1838…
  expect(
    breaks(
      seriesFrom([
        [0, 8],
        [5, 8.183],
      ]),
    ),
  ).toEqual([]);
  expect(
    breaks(
      seriesFrom([
        [0, 8],
        [5, 8.184],
      ]),
    ),
  ).toEqual(["unsaid 5"]);
  expect(
    breaks(
      seriesFrom(
        [
          [0, 0.5],
          [5, 0.2],
        ],
        { way: "up" },
      ),
    ),
  ).toEqual(["unsaid 5"]);
});

test("[TR2] each reading counts with its own uncertainty", () => {
  const two = (uncertainty: number) => ({
    ...seriesFrom([]),
    seen: [seenAt(0, 8), seenAt(5, 8.3, { uncertainty })],
  });
  expect(breaks(two(0.13))).toEqual(["unsaid 5"]);
  expect(breaks(two(0.3))).toEqual([]);
});

test("[TR2] a job done at this place in between is named", () => {
  const input = seriesFrom(renewed);
  const day = seenAt(7, 0).day;
  expect(breaks({ ...input, done: [{ day, job: "job.pads" }] })).toEqual(["job-done 10"]);
  expect(seriesOf({ ...input, done: [{ day, job: "job.pads" }] }).breaks[0]).toMatchObject({
    job: "job.pads",
    back: 1.5,
  });
  expect(breaks({ ...input, done: [{ day: seenAt(2, 0).day, job: "job.pads" }] })).toEqual(["unsaid 10"]);
  // a job that left the reading as it was parts nothing
  expect(breaks({ ...seriesFrom(worn), done: [{ day, job: "job.pads" }] })).toEqual([]);
});

test("[TR3] what a person says goes before all of it", () => {
  expect(breaks(seriesFrom(renewed, { words: { 10: "renewed" } }))).toEqual(["said-renewed 10"]);
  expect(breaks(seriesFrom(worn, { words: { 5: "renewed" } }))).toEqual(["said-renewed 5"]);
  expect(breaks(seriesFrom(renewed, { words: { 10: "same" } }))).toEqual([]);
  expect(seriesOf(seriesFrom(renewed, { words: { 10: "same" } })).marks).toEqual([{ visit: "10", kind: "same" }]);
});

test("[TR3] a doubtful reading is left out and its neighbours compared", () => {
  const low = seriesFrom(
    [
      [0, 10],
      [5, 6],
      [10, 9],
    ],
    { words: { 5: "doubtful" } },
  );
  expect(breaks(low)).toEqual([]);
  expect(runs(low)).toEqual([[10, 9]]);
  expect(seriesOf(low).doubtful.map(({ value }) => value)).toEqual([6]);
});

test("[TR4] a part found not fitted in between is another part", () => {
  expect(breaks({ ...seriesFrom(worn), away: [seenAt(7, 0).day] })).toEqual(["not-fitted 10"]);
  expect(breaks({ ...seriesFrom(worn), away: [seenAt(20, 0).day] })).toEqual([]);
});

test("[TR5] made of other points: a new run; by another gauge, or against another limit: marked", () => {
  const input = (more: Parameters<typeof seenAt>[2]) => ({
    ...seriesFrom([]),
    seen: [seenAt(0, 8), seenAt(5, 7, more)],
  });
  expect(breaks(input({ method: ["part.thick", "part.other"] }))).toEqual(["method 5"]);
  expect(seriesOf(input({ gauges: ["other"] }))).toMatchObject({ breaks: [], marks: [{ visit: "5", kind: "gauge" }] });
  expect(seriesOf(input({ edges: [edge("major", 2)] })).marks).toEqual([{ visit: "5", kind: "limit" }]);
  expect(seriesOf(input({})).marks).toEqual([]);
});
