// HO44, HO22, HO70: what is looked at again stands among the days once, in every form.
import { describe, expect, it } from "vitest";
import { fault, job, soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { handover } from "./build.js";
import { factsOf, missingFacts } from "./facts.js";
import { toHtml } from "./html.js";
import { toIcs } from "./ics.js";
import type { HandoverInput, LookTold } from "./input.js";
import { handoverPages } from "./pages.js";
import { toText } from "./text.js";

const SOON: LookTold = {
  id: "look-0",
  on: "2031-05-20",
  odometer: { value: 84_260, unit: "km" },
  of: [
    { is: "job", title: "Hub renewed", where: "front right" },
    { is: "recheck", title: "Wheel nuts", where: "front right" },
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
const input = (more: Partial<HandoverInput>): HandoverInput => soundVisit({ looks: [LATER, SOON], ...more });
const dates = (more: Partial<HandoverInput>) => handover(input(more)).dates.map(({ id, words }) => `${id} ${words}`);

describe("HO44 looks among the days to think of", () => {
  it("is one entry a visit, nearest first, without the check that stands there by itself", () => {
    expect(dates({})).toEqual([
      "look:look-0 Hub renewed, front right",
      "look:look-5 Play in the wheel bearing, rear right; Lining, front left",
    ]);
  });
  it("leaves out a finding whose open work has a figure, and keeps it where that work was declined or has none", () => {
    const found = { faults: [fault({ jobs: ["job.whl.bearing@RR"] })] };
    const due = job({ byWhen: { class: 3, date: "2031-11-03" } });
    expect(dates({ ...found, jobs: [due] }).at(-1)).toBe("look:look-5 Lining, front left");
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
      expect(ics.match(/BEGIN:VEVENT/g)).toHaveLength(2);
      expect(ics).toContain("DTSTART;VALUE=DATE:20310520");
      expect(ics).toContain("Look again: Hub renewed\\, front right");
    }
  });
});

it("HO22 of all looks the soonest stands in what next", () => {
  const next = handover(input({})).first.next.flatMap((step) => (step.is === "date" ? [step.date.id] : []));
  expect(next).toEqual(["look:look-0"]);
});
