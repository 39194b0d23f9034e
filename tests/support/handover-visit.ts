/** Invented visits for hand-overs: one with nothing against it, one with something of everything. */
import {
  type DoneTold,
  english,
  type FaultTold,
  type GateTold,
  type HandoverInput,
  type HandoverWords,
  type JobTold,
  signatureDrawing,
} from "../../src/core/report/index.js";

export const WORDS: HandoverWords = { lang: "en", decimalComma: false, texts: english };

const CLEARED: GateTold = {
  gate: "gate.no-road",
  title: "Road test",
  guards: "w4-road",
  state: "cleared",
  says: "",
  first: [],
  faults: [],
  onlyThose: false,
  otherwise: "cleared",
  missing: [],
};

/** Everything asked was looked at, nothing found, both checks before driving cleared. */
export function soundVisit(more: Partial<HandoverInput> = {}): HandoverInput {
  return {
    for: "technician",
    madeAt: "2031-05-04T16:20:00+02:00",
    engine: "1",
    visit: {
      id: "visit:a1",
      at: "2031-05-03T09:30:00+02:00",
      purpose: "workshop",
      who: "technician",
      lookers: ["Ada Winkler"],
      odometer: { value: "84210", unit: "km" },
      closed: true,
    },
    car: { name: "Merle GT", facts: [{ name: "first used", value: "1987" }] },
    complaints: [],
    faults: [],
    notSeen: [],
    looked: { sound: 40 },
    sheets: [
      {
        id: "whl",
        name: "Wheel bearings",
        label: "2031-1",
        edition: "5f2c9a",
        answered: 40,
        of: 40,
        notFitted: 0,
        notChecked: 0,
        notForThisLook: 0,
        enough: true,
      },
    ],
    gates: [CLEARED, { ...CLEARED, gate: "gate.drive-away", title: "Driving away", guards: "drive-away" }],
    cautions: [],
    readings: [],
    jobs: [],
    ...more,
  };
}

/** A finding as it comes from one rule; certain, and with nothing special about it. */
export function fault(more: Partial<FaultTold> = {}): FaultTold {
  return {
    fault: "whl.play",
    place: "RR",
    title: "Play in the wheel bearing",
    where: "rear right",
    grade: "minor",
    sure: "certain",
    close: false,
    provisional: false,
    consequence: 3,
    mustStand: false,
    rules: ["whl.r01"],
    answersTo: [],
    because: [{ is: "felt", words: "Rock at the wheel: clear" }],
    jobs: [],
    ...more,
  };
}

export function job(more: Partial<JobTold> = {}): JobTold {
  return {
    id: "job.whl.bearing@RR",
    title: "Renew the wheel bearing",
    where: "rear right",
    does: "Hub off, bearing pressed out and in.",
    grade: "minor",
    byWhen: { class: 3 },
    faults: [{ fault: "whl.play", place: "RR" }],
    parts: [],
    why: ["Outcome and likelihood together put it here."],
    ...more,
  };
}

/** Work that is done and was measured again, with nothing special about it. */
export function done(more: Partial<DoneTold> = {}): DoneTold {
  return {
    id: "job.whl.bearing@FR",
    title: "Renew the wheel bearing",
    where: "front right",
    on: "2031-05-04",
    by: "Ada Winkler",
    readings: [
      {
        title: "Bearing float",
        where: "front right",
        before: { says: "0.31 mm", on: "2031-05-03" },
        after: { says: "0.04 mm", on: "2031-05-04" },
      },
    ],
    unseen: [],
    look: { needed: false, is: "none", who: [] },
    ...more,
  };
}

export const LIMIT = {
  limit: "lim.float",
  direction: "over",
  edge: 0.15,
  unit: "mm",
  grade: "major",
  basis: "practice",
  source: "from memory",
  isDefault: true,
} as const;

/** Something of everything a hand-over can tell. */
export function wholeVisit(more: Partial<HandoverInput> = {}): HandoverInput {
  return soundVisit({
    complaints: [
      { id: "c1", words: "It drones above 90", answer: { is: "found", faults: [{ fault: "whl.play", place: "RR" }] } },
      { id: "c2", words: "A clunk when I pull away", answer: { is: "not-met", words: "Driven 4 km" } },
      { id: "c3", words: "Smells of petrol", answer: { is: "needs", what: "a look with the tank full" } },
      { id: "c4", words: "Door drops" },
    ],
    faults: [
      fault({
        grade: "major",
        close: true,
        consequence: 1,
        answersTo: ["EU 2014/45 5.1.3(b)"],
        because: [
          { is: "felt", words: "Rock at the wheel: clear" },
          { is: "limit", value: 0.17, uncertainty: 0.04, ...LIMIT },
          { is: "earlier", words: "Rock at the wheel: just felt", on: "2029-04-02" },
        ],
        settle: ["Measure the float with a dial gauge"],
        jobs: ["job.whl.bearing@RR"],
      }),
      fault({
        fault: "corr.holed",
        place: "sill-L",
        title: "Sill holed",
        where: "left sill",
        grade: "dangerous",
        mustStand: true,
        consequence: 1,
        answersTo: ["EU 2014/45 6.1.1(c)"],
        rules: ["corr.r09"],
        because: [{ is: "seen", words: "Sill: holed" }],
        byHand: { was: "major", reason: "wider than a hand" },
      }),
      fault({
        fault: "drn.leaf",
        place: "drain-L",
        title: "Drain half shut",
        where: "left drain",
        grade: "advisory",
        jobs: ["job.drn.rod@drain-L"],
      }),
    ],
    notSeen: [
      {
        point: "brk.hose",
        place: "FL",
        title: "Brake hose",
        where: "front left",
        state: "hanging",
        is: "cannot-reach",
        nonAnswer: "not-reached",
        reason: "no-lift",
        couldDecide: "dangerous",
      },
      { point: "drn.pour", place: "car", title: "Pour test", where: "", state: "water", is: "not-looked" },
    ],
    sheets: [
      {
        id: "whl",
        name: "Wheel bearings",
        label: "2031-1",
        edition: "5f2c9a",
        answered: 30,
        of: 32,
        notFitted: 1,
        notChecked: 1,
        notForThisLook: 3,
        enough: true,
      },
    ],
    gates: [
      {
        ...CLEARED,
        title: "Driving away",
        guards: "drive-away",
        state: "tripped",
        says: "It stays here.",
        first: ["Sill: holed"],
        faults: [{ fault: "corr.holed", place: "sill-L" }],
        onlyThose: true,
        otherwise: "not cleared",
        missing: ["Fuel"],
      },
      { ...CLEARED, gate: "gate.lift", title: "Lifting", guards: "lift" },
    ],
    cautions: [
      {
        caution: "cau.brake-fluid",
        signal: "caution",
        not: "Don't let it touch skin or paint",
        why: "It bites",
        can: "Skin is burnt",
        todo: "Rinse with water",
        places: [],
        faults: [],
      },
      {
        caution: "cau.dont-drive",
        signal: "danger",
        not: "Don't drive this car",
        why: "The sill carries the seat",
        can: "It folds",
        todo: "Have it carried",
        places: ["left sill"],
        forbids: "driving",
        faults: [{ fault: "corr.holed", place: "sill-L" }],
        toldAt: "2031-05-03T11:05:00+02:00",
      },
    ],
    readings: [
      {
        point: "whl.float",
        place: "RR",
        title: "Bearing float",
        where: "rear right",
        typed: ["0.17", "0.16"],
        value: 0.17,
        uncertainty: 0.04,
        unit: "mm",
        gauge: "dial gauge, 0.01",
        limits: [{ ...LIMIT, state: "too close", applies: "yes" }],
        last: { on: "2029-04-02", value: "0.11", unit: "mm" },
      },
      {
        point: "brk.heat",
        place: "FL",
        title: "Hub heat",
        where: "front left",
        typed: ["-3"],
        value: -3,
        uncertainty: 0,
        unit: "Cel",
        limits: [],
      },
    ],
    jobs: [
      job({
        grade: "major",
        byWhen: { class: 2, distance: { value: 500, unit: "km" }, date: "2031-06-15" },
        minutes: [90, 120, 180],
        cost: [21000, 26050, 40000],
        first: { on: "2031-05-03", cost: [20000, 25000, 38000] },
        parts: [
          {
            title: "wheel bearing",
            count: 2,
            price: [8000, 8000, 9500],
            set: "its twin",
            leadDays: 12,
            stands: "ordered",
          },
        ],
        decision: {
          is: "by",
          by: { date: "2031-06-01" },
          who: "Otto Lindqvist",
          how: "by telephone",
          on: "2031-05-04",
          signed: { who: "Otto Lindqvist", on: "2031-05-04", isDrawn: true },
        },
      }),
      job({
        id: "job.drn.rod@drain-L",
        title: "Rod the drain",
        where: "left drain",
        does: "Rod and rinse.",
        grade: "advisory",
        byWhen: { class: 4 },
        faults: [{ fault: "drn.leaf", place: "drain-L" }],
        minutes: [10, 15, 20],
        decision: {
          is: "no",
          reason: "the car goes under a cover",
          who: "Otto Lindqvist",
          on: "2031-05-04",
          warned: { words: "Water stays in the floor", at: "2031-05-04T10:12:00+02:00" },
        },
      }),
    ],
    money: {
      currency: "EUR",
      minorDigits: 2,
      total: [21000, 26050, 40000],
      budget: 30000,
      missing: 1,
      first: { on: "2031-05-03", total: [20000, 25000, 38000] },
    },
    loose: [{ words: "Undertray bolts", where: "front left", is: "loose", on: "2031-05-03" }],
    trends: [
      {
        id: "float@RR",
        title: "Bearing float",
        where: "rear right",
        unit: "mm",
        readings: [
          { on: "2029-04-02", value: 0.11, uncertainty: 0.04 },
          { on: "2031-05-03", value: 0.17, uncertainty: 0.04 },
        ],
        edge: 0.15,
        grade: "major",
        reaches: { from: "2030-08-01", to: "2032-02-01" },
        lookAgain: "2031-08-01",
      },
    ],
    signatures: [
      {
        id: "s1",
        who: "Otto Lindqvist",
        on: "2031-05-04",
        of: 2,
        standing: 2,
        drawing: signatureDrawing({
          width: 300,
          height: 100,
          strokes: [
            [10, 50, 60, 20, 120, 70],
            [200, 80],
          ],
        }),
      },
      { id: "s2", who: "Otto Lindqvist", on: "2031-05-05", of: 3, standing: 1 },
    ],
    dates: [
      {
        id: "t1",
        is: "re-torque",
        words: "wheel nuts, rear right",
        on: "2031-06-20",
        distance: { value: 50, unit: "km" },
      },
    ],
    pictures: [
      {
        hash: "aa11",
        caption: "Left sill from below",
        width: 400,
        height: 300,
        fault: { fault: "corr.holed", place: "sill-L" },
      },
      { hash: "bb22", caption: "Engine bay", width: 400, height: 300 },
    ],
    plan: {
      kind: "chassis",
      side: "left",
      places: [
        { id: "RR", look: "done" },
        { id: "FL", look: "not-looked" },
        { id: "sill-L", look: "done", at: [50, 10] },
      ],
    },
    personal: ["Otto Lindqvist"],
    done: [
      done({ look: { needed: true, is: "other", who: ["Ada Winkler"] } }),
      done({
        id: "job.brk.hose@FL",
        title: "Renew the brake hose",
        where: "front left",
        by: "Otto Lindqvist",
        readings: [],
        unseen: ["Pedal held, front left"],
        look: { needed: true, is: "none", who: [] },
      }),
    ],
    picturesLeft: ["Left sill, from the ramp"],
    ...more,
  });
}
