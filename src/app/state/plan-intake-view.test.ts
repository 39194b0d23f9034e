import { expect, test } from "vitest";
import { until } from "../../../tests/support/app-bench.js";
import { pricedVisit } from "../../../tests/support/priced-visit.js";
import { intake } from "./plan-acts.js";
import { answerOf, answerText, intakeView } from "./plan-intake-view.js";
import { odometer } from "./visit-acts.js";

async function takenIn() {
  const { on, visit, desk, known, tree, now } = await pricedVisit();
  const view = async () => {
    const opened = await until(desk.visit, ({ is }) => is === "open");
    if (opened.is !== "open") throw new Error("the visit is open");
    return intakeView({ known, tree, visit: opened.state, said: (await now()).said, param: "v" });
  };
  return { on, visit, view };
}

test("every corner of this car, the dash, fuel, keys, who drives and who decides are asked, and all are unsaid at first", async () => {
  const { view } = await takenIn();
  const { groups, odometer: read, unsaid } = await view();
  const ids = groups.flatMap(({ items }) => items.map(({ id }) => id));
  expect(ids).toEqual(["corner.FL", "corner.FR", "dash", "fuel", "left", "keys", "drive", "decides"]);
  expect(read.says).toBeUndefined();
  expect(unsaid).toBe(ids.length + 1);
});

test("what is said counts down, the odometer with the visit's own figure", async () => {
  const { on, visit, view } = await takenIn();
  const before = (await view()).unsaid;
  await intake(on.journal, visit, "keys", "Two");
  await odometer(on.journal, visit, { value: "61240", unit: "km" });
  const now = await view();
  expect(now.unsaid).toBe(before - 2);
  expect(now.odometer.says).toBe("61\u202f240 km");
  await intake(on.journal, visit, "keys", null);
  expect((await view()).unsaid).toBe(before - 1);
});

test("a short answer and own words are one answer, taken apart and put together alike", () => {
  const answers = ["Nothing", "Things"];
  const says = (text: string) => ({ answers, says: text });
  for (const text of ["Nothing", "Things: a coat", "a dog", "Things: a box: blue"])
    expect(answerText(answerOf(says(text)))).toBe(text);
  expect(answerOf(says("Things: a coat"))).toEqual({ short: "Things", own: "a coat" });
  expect(answerOf({ answers })).toEqual({ own: "" });
  expect(answerText({ own: "  " })).toBeNull();
});
