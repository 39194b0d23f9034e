// HO45, HO22, HO70: what is looked at again stands among the days once, in every form.
import { describe, expect, it } from "vitest";
import { fault, job, soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { handover } from "./build.js";
import { factsOf, missingFacts } from "./facts.js";
import { toHtml } from "./html.js";
import { toIcs } from "./ics.js";
import type { DateTold, HandoverInput, JobTold, LookTold } from "./input.js";
import { handoverPages } from "./pages.js";
import { toText } from "./text.js";

const SOON: LookTold = {
  id: "look-0",
  on: "2031-05-20",
  odometer: { value: 84_260, unit: "km" },
  of: [
    { is: "job", title: "Hub renewed", where: "front right" },
    { is: "recheck", title: "Wheel nuts", where: "front right", date: "recheck wheel-nuts" },
  ],
};
const LATER: LookTold = {
  id: "look-5",
  on: "2031-11-03",
  of: [
    {
      is: "finding",
      title: "Play in the wheel bearing",
      where: "rear right",
      fault: { fault: "whl.play", place: "RR" },
    },
    { is: "wear", title: "Lining", where: "front left" },
  ],
};
const NUTS: DateTold = {
  id: "recheck wheel-nuts",
  is: "re-torque",
  words: "Wheel nuts",
  on: "2031-05-12",
  distance: { value: 50, unit: "km" },
};
const input = (more: Partial<HandoverInput>): HandoverInput =>
  soundVisit({ looks: [SOON, LATER], dates: [NUTS], ...more });
const dates = (more: Partial<HandoverInput>) =>
  handover(input(more)).dates.flatMap(({ id, words }) => (id.startsWith("date:") ? [] : [`${id} ${words}`]));

describe("HO45 looks among the days to think of", () => {
  it("is one entry a visit, nearest first, without the check that stands there by itself", () => {
    expect(dates({})).toEqual([
      "look:look-0 Hub renewed, front right",
      "look:look-5 Play in the wheel bearing, rear right; Lining, front left",
    ]);
  });
  it("keeps a check of an earlier visit, which stands nowhere else", () => {
    expect(dates({ dates: [] })[0]).toBe("look:look-0 Hub renewed, front right; Wheel nuts, front right");
  });
  it("keeps a finding whose look is nearer than its work, by day or by distance", () => {
    const found = { faults: [fault({ jobs: ["job.whl.bearing@RR"] })] };
    const kept = "look:look-5 Play in the wheel bearing, rear right; Lining, front left";
    const last = (byWhen: Partial<JobTold["byWhen"]>, look: Partial<LookTold>) =>
      dates({ ...found, jobs: [job({ byWhen: { class: 3, ...byWhen } })], looks: [SOON, { ...LATER, ...look }] }).find(
        (one) => one.startsWith("look:look-5"),
      );
    const told = "look:look-5 Lining, front left";
    expect(last({ date: "2031-11-04" }, {})).toBe(kept);
    const at = { odometer: { value: 87_210, unit: "km" } };
    const way = (value: number) => ({ distance: { value, unit: "km" } });
    expect(last({ date: "2031-11-03" }, at)).toBe(kept);
    expect(last({ date: "2031-11-03", ...way(3000) }, at)).toBe(told);
    expect(last({ date: "2031-11-03", ...way(3100) }, at)).toBe(kept);
    // The day is only what the distance comes to.
    expect(last({ date: "2031-12-01", ...way(3000) }, { ...at, isByUse: true })).toBe(told);
    expect(last(way(3000), at)).toBe(kept);
  });
  it("says that a look is overdue, and puts it into the calendar at the day it is made", () => {
    const overdue: LookTold = { ...LATER, on: "2031-01-10", isOverdue: true };
    const model = handover(input({ looks: [overdue] }));
    const text = toText(handoverPages(model, WORDS), WORDS);
    expect(text).toContain("Look again, overdue: Play in the wheel bearing, rear right; Lining, front left");
    const ics = toIcs(model, WORDS).replace(/\r\n /g, "");
    expect(ics).toContain("DTSTART;VALUE=DATE:20310504\r\nDTEND;VALUE=DATE:20310505\r\nSUMMARY:Look again\\, overdue");
    const unread = toIcs({ ...model, madeAt: "some day" }, WORDS);
    expect(unread).toContain("DTSTART;VALUE=DATE:20310110");
  });
  it("leaves out a finding whose open work has a figure, and keeps it where that work was declined or has none", () => {
    const found = { faults: [fault({ jobs: ["job.whl.bearing@RR"] })] };
    const due = job({ byWhen: { class: 3, date: "2031-11-03" } });
    expect(dates({ ...found, jobs: [due] }).find((one) => one.startsWith("look:look-5"))).toBe(
      "look:look-5 Lining, front left",
    );
    const kept = "look:look-5 Play in the wheel bearing, rear right; Lining, front left";
    expect(dates({ ...found, jobs: [{ ...due, decision: { is: "no" } }] })).toContain(kept);
    expect(dates({ ...found, jobs: [job()] })).toContain(kept);
  });
  it("tells wear by itself only where looks were not worked out", () => {
    const worn = {
      id: "lining@FL",
      title: "Lining",
      where: "front left",
      unit: "mm",
      readings: [],
      edge: 3,
      grade: "major" as const,
      lookAgain: "2031-11-03",
    };
    expect(handover(soundVisit({ trends: [worn] })).dates.map(({ id }) => id)).toEqual(["trend:lining@FL"]);
    expect(dates({ trends: [worn] })).toHaveLength(2);
  });
  it("stands in page, text and calendar, for every reader", () => {
    for (const reader of ["technician", "owner", "buyer"] as const) {
      const model = handover(input({ for: reader }));
      const pages = handoverPages(model, WORDS);
      const facts = factsOf(model, WORDS);
      expect(missingFacts(facts, toText(pages, WORDS))).toEqual([]);
      expect(missingFacts(facts, toHtml(pages, WORDS).replace(/<[^>]*>/g, " "))).toEqual([]);
      const ics = toIcs(model, WORDS).replace(/\r\n /g, "");
      expect(ics.match(/BEGIN:VEVENT/g)).toHaveLength(3);
      expect(ics).toContain("DTSTART;VALUE=DATE:20310520");
      expect(ics).toContain("Look again: Hub renewed\\, front right");
    }
  });
});

it("HO22 of all looks the soonest stands in what next, though it has a distance and no day", () => {
  const next = (more: Partial<HandoverInput>) =>
    handover(input({ dates: [], ...more })).first.next.flatMap((step) => (step.is === "date" ? [step.date.id] : []));
  expect(next({})).toEqual(["look:look-0"]);
  expect(next({ looks: [{ ...SOON, on: undefined }, LATER] })).toEqual(["look:look-0"]);
});
