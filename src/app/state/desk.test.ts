import { expect, test, vi } from "vitest";
import { bench, benchVisit, key, miniComplaints, miniShelf, until, words } from "../../../tests/support/app-bench.js";
import { planUse } from "./plan-acts.js";
import { reply } from "./reply-acts.js";
import { complaint, note, regrade } from "./visit-acts.js";

test("a visit without a reply is laid out but not judged until someone asks", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await until(desk.known, (known) => known !== undefined);
  expect(desk.assessment.value).toBeUndefined();
  desk.judge();
  const judged = await until(desk.assessment, (now) => now !== undefined);
  expect(judged?.findings).toEqual([]);
});

test("each kept reply is judged, and the jobs follow", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await until(desk.known, (known) => known !== undefined);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  await until(desk.assessment, (now) => (now?.faults.length ?? 0) > 0);
  expect(desk.assessment.value?.faults).toMatchObject([{ fault: "hub.race", place: "FR", grade: "minor" }]);
  expect(desk.jobs.value).toMatchObject([{ job: "job.hub.renew", place: "FR" }]);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("smooth"));
  await until(desk.assessment, (now) => now?.faults.length === 0);
  expect(desk.jobs.value).toEqual([]);
});

test("complaint words are fetched with the first complaint, and put its points first", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const fetching = vi.fn(async () => miniComplaints);
  const desk = on.desk(visit, { ...miniShelf(), complaints: { en: fetching } });
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  await until(desk.assessment, (now) => (now?.faults.length ?? 0) > 0);
  expect(desk.known.value).not.toHaveProperty("complaints");
  expect(fetching).not.toHaveBeenCalled();
  await complaint(on.journal, visit, "it hums", "sym.hum");
  const judged = await until(desk.assessment, (now) => (now?.suggested.length ?? 0) > 0);
  expect(judged?.suggested[0]).toEqual({ point: "hub.spin", place: "FL", because: "sym.hum" });
  expect(judged?.faults).toMatchObject([{ fault: "hub.race", place: "FR" }]);
  expect(desk.known.value?.complaints).toEqual(miniComplaints);
  await complaint(on.journal, visit, "it still hums", "sym.hum");
  expect(fetching).toHaveBeenCalledOnce();
});

test("complaint words that can't be fetched are told, and the visit is judged without them", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const shelf = { ...miniShelf(), complaints: { en: () => Promise.reject(new Error("nothing there")) } };
  const desk = on.desk(visit, shelf);
  await complaint(on.journal, visit, "it hums", "sym.hum");
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  await until(desk.assessment, (now) => (now?.faults.length ?? 0) > 0);
  expect(desk.trouble.value).toMatchObject({ code: "app.mistake" });
});

test("what is not kept is shown but never judged", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await until(desk.known, (known) => known !== undefined);
  desk.judge();
  await until(desk.assessment, (now) => now !== undefined);
  on.refuse = true;
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  const shown = desk.visit.value;
  expect(shown.is === "open" && shown.state.replies.size).toBe(1);
  expect(desk.assessment.value?.faults).toEqual([]);
});

test("a grade by hand stands over the rules' own and can be given back", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await until(desk.known, (known) => known !== undefined);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  await until(desk.assessment, (now) => (now?.faults.length ?? 0) > 0);
  await regrade(on.journal, visit, "hub.race", "FR", "major", "heard it on the road");
  await until(desk.assessment, (now) => now?.faults[0]?.grade === "major");
  expect(desk.assessment.value?.faults[0]?.byHand).toMatchObject({ was: "minor", reason: "heard it on the road" });
  await regrade(on.journal, visit, "hub.race", "FR", null, "");
  await until(desk.assessment, (now) => now?.faults[0]?.grade === "minor");
});

test("a visit whose frozen sheet is gone says so", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  await note(on.journal, visit, "kept", {});
  on.world.data.blobs.clear();
  const desk = on.desk(visit);
  const trouble = await until(desk.trouble, (now) => now !== undefined);
  expect(trouble?.code).toBe("app.frozen-missing");
});

test("jobs are ordered by how the plan says the car is used, and anew when it is said otherwise", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  const why = (): readonly string[] => desk.jobs.value[0]?.why.map(({ code }) => code) ?? [];
  await until(desk.jobs, (jobs) => jobs.length > 0);
  expect(why().filter((code) => code.startsWith("exposure"))).toEqual([]);
  await planUse(on.journal, visit, "hard");
  expect(why()).toContain("exposure.hard");
  await planUse(on.journal, visit, "laid-up");
  expect(why()).toContain("exposure.laid-up");
  await planUse(on.journal, visit, null);
  expect(why().filter((code) => code.startsWith("exposure"))).toEqual([]);
});

test("the plan is not read before jobs are asked for", async () => {
  const on = bench();
  const { visit } = await benchVisit(on);
  const asked = vi.spyOn(on.journal, "keptPlan");
  const desk = on.desk(visit);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  await until(desk.assessment, (now) => (now?.faults.length ?? 0) > 0);
  expect(asked).not.toHaveBeenCalled();
  expect(desk.jobs.value).toHaveLength(1);
  expect(asked).toHaveBeenCalledWith(visit);
});
