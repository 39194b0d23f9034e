// The garage case: worked by hand, arithmetic re-run in code, minutes illustrative without a source. Shares: an airport
// cost-sharing example (encyclopaedia copies; method of 1973), a web worked example and a maths question-and-answer page,
// all opened. While it is apart: follows from our own rule.

const state = (id: string, setup: number, putback: number, ...parents: string[]) => ({ id, parents, setup, putback });
const job = (id: string, own: number, ...access: string[]) => ({ id, own, access });
const beside = (id: string, given: readonly string[], marginal: number, standAlone: number, ratio: number) => ({
  job: id,
  given,
  marginal,
  standAlone,
  ratio,
});

export const GARAGE = {
  states: [
    state("lift", 10, 10),
    state("wheelFL", 10, 10, "lift"),
    state("hubFL", 45, 60, "wheelFL"),
    state("gearbox", 180, 210, "lift"),
    state("engine", 240, 300, "gearbox"),
    state("carpets", 60, 75),
  ],
  jobs: [
    job("clutch", 60, "gearbox"),
    job("rearSeal", 35, "gearbox"),
    job("relBearing", 10, "gearbox"),
    job("discFL", 25, "wheelFL"),
    job("wheelBearingFL", 70, "hubFL"),
    job("sumpGasket", 90, "engine"),
    job("floorRust", 120, "carpets", "lift"),
  ],
  total: [
    { jobs: ["clutch"], minutes: 470 },
    { jobs: ["clutch", "rearSeal"], minutes: 505 },
    { jobs: ["clutch", "rearSeal", "relBearing"], minutes: 515 },
    { jobs: ["clutch", "sumpGasket"], minutes: 1100 },
    { jobs: ["discFL", "wheelBearingFL"], minutes: 240 },
    { jobs: ["clutch", "discFL"], minutes: 515 },
    { jobs: ["floorRust", "clutch"], minutes: 725 },
  ],
  marginal: [
    beside("rearSeal", ["clutch"], 35, 445, 0.0787),
    beside("rearSeal", [], 445, 445, 1),
    beside("sumpGasket", ["clutch"], 630, 1040, 0.6058),
    beside("sumpGasket", [], 1040, 1040, 1),
    beside("wheelBearingFL", ["discFL"], 175, 215, 0.814),
    beside("wheelBearingFL", [], 215, 215, 1),
    beside("discFL", ["clutch"], 45, 65, 0.6923),
    beside("discFL", [], 65, 65, 1),
    beside("floorRust", ["clutch"], 255, 275, 0.9273),
    beside("floorRust", [], 275, 275, 1),
  ],
  diminishingMarginalsViolations: 0,
};

/** Costs, shares, and how many times over the shares are. */
export const NESTED: readonly (readonly [costs: readonly number[], shares: readonly number[], times: number])[] = [
  [[8, 11, 13, 18], [2, 3, 4, 9], 1],
  [[1500, 2200, 3000], [500, 850, 1650], 1],
  [[40, 50, 60, 70, 80, 90], [40, 52, 67, 87, 117, 177], 6],
];

export const OFFERS = [
  {
    job: "rearSeal",
    standAloneMin: 445,
    marginalMin: 35,
    ratePerHourMinor: 9000,
    partPriceMinor: 1800,
    remainingLife: 0.5,
    savingMinor: 61_500,
    lossMinor: 900,
    suggest: true,
    why: "saves-more",
  },
  // only the lift is shared: too little to call it 'while it is apart', and the money says no as well
  {
    job: "discFL",
    standAloneMin: 65,
    marginalMin: 45,
    ratePerHourMinor: 9000,
    partPriceMinor: 14_000,
    remainingLife: 0.6,
    savingMinor: 3000,
    lossMinor: 8400,
    suggest: false,
    why: "little-shared",
  },
] as const;
