/** When the round may leave a completed point by itself. */
import { expect, test } from "vitest";
import { bench, benchVisit, key, miniKnowledge, until, words } from "../../../tests/support/app-bench.js";
import { reply } from "./reply-acts.js";
import { ALL_FIELDS } from "./standing.js";
import { isAllSaid } from "./stops.js";

const NOISE = { point: "hub.noise", place: "car", state: "w0-talk" };

async function saying() {
  const on = bench();
  const { visit } = await benchVisit(on);
  const desk = on.desk(visit);
  await until(desk.known, (known) => known !== undefined);
  return {
    say: (field: string, value: Parameters<typeof reply>[3]) =>
      reply(on.journal, visit, key(NOISE.point, NOISE.place, field, NOISE.state), value),
    left: () => {
      const opened = desk.visit.value;
      if (opened.is !== "open") throw new Error("the visit is open");
      return isAllSaid(miniKnowledge(), opened.state.replies, NOISE);
    },
  };
}

test("nothing unusual was said: what may be added is not waited for", async () => {
  const { say, left } = await saying();
  await say("heard", words("none"));
  expect(left()).toBe(true);
});

test("something was said: the point stays until its last field is answered, or is given up", async () => {
  const { say, left } = await saying();
  await say("heard", words("hum"));
  expect(left()).toBe(false);
  await say("age", { type: "count", count: 12 });
  expect(left()).toBe(false);
  await say("air", { type: "reading", values: ["2.1"], unit: "bar" });
  expect(left()).toBe(true);
});

test("a point given up with its reason is left", async () => {
  const { say, left } = await saying();
  await say(ALL_FIELDS, { type: "non-answer", nonAnswer: "not-reached", reason: "no-time" });
  expect(left()).toBe(true);
});
