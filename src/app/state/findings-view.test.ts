import { expect, test } from "vitest";
import { bench, benchVisit, key, until, words } from "../../../tests/support/app-bench.js";
import { keyText, type ReplyKey, type ReplyValue } from "../../core/terms/index.js";
import type { Telling } from "./because.js";
import { fact } from "./car-edits.js";
import { cautionLines, gateLine } from "./cautions-view.js";
import { findingsView, findingView } from "./findings-view.js";
import { differLines, historyView } from "./history-view.js";
import { reply, replyAll, undo } from "./reply-acts.js";
import { settle } from "./visit-acts.js";
import { jobView, workLines } from "./work-view.js";

/** A judged visit with these replies. */
async function judged(replies: readonly (readonly [ReplyKey, ReplyValue])[], brakes = "outboard") {
  const on = bench();
  const { car, visit } = await benchVisit(on);
  await until(on.journal.car(car), ({ is }) => is === "open");
  await fact(on.journal, car, "brakes", brakes);
  const desk = on.desk(visit);
  for (const [at, value] of replies) await reply(on.journal, visit, at, value);
  desk.judge();
  const [known, tree, assessment, opened] = [
    await until(desk.known, (now) => now !== undefined),
    await until(desk.tree, (now) => now !== undefined),
    await until(desk.assessment, (now) => now !== undefined && now.points.length > 0),
    await until(desk.visit, ({ is }) => is === "open"),
  ];
  if (!known || !tree || !assessment || opened.is !== "open") throw new Error("the bench is laid out");
  const telling: Telling = { known, who: "technician", visit: "v", car: "c", pictures: opened.state.pictures };
  return { on, visit, desk, known, tree, assessment, state: opened.state, telling };
}
const rough = [key("hub.spin", "FR", "feel"), words("rough")] as const;
const float = (value: string) =>
  [key("hub.float", "FR", "play"), { type: "reading", values: [value], unit: "mm" }] as const;

test("counts, one plain sentence, the worst first, and what was not looked at never counts as sound", async () => {
  const { telling, assessment } = await judged([rough, float("0.9")]);
  const view = findingsView(telling, assessment);
  expect(view.lines.map(({ title, mark, second }) => [title, mark, second])).toEqual([
    ["Too much play.", "dangerous", "Front right"],
    ["The race breaks up.", "minor", "Front right. Likely"],
  ]);
  const counts = Object.fromEntries(view.counts.map(({ mark, count }) => [mark, count]));
  expect(counts).toMatchObject({ dangerous: 1, minor: 1, sound: 0 });
  expect(view.unseen).toHaveLength(counts["not-looked"] ?? -1);
  expect(view.sentence).toBe(`1 thing is dangerous. ${view.unseen.length} points not looked at.`);
  expect(view.notEnough).toBe(true);
});

test("nothing looked at is told as that, not as nothing wrong", async () => {
  const { telling, assessment } = await judged([]);
  expect(findingsView(telling, assessment)).toMatchObject({ anythingSeen: false, lines: [] });
});

test("the because runs from what was felt and measured over the limit and its basis to the grade", async () => {
  const { telling, assessment } = await judged([rough, float("0.9")]);
  const view = findingView(telling, assessment, "hub.play", "FR");
  expect(view?.steps.map(({ kind, says, aside }) => [kind, says, aside])).toEqual([
    ["Measured", "Float: 0.9 mm", undefined],
    ["Car", "Brakes: in the wheels", undefined],
    ["Limit", "over 0.80 mm: dangerous. 0.90 ± 0.03 mm", "common practice, a default"],
    ["So", "dangerous, certain", undefined],
  ]);
  expect(view?.steps[0]?.href).toBe("#/visit/v/round/w7-hang/FR/hub.float");
  expect(view?.steps[2]?.href).toBe("#/car/c/limits/lim.float");
  expect(findingView(telling, assessment, "hub.play", "FL")).toBeUndefined();
});

test("below certain, the trace ends with what would settle it", async () => {
  const { telling, assessment } = await judged([rough]);
  const steps = findingView(telling, assessment, "hub.race", "FR")?.steps ?? [];
  expect(steps.filter(({ kind }) => kind === "To settle it").map(({ says }) => says)).toContain("Noise");
});

test("what would settle more is one row a point: where it waits, how many findings it decides, the gravest first", async () => {
  const { telling, assessment } = await judged([rough]);
  const waits = (point: string, place: string, ...decides: readonly string[]) => ({
    point,
    place,
    because: decides[0] ?? "",
    decides,
    closer: false,
  });
  const corners = ["FL", "FR", "axle-F"].map((place) => waits("hub.float", place, "hub.r2"));
  const settle = [waits("hub.float", "FL", "hub.r2", "hub.r1"), waits("hub.noise", "car", "hub.r1"), ...corners];
  expect(findingsView(telling, { ...assessment, settle }).settle).toEqual([
    {
      id: "hub.float",
      title: "Float",
      places: "Front left, Front right and 1 more",
      second: "Front left, Front right and 1 more. Would decide 2 findings: Too much play. · The race breaks up.",
      href: "#/visit/v/round/w7-hang/FL/hub.float",
    },
    {
      id: "hub.noise",
      title: "Noise",
      second: "Would decide 1 finding: The race breaks up.",
      href: "#/visit/v/round/w0-talk/car/hub.noise",
    },
  ]);
});

test("a reading too close to call leads back to its own screen", async () => {
  const { telling, assessment } = await judged([float("0.26")]);
  const view = findingView(telling, assessment, "hub.play", "FR");
  expect(view).toMatchObject({ close: true, mark: "major" });
  expect(view?.measureAgain).toBe("#/visit/v/reading/w7-hang/FR/hub.float/play");
});

test("a job says what is done, why it stands here, what comes apart, what is renewed together", async () => {
  const { telling, tree, desk } = await judged([rough]);
  const jobs = desk.jobs.value;
  expect(workLines(telling, jobs)).toMatchObject([
    { number: 1, title: "Renew the bearing, Front right", hours: "0.5–1.5 h" },
  ]);
  const view = jobView(telling, tree, jobs, { job: "job.hub.renew", place: "FR" }, desk.above);
  expect(view).toMatchObject({
    does: "New bearing.",
    access: ["Hub off"],
    parts: [{ words: "Bearing", second: "renewed together: Both races together" }],
    consumables: ["Grease"],
    after: ["Float"],
    lookToo: "While it is apart, look at Front left",
    faults: [{ title: "The race breaks up.", second: "Front right" }],
  });
  expect(view?.why[0]).toMatch(/\.$/);
  expect(jobView(telling, tree, jobs, { job: "job.hub.renew", place: "FL" }, desk.above)).toBeUndefined();
});

test("a tripped gate tells what tripped it and its danger; one not cleared only what comes first", async () => {
  const tripped = await judged([rough]);
  const [gate] = tripped.assessment.gates;
  if (!gate) throw new Error("the small sheets have a gate");
  const line = gateLine(tripped.telling, gate, tripped.state);
  expect(line).toMatchObject({ state: "tripped", stateWords: "Stopped", says: "Do not drive." });
  expect(line.href).toBe("#/visit/v/gate/gate.road");
  expect(line.cautions.map(({ word, not }) => [word, not])).toEqual([["Danger", "Do not drive."]]);
  const open = await judged([]);
  const [shut] = open.assessment.gates;
  if (!shut) throw new Error("the small sheets have a gate");
  const first = gateLine(open.telling, shut, open.state);
  expect(first).toMatchObject({ state: "not-cleared", says: "Spin the wheels by hand.", cautions: [] });
  expect(first.first.map(({ words }) => words)).toEqual(["Spin, Front left", "Spin, Front right"]);
});

test("cautions stand worst signal first, with where and when the owner was told", async () => {
  const { known, assessment, state } = await judged([rough]);
  expect(cautionLines(known, assessment.cautions, state.told)).toMatchObject([
    { signal: "danger", not: "Do not drive.", places: "Here: Front right." },
  ]);
});

test("what was entered is told newest first, undone in steps and brought back", async () => {
  const { on, visit, known, desk } = await judged([rough]);
  await replyAll(
    on.journal,
    visit,
    ["FL", "FR"].map((place) => ({ key: key("hub.spin", place, "feel"), value: words("tight") })),
  );
  const writer = await until(on.journal.writer, (now) => now !== undefined);
  const view = () => {
    const opened = desk.visit.value;
    if (opened.is !== "open" || writer === undefined) throw new Error("the visit is open");
    return historyView(known, "technician", opened.state, writer);
  };
  expect(
    view()
      .undo.slice(0, 2)
      .map(({ title }) => title),
  ).toEqual(["Spin, Front left: tight +1", "Spin, Front right: rough"]);
  const [last] = view().undo;
  if (last) await undo(on.journal, visit, last.step);
  expect(view().undo[0]?.title).toBe("Spin, Front right: rough");
  expect(view().redo.map(({ title }) => title)).toEqual(["Spin, Front left: tight +1"]);
});

test("two people who differ are both shown with their names until someone settles it", async () => {
  const { on, visit, known } = await judged([rough]);
  // Jorin's window had not seen the visit move on: his reply replaces nothing of hers.
  const other = bench(on.world, { id: "p2", name: "Jorin" });
  const before = await until(other.journal.keptVisit(visit), ({ is }) => is === "open");
  const { draftReply, foldVisit } = await import("../../core/record/index.js");
  const unseen = { ...foldVisit([]), stream: visit };
  await other.journal.keep("a-reply", (act) => ({ drafts: [draftReply(act, unseen, rough[0], words("tight"))] }));
  const now = await until(
    on.journal.visit(visit),
    (opened) => opened.is === "open" && opened.state.replies.get(keyText(rough[0]))?.differ === true,
  );
  if (now.is !== "open" || before.is !== "open") throw new Error("the visit is open");
  const [line] = differLines(known, "technician", now.state);
  expect(line?.replies.map(({ says, by }) => [says, by.split(",")[0]])).toEqual([
    ["rough", "Ines"],
    ["tight", "Jorin"],
  ]);
  const chosen = line?.replies[1]?.id ?? "";
  await settle(on.journal, visit, rough[0], chosen);
  const settled = on.journal.visit(visit).value;
  expect(settled.is === "open" && differLines(known, "technician", settled.state)).toEqual([]);
});
