// Work that is done, what next in its order, and what could not be read: told in every form, to every reader.
import { describe, expect, it, test } from "vitest";
import { done, fault, job, soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { wholeVisit } from "../../../../tests/support/handover-whole.js";
import { AUDIENCES } from "../../terms/index.js";
import { handover } from "./build.js";
import { workCsv } from "./csv.js";
import { limitText } from "./figures.js";
import type { HandoverInput } from "./input.js";
import { handoverPages } from "./pages.js";
import { nextTexts } from "./pages-first.js";
import { toText } from "./text.js";

const text = (input: HandoverInput): string => toText(handoverPages(handover(input), WORDS), WORDS);
const steps = (more: Partial<HandoverInput>) => handover(soundVisit(more)).first.next.map(({ is }) => is);
const verdict = (more: Partial<HandoverInput>) => handover(soundVisit(more)).first.verdict;

describe("HO37 work that is done stands in every form", () => {
  const looked = done({ look: { needed: true, is: "other", who: ["Mo Aster"] } });
  it("tells a technician before and after, an owner the new reading, both who did it and who looked", () => {
    const technician = text(soundVisit({ done: [looked] }));
    for (const said of ["0.31 mm, 3 May 2031", "0.04 mm, 4 May 2031", "by Ada Winkler", "by Mo Aster"])
      expect(technician).toContain(said);
    const owner = text(soundVisit({ for: "owner", done: [looked] }));
    expect(owner).toContain("Done today");
    expect(owner).toContain("Afterwards, Bearing float, front right: 0.04 mm.");
    expect(owner).not.toContain("0.31 mm");
    expect(owner).toContain("Looked at a second time by Mo Aster.");
  });
  it("calls nothing done today that was done on another day", () => {
    const owner = text(soundVisit({ for: "owner", done: [done({ on: "2031-05-03" })] }));
    expect(owner).not.toContain("Done today");
    expect(owner).toContain("Work done");
  });
  it("tells a buyer what was done, and no name but of who looked at the car", () => {
    const buyer = text(soundVisit({ for: "buyer", done: [looked] }));
    expect(buyer).toContain("0.04 mm");
    expect(buyer).toContain("by Ada Winkler");
    expect(buyer).not.toContain("Mo Aster");
    expect(buyer).toContain("Looked at a second time by somebody else.");
  });
  it("stands in the table, also where the list holds it no more", () => {
    const rows = workCsv(handover(soundVisit({ done: [looked] })), WORDS).split("\r\n");
    expect(rows[1]).toContain("job.whl.bearing@FR,Renew the wheel bearing,front right");
    expect(rows[1]).toContain("2031-05-04");
    expect(rows[1]).toMatch(/Ada Winkler,Bearing float: 0\.31 mm,Bearing float: 0\.04 mm,other,Mo Aster$/);
    expect(rows[1]?.split(",")).toHaveLength(rows[0]?.split(",").length ?? 0);
    const listed = job({ id: "job.whl.bearing@FR", doneOn: "2031-05-04" });
    expect(workCsv(handover(soundVisit({ jobs: [listed], done: [looked] })), WORDS).split("\r\n")).toHaveLength(3);
  });
  it("is not shown to be drivable while the look it asks for is missing; a look not asked for is only told", () => {
    const needed = done({ look: { needed: true, is: "none", who: [] } });
    expect(verdict({ done: [needed] })).toMatchObject({ is: "not-shown", reasons: [{ is: "work-not-looked-at" }] });
    expect(verdict({ done: [done({ unseen: ["Pedal held"] })] }).is).toBe("not-shown");
    expect(verdict({ done: [looked, done()] }).is).toBe("nothing-against");
    expect(text(soundVisit({ done: [needed] }))).toContain("somebody else than who did it has to");
    expect(text(soundVisit({ done: [done()] }))).toContain("Nobody has looked at it a second time.");
  });
});

describe("HO22 what next is in the order of doing", () => {
  it("puts what keeps the car where it is first, then the next drive, what is grave, days, and looking last", () => {
    const faults = [
      fault({ place: "FL", grade: "major" }),
      fault({ grade: "dangerous" }),
      fault({ place: "RL", grade: "major", close: true }),
    ];
    const jobs = [
      job({
        id: "c",
        faults: [{ fault: "whl.play", place: "RL" }],
        decision: { is: "by", by: { date: "2031-07-01" } },
      }),
      job({ id: "a", faults: [], byWhen: { class: 1 }, decision: { is: "now" } }),
      job({ id: "b", faults: [{ fault: "whl.play", place: "RR" }] }),
    ];
    const gates = soundVisit().gates.map((one) => ({ ...one, state: "not cleared" as const, first: ["Brakes"] }));
    const loose = [{ words: "Hub nut", is: "loose" as const, on: "2031-05-03" }];
    const complaints = [{ id: "c", words: "It pulls" }];
    const dates = [{ id: "t", is: "other" as const, words: "Geometry", on: "2031-06-01" }];
    const unlooked = [done({ unseen: ["Pedal held"] })];
    expect(steps({ faults, jobs, gates, loose, complaints, dates, done: unlooked })).toEqual([
      ...["do-not-drive", "make-fast", "decide", "clear-gate", "do-job", "look-second"],
      ...["measure-again", "find-work", "date", "date", "answer-complaint"],
    ]);
  });
  it("tells days as they come, and of one day, or of none, what comes sooner on the road", () => {
    const at = (id: string, more: object) => ({ id, is: "other" as const, words: id, ...more });
    const km = (value: number) => ({ distance: { value, unit: "km" } });
    const dates = [
      ...[
        at("far", km(500)),
        at("day", { on: "2031-06-01" }),
        at("mile", { distance: { value: 100, unit: "[mi_i]" } }),
      ],
      ...[
        at("near", km(150)),
        at("same-far", { on: "2031-06-02", ...km(90) }),
        at("same-near", { on: "2031-06-02", ...km(50) }),
      ],
    ];
    const jobs = [
      job({
        id: "o",
        title: "at the odometer",
        decision: { is: "by", by: { odometer: { value: 84_365, unit: "km" } } },
      }),
    ];
    const told = handover(soundVisit({ dates, jobs })).first.next.flatMap((one) =>
      one.is === "date" ? [one.date.words] : [],
    );
    expect(told).toEqual(["day", "same-near", "same-far", "near", "at the odometer", "mile", "far"]);
  });
  it("names a reading of the odometer as one, not as a way still to go", () => {
    const jobs = [job({ decision: { is: "by", by: { odometer: { value: 66_000, unit: "km" } } } })];
    expect(text(soundVisit({ jobs }))).toContain("yes, at 66\u202f000 km on the odometer");
  });
  it("asks once where two checks ask for the same, and names no job twice", () => {
    const gates = soundVisit().gates.map((one) => ({ ...one, state: "not cleared" as const, first: ["Brakes"] }));
    const jobs = [job({ byWhen: { class: 1 }, decision: { is: "by", by: { date: "2031-06-01" } } })];
    const { next } = handover(soundVisit({ gates, jobs })).first;
    const lines = nextTexts(WORDS, next);
    expect(lines.filter((line) => line.includes("Clear the checks “Road test”, “Driving away”"))).toHaveLength(1);
    expect(lines.filter((line) => line.includes("Renew the wheel bearing"))).toHaveLength(1);
  });
  it("tells the day the car comes next, where somebody planned one", () => {
    const visit = { ...soundVisit().visit, next: "2031-06-10" };
    expect(nextTexts(WORDS, handover(soundVisit({ visit })).first.next)).toEqual(["Next visit: by 10 Jun 2031."]);
  });
});

test.each(AUDIENCES)("HO38 a %s is told which pictures are not in it", (reader) => {
  expect(text(wholeVisit({ for: reader }))).toContain(
    "1 picture is not in here, because it cannot be read on this phone: Left sill, from the ramp.",
  );
});

describe("HO38 what could not be read is told, and never passes for nothing", () => {
  it("that something may be loose", () => {
    expect(verdict({ isProgressUnread: true })).toMatchObject({
      is: "not-shown",
      reasons: [{ is: "progress-unread" }],
    });
    expect(text(soundVisit({ isProgressUnread: true }))).toContain(
      "what is loose, promised or waited for is not known",
    );
  });
  it("[HO46] that earlier visits are not in it, to every reader, also where there is no day to think of", () => {
    for (const reader of AUDIENCES) {
      const told = (visitsUnread?: number) => text(soundVisit({ for: reader, dates: [], looks: [], visitsUnread }));
      expect(told(2)).toContain("2 earlier visits of this car could not be read");
      expect(told(1)).toContain("1 earlier visit of this car could not be read: what it found");
      expect(told()).not.toContain("of this car could not be read");
      const pages = handoverPages(handover(soundVisit({ for: reader, visitsUnread: 2 })), WORDS);
      expect(JSON.stringify(pages.blocks.slice(0, pages.first))).toContain("2 earlier visits of this car");
    }
  });
  it("that a complaint may be answered, without asking for an answer", () => {
    const complaints = [{ id: "c", words: "It pulls", answer: { is: "not-read" } }] as const;
    expect(verdict({ complaints })).toMatchObject({ is: "not-shown", reasons: [{ is: "answers-unread" }] });
    expect(text(soundVisit({ complaints }))).toContain("What was said to it was not read when this was made");
    expect(steps({ complaints })).toEqual([]);
  });
});

describe("HO39 every sum on paper says what it is", () => {
  const cost = [20000, 26000, 40000] as const;
  const openings = [
    { id: "wheel-off@RR", title: "Wheel off, rear right", cost: [1000, 2000, 3000], jobs: ["a"] },
  ] as const;
  const money = {
    currency: "EUR",
    minorDigits: 2,
    total: [21000, 28500, 43500],
    most: 35000,
    missing: 0,
    openings,
  } as const;
  const jobs = [job({ id: "a", cost, most: 31000 }), job({ id: "b" })];
  it("a job by itself, what is opened paid once, the rest named, and the total as the estimate has it", () => {
    const said = text(soundVisit({ jobs, money })).replaceAll("\u202f", " ");
    expect(said).toContain("EUR 260, between EUR 200 and 310 (four times in five)");
    expect(said).toContain("To be opened: Wheel off, rear right. Paid once, for 1.");
    expect(said).toMatch(/Carriage and rounding of tax, in no line above[\s\S]*EUR 5\n/);
    expect(said).toContain("EUR 285, between EUR 210 and 350 (four times in five)");
  });
  it("a buyer's lines and what is opened for them add up to what they come to together", () => {
    const { buying } = handover(soundVisit({ for: "buyer", jobs, money }));
    expect(buying?.total).toEqual([21000, 28000, 43000]);
    expect(buying?.openings.map(({ id }) => id)).toEqual(["wheel-off@RR"]);
  });
  it("says why a first estimate stands beside nothing", () => {
    const firstUntold = { on: "2031-05-03", why: "currency" } as const;
    expect(text(soundVisit({ jobs, money, firstUntold }))).toContain("was told in another currency");
  });
});

test("a source that begins with what it rests on is told once", () => {
  const limit = { limit: "l", direction: "over", edge: 2, unit: "mm", grade: "minor", isDefault: true } as const;
  const of = (source: string) => limitText(WORDS, { ...limit, basis: "practice", source });
  expect(of("common practice, no source; across the stud")).toBe(
    "over 2 mm: minor (common practice, no source, a default, not this car's own; across the stud)",
  );
  expect(of("from memory")).toContain("not this car's own, from memory)");
});

test("HO25 what is too close to call is never called certain beside it", () => {
  const of = (close: boolean) => text(soundVisit({ faults: [fault({ grade: "major", close, sure: "certain" })] }));
  expect(of(true)).toContain("Not certain: too close to a limit to call.");
  expect(of(true)).not.toContain("Major. Certain.");
  expect(of(false)).toContain("Major. Certain.");
});
