import { describe, expect, it } from "vitest";
import { fault, job, soundVisit, done as workDone } from "../../../../tests/support/handover-visit.js";
import { handover } from "./build.js";
import type { GateTold, HandoverInput } from "./input.js";

const verdict = (more: Partial<HandoverInput> = {}) => handover(soundVisit(more)).first.verdict;
const reasons = (more: Partial<HandoverInput> = {}) => verdict(more).reasons.map(({ is }) => is);
const gates = (more: Partial<GateTold>, which = 0): readonly GateTold[] =>
  soundVisit().gates.map((gate, index) => (index === which ? { ...gate, ...more } : gate));
const sheet = soundVisit().sheets[0];
if (sheet === undefined) throw new Error("no sheet in the visit");
const caution = {
  caution: "cau.any",
  signal: "danger",
  not: "Don't",
  why: "",
  can: "",
  todo: "",
  places: [],
  faults: [],
} as const;
const unseen = { point: "p", place: "car", title: "P", where: "", state: "s", is: "not-looked" } as const;

describe("HO10 the best a hand-over says is that nothing was found", () => {
  it("is nothing against it when all asked was looked at and both checks before driving are cleared", () => {
    expect(verdict()).toEqual({ is: "nothing-against", owner: "fine", reasons: [] });
  });
  it("stays so with a minor or advisory finding, which an owner tells the workshop from minor on", () => {
    expect(verdict({ faults: [fault({ grade: "advisory" })] })).toMatchObject({ is: "nothing-against", owner: "fine" });
    expect(verdict({ faults: [fault({ grade: "minor" })] })).toMatchObject({ is: "nothing-against", owner: "tell" });
  });
});

describe("HO18 a car that lies was looked over for its rest, not for the road", () => {
  const laidUp = { visit: { ...soundVisit().visit, laidUp: true } } as const;
  const shut = gates({ state: "not cleared" });

  it("tells that it is laid up instead of asking for the checks before driving, or for any to be there", () => {
    expect(verdict({ ...laidUp, gates: shut })).toEqual({
      is: "laid-up",
      owner: "laid-up",
      reasons: [{ is: "laid-up" }],
    });
    expect(reasons({ ...laidUp, gates: [] })).toEqual(["laid-up"]);
    expect(reasons({ gates: shut })).toEqual(["gate-not-cleared"]);
  });
  it("names waking it as the last step, and no check before driving as one", () => {
    const steps = (more: Partial<HandoverInput>) =>
      handover(soundVisit({ gates: shut, ...more })).first.next.map(({ is }) => is);
    expect(steps(laidUp)).toEqual(["wake-up"]);
    expect(steps({})).toEqual(["clear-gate"]);
  });
  it("never hides what is worse, nor what is not shown besides", () => {
    expect(verdict({ ...laidUp, faults: [fault({ grade: "dangerous" })] })).toMatchObject({
      is: "do-not-drive",
      owner: "dont-drive",
    });
    expect(reasons({ ...laidUp, gates: gates({ state: "tripped" }) })).toEqual(["gate-tripped", "laid-up"]);
    expect(verdict({ ...laidUp, notSeen: [unseen] })).toMatchObject({ is: "laid-up", owner: "laid-up" });
    expect(reasons({ ...laidUp, notSeen: [unseen] })).toEqual(["laid-up", "not-seen"]);
    expect(verdict({ ...laidUp, faults: [fault({ grade: "minor" })] })).toMatchObject({ owner: "tell" });
  });
  it("never says that nothing was found where nothing was looked at, read or looked at after the work", () => {
    const nobodyLooked = soundVisit().sheets.map((one) => ({ ...one, answered: 0 }));
    const done = fault({ grade: "advisory", mended: { on: "2026-07-23", checked: false } });
    const cases: readonly (readonly [string, Partial<HandoverInput>])[] = [
      ["nothing-looked-at", { sheets: nobodyLooked }],
      ["unread", { unread: 1 }],
      ["progress-unread", { isProgressUnread: true }],
      ["work-not-looked-at", { done: [workDone({ unseen: ["Wheel nuts"] })] }],
      ["done-not-checked", { faults: [done] }],
    ];
    for (const [reason, more] of cases) {
      expect(reasons({ ...laidUp, ...more }), reason).toContain(reason);
      expect(verdict({ ...laidUp, ...more }), reason).toMatchObject({ is: "laid-up", owner: "not-shown" });
    }
  });
});

const THERE = { fault: "whl.play", place: "RR" };
const GONE = { fault: "whl.play", place: "RL" };

/** What makes a verdict, and the nearest thing that does not. */
const NEAR: readonly {
  readonly rule: string;
  readonly makes: Partial<HandoverInput>;
  readonly is: string;
  readonly reason: string;
  readonly near: Partial<HandoverInput>;
}[] = [
  {
    rule: "HO11 a dangerous finding forbids driving; a major one does not by itself",
    makes: { faults: [fault({ grade: "dangerous" })] },
    is: "do-not-drive",
    reason: "dangerous",
    near: { faults: [fault({ grade: "major" })] },
  },
  {
    rule: "HO11 what must stand forbids driving whatever its grade",
    makes: { faults: [fault({ mustStand: true })] },
    is: "do-not-drive",
    reason: "dangerous",
    near: { faults: [fault({ mustStand: false })] },
  },
  {
    rule: "HO11 a tripped check before driving forbids it; one before lifting does not",
    makes: { gates: gates({ state: "tripped" }) },
    is: "do-not-drive",
    reason: "gate-tripped",
    near: { gates: [...soundVisit().gates, ...gates({ state: "tripped", guards: "lift", drives: false }).slice(0, 1)] },
  },
  {
    rule: "HO11 a caution that forbids driving counts; any other caution does not",
    makes: { cautions: [{ ...caution, forbids: "driving" }] },
    is: "do-not-drive",
    reason: "forbidden",
    near: { cautions: [caution] },
  },
  {
    rule: "HO11 a car somebody did not release is not driven; a released one may be",
    makes: { release: { is: "not-released" } },
    is: "do-not-drive",
    reason: "not-released",
    near: { release: { is: "released" } },
  },
  {
    rule: "HO11 something left loose forbids driving",
    makes: { loose: [{ words: "Bolts", is: "loose", on: "2031-05-03" }] },
    is: "do-not-drive",
    reason: "left-loose",
    near: { loose: [] },
  },
  {
    rule: "HO11 work due before the next drive forbids it until it is done and looked at; later work does not",
    makes: { faults: [fault()], jobs: [job({ byWhen: { class: 1 } })] },
    is: "do-not-drive",
    reason: "work-before-driving",
    near: { faults: [fault()], jobs: [job({ byWhen: { class: 2 } })] },
  },
  {
    rule: "HO12 a caution that allows the way to a workshop allows no more",
    makes: { cautions: [{ ...caution, signal: "warning", forbids: "beyond-workshop" }] },
    is: "workshop-only",
    reason: "workshop",
    near: { cautions: [{ ...caution, signal: "warning" }] },
  },
  {
    rule: "HO13 a major finding is put right before normal use; a minor one need not be",
    makes: { faults: [fault({ grade: "major" })] },
    is: "put-right-first",
    reason: "major",
    near: { faults: [fault({ grade: "minor" })] },
  },
  {
    rule: "HO14 a reading too close to call shows nothing; one clear of it does",
    makes: { faults: [fault({ close: true })] },
    is: "not-shown",
    reason: "close",
    near: { faults: [fault({ close: false })] },
  },
  {
    rule: "HO14 one point not looked at is enough",
    makes: { notSeen: [unseen] },
    is: "not-shown",
    reason: "not-seen",
    near: { notSeen: [] },
  },
  {
    rule: "HO14 an answer that cannot count is a point not looked at",
    makes: { sheets: [{ ...sheet, notChecked: 1 }] },
    is: "not-shown",
    reason: "not-seen",
    near: { sheets: [{ ...sheet, notFitted: 1 }] },
  },
  {
    rule: "HO14 a check before driving that is not cleared",
    makes: { gates: gates({ state: "not cleared" }, 1) },
    is: "not-shown",
    reason: "gate-not-cleared",
    near: {
      gates: [...soundVisit().gates, ...gates({ state: "not cleared", guards: "spark", drives: false }).slice(0, 1)],
    },
  },
  {
    rule: "HO14 a check noted as done unproven is not cleared by that",
    makes: { gates: gates({ state: "not cleared", unproven: "no room" }) },
    is: "not-shown",
    reason: "gate-not-cleared",
    near: { gates: gates({ state: "cleared", unproven: "no room" }) },
  },
  {
    rule: "HO14 sheets without any check before driving show nothing",
    makes: { gates: [] },
    is: "not-shown",
    reason: "no-gate",
    near: {},
  },
  {
    rule: "HO14 a sheet too little seen",
    makes: { sheets: [{ ...sheet, enough: false }] },
    is: "not-shown",
    reason: "not-enough-seen",
    near: { sheets: [{ ...sheet, enough: true }] },
  },
  {
    rule: "HO14 a visit in which nothing was looked at",
    makes: { sheets: [{ ...sheet, answered: 0, of: 0 }] },
    is: "not-shown",
    reason: "nothing-looked-at",
    near: { sheets: [{ ...sheet, answered: 1, of: 1 }] },
  },
  {
    rule: "HO14 two people who differ",
    makes: { faults: [fault({ differ: true })] },
    is: "not-shown",
    reason: "differ",
    near: { faults: [fault({ differ: false })] },
  },
  {
    rule: "HO14 what is judged for now",
    makes: { faults: [fault({ provisional: true })] },
    is: "not-shown",
    reason: "provisional",
    near: { faults: [fault({ sure: "possible" })] },
  },
  {
    rule: "HO14 a complaint nobody answered; not met this time is an answer",
    makes: { complaints: [{ id: "c", words: "It pulls" }] },
    is: "not-shown",
    reason: "complaints-open",
    near: { complaints: [{ id: "c", words: "It pulls", answer: { is: "not-met" } }] },
  },
  {
    rule: "HO14 a complaint that needs something first is open",
    makes: { complaints: [{ id: "c", words: "It pulls", answer: { is: "needs", what: "a wet road" } }] },
    is: "not-shown",
    reason: "complaints-open",
    near: { complaints: [{ id: "c", words: "It pulls", answer: { is: "not-met" } }] },
  },
  {
    rule: "HO14 a complaint answered by a finding that is gone is open again",
    makes: { complaints: [{ id: "c", words: "It pulls", answer: { is: "found", faults: [GONE] } }], faults: [fault()] },
    is: "not-shown",
    reason: "complaints-open",
    near: { complaints: [{ id: "c", words: "It pulls", answer: { is: "found", faults: [THERE] } }], faults: [fault()] },
  },
  {
    rule: "HO14 an answer in words only rests on no finding that could be gone",
    makes: { complaints: [{ id: "c", words: "It pulls", answer: { is: "found", faults: [GONE] } }] },
    is: "not-shown",
    reason: "complaints-open",
    near: {
      complaints: [{ id: "c", words: "It pulls", answer: { is: "found", faults: [], words: "a loose shield" } }],
    },
  },
  {
    rule: "HO14 what cannot be read here may say anything",
    makes: { unread: 1 },
    is: "not-shown",
    reason: "unread",
    near: { unread: 0 },
  },
];

describe("what makes a verdict, and its near miss", () => {
  it.each(NEAR)("$rule", ({ makes, is, reason, near }) => {
    expect(verdict(makes).is).toBe(is);
    expect(reasons(makes)).toContain(reason);
    expect(verdict(near).is).not.toBe(is);
    expect(reasons(near)).not.toContain(reason);
  });
});

describe("HO15 work puts a finding right only when somebody has looked again", () => {
  const dangerous = { grade: "dangerous", mended: { on: "2031-05-03", checked: true } } as const;
  const tripped: Partial<GateTold> = {
    state: "tripped",
    faults: [{ fault: "whl.play", place: "RR" }],
    onlyThose: true,
    otherwise: "cleared",
  };
  it("lets it go once it is checked, with the gate and the caution that hung on it alone", () => {
    const settled = {
      faults: [fault(dangerous)],
      gates: gates(tripped),
      cautions: [{ ...caution, forbids: "driving", faults: [{ fault: "whl.play", place: "RR" }] }],
      jobs: [job({ byWhen: { class: 0 } })],
    } as const;
    expect(verdict(settled)).toEqual({ is: "nothing-against", owner: "fine", reasons: [] });
  });
  it("holds on while it is done and not checked", () => {
    const done = { faults: [fault({ ...dangerous, mended: { on: "2031-05-03", checked: false } })] };
    expect(verdict(done).is).toBe("do-not-drive");
    expect(reasons(done)).toContain("done-not-checked");
  });
  it("keeps a gate shut that something else trips, or that is not cleared otherwise", () => {
    expect(verdict({ faults: [fault(dangerous)], gates: gates({ ...tripped, onlyThose: false }) }).is).toBe(
      "do-not-drive",
    );
    expect(verdict({ faults: [fault(dangerous)], gates: gates({ ...tripped, otherwise: "not cleared" }) }).is).toBe(
      "not-shown",
    );
  });
  it("keeps a caution that hangs on another finding as well, and one that names none", () => {
    const two = [
      { fault: "whl.play", place: "RR" },
      { fault: "corr.holed", place: "sill-L" },
    ];
    for (const faults of [two, []])
      expect(verdict({ faults: [fault(dangerous)], cautions: [{ ...caution, forbids: "driving", faults }] }).is).toBe(
        "do-not-drive",
      );
  });
});

describe("HO15 a milder caution that gave way to a harder one", () => {
  const hard = {
    ...caution,
    caution: "cau.dont-drive",
    forbids: "driving",
    not: "Not at all",
    faults: [THERE],
  } as const;
  const mild = { ...caution, caution: "cau.to-workshop", forbids: "beyond-workshop", not: "To a workshop" } as const;
  const dangerous = fault({ grade: "dangerous", mended: { on: "2031-05-03", checked: true } });
  it("is told again once what the harder one hung on is put right, and only then", () => {
    const settled = handover(soundVisit({ faults: [dangerous], cautions: [hard, mild] }));
    expect(settled.first.verdict.is).toBe("workshop-only");
    expect(settled.cautions.map(({ not }) => not)).toEqual(["To a workshop"]);
    const open = handover(soundVisit({ faults: [fault({ grade: "dangerous" })], cautions: [hard, mild] }));
    expect(open.cautions.map(({ not }) => not)).toEqual(["Not at all"]);
  });
});

describe("HO16 the worst decides, and all reasons are told", () => {
  it("puts what forbids driving before what is not shown", () => {
    const all = { faults: [fault({ grade: "dangerous", close: true })], notSeen: [unseen] };
    expect(verdict(all).is).toBe("do-not-drive");
    expect(reasons(all)).toEqual(["dangerous", "close", "not-seen"]);
  });
});

describe("HO17 an owner's one word", () => {
  it.each([
    ["dont-drive", { faults: [fault({ grade: "dangerous" })] }],
    ["tell", { faults: [fault({ grade: "major" })] }],
    ["tell", { faults: [fault({ grade: "advisory", close: true })] }],
    ["tell", { complaints: [{ id: "c", words: "It pulls" }] }],
    ["not-shown", { notSeen: [unseen] }],
    ["fine", { faults: [fault({ grade: "advisory" })] }],
  ] as const)("is %s", (word, more) => {
    expect(verdict(more).owner).toBe(word);
  });
});
