import { expect, test } from "vitest";
import { BEARING, EUROS, JOB, pricedVisit, TODAY } from "../../../tests/support/priced-visit.js";
import { jobStep, partSteps, planPart, planScope } from "./plan-acts.js";
import {
  apartAfter,
  apartRows,
  notAgreed,
  scopeOf,
  scopeTold,
  spentOf,
  spentRows,
  typedHours,
  unknownLines,
} from "./plan-scope-view.js";

const NONE = { apart: [], leftOut: [] };

test("what the plan opens stands first, and choosing it chooses what it needs open", async () => {
  const { now, known } = await pricedVisit();
  const { input } = await now();
  const rows = apartRows(known, input, NONE);
  expect(rows.map(({ id, isChosen }) => [id, isChosen])).toEqual([
    ["wheel-off", false],
    ["hub-off", false],
  ]);
  expect(rows[1]?.second).toMatch(/^in the plan; needs .+ open first$/);
  expect(apartAfter(known, NONE, "hub-off")).toEqual(["hub-off", "wheel-off"]);
  expect(apartAfter(known, { ...NONE, apart: ["hub-off", "wheel-off"] }, "hub-off")).toEqual(["wheel-off"]);
  expect(apartAfter(known, { ...NONE, apart: ["hub-off", "wheel-off"] }, "wheel-off")).toEqual([]);
});

test("what the plan opens and nobody agreed to is told once anything is agreed", async () => {
  const { now, known } = await pricedVisit();
  const { input } = await now();
  expect(notAgreed(known, input, NONE)).toEqual([]);
  expect(notAgreed(known, input, { ...NONE, apart: ["wheel-off"] })).toHaveLength(1);
  expect(notAgreed(known, input, { ...NONE, apart: ["wheel-off", "hub-off"] })).toEqual([]);
});

test("hours are typed as a clock or with a decimal sign", () => {
  expect(["3:30", "3.5", "3,5", " 3 ", "0:05"].map(typedHours)).toEqual([210, 210, 210, 180, 5]);
  expect(["3:70", "half", "", "-1", "3.555"].map(typedHours)).toEqual(Array(5).fill(undefined));
});

test("four fifths of the hours spent is stop and ask, all of them is stop", async () => {
  const { on, visit, now } = await pricedVisit();
  await planScope(on.journal, visit, { ...NONE, capMinutes: 100 });
  const at = async (minutes: number) => {
    await jobStep(on.journal, visit, { ...JOB, step: "begun", on: TODAY, minutes });
    const { input, said } = await now();
    return spentOf(input, said);
  };
  expect(scopeTold(await at(79))).toBeUndefined();
  expect(scopeTold(await at(1))).toEqual({
    title: "Stop and ask: four fifths of what was agreed are spent (hours)",
    says: "Go on once whoever decides has agreed to more.",
  });
  const all = await at(20);
  expect(scopeTold(all)?.title).toBe("Stop: what was agreed is spent (hours)");
  expect(spentRows(await at(20), EUROS)[0]?.says).toBe("2.0 h of 1.7 h, 20 min over");
});

test("a job begun that nobody timed makes the spending not known, which asks too", async () => {
  const { on, visit, now } = await pricedVisit();
  await planScope(on.journal, visit, { ...NONE, capMinutes: 100 });
  await jobStep(on.journal, visit, { ...JOB, step: "begun", on: TODAY });
  const { telling, input, said } = await now();
  const spent = spentOf(input, said);
  expect(scopeTold(spent)?.title).toBe("Stop and ask: what is spent is not known (hours)");
  expect(spentRows(spent, EUROS).map(({ says }) => says)).toEqual([
    "not known; 0 min at least, of 1.7 h",
    "not known without your rates",
  ]);
  expect(unknownLines(telling, said, spent.spent)).toEqual([
    "Nobody told how long it took: Renew the bearing, Front right.",
  ]);
});

test("ordered parts count at their likely price with tax; without a price the money is not known", async () => {
  const { on, visit, sayTerms, now } = await pricedVisit();
  await sayTerms();
  await planScope(on.journal, visit, { ...NONE, capMinor: 10_000 });
  await partSteps(on.journal, visit, [{ ...BEARING, step: "ordered", on: TODAY }]);
  const unpriced = await now();
  const open = spentOf(unpriced.input, unpriced.said);
  expect(open.cap.state).toBe("not-known");
  expect(unknownLines(unpriced.telling, unpriced.said, open.spent)).toEqual([
    "Ordered or here without a price: Bearing (Renew the bearing, Front right).",
  ]);
  await planPart(on.journal, visit, BEARING, { count: 1, price: [5000, 7000, 9000] });
  const { input, said } = await now();
  const priced = spentOf(input, said);
  // 70 and a fifth are 84 of 100
  expect(spentRows(priced, EUROS)[1]?.says).toBe("€84.00 of €100.00, €16.00 left");
  expect(priced.cap.state).toBe("ask");
});

test("what is left out stands with why, and a later word replaces the whole", async () => {
  const { on, visit, now } = await pricedVisit();
  await planScope(on.journal, visit, { ...NONE, leftOut: [{ what: "gearbox", why: "not paid for" }] });
  const said = scopeOf((await now()).said);
  await planScope(on.journal, visit, { ...said, capMinutes: 90 });
  expect(scopeOf((await now()).said)).toEqual({
    apart: [],
    capMinutes: 90,
    leftOut: [{ what: "gearbox", why: "not paid for" }],
  });
});
