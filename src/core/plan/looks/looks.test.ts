/** When to look again: earliest figures, days by the car's own use, what falls together, what is looked at already. */
import { describe, expect, test } from "vitest";
import type { SheetJobs } from "../order.js";
import type { CarUse, LookRow, LookWanted } from "./contract.js";
import { dueAgain, dueFirst, looksAgain, paceOf, rowsForFault, rowsForJob, wasLooked } from "./index.js";

const practice = (figures: Pick<LookRow, "km" | "months" | "on">): LookRow => ({
  names: "grade",
  basis: "practice",
  ...figures,
});
const wanted = (id: string, rows: readonly LookRow[], more: Partial<LookWanted> = {}): LookWanted => ({
  id,
  is: "finding",
  of: id,
  place: "FR",
  grade: "advisory",
  from: { on: "2026-03-10", km: 61_000 },
  rows,
  points: [{ point: "whl.rock", place: "FR" }],
  ...more,
});
const USE: CarUse = { today: "2026-03-10", since: "2026-03-10", odometer: { on: "2026-03-10", km: 61_000 } };
const told = (all: readonly LookWanted[], use: CarUse = USE) => looksAgain(all, use).visits;

describe("[LA1] of each the earliest figure, distance and day", () => {
  test("an advisory is looked at after 3000 km or 6 months; what its own fault states comes before", () => {
    const sheet: SheetJobs = {
      sheet: {
        jobs: [],
        rules: [{ fault: "whl.rough" }],
        nextLooks: [
          { grade: "advisory", km: 3000, months: 6 },
          { fault: "whl.rough", km: 500 },
          { job: "job.whl.hub", km: 50 },
          { job: "job.whl.hub", months: 12 },
        ],
      },
    };
    const other: SheetJobs = { sheet: { jobs: [], rules: [], nextLooks: [{ grade: "advisory", km: 10 }] } };
    const rows = rowsForFault({ fault: "whl.rough", grade: "advisory" }, [sheet, other]);
    const [visit] = told([wanted("a", rows)]);
    expect(visit).toMatchObject({ at: 61_500, by: "2026-09-10" });
    expect(visit?.looks[0]?.why.map(({ names }) => names)).toEqual(["grade", "fault"]);
    expect(rowsForJob("job.whl.hub", [sheet]).map(({ km, months }) => km ?? `${months} months`)).toEqual([
      50,
      "12 months",
    ]);
    // The check after 50 km stands already.
    expect(rowsForJob("job.whl.hub", [sheet], 50).map(({ months }) => months)).toEqual([12]);
  });
});

describe("[LA2] the car's own pace", () => {
  test("is known from two readings a month apart, with an interval from three", () => {
    expect(paceOf([{ on: "2026-01-01", km: 100 }])).toBeUndefined();
    expect(
      paceOf([
        { on: "2026-01-01", km: 100 },
        { on: "2026-01-20", km: 900 },
      ]),
    ).toBeUndefined();
    expect(
      paceOf([
        { on: "2026-02-10", km: 500 },
        { on: "2026-01-01", km: 100 },
      ]),
    ).toEqual({ likely: 10 });
    expect(
      paceOf([
        { on: "2026-01-01", km: 0 },
        { on: "2026-02-10", km: 400 },
        { on: "2026-03-22", km: 2400 },
        { on: "2026-03-23", km: 2430 },
      ]),
    ).toEqual({ likely: 30, least: 10, most: 2030 / 41 });
  });
  test("is not known of a car that stood, or whose odometer ran backwards", () => {
    expect(
      paceOf([
        { on: "2026-01-01", km: 100 },
        { on: "2026-06-01", km: 100 },
      ]),
    ).toBeUndefined();
    const back = [100, 90, 500].map((km, at) => ({ on: `2026-0${at + 1}-01`, km }));
    expect(paceOf(back)).toBeUndefined();
  });
});

describe("[LA3] a distance is a day only by the car's own use", () => {
  const km = [wanted("a", [practice({ km: 3000 })])];
  test("at the fastest, as usual and at the slowest, from the newest reading on", () => {
    const read = { ...USE, today: "2026-04-09", odometer: { on: "2026-04-09", km: 62_000 } };
    const [visit] = told(km, { ...read, pace: { likely: 20, least: 10, most: 40 } });
    expect(visit).toMatchObject({
      at: 64_000,
      day: "2026-05-29",
      byUse: { earliest: "2026-05-29", likely: "2026-07-18", latest: "2026-10-26" },
    });
  });
  test("unknown, it is told as a distance and as no day", () => {
    const [visit] = told(km);
    expect(visit).toMatchObject({ at: 64_000, stands: "ahead" });
    expect(visit?.day ?? visit?.by ?? visit?.byUse).toBeUndefined();
  });
  test("where nobody read the odometer it counts from the day of the visit", () => {
    const [visit] = told([wanted("a", [practice({ km: 50 })], { from: { on: "2026-03-10" } })], {
      today: "2026-03-10",
      since: "2026-03-10",
    });
    expect(visit).toMatchObject({ after: { km: 50, from: "2026-03-10" } });
    expect(visit?.at).toBeUndefined();
  });
});

describe("[LA3] an odometer that shows less than before has run over or is another one", () => {
  const work = [wanted("a", [practice({ km: 3000 })], { from: { on: "2026-03-10", km: 99_800 } })];
  const read = (on: string, km: number): CarUse => ({ ...USE, today: "2026-06-10", odometer: { on, km } });
  test("its distance counts from the day of the visit, by no figure of the old count", () => {
    const [visit] = told(work, { ...read("2026-06-08", 150), pace: { likely: 30 } });
    expect(visit).toMatchObject({ after: { km: 3000, from: "2026-03-10" }, day: "2026-06-18", stands: "ahead" });
    expect(visit?.at).toBeUndefined();
  });
  test("read lower on the same day it was read twice, and nothing has run over", () => {
    expect(told(work, read("2026-03-10", 99_790))[0]?.at).toBe(102_800);
  });
});

describe("[LA4] what falls into one span is one visit", () => {
  test("half a year and five months together at the earlier, a month on its own", () => {
    const visits = told([
      wanted("half", [practice({ months: 6 })]),
      wanted("five", [practice({ months: 5 })]),
      wanted("month", [practice({ months: 1 })]),
    ]);
    expect(visits.map(({ by, looks }) => [by, looks.map(({ id }) => id)])).toEqual([
      ["2026-04-10", ["month"]],
      ["2026-08-10", ["five", "half"]],
    ]);
  });
  test("its name stays while the newest visit is the same", () => {
    const half = [wanted("half", [practice({ months: 6 })])];
    expect(told(half, { ...USE, today: "2026-07-01" })[0]?.id).toBe(told(half)[0]?.id);
  });
});

describe("[LA5] overdue, now, ahead", () => {
  const km = [wanted("a", [practice({ km: 50 })])];
  const at = (read: number) => told(km, { ...USE, odometer: { on: "2026-03-20", km: read } })[0]?.stands;
  test("an odometer past the distance says overdue, on it now, before it ahead", () => {
    expect([at(61_051), at(61_050), at(61_049)]).toEqual(["overdue", "now", "ahead"]);
  });
  test("a stated day gone by is overdue; a day by its use is only due, for nobody has read the odometer", () => {
    const late = { ...USE, today: "2026-10-01" };
    expect(told([wanted("a", [practice({ months: 6 })])], late)[0]?.stands).toBe("overdue");
    expect(told(km, { ...late, pace: { likely: 10 } })[0]?.stands).toBe("now");
    expect(told(km, late)[0]?.stands).toBe("ahead");
  });
  test("of two that are equally near the graver stands first", () => {
    const rows = [practice({ months: 6 })];
    const [visit] = told([wanted("a", rows), wanted("b", rows, { grade: "minor" })]);
    expect(visit?.looks.map(({ id }) => id)).toEqual(["b", "a"]);
  });
});

test("[LA6] what nothing states a time for is named, never left out", () => {
  const { visits, unsaid } = looksAgain([wanted("a", []), wanted("b", [practice({})])], USE);
  expect(visits).toEqual([]);
  expect(unsaid.map(({ id }) => id)).toEqual(["a", "b"]);
});

describe("[LA7] looked at again", () => {
  const work = wanted("a", [practice({ km: 500, months: 12 })], { is: "job" });
  test("counts at half of its way or half of its time", () => {
    expect(wasLooked(work, () => ({ on: "2026-03-12", km: 61_250 }))).toBe(true);
    expect(wasLooked(work, () => ({ on: "2026-03-12", km: 61_249 }))).toBe(false);
    expect(wasLooked(work, () => ({ on: "2026-09-10" }))).toBe(true);
    expect(wasLooked(work, () => ({ on: "2026-03-12" }))).toBe(false);
  });
  test("takes every point, and none that is not named for one", () => {
    const two = { ...work, points: [...work.points, { point: "whl.spin", place: "FR" }] };
    expect(wasLooked(two, ({ point }) => (point === "whl.rock" ? { on: "2027-01-01" } : undefined))).toBe(false);
    expect(wasLooked({ ...work, points: [] }, () => ({ on: "2027-01-01" }))).toBe(false);
  });
});

test("[LA4] what was due by the newest visit is one look of its own", () => {
  const visits = told([
    wanted("due", [practice({ months: 6 })], { from: { on: "2025-03-10" } }),
    wanted("week", [practice({ on: "2026-03-15" })]),
  ]);
  expect(visits.map(({ id, looks }) => [id, looks.length])).toEqual([
    ["look--1", 1],
    ["look-0", 1],
  ]);
});

describe("[LA8] due in a visit", () => {
  test("what is overdue or due with all that falls together with it, then what nothing says a time for", () => {
    const all = [
      wanted("half", [practice({ months: 6 })]),
      wanted("five", [practice({ months: 5 })]),
      wanted("month", [practice({ months: 1 })]),
      wanted("never", []),
    ];
    const due = (today: string) => dueAgain(looksAgain(all, { ...USE, today })).map(({ look }) => look.id);
    expect(due("2026-04-09")).toEqual(["never"]);
    expect(due("2026-04-10")).toEqual(["month", "never"]);
    expect(due("2026-08-10")).toEqual(["month", "five", "half", "never"]);
  });
});

describe("[LA9] the walk that takes first what is due", () => {
  const walk = ["low FL a", "low FL b", "low FR a", "low FR b", "low RR a", "up FL c", "up FR c"].map((one) => {
    const [state = "", place = "", point = ""] = one.split(" ");
    return { state, place, point };
  });
  const walked = (...due: readonly string[]) =>
    dueFirst(walk, ({ place, point }) => due.includes(`${place} ${point}`)).map(
      ({ state, place, point }) => `${state} ${place} ${point}`,
    );
  test("each car state begins at its due places, which are finished; the states keep their order", () => {
    expect(walked("FR b", "FR c")).toEqual([
      "low FR b",
      "low FR a",
      "low FL a",
      "low FL b",
      "low RR a",
      "up FR c",
      "up FL c",
    ]);
  });
  test("several due places keep the way round the car; with none it is the walk itself", () => {
    expect(walked("RR a", "FL b").slice(0, 4)).toEqual(["low FL b", "low FL a", "low RR a", "low FR a"]);
    expect(walked()).toEqual(walk.map(({ state, place, point }) => `${state} ${place} ${point}`));
  });
});
