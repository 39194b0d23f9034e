// Handing back in words: what was answered anew after a job, by whom it is asked, and notes older than the work.
import { expect, test } from "vitest";
import { type Bench, bench, benchVisit, key, until, words } from "../../../tests/support/app-bench.js";
import type { ReplyValue } from "../../core/terms/index.js";
import type { Telling } from "./because.js";
import { fact } from "./car-edits.js";
import { jobStep } from "./plan-acts.js";
import { releaseView } from "./release-view.js";
import { reply } from "./reply-acts.js";
import { note } from "./visit-acts.js";

const AT = { job: "job.hub.renew", place: "FR" };
const ON = "2026-03-10";
const mm = (value: string): ReplyValue => ({ type: "reading", values: [value], unit: "mm" });

/** The visit as it is handed back; its sheet asks for the float after the bearing. */
async function handing(on: Bench, visit: string) {
  const desk = on.desk(visit);
  desk.judge();
  const opened = await until(desk.visit, ({ is }) => is === "open");
  const size = opened.is === "open" ? opened.state.replies.size : 0;
  const [known, tree, assessment, said] = [
    await until(desk.known, (now) => now !== undefined),
    await until(desk.tree, (now) => now !== undefined),
    await until(desk.assessment, (now) => now !== undefined && (size === 0 || now.points.length > 0)),
    await until(on.journal.plan(visit), ({ is }) => is === "open"),
  ];
  if (!known || !tree || !assessment || opened.is !== "open" || said.is !== "open") throw new Error("laid out");
  const who = opened.state.opened?.value.who ?? "technician";
  const telling: Telling = { known, who, visit: "v", car: "c", pictures: [] };
  const laid = { known, tree, assessment, visit: opened.state, said: said.state, house: undefined };
  return { ...laid, today: ON, telling, param: "v" };
}
/** A visit of a car with its brakes in the wheels: the limit of its float applies. */
async function outboard(on: Bench) {
  const made = await benchVisit(on);
  await until(on.journal.car(made.car), ({ is }) => is === "open");
  await fact(on.journal, made.car, "brakes", "outboard");
  return made;
}
const done = (on: Bench, visit: string) => jobStep(on.journal, visit, { ...AT, step: "done", on: ON });
const spin = (on: Bench, visit: string, word: string) =>
  reply(on.journal, visit, key("hub.spin", "FR", "feel"), words(word));
const float = (on: Bench, visit: string, value: string) =>
  reply(on.journal, visit, key("hub.float", "FR", "play"), mm(value));
const lines = (on: Awaited<ReturnType<typeof handing>>, later: Parameters<typeof releaseView>[3] = []) =>
  releaseView(on, [], [], later).against.map(({ weight, second }) => `${weight}: ${second}`);

test("[RL6] a bad reading taken after the job refuses, and says what it was; before the job it is no new reading", async () => {
  const on = bench();
  const { car, visit } = await outboard(on);
  await spin(on, visit, "rough");
  await float(on, visit, "0.9");
  await done(on, visit);
  expect(lines(await handing(on, visit))).toContain("refuses: Done: answer again Float");
  await float(on, visit, "0.9");
  const bad = lines(await handing(on, visit));
  expect(bad).toContain("refuses: Done, and not in order when answered again: Float, Front right: 0.9 mm, Dangerous");
  expect(bad.join()).not.toContain("answer again Float");
  await fact(on.journal, car, "brakes", null);
  expect(lines(await handing(on, visit)).join()).toContain("0.9 mm, half answered, contradicted, not judged");
  await fact(on.journal, car, "brakes", "outboard");
  await float(on, visit, "0.02");
  expect(lines(await handing(on, visit)).join()).not.toContain("Float");
});

test("[RL6] a later visit counts by its own judgement: bad it refuses, not judged it proves nothing", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  await done(on, visit);
  const { visit: next } = await outboard(on);
  await float(on, next, "0.3");
  const [later, here] = [await handing(on, next), await handing(on, visit)];
  expect(lines(here, [later])).toContain(
    "refuses: Done, and not in order when answered again: Float, Front right: 0.3 mm, Major",
  );
  expect(lines(here, [{ visit: later.visit, assessment: undefined }]).join()).toContain("not judged or set aside");
});

test("[RL6] what only a technician is asked refuses in an owner's visit too", async () => {
  const on = bench();
  const { visit } = await benchVisit(on, "owner");
  await done(on, visit);
  expect(lines(await handing(on, visit))).toContain(
    "refuses: Done; whoever made this visit is not asked for Float: a technician answers it, in a visit of the workshop",
  );
});

test("[RL3] a note why driving away is unproven does not outlive work done after it; no such gate is told", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const unproven = async () => {
    const { assessment, ...laid } = await handing(on, visit);
    const gates = assessment.gates.map((one) => ({ ...one, guards: "drive-away", state: "not cleared" as const }));
    return lines({ ...laid, assessment: { ...assessment, gates } }).filter((line) => line.includes("nproven"));
  };
  await done(on, visit);
  expect(lines(await handing(on, visit)).join()).toContain("ask nothing of brakes, wheels and fuel");
  await note(on.journal, visit, "Looked at by hand", { point: "gate.road" });
  expect(await unproven()).toEqual(["told: Passed unproven, with a reason noted"]);
  await done(on, visit);
  expect(await unproven()).toEqual([
    "refuses: Noted as unproven before work was done: look at what it asks for, or note it anew",
  ]);
});
