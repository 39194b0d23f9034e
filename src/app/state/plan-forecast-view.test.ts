import { expect, test } from "vitest";
import { BEARING, EUROS, JOB, pricedVisit, TERMS, TODAY } from "../../../tests/support/priced-visit.js";
import { freezeEstimate } from "../../core/plan/index.js";
import { readFirst } from "./first-estimate.js";
import { addition, giveEstimate, jobStep, planMinutes, planPart } from "./plan-acts.js";
import { additionLines, forecastTold, givenLines, type SaidAddition } from "./plan-forecast-view.js";

/** One job whose every figure is certain: 60 minutes, 96 of opening and closing, a part of 44; 240 with tax. */
async function given() {
  const visit = await pricedVisit();
  await visit.sayTerms();
  const journal = visit.on.journal;
  await planMinutes(journal, visit.visit, { ...JOB, minutes: [60, 60, 60] });
  await planPart(journal, visit.visit, BEARING, { count: 1, price: [8400, 8400, 8400], pricedOn: TODAY });
  const give = async (on = TODAY) => {
    const { plan } = await visit.now();
    const frozen = plan.estimate && freezeEstimate(plan.estimate, on);
    if (!frozen?.ok) throw new Error("the estimate can be given");
    await giveEstimate(journal, visit.visit, { estimate: frozen.value, on });
  };
  const add = (said: Omit<SaidAddition, "addition">) =>
    addition(journal, visit.visit, (name) => ({ addition: name, ...said }));
  return { ...visit, journal, give, add };
}
const ADDED = { words: "The hub as well", reason: "The race turned in it" } as const;
const AGREED = { who: "The owner", how: "by telephone", on: TODAY };
const told = async (of: Awaited<ReturnType<typeof given>>) => {
  const got = forecastTold(await of.now(), EUROS);
  if (!got || "trouble" in got) throw new Error("there is a forecast");
  return got;
};

test("the first estimate given stays the first, however many follow", async () => {
  const of = await given();
  await of.give();
  const [first] = givenLines((await of.now()).said, EUROS);
  await planPart(of.journal, of.visit, BEARING, { count: 1, price: [9400, 9400, 9400], pricedOn: TODAY });
  await of.give("2026-11-28");
  const lines = givenLines((await of.now()).said, EUROS);
  expect(lines).toHaveLength(2);
  expect(lines[0]).toEqual(first);
  expect(lines.map(({ title }) => title)).toEqual(["First given on 27 Nov 2026", "Given again on 28 Nov 2026"]);
});

test("a kept estimate of a shape this version does not know is told, never guessed at", async () => {
  const of = await given();
  await giveEstimate(of.journal, of.visit, { estimate: { kind: "first-estimate/9", told: "p80" }, on: TODAY });
  expect(givenLines((await of.now()).said, EUROS).map(({ title, figure }) => [title, figure])).toEqual([
    ["Given on 27 Nov 2026; this version can't read its figures.", undefined],
  ]);
  expect(forecastTold(await of.now(), EUROS)).toBeUndefined();
  for (const odd of [
    null,
    [],
    "x",
    { kind: "first-estimate/1", told: "p80", gross: {}, currency: "EUR", setAside: [] },
  ])
    expect(readFirst(odd)).toBeUndefined();
});

test("an addition nobody agreed to comes on top of the forecast and never of what is agreed", async () => {
  const of = await given();
  await of.give();
  await of.add({ ...ADDED, minutes: [30, 30, 30], price: [0, 0, 0], agreed: null });
  const now = await told(of);
  expect(now.rows.map(({ id }) => id)).toEqual(["first", "present", "open", "whole"]);
  expect(now.rows.find(({ id }) => id === "open")).toMatchObject({ title: "Nobody has agreed to", figure: "€36.00" });
  const [line] = additionLines(await of.now(), EUROS);
  expect(line).toMatchObject({
    isAgreed: false,
    figure: "€36.00",
    lines: ["The race turned in it", "30 min, €0.00", "Nobody has agreed yet"],
  });
});

test("an agreed addition raises what is agreed and what it comes to alike", async () => {
  const of = await given();
  await of.give();
  const before = await told(of);
  await of.add({ ...ADDED, minutes: [30, 30, 30], price: [1000, 1000, 1000], agreed: AGREED });
  const now = await told(of);
  expect(now.rows.map(({ id }) => id)).toEqual(["first", "added", "agreed", "present"]);
  expect(now.rows[1]?.figure).toBe("€48.00");
  expect([before.mark, now.mark, now.says]).toEqual(["within", "within", before.says]);
  const [line] = additionLines(await of.now(), EUROS);
  expect(line?.lines.at(-1)).toBe("The owner, by telephone, 27 Nov 2026");
});

test("what somebody agreed to stays what it came to then, whatever the rates are now", async () => {
  const of = await given();
  await of.give();
  await of.add({ ...ADDED, minutes: [30, 30, 30], price: [0, 0, 0], gross: 3000, agreed: AGREED });
  expect(additionLines(await of.now(), EUROS)[0]?.figure).toBe("€30.00");
  expect((await told(of)).rows.find(({ id }) => id === "added")?.figure).toBe("€30.00");
});

test("a tenth over and a fifth over what is agreed are told as what to do", async () => {
  const of = await given();
  await of.give();
  const first = (await of.now()).plan.estimate?.gross.p80 ?? 0;
  const over = (part: number) => Math.ceil((first * part) / 1.2);
  await planPart(of.journal, of.visit, BEARING, {
    count: 1,
    price: [8400 + over(0.1), 8400 + over(0.1), 8400 + over(0.1)],
    pricedOn: TODAY,
  });
  const tenth = await told(of);
  expect([tenth.mark, tenth.verdict]).toEqual([
    "over-10",
    "A tenth or more over what is agreed. Tell whoever decides before going on.",
  ]);
  expect(tenth.says).toMatch(/^€[\d.]+ over what is agreed, 10 %\.$/);
  await planPart(of.journal, of.visit, BEARING, {
    count: 1,
    price: [8400 + over(0.2), 8400 + over(0.2), 8400 + over(0.2)],
    pricedOn: TODAY,
  });
  expect((await told(of)).mark).toBe("over-20");
});

test("work that is done stays in what it comes to, with the time it took", async () => {
  const of = await given();
  await of.give();
  await jobStep(of.journal, of.visit, { ...JOB, step: "done", on: TODAY, minutes: 300 });
  const now = await told(of);
  // five hours and the part of 84, and a fifth: 460.80
  expect(now.rows.find(({ id }) => id === "present")?.figure).toBe("€460.80");
  expect(now.mark).toBe("over-20");
  expect(now.remarks).toEqual([]);
});

test("work that is done and that nobody timed stands with its planned time, which is told", async () => {
  const of = await given();
  await of.give();
  const before = (await told(of)).rows.find(({ id }) => id === "present")?.figure;
  await jobStep(of.journal, of.visit, { ...JOB, step: "done", on: TODAY });
  const now = await told(of);
  expect(now.rows.find(({ id }) => id === "present")?.figure).toBe(before);
  expect(now.remarks).toEqual([
    "Nobody told how long it took, so the planned time stands: Renew the bearing, Front right.",
  ]);
});

test("a first estimate in another currency can't be compared, and that is said", async () => {
  const of = await given();
  await of.give();
  await of.sayTerms({ ...TERMS, currency: "CHF" });
  expect(forecastTold(await of.now(), { ...EUROS, currency: "CHF" })).toEqual({
    trouble: "The first estimate is in another currency; it can't be compared.",
  });
});
