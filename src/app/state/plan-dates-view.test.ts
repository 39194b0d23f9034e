/**
 * The August case told in words. Worked by hand on the calendar of 2027, where 1 July is a Thursday:
 * ordered Wed 28 Jul: 29, 30 Jul are two days, then shut; 1 to 10 Sep (less Sat 4, Sun 5) are eight: here Fri 10 Sep.
 * Ordered Fri 16 Jul: 19 to 23 and 26 to 30 Jul are ten: here Fri 30 Jul, the last day before it shuts.
 */
import { expect, test } from "vitest";
import { AUGUST, august, LAY, MAIN, STORES } from "../../../tests/support/august.js";
import { dayWords } from "../texts/days.js";
import { expectedWords, nextSteps, standsWords, wayOf } from "./part-way.js";
import { finishTold, gainsTold, holdsTold, isHeldByMany, ordersTold, undatedTold } from "./plan-dates-view.js";
import { beforeShut, expectedOf, partnersOf, partsOf, refusedAlone } from "./plan-part-view.js";
import { partGroups } from "./plan-parts-view.js";
import { spanTold } from "./plan-span-view.js";

const FROM_STORES = { count: 1, supplier: STORES.id };
const gears = () =>
  august({ ...FROM_STORES, name: "Third gear" }, { ...FROM_STORES, name: "Its mate", counterpart: MAIN.part });

test("a day is written with its weekday and moves with no zone", () => {
  expect(dayWords("2027-07-28")).toMatch(/^Wed 28 Jul 2027$/);
  expect(dayWords("2027-09-10")).toMatch(/^Fri 10 Sept? 2027$/);
});

test("the gear can't be ordered alone: its mate is named; together, or with a reason, it can", async () => {
  const day = await (await gears()).at("2027-07-28");
  const [main, lay] = partsOf(day, "own.gears@car");
  if (!main || !lay) throw new Error("both parts are there");
  expect(refusedAlone(day, [main])).toEqual([{ part: "Third gear", counterparts: ["Its mate"] }]);
  expect(refusedAlone(day, [main, lay])).toEqual([]);
  expect(refusedAlone(day, [main], "The mate was renewed last year")).toEqual([]);
  expect(partnersOf(day, main).listed.map(({ at }) => at.part)).toEqual([LAY.part]);
});

test("ordered on the day the car comes it waits through August; ordered by 16 July it beats the shut weeks", async () => {
  const gear = await gears();
  const late = await gear.at("2027-07-28");
  const [main] = partsOf(late, "own.gears@car");
  if (!main) throw new Error("the gear is there");
  expect(expectedOf(main, "2027-07-28")).toMatchObject({ comes: "2027-09-10", through: [AUGUST] });
  expect(expectedOf(main, "2027-07-16")).toMatchObject({ comes: "2027-07-30", through: [] });
  expect(beforeShut(main, "2027-07-12")).toEqual({ orderBy: "2027-07-16", closed: AUGUST });
  expect(beforeShut(main, "2027-07-28")).toBeUndefined();
  expect(expectedWords(main, "2027-07-28").join(" ")).toContain(dayWords("2027-09-10"));
  expect(expectedWords(main, "2027-07-12").join(" ")).toContain(
    `Ordered by ${dayWords("2027-07-16")} it is sent before Gear stores shuts`,
  );
});

test("what holds the car up is the part, with its days and the shut weeks it waits through", async () => {
  const day = await (await gears()).at("2027-07-28");
  const { schedule } = day.plan;
  expect(finishTold(schedule)?.title).toBe(`Ready ${dayWords("2027-09-10")}`);
  const hold = holdsTold(day, schedule).find((one) => !("inside" in one) && one.id.startsWith("part "));
  if (!hold || "inside" in hold) throw new Error("a part holds it up");
  expect(hold.title).toMatch(/^(Third gear|Its mate) holds it up$/);
  expect(hold.says).toContain(dayWords("2027-09-10"));
  expect(hold.says).toContain("10 working days");
  expect(hold.says).toMatch(/Gear stores is shut 1 Aug – 31 Aug 2027/);
  // Needed on 10 Sep: 10, 9, 8, 7, 6, 3, 2, 1 Sep, 30 and 29 Jul are ten, so Wed 28 Jul is the last day.
  expect(ordersTold(day, schedule).map(({ says }) => says)).toEqual([
    `Order by ${dayWords("2027-07-28")}, needed ${dayWords("2027-09-10")}`,
    `Order by ${dayWords("2027-07-28")}, needed ${dayWords("2027-09-10")}`,
  ]);
  // One of two alone gains nothing: the other still comes on 10 September.
  expect(gainsTold(day, schedule)).toEqual([]);
  expect(isHeldByMany(schedule)).toBe(true);
  // 28 July to 10 September.
  expect(hold.days).toBe("44 days");
  expect(undatedTold(day, day.plan)).toEqual([]);
});

test("ordered before the shut weeks the car is ready on 30 July", async () => {
  const gear = await gears();
  await gear.order("ordered", "2027-07-16");
  const day = await gear.at("2027-07-28", {}, { orderedOn: "2027-07-16" });
  expect(finishTold(day.plan.schedule)?.title).toBe(`Ready ${dayWords("2027-07-30")}`);
  expect(ordersTold(day, day.plan.schedule)).toEqual([]);
  const span = spanTold(day, day.plan.schedule);
  // Wed 28, Thu 29, Fri 30 July, and none of them shut.
  expect(span?.span.days.map(({ day: one, shut }) => [one, shut])).toEqual([
    ["2027-07-28", false],
    ["2027-07-29", false],
    ["2027-07-30", false],
  ]);
  // 8:00 to 14:00 on the third day.
  expect(span?.span.rows[0]?.strokes[0]).toMatchObject({ from: 2 + 8 / 24, to: 2 + 14 / 24, text: "1" });
  expect(span?.lines.at(-1)?.words).toContain(dayWords("2027-07-30"));
});

test("parts stand in the group of what is to be done next, with where each is on its way", async () => {
  const gear = await gears();
  const heads = async (today: string) => {
    const day = await gear.at(today);
    return partGroups(day, day.plan).map(({ id, lines }) => [id, lines.length]);
  };
  expect(await heads("2027-07-12")).toEqual([["order", 2]]);
  await gear.order("ordered", "2027-07-12");
  // No day promised and none to ask: somebody asks.
  expect(await heads("2027-07-13")).toEqual([["overdue", 2]]);
  await gear.order("arrived", "2027-07-26");
  expect(await heads("2027-07-26")).toEqual([["check", 2]]);
  const [main] = partsOf(await gear.at("2027-07-26"), "own.gears@car");
  if (!main) throw new Error("the gear is there");
  expect(wayOf(main).map(({ look }) => look)).toEqual(["done", "open", "here", "open", "open"]);
  expect(wayOf(main)[1]?.spoken).toBe("nobody said");
  expect(standsWords(main.stands)).toBe("Here since 26 Jul, not checked yet");
  expect(nextSteps(main.stands)).toEqual(["checked", "sent-back"]);
});

test("a part nobody says anything of is told to be taken for here; one without a lead gives no day", async () => {
  const day = await (await august({ count: 1, name: "Third gear" }, { count: 1, name: "Its mate" })).at("2027-07-28");
  const [told] = undatedTold(day, day.plan);
  expect(told).toContain("Third gear");
  const [main] = partsOf(day, "own.gears@car");
  if (!main) throw new Error("the gear is there");
  expect(expectedOf(main, "2027-07-28")).toBeUndefined();
});

test("work that only follows on itself is told as one, with its pieces inside; what else holds it up stands alone", async () => {
  const day = await (await gears()).at("2027-07-28");
  const { schedule } = day.plan;
  if (!schedule) throw new Error("there are dates");
  const after = (job: string) => ({ job, cause: "job" as const, by: "own.gears@car" });
  const holds = [after("a@car"), after("b@car"), { ...after("c@car"), cause: "person" as const }, ...schedule.holds];
  const [work, ...rest] = holdsTold(day, { ...schedule, holds });
  expect(work).toMatchObject({ count: 3, inside: [{ id: "job a@car" }, { id: "job b@car" }, { id: "person c@car" }] });
  expect(rest).toEqual(holdsTold(day, schedule));
  expect(holdsTold(day, { ...schedule, holds: holds.slice(1, 3) })).toHaveLength(2);
});
