// What names an item of a sheet under work, before it is taken out.
import { expect, test } from "vitest";
import { miniSheets } from "../../../tests/support/mini-sheet.js";
import type { Sheet } from "../../core/sheet/run.js";
import { type DraftList, NO_CHANGES } from "../../core/sheet/work.js";
import { namedIn } from "./sheet-named.js";

const { sheet } = miniSheets();
const named = (list: DraftList, item: string, base: Sheet = sheet) =>
  Object.fromEntries(namedIn({ base, changes: NO_CHANGES }, list, item).map((one) => [one.list, one.count]));

test("a job is named by the rules it mends, by their names, each told once", () => {
  const [rules] = namedIn({ base: sheet, changes: NO_CHANGES }, "jobs", "job.hub.renew").filter(
    ({ list }) => list === "rules",
  );
  const mending = sheet.rules.filter(({ jobs }) => jobs?.includes("job.hub.renew"));
  expect(rules?.count).toBe(mending.length);
  expect(rules?.titles).toEqual([...new Set(mending.map(({ fault }) => sheet.texts["en"]?.faults[fault ?? ""]?.says))]);
});

test("a point is named by conditions, also from another place, by limits, worked-out values, cases and jobs it is looked at after", () => {
  const float = named("points", "hub.float");
  expect(Object.keys(float)).toEqual(["limits", "derived", "rules", "jobs", "cases"]);
  expect(float["derived"]).toBe(1);
  expect(named("points", "hub.noise")["rules"]).toBe(1);
});

test("a further field of a point names the point, a point whose name only begins alike does not", () => {
  const more = (when: string): Sheet => ({
    ...sheet,
    cases: [],
    rules: sheet.rules.slice(0, 1).map((r) => ({ ...r, supports: [], worse: undefined, when }) as never),
  });
  expect(named("points", "hub.noise", more("hub.noise_age > 3"))).toEqual({ rules: 1 });
  expect(named("points", "hub.noise", more("hub.noise_ages > 3"))).toEqual({});
  expect(named("points", "hub.renew", more('hub.spin == "rough"'))["rules"]).toBeUndefined();
});

test("a case names its rule; what nothing names is named nowhere", () => {
  const firing = sheet.cases.filter(({ fires }) => fires === "hub.r1").length;
  expect(firing).toBeGreaterThan(0);
  expect(named("rules", "hub.r1")).toEqual({ cases: firing });
  expect(named("cases", "#0")).toEqual({});
});

test("ids that could be words of something else count only where such things are named", () => {
  const jobs = sheet.jobs.map((job) => ({ ...job, parts: [{ part: "hum" }], access: ["own-access"] }));
  const base = { ...sheet, jobs };
  expect(named("parts", "hum", base)).toEqual({ jobs: jobs.length });
  expect(named("access", "own-access", base)).toEqual({ jobs: jobs.length });
  expect(named("parts", "smooth", base)).toEqual({});
  expect(named("states", "w7-hang")).toEqual({ points: 2 });
  expect(named("gauges", "dial")).toEqual({ points: 1 });
  expect(named("facts", "brakes")["limits"]).toBe(1);
  expect(named("places", "FR")["cases"]).toBeGreaterThan(0);
});
