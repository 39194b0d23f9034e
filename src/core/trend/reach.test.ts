// [TR6]–[TR14] When an edge is reached. Published values: tests/reference/facts/wear.ts (general statistics library;
// answer keys and a calculation sheet of plant inspection codes).
import { expect, test } from "vitest";
import { FIVE, TWO_POINTS } from "../../../tests/reference/facts/wear.js";
import { edge, type Numbers, seenAt, seriesFrom } from "../../../tests/support/worn-series.js";
import { seriesOf } from "./index.js";

const first = (numbers: Numbers, more: Parameters<typeof seriesFrom>[1] = {}) =>
  seriesOf(seriesFrom(numbers, more)).reaches[0];

test("[TR7] [TR8] two readings: likely, earliest and latest as published", () => {
  const { in: given, rate, x_at_limit, earliest, latest } = TWO_POINTS.twoPoint;
  const reach = first([
    [given.x1, given.y1],
    [given.x2, given.y2],
  ]);
  expect(reach).toMatchObject({ is: "reaches", close: false });
  expect(reach?.along?.rate).toBeCloseTo(rate, 9);
  expect(reach?.along?.likely).toBeCloseTo(x_at_limit * 1000, -1);
  expect(reach?.along?.earliest).toBeCloseTo(earliest * 1000, -1);
  expect(reach?.along?.latest).toBeCloseTo(latest * 1000, -1);
});

test("[TR7] nearer to each other than their uncertainty: no rate, no latest, only an earliest", () => {
  const { in: given, earliest } = TWO_POINTS.twoPointIndistinct;
  const reach = first([
    [given.x1, given.y1],
    [given.x2, given.y2],
  ]);
  expect(reach?.is).toBe("not-yet");
  expect(reach?.along?.likely).toBeUndefined();
  expect(reach?.along?.latest).toBeUndefined();
  expect(reach?.along?.earliest).toBeCloseTo(earliest * 1000, -1);
});

test.each(["clean", "outlier"] as const)(
  "[TR8] [TR9] five readings, %s: median line, interval as wide as least squares",
  (which) => {
    const { x, y, x_at_limit_ts, ts_slope, fieller90 } = FIVE[which];
    // as a doubtful step back would part them, the outlier is told to be of the same part
    const reach = first(
      x.map((when, i) => [when, y[i] ?? 0]),
      { words: { 24: "same" } },
    );
    expect(reach?.along?.rate).toBeCloseTo(-ts_slope, 5);
    expect(reach?.along?.likely).toBeCloseTo(x_at_limit_ts * 1000, -1);
    expect(reach?.along?.earliest).toBeLessThanOrEqual(fieller90[0] * 1000 + 1);
    expect(reach?.along?.latest).toBeGreaterThanOrEqual(fieller90[1] * 1000 - 1);
  },
);

test("[TR9] where least squares has no finite interval there is no latest", () => {
  const reach = first(
    [
      [0, 10],
      [1, 6],
      [2, 9.9],
      [3, 9.4],
    ],
    { words: { 2: "same" } },
  );
  expect(reach?.along?.likely).toBeDefined();
  expect(reach?.along?.latest).toBeUndefined();
});

test("[TR9] the faster of long and short rate brings the earliest nearer (plant code example: 0.004 against 0.00246)", () => {
  const numbers = [
    [0, 0.75],
    [7, 0.742],
    [13, 0.718],
  ] as const;
  const reach = first(numbers, { uncertainty: 0.0001, edges: [edge("major", 0.65)] });
  expect(reach?.along?.earliest).toBeLessThanOrEqual((13 + (0.718 - 0.65) / 0.004) * 1000 + 1);
  expect(reach?.along?.likely).toBeGreaterThan((13 + (0.718 - 0.65) / 0.004) * 1000);
});

test("[TR10] past the edge there is no date, and near it that is said", () => {
  expect(
    first([
      [0, 4],
      [5, 2.8],
    ]),
  ).toMatchObject({ is: "past", close: false });
  expect(
    first([
      [0, 4],
      [5, 2.95],
    ]),
  ).toMatchObject({ is: "past", close: true });
  expect(
    first([
      [0, 4],
      [5, 3.1],
    ]),
  ).toMatchObject({ is: "reaches", close: true });
  expect(first([[5, 2.8]])).toMatchObject({ is: "past" });
  expect(first([[5, 2.8]])?.along).toBeUndefined();
});

test("[TR6] the edge met first of each severe grade; the gravest where there is no severe one", () => {
  const edges = [edge("advisory", 6), edge("major", 3), edge("major", 3.5), edge("dangerous", 1.5)];
  const series = seriesOf(
    seriesFrom(
      [
        [0, 10],
        [5, 8],
      ],
      { edges },
    ),
  );
  expect(series.reaches.map((one) => [one.edge.grade, one.edge.at])).toEqual([
    ["major", 3.5],
    ["dangerous", 1.5],
  ]);
  const mild = seriesOf(
    seriesFrom(
      [
        [0, 10],
        [5, 8],
      ],
      { edges: [edge("advisory", 6), edge("minor", 4)] },
    ),
  );
  expect(mild.reaches.map((one) => one.edge.at)).toEqual([4]);
  const rising = seriesOf(
    seriesFrom(
      [
        [0, 0.1],
        [5, 1],
      ],
      { way: "up", edges: [edge("major", 3), edge("major", 2)] },
    ),
  );
  expect(rising.reaches.map((one) => one.edge.at)).toEqual([2]);
});

test("[TR6] of several bands the next one ahead in the direction of wear, and what is passed already", () => {
  const edges = [edge("advisory", 6), edge("minor", 5), edge("major", 4), edge("major", 3), edge("dangerous", 1)];
  const at = (value: number, up = false) => {
    const sign = up ? -1 : 1;
    const series = seriesOf(
      seriesFrom(
        [
          [0, sign * 10],
          [5, sign * value],
        ],
        { way: up ? "up" : "down", edges: edges.map((one) => ({ ...one, at: sign * one.at })) },
      ),
    );
    return {
      told: series.reaches.map(({ edge, is }) => `${Math.abs(edge.at)} ${is}`),
      within: series.within && Math.abs(series.within.at),
    };
  };
  for (const up of [false, true]) {
    expect(at(8, up)).toEqual({ told: ["4 reaches", "1 reaches"], within: undefined });
    expect(at(5.5, up)).toEqual({ told: ["4 reaches", "1 reaches"], within: 6 });
    expect(at(4.5, up)).toEqual({ told: ["4 reaches", "1 reaches"], within: 5 });
    expect(at(3.5, up)).toEqual({ told: ["4 past", "3 reaches", "1 reaches"], within: undefined });
    expect(at(2, up)).toEqual({ told: ["3 past", "1 reaches"], within: undefined });
    expect(at(0.5, up)).toEqual({ told: ["3 past", "1 past"], within: undefined });
  }
});

test("[TR11] what ages goes by the calendar, what wears by either is told by the axis that is earlier", () => {
  const numbers = [
    [0, 10],
    [5, 9],
    [25, 8],
  ] as const;
  const days = [0, 400, 500];
  expect(first(numbers, { wears: "age", days })?.along?.axis).toBe("age");
  const both = first(numbers, { wears: "either", days });
  const [told, later] = [both?.along, both?.later];
  expect(told && later && told.axis !== later.axis).toBe(true);
  expect(told?.days.earliest ?? 0).toBeLessThanOrEqual(later?.days.earliest ?? 0);
});

test("[TR11] kilometres become days at the pace of these visits", () => {
  const along = first(
    [
      [0, 10],
      [10, 8],
    ],
    { days: [0, 1000] },
  )?.along;
  expect(along?.likely).toBeCloseTo(35_000, 6);
  expect(along?.days.likely).toBeCloseTo(3500, 6);
});

test.each([
  [
    "missing",
    [
      [undefined, 10],
      [5, 8],
    ],
  ],
  [
    "back",
    [
      [10, 10],
      [5, 8],
    ],
  ],
  [
    "still",
    [
      [5, 10],
      [5, 8],
    ],
  ],
] as const)("[TR12] an odometer that is %s gives way to the calendar, and it is said why", (noOdometer, numbers) => {
  const reach = first(numbers, { days: [0, 365.25] });
  expect(reach).toMatchObject({ is: "reaches", noOdometer });
  expect(reach?.along?.axis).toBe("age");
  expect(reach?.along?.rate).toBeCloseTo(2, 6);
});

test("[TR13] further than twice the stretch measured over is far", () => {
  expect(
    first(
      [
        [0, 10],
        [10, 5],
      ],
      { uncertainty: 0.01 },
    )?.along?.far,
  ).toBe(false);
  expect(
    first(
      [
        [0, 10],
        [10, 9],
      ],
      { uncertainty: 0.01 },
    )?.along?.far,
  ).toBe(true);
});

test("[TR14] looked at again by half of what is left at the earliest, and no later than two years or 20,000 km", () => {
  const near = first(
    [
      [0, 10],
      [10, 6],
    ],
    { days: [0, 300], uncertainty: 0.01 },
  )?.along;
  expect(near?.look?.km).toBeCloseTo((10_000 + (near?.earliest ?? 0)) / 2, 6);
  expect(near?.look?.day).toBe(Math.floor((300 + (near?.days.earliest ?? 0)) / 2));
  const far = first(
    [
      [0, 10],
      [100, 9.5],
    ],
    { days: [0, 2000] },
  )?.along;
  expect(far?.look).toEqual({ km: 120_000, day: 2730 });
  expect(first([[0, 10]])?.along).toBeUndefined();
});

test("a reading alone has nothing to be compared with", () => {
  expect(seriesOf(seriesFrom([[0, 10]])).reaches.map((one) => one.is)).toEqual(["alone"]);
  expect(seriesOf({ ...seriesFrom([]), seen: [seenAt(0, 10)] }).reaches).toHaveLength(1);
});
