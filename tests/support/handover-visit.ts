/** Parts of invented visits for hand-overs, and a visit with nothing against it. */
import {
  type DoneTold,
  english,
  type FaultTold,
  type GateTold,
  type HandoverInput,
  type HandoverWords,
  type JobTold,
} from "../../src/core/report/index.js";

export const WORDS: HandoverWords = { lang: "en", decimalComma: false, texts: english };

export const CLEARED: GateTold = {
  gate: "gate.no-road",
  title: "Road test",
  guards: "w4-road",
  drives: true,
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
