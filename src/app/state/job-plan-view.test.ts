/** A job in its plan, a part looked at when it came, what was left loose, and what the undo row says of each. */
import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import { august, GEARS, MAIN, STORES } from "../../../tests/support/august.js";
import type { PartChecks } from "../../core/record/index.js";
import { dayWords } from "../texts/days.js";
import { jobPlanView } from "./job-plan-view.js";
import { looseCount } from "./loose-count.js";
import { looseView } from "./loose-view.js";
import { changeOf, fromForm, mendedFigures, oddIn, typedCount } from "./part-figures.js";
import { historyOf, nextSteps, standsWords } from "./part-way.js";
import { clearedLoose, jobStep, leftLoose, partSteps, planWanted } from "./plan-acts.js";
import { partsOf } from "./plan-part-view.js";
import { partGroups } from "./plan-parts-view.js";
import { planUndo } from "./plan-undo-view.js";

const ID = "own.gears@car";
const TODAY = "2027-07-28";
const EUROS = { currency: "EUR", minorDigits: 2 };
const gears = () => august({ count: 1, supplier: STORES.id, name: "Third gear" }, { count: 1, name: "Its mate" });

test("a job says its time and whose word that is, what it adds, that it can't wait, and how far it is", async () => {
  const gear = await gears();
  const start = jobPlanView(await gear.at(TODAY), ID);
  expect(start).toMatchObject({ time: "6.0 h", basis: "By hand", isByHand: false, isMust: true, wanted: "plan" });
  expect(start?.adds).toBe("Adds 6.0 h with what is open anyway; alone it is 6.0 h.");
  expect(start?.standsSays).toBe("Not begun");
  await jobStep(gear.journal, gear.visit, { ...GEARS, step: "begun", on: TODAY });
  await jobStep(gear.journal, gear.visit, {
    ...GEARS,
    step: "waiting",
    on: "2027-07-29",
    next: "2027-07-30",
    words: "the gears",
  });
  const waits = jobPlanView(await gear.at("2027-08-02"), ID);
  expect(waits?.standsSays).toBe(`Waits until ${dayWords("2027-07-30")}, waits for the gears, 3 days over`);
  await jobStep(gear.journal, gear.visit, { ...GEARS, step: "done", on: "2027-08-02", minutes: 390 });
  const done = jobPlanView(await gear.at("2027-08-02"), ID);
  expect(done?.standsSays).toBe(`Done ${dayWords("2027-08-02")}, 6.5 h of work, not measured again yet`);
});

test("a job that may wait is kept in or left out by hand, and the plan still says whether it is in", async () => {
  const gear = await gears();
  const [job] = (await gear.at(TODAY)).input.jobs;
  if (!job) throw new Error("the job is there");
  const later = { jobs: [{ ...job, key: { ...job.key, due: 3 as const } }] };
  expect(jobPlanView(await gear.at(TODAY, later), ID)).toMatchObject({ isMust: false, wanted: "plan" });
  await planWanted(gear.journal, gear.visit, { ...GEARS, wanted: "in" });
  const kept = { jobs: [{ ...job, key: { ...job.key, due: 3 as const }, wanted: "in" as const }] };
  // Wanted is not the same as must: it can be taken back here.
  expect(jobPlanView(await gear.at(TODAY, kept), ID)).toMatchObject({
    isMust: false,
    wanted: "in",
    isIn: "It is in the plan.",
  });
  expect(jobPlanView(await gear.at(TODAY), "job.none@car")).toBeUndefined();
});

test("a part that fails its check is told with what is wrong and goes back; sent back it is to be ordered anew", async () => {
  const gear = await gears();
  const checks: PartChecks = { right: false, count: true, condition: true };
  await gear.order("ordered", "2027-07-16");
  await partSteps(gear.journal, gear.visit, [{ ...MAIN, step: "promised", on: "2027-07-17", promised: "2027-07-26" }]);
  const at = async (today: string) => {
    const day = await gear.at(today);
    const [main] = partsOf(day, ID);
    if (!main) throw new Error("the gear is there");
    return { day, main };
  };
  const over = await at(TODAY);
  expect(standsWords(over.main.stands)).toBe("Promised for 26 Jul, 2 days over");
  expect(nextSteps(over.main.stands)[0]).toBe("chased");
  await partSteps(gear.journal, gear.visit, [{ ...MAIN, step: "chased", on: TODAY, next: "2027-07-29" }]);
  await partSteps(gear.journal, gear.visit, [{ ...MAIN, step: "arrived", on: "2027-07-29" }]);
  await partSteps(gear.journal, gear.visit, [{ ...MAIN, step: "checked", on: "2027-07-29", checks }]);
  const failed = await at("2027-07-29");
  expect(standsWords(failed.main.stands)).toBe("Not as it should be: not the right part. To be sent back.");
  expect(nextSteps(failed.main.stands)[0]).toBe("sent-back");
  expect(partGroups(failed.day, failed.day.plan).map(({ id }) => id)).toContain("send-back");
  await partSteps(gear.journal, gear.visit, [{ ...MAIN, step: "sent-back", on: "2027-07-30" }]);
  const back = await at("2027-07-30");
  expect(nextSteps(back.main.stands)).toEqual(["ordered", "arrived"]);
  expect(historyOf(back.main).map(({ title }) => title)).toEqual([
    `Sent back, ${dayWords("2027-07-30")}`,
    `Checked ${dayWords("2027-07-29")}, not as it should be: not the right part`,
    `Here, ${dayWords("2027-07-29")}`,
    `Asked after, ${dayWords(TODAY)}, ask again ${dayWords("2027-07-29")}`,
    `Promised for ${dayWords("2027-07-26")}, said on ${dayWords("2027-07-17")}`,
    `Ordered, ${dayWords("2027-07-16")}`,
  ]);
});

test("what is typed of a part is kept as it reads; odd figures are named and nothing is made up of an empty box", () => {
  const part = { figures: { count: 2, name: "Seal", deposit: 1000 }, work: { id: "own.seal", count: 2 } };
  expect(fromForm(part, EUROS)).toEqual({ supplier: "", leadDays: "", deposit: "10.00", carriage: "", pricedOn: "" });
  const form = { supplier: "stores", leadDays: "5", deposit: "", carriage: "7,50", pricedOn: "" };
  expect(oddIn(form, EUROS)).toEqual([]);
  expect(mendedFigures(part, changeOf(form, EUROS))).toEqual({
    count: 2,
    name: "Seal",
    supplier: "stores",
    leadDays: 5,
    carriage: 750,
  });
  expect(oddIn({ ...form, leadDays: "five", carriage: "1.234" }, EUROS)).toEqual(["leadDays", "carriage"]);
  // Without a currency no money is asked for, and what was known of it stays.
  expect(mendedFigures(part, changeOf(form, undefined))).toMatchObject({ deposit: 1000 });
  expect([typedCount("", 1), typedCount("0", 1), typedCount("3", 1), typedCount("1.5", 1)]).toEqual([
    undefined,
    null,
    3,
    null,
  ]);
});

test("what was left drained is open until somebody clears it; the undo row names what was entered last and by whom", async () => {
  const gear = await gears();
  const known = miniKnowledge();
  await leftLoose(gear.journal, gear.visit, (loose) => ({ loose, what: "drained", words: "Gearbox oil", on: TODAY }));
  const day = await gear.at(TODAY);
  const [open] = looseView(known, day.said, TODAY).open;
  expect(open).toMatchObject({ title: "Gearbox oil" });
  expect(open?.second).toMatch(new RegExp(`^Drained, .*, since ${dayWords(TODAY)}$`));
  expect(looseCount(day.said)).toBe(1);
  expect(planUndo(day.telling, day.said, gear.journal.writer.value)?.says).toBe("Entered last: Gearbox oil (Ines)");
  await clearedLoose(gear.journal, gear.visit, { loose: open?.id ?? "", on: TODAY, words: "Filled (Ines)" });
  const after = await gear.at(TODAY);
  expect(looseCount(after.said)).toBe(0);
  expect(looseView(known, after.said, TODAY)).toMatchObject({
    open: [],
    cleared: [{ title: "Gearbox oil", second: `${dayWords(TODAY)}: Filled (Ines)` }],
  });
  await gear.order("ordered", TODAY);
  const ordered = await gear.at(TODAY);
  expect(planUndo(ordered.telling, ordered.said, gear.journal.writer.value)?.says).toBe(
    "Entered last: ordered, Third gear (Ines)",
  );
});
