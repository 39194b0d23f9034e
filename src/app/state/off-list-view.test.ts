/** Writing down a finding off the list: what is missing, what is kept, what outlives the page. */
import { expect, test } from "vitest";
import { bench, benchVisit, key, until, words } from "../../../tests/support/app-bench.js";
import { findingsView, findingView } from "./findings-view.js";
import { emptyForm, findingIn, formOf, formTyped, missingIn, type OffListForm } from "./off-list-view.js";
import { reply } from "./reply-acts.js";
import { offList } from "./visit-acts.js";
import { jobView, workLines } from "./work-view.js";

const WIRE: OffListForm = {
  ...emptyForm("f1", "FR"),
  words: " wire round the arm ",
  grade: "major",
  reason: "nothing else holds it",
  job: "find out what it holds",
  hours: "1,5",
};

test("a grade needs a reason and a finding its words; hours are a figure or not said", () => {
  expect(missingIn(emptyForm("f1", "FR"))).toEqual(["words", "grade", "reason"]);
  expect(missingIn({ ...WIRE, hours: "a day" })).toEqual(["hours"]);
  expect(findingIn({ ...WIRE, hours: "a day" })).toBeUndefined();
  expect(findingIn(WIRE)).toEqual({
    place: "FR",
    words: "wire round the arm",
    grade: "major",
    reason: "nothing else holds it",
    mustStand: false,
    job: { words: "find out what it holds", hours: "1.5" },
  });
  expect(findingIn({ ...WIRE, job: "" })).not.toHaveProperty("job");
});

test("what was typed comes back after the page went away; anything else does not", () => {
  expect(formTyped(JSON.stringify(WIRE))).toEqual(WIRE);
  const { hours: _hours, ...lacking } = WIRE;
  for (const text of ["", "7", "{", JSON.stringify(lacking), JSON.stringify({ ...WIRE, grade: "awful" })])
    expect(formTyped(text), text).toBeUndefined();
});

test("it stands among the findings with who saw it, in the counts, and its job in the work list with its hours", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await until(desk.known, (known) => known !== undefined);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  const found = findingIn({ ...WIRE, grade: "dangerous" });
  await offList(on.journal, visit, "f1", found ?? null);
  const assessment = await until(desk.assessment, (now) => now?.faults.length === 2);
  const known = await until(desk.known, (now) => now?.ownJobs !== undefined);
  const state = desk.visit.value;
  if (!assessment || !known || state.is !== "open" || !desk.tree.value) throw new Error("not laid out");
  const telling = { known, who: "technician", visit: "v", car: "c", pictures: [] } as const;
  const view = findingsView(telling, assessment);
  expect(view.lines[0]).toMatchObject({ title: "wire round the arm", mark: "dangerous" });
  expect(view.sentence).toContain("1 thing is dangerous.");
  const [because] = findingView(telling, assessment, "own.f1", "FR")?.steps ?? [];
  expect(because).toMatchObject({ kind: "Seen", says: "wire round the arm." });
  expect(because?.aside).toMatch(/^nothing else holds it\. Seen by .+/);
  const [first] = workLines(telling, desk.jobs.value);
  expect(first).toMatchObject({ title: "find out what it holds, Front right", hours: "1.5 h", mark: "dangerous" });
  expect(jobView(telling, desk.tree.value, desk.jobs.value, { job: "own.f1", place: "FR" }, desk.above)?.does).toBe("");
  expect(formOf(state.state, "f1")).toMatchObject({ grade: "dangerous", hours: "1.5" });
  await offList(on.journal, visit, "f1", null);
  expect((await until(desk.assessment, (now) => now?.faults.length === 1))?.faults[0]?.fault).toBe("hub.race");
});
