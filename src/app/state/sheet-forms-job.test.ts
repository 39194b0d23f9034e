import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import type { DraftItem } from "../../core/sheet/draft.js";
import { valueAt, withAt } from "./sheet-forms.js";
import { minutesAstray, partCount, partMoved, partsLeft, withoutPart, withPart } from "./sheet-forms-job.js";

const job: DraftItem = {
  value: {
    id: "job.hub.new",
    parts: [
      { part: "seal", reuse: "never" },
      { part: "race", set: "pair" },
    ],
    consumables: ["grease"],
  },
  texts: {},
};

test("parts are added at the end, moved and taken out; none leaves no empty list", () => {
  expect(partCount(withPart(job, "nut"))).toBe(3);
  expect(valueAt(partMoved(job, 1, 0), ["parts", 0, "part"])).toBe("race");
  const none = withoutPart(withoutPart(job, 0), 0);
  expect(valueAt(none, ["parts"])).toBeUndefined();
  expect(valueAt(withPart(none, "nut"), ["parts"])).toEqual([{ part: "nut" }]);
});

test("a part, a set and what is used up lose their words when the last job that named them no longer does", () => {
  const { sheet } = miniSheets();
  const [one] = sheet.jobs;
  if (!one) throw new Error("the small sheet has a job");
  const alone = { ...sheet, jobs: [] };
  const bare = withAt(withAt(job, ["parts"], undefined), ["consumables"], undefined);
  expect(partsLeft(alone, "job.hub.new", job, bare)).toEqual(["seal", "race", "pair", "grease"]);
  expect(partsLeft(alone, "job.hub.new", job, withoutPart(job, 0))).toEqual(["seal"]);
  expect(partsLeft(alone, "job.hub.new", job, withPart(job, "nut"))).toEqual([]);
  const other = {
    ...sheet,
    jobs: [{ ...one, id: "job.hub.other", parts: [{ part: "seal" }], consumables: ["grease"] }],
  };
  expect(partsLeft(other, "job.hub.new", job, bare)).toEqual(["race", "pair"]);
});

test("minutes rise from low to high, equal ones do", () => {
  const minutes = (...three: readonly number[]) => minutesAstray({ value: { minutes: three }, texts: {} }, ["minutes"]);
  expect([minutes(10, 20, 30), minutes(20, 20, 20), minutes(10, 30, 20), minutes(30, 20, 40)]).toEqual([
    ...[false, false, true, true],
  ]);
});
