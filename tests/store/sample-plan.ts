/**
 * One good body of every kind of a plan and of a house's terms, version 1, with every field it may have; those of the
 * owner's word, of handing back, of comparing visits and of a viewing stand in files of their own.
 */
import type {
  DecisionBodies,
  HouseTermsBodies,
  PlanBodies,
  ReleaseBodies,
  ViewingBodies,
  WearBodies,
} from "../../src/core/record/index.js";

type All = Omit<PlanBodies, keyof (DecisionBodies & ReleaseBodies & WearBodies & ViewingBodies)> & HouseTermsBodies;
const at = { job: "whl.bearing", place: "FR" };
const part = { ...at, part: "bearing-set" };

export const PLAN_BODIES: { readonly [K in keyof All]: All[K] } = {
  "plan.begun": { visit: "visit:v" },
  "plan.begins": { on: "2026-03-02", replaces: [] },
  "plan.use": { use: "hard", replaces: [] },
  "plan.budget": { budget: { minor: 120_000, gross: true }, replaces: [] },
  "plan.wanted": { ...at, wanted: "in", reason: "before the season", replaces: [] },
  "plan.minutes": { ...at, minutes: [60, 90, 180], why: "rusted", replaces: [] },
  "plan.part": {
    ...part,
    figures: {
      name: "Bearing set",
      count: 2,
      price: [2100, 2400, 3900],
      deposit: 500,
      carriage: 900,
      supplier: "north",
      leadDays: 10,
      pricedOn: "2026-02-20",
      counterpart: "seal",
      aloneBecause: "the other side was done last year",
    },
    replaces: [],
  },
  "part.step": {
    ...part,
    step: "checked",
    on: "2026-03-10",
    promised: "2026-03-09",
    next: "2026-03-12",
    checks: { right: true, counterpart: false, count: true, condition: true },
    words: "bore too small",
  },
  "job.step": { ...at, step: "waiting", on: "2026-03-03", next: "2026-03-12", minutes: 45, words: "waits for the set" },
  "left-loose": {
    loose: "l1",
    what: "loose",
    words: "hub nut finger tight",
    place: "FR",
    on: "2026-03-03",
    replaces: [],
  },
  "left-loose.cleared": { loose: "l1", on: "2026-03-12", words: "done up to the book's figure" },
  "estimate.given": { estimate: { total: [1, 2, 3], lines: [{ words: "labour" }] }, on: "2026-02-21" },
  "estimate.addition": {
    addition: "a1",
    words: "hub, as well",
    minutes: [0, 20, 40],
    price: [8000, 9500, 14_000],
    reason: "the race turned in it",
    agreed: { who: "the owner", how: "by telephone", on: "2026-03-04" },
    replaces: [],
  },
  "plan.scope": {
    scope: {
      apart: ["w7-hang"],
      capMinutes: 120,
      capMinor: 30_000,
      leftOut: [{ what: "gearbox", why: "not paid for" }],
    },
    replaces: [],
  },
  "plan.intake": { item: "keys", says: "two", replaces: [] },
  "house.terms": {
    terms: {
      currency: "EUR",
      digits: 2,
      labourRates: [{ id: "bench", name: "Bench work", perHour: 6800 }],
      tax: {
        label: "Our own country",
        groups: [
          { id: "full", name: "Full", basisPoints: 2000 },
          { id: "less", name: "Reduced", basisPoints: 1000 },
        ],
        labourGroup: "less",
        partsGroup: "full",
        rounding: "half-up",
        level: "group",
        digits: 2,
      },
    },
    replaces: [],
  },
  "house.calendar": {
    calendar: {
      zone: "Europe/Lisbon",
      week: [
        [
          [480, 720],
          [780, 1020],
        ],
        [[480, 1020]],
        [[480, 1020]],
        [[480, 1020]],
        [[480, 900]],
        [],
        [],
      ],
      closed: [{ from: "2026-08-01", to: "2026-08-31", why: "holiday" }],
      people: 2,
      lifts: 1,
    },
    replaces: [],
  },
  "house.supplier": {
    id: "north",
    supplier: {
      id: "north",
      name: "The northern stores",
      week: [1, 2, 3, 4, 5],
      closed: [{ from: "2026-12-24", to: "2027-01-02" }],
      leadDays: 10,
      carriageDays: 2,
      outwork: false,
    },
    replaces: [],
  },
};
