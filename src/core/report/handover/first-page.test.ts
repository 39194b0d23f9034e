import { describe, expect, it } from "vitest";
import { fault, job, soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { wholeVisit } from "../../../../tests/support/handover-whole.js";
import { handover } from "./build.js";
import type { HandoverInput } from "./input.js";
import { handoverPages } from "./pages.js";
import { toText } from "./text.js";

const text = (input: HandoverInput): string => toText(handoverPages(handover(input), WORDS), WORDS);
const MAJOR = fault({ grade: "major" });
const MONEY = { currency: "EUR", minorDigits: 2, total: [10000, 20000, 30000], budget: 50000, missing: 0 } as const;

describe("HO23 the high figure against the budget", () => {
  const line = (more: Partial<HandoverInput>) => handover(soundVisit({ money: MONEY, ...more })).first.money;
  it("calls the rest left over only where every pressing finding has its work", () => {
    expect(line({ faults: [MAJOR], jobs: [job()] })).toMatchObject({ left: 20000, withoutWork: 0 });
    const jobs = [job({ faults: [] })];
    expect(line({ faults: [MAJOR], jobs })).toMatchObject({ overBy: 0, withoutWork: 1 });
    expect(line({ faults: [MAJOR], jobs })).not.toHaveProperty("left");
  });
  it.each([
    ["a too-close one without work", { faults: [fault({ close: true })] }],
    ["declined work", { faults: [MAJOR], jobs: [job({ decision: { is: "no" } })] }],
    ["work left out of the plan", { faults: [MAJOR], jobs: [job({ chosen: false })] }],
    ["a figure missing", { money: { ...MONEY, missing: 1 } }],
  ] as const)("does not with %s", (_, more) => {
    expect(line(more)).not.toHaveProperty("left");
    expect(text(soundVisit({ money: MONEY, ...more }))).not.toContain("Within the budget at the high figure, by");
  });
  it("says by how much the high figure and what is spent pass the budget, though the likely one does not", () => {
    expect(line({ money: { ...MONEY, budget: 25000 } })).toMatchObject({ overBy: 5000 });
    expect(line({ money: { ...MONEY, spent: 25000 } })).toMatchObject({ overBy: 5000 });
    expect(text(soundVisit({ money: { ...MONEY, budget: 25000 } }))).toContain("by EUR\u202f50.");
  });
});

describe("HO21 and HO22 what cannot wait, and what next", () => {
  const first = (more: Partial<HandoverInput>) => handover(soundVisit(more)).first;
  it("lists dangerous, major, too close and what comes before the next drive, and no minor one", () => {
    const faults = [
      MAJOR,
      fault({ place: "RL" }),
      fault({ place: "FL", close: true }),
      fault({ place: "FR", jobs: ["job.whl.bearing@FR"] }),
    ];
    const jobs = [
      job({ id: "job.whl.bearing@FR", faults: [{ fault: "whl.play", place: "FR" }], byWhen: { class: 1 } }),
    ];
    const letters = handover(soundVisit({ faults, jobs })).findings.filter((one) => one.place !== "RL");
    expect(first({ faults, jobs }).cannotWait.map(({ letter }) => letter)).toEqual(letters.map(({ letter }) => letter));
  });
  it("asks for work where there is none, and for a word where nobody gave one", () => {
    const steps = (more: Partial<HandoverInput>) => first(more).next.map(({ is }) => is);
    expect(steps({ faults: [MAJOR] })).toEqual(["find-work"]);
    expect(steps({ faults: [MAJOR], jobs: [job()] })).toEqual(["decide"]);
    expect(steps({ faults: [MAJOR], jobs: [job({ decision: { is: "now" } })] })).toEqual(["do-job"]);
    expect(steps({ faults: [MAJOR], jobs: [job({ decision: { is: "more" } })] })).toEqual(["decide"]);
  });
  it("names of all the days to look at wear again the soonest, and keeps the others among the days", () => {
    const [trend] = wholeVisit().trends ?? [];
    if (!trend) throw new Error("the whole visit has a trend");
    const days = ["2027-05-01", "2027-02-01", "2028-01-01"] as const;
    const trends = days.map((lookAgain, i) => ({ ...trend, id: `${trend.id}${i}`, lookAgain }));
    const model = handover(soundVisit({ trends }));
    expect(model.first.next.flatMap((step) => (step.is === "date" ? [step.date.on] : []))).toEqual(["2027-02-01"]);
    expect(model.dates.filter(({ is }) => is === "look-again").map(({ on }) => on)).toEqual([...days].sort());
  });
  it.each(["technician", "owner", "buyer"] as const)(
    "never tells a %s that it is safe, or that the rest can wait",
    (reader) => {
      for (const input of [soundVisit({ for: reader }), wholeVisit({ for: reader })])
        expect(text(input)).not.toMatch(/\bsafe\b|can wait\.|can be planned|the rest/i);
    },
  );
});

describe("HO27 declined work", () => {
  it("says that no warning is on record where none is", () => {
    const base = wholeVisit();
    const jobs = base.jobs.map(({ decision, ...one }) => ({ ...one, decision: decision && { is: "no" as const } }));
    expect(text({ ...base, jobs })).toContain("Nothing records that a warning was shown.");
    expect(text(base)).toContain("Warning shown 4 May 2031, 10:12: Water stays in the floor.");
  });
});

describe("HO31 to HO33 a buyer's version", () => {
  const buyer = (more: Partial<HandoverInput> = {}) => wholeVisit({ for: "buyer", ...more });
  it("holds no name of the seller, wherever it stands, and keeps who looked", () => {
    const more: Partial<HandoverInput> = {
      complaints: [{ id: "c", words: "otto lindqvist says it drones; Ottoman stays" }],
      car: { name: "Merle GT of Otto Lindqvist", facts: [{ name: "plate", value: "XX 1", personal: true }] },
    };
    const said = text(buyer(more));
    expect(said).not.toMatch(/lindqvist|XX 1|by telephone|ab12cd34ef56/i);
    expect(said).toContain("“… says it drones; Ottoman stays”");
    expect(said).toContain("Ada Winkler");
    expect(text(wholeVisit(more))).toContain("Lindqvist");
  });
  const away = (more: Parameters<typeof fault>[0], jobs = [job()]) =>
    handover(soundVisit({ for: "buyer", faults: [fault(more)], jobs })).buying?.walkAway.map(({ basis }) => basis);
  it("gives the reason to walk away with what it rests on, and none for the near miss", () => {
    expect(away({ grade: "dangerous" })).toEqual(["graded-dangerous"]);
    expect(away({ grade: "minor", mustStand: true })).toEqual(["must-stand"]);
    expect(away({ grade: "major", answersTo: ["EU 2014/45 6.1.1(c)"] })).toEqual(["structure"]);
    expect(away({ grade: "major", answersTo: ["EU 2014/45 6.10"] })).toEqual([]);
    expect(away({ grade: "minor", answersTo: ["EU 2014/45 6.1.1(c)"] })).toEqual([]);
    expect(away({ grade: "major", consequence: 1 })).toEqual(["worst-outcome"]);
    expect(away({ grade: "major", consequence: 2 })).toEqual([]);
    expect(away({ grade: "major" }, [])).toEqual(["no-work-known"]);
    expect(away({ grade: "dangerous", mended: { on: "2031-05-04", checked: true } })).toEqual([]);
  });
  it("adds up what is due, counts lines without a figure, and leaves out what is only watched", () => {
    const cost = [100, 200, 300] as const;
    const jobs = [
      job({ cost }),
      job({ id: "b", cost }),
      job({ id: "c" }),
      job({ id: "d", byWhen: { class: 4 }, cost }),
    ];
    expect(handover(soundVisit({ for: "buyer", jobs })).buying).toMatchObject({
      total: [200, 400, 600],
      withoutFigure: 1,
    });
  });
  it("HO43 tells no sum while a check before a price is shut, and puts it first", () => {
    const jobs = [job({ cost: [100, 200, 300] })];
    const [some] = soundVisit().gates;
    const at = (state: "tripped" | "not cleared" | "cleared", guards = "p2-price") =>
      soundVisit({
        for: "buyer",
        jobs,
        gates: some === undefined ? [] : [{ ...some, title: "Papers", guards, state, otherwise: state }],
      });
    expect(handover(at("tripped")).buying).toMatchObject({ held: [{ title: "Papers" }], due: [{ id: jobs[0]?.id }] });
    expect(handover(at("tripped")).buying?.total).toBeUndefined();
    expect(text(at("tripped"))).toMatch(
      /First, before any figure.*Papers.*No sum is told until.*Reasons to walk away/s,
    );
    // What stops the price is a reason to go home, whatever the steel is like.
    expect(text(at("tripped"))).toMatch(/Reasons to walk away.*Papers: stopped. Nothing is bought before/s);
    expect(text(at("tripped"))).not.toContain("None by these rules");
    expect(text(at("not cleared"))).toContain("None by these rules");
    expect(handover(at("not cleared")).buying).toMatchObject({ held: [{ title: "Papers" }], total: [100, 200, 300] });
    expect(handover(at("cleared")).buying).toMatchObject({ held: [], total: [100, 200, 300] });
    expect(handover(at("tripped", "w4-road")).buying).toMatchObject({ held: [], total: [100, 200, 300] });
  });
  it("HO43 tells what was claimed with what was seen of it, to a buyer alone", () => {
    const claims = [
      { id: "a", words: "New belts.", from: "advert", seen: { word: "not-shown", words: "" } },
      { id: "b", words: "Never wet", from: "seller", seen: { word: "otherwise", words: "felt is wet" } },
      { id: "c", words: "One owner", from: "papers" },
    ] as const;
    const said = text(soundVisit({ for: "buyer", claims }));
    expect(said).toContain("“New belts” (advert). Not shown: counts as not done.");
    expect(said).toContain("“Never wet” (seller). The car or a paper says otherwise: felt is wet.");
    expect(said).toContain("“One owner” (papers). Not asked for: not known.");
    expect(text(soundVisit({ for: "owner", claims }))).not.toContain("belts");
  });
  it("puts what nobody could look at in order of what it could have shown, the unknown first", () => {
    const at = (point: string, couldDecide?: "nothing" | "minor" | "dangerous") =>
      ({ point, place: "car", title: point, where: "", state: "s", is: "not-looked", couldDecide }) as const;
    const notSeen = [at("a", "minor"), at("b"), at("c", "nothing"), at("d", "dangerous")];
    const risks = handover(soundVisit({ for: "buyer", notSeen })).buying?.risks.map(({ point }) => point);
    expect(risks).toEqual(["b", "d", "a"]);
  });
});
