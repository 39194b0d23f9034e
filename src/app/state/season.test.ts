/** Which season it is, as the reply a visit opens with. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { bench, benchVisit, commonFrozen, sheetFrozen, until } from "../../../tests/support/app-bench.js";
import { foldVisit } from "../../core/record/index.js";
import type { Point } from "../../core/sheet/run.js";
import { openVisit } from "./car-acts.js";
import type { FrozenSheetFile } from "./frozen.js";
import { asksSeason, SEASONS, seasonOf, seasonReplies } from "./season.js";

const asked: Point = {
  id: "rest.season",
  place: "car",
  states: ["w0-talk"],
  fields: { now: { words: ["in-use", "put-away", "wake-up"] } },
  tool: "papers",
  who: ["technician", "owner"],
};
const rest: FrozenSheetFile = { ...sheetFrozen, sheet: { ...sheetFrozen.sheet, id: "rest", points: [asked] } };

test("which season it is goes with a seasonal check only, and only where the sheet asks for it in these words", () => {
  const put = { purpose: "season", season: "put-away" } as const;
  expect(seasonReplies(put, [sheetFrozen, rest])).toEqual([
    {
      key: { point: "rest.season", place: "car", state: "w0-talk", field: "now" },
      value: { type: "words", words: ["put-away"] },
    },
  ]);
  expect(seasonReplies({ ...put, purpose: "workshop" }, [rest])).toEqual([]);
  expect(seasonReplies({ purpose: "season" }, [rest])).toEqual([]);
  expect(seasonReplies({ ...put, season: "monthly-look" }, [rest])).toEqual([]);
  expect(seasonReplies(put, [sheetFrozen])).toEqual([]);
  expect([asksSeason([{ id: "hub" }]), asksSeason([{ id: "hub" }, { id: "rest" }])]).toEqual([false, true]);
});

test("the reply is kept in the act that opens the visit, and nothing else is put down", async () => {
  const on = bench();
  const { car } = await benchVisit(on);
  const opening = { car, purpose: "season" as const, who: "owner" as const, on: "2026-11-28T10:00:00+01:00" };
  const replies = seasonReplies({ purpose: "season", season: "wake-up" }, [rest]);
  const visit = await openVisit(on.journal, on.phone, {
    ...opening,
    replies,
    common: commonFrozen,
    sheets: [rest],
    limits: [],
  });
  const kept = on.kept.filter(({ stream, kind }) => stream === visit && kind !== "person");
  expect(kept.map(({ kind }) => kind)).toEqual(["visit.opened", "reply"]);
  expect(new Set(kept.map(({ act }) => act)).size).toBe(1);
  const opened = await until(on.journal.keptVisit(visit ?? ""), (state) => state.is === "open");
  const state = opened.is === "open" ? opened.state : foldVisit([]);
  expect(seasonOf(state.replies)).toBe("wake-up");
  expect(state.replies.size).toBe(1);
  expect(seasonOf(foldVisit([]).replies)).toBeUndefined();
});

test("the lay-up sheet asks which season it is in these very words, and every other point of it only in its own", () => {
  const sheet: { readonly points: readonly Point[] } = parse(readFileSync("checklists/rest/points.yaml", "utf8"));
  const [first, ...others] = sheet.points;
  const known = first && { ...rest, sheet: { ...rest.sheet, points: [first] } };
  for (const season of SEASONS)
    expect(seasonReplies({ purpose: "season", season }, known ? [known] : []), season).toHaveLength(1);
  expect(others.length).toBeGreaterThan(20);
  for (const point of others) expect(point["asked-when"], point.id).toMatch(/^rest\.season (==|in) /);
});
