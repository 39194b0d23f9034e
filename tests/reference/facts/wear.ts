// Trend: computed with a general statistics library and with explicit formulae. Plant codes: a study guide's answer
// key and a calculation sheet citing API 510 10th ed. 6.5.1.1, both opened.

const X = [0, 8, 15, 24, 31];
/** Five readings in order, and the same with one bad one. */
export const FIVE = {
  clean: {
    x: X,
    y: [11, 9.8, 8.9, 7.4, 6.5],
    limit: 3,
    ols_slope: -0.146356,
    ols_intercept: 11.00315,
    s: 0.07939,
    se_slope: 0.003217,
    x_at_limit_ols: 54.683,
    fieller90: [52.682, 56.894],
    g: 0.00268,
    ts_slope: -0.147581,
    ts_intercept_joint: 11,
    x_at_limit_ts: 54.208,
    ts_slope_ci90: [-0.15, -0.128571],
    scipy_ts: -0.147581,
  },
  outlier: {
    x: X,
    y: [11, 9.8, 6.9, 7.4, 6.5],
    limit: 3,
    ols_slope: -0.144386,
    ols_intercept: 10.57242,
    s: 0.9743,
    se_slope: 0.039474,
    x_at_limit_ols: 52.446,
    fieller90: [36.97, 119.974],
    g: 0.41396,
    ts_slope: -0.147581,
    ts_intercept_joint: 10.98065,
    x_at_limit_ts: 54.077,
    ts_slope_ci90: [-0.273333, -0.025],
    scipy_ts: -0.147581,
  },
} as const;
export const TWO_POINTS = {
  twoPoint: {
    in: { x1: 0, y1: 10, x2: 12, y2: 8.2, U: 0.13, limit: 3 },
    rate: 0.15,
    x_at_limit: 46.667,
    earliest: 41.534,
    latest: 53.532,
  },
  twoPointIndistinct: {
    in: { x1: 0, y1: 10, x2: 1, y2: 9.8, U: 0.13, limit: 3 },
    rate: 0.2,
    x_at_limit: 35,
    earliest: 15.5,
    latest: null,
  },
} as const;

export const HALF_LIFE = {
  rate: [
    { from: 0.4, to: 0.26, years: 20, rate: 0.007 },
    { from: 0.75, to: 0.675, years: 15, rate: 0.005 },
    { from: 480, to: 410, years: 22, rate: 3.2, unit: "mil/yr (rounded)" },
    { from: 0.565, to: 0.521, years: 4.42, rate: 0.01 },
  ],
  life: [
    { t: 0.198, need: 0.15, rate: 0.007, years: 6.9 },
    { t: 0.211, need: 0.15, rate: 0.003, years: 20.3 },
  ],
  interval: [
    { life: 14, cap: 10, years: 7 },
    { life: 18.7, cap: 10, years: 9.35 },
    { life: 9, cap: 10, years: 4.5 },
    { life: 5.5, cap: 10, years: 2.75 },
    { life: 20, cap: 10, years: 10 },
    { life: 11.2, cap: 10, years: 5.6 },
    { life: 30, cap: 10, years: 10, src: "hand" },
  ],
  controlling: [
    {
      initial: 0.75,
      previous: 0.742,
      actual: 0.718,
      yearsLong: 13,
      yearsShort: 6,
      long: 0.00246,
      short: 0.004,
      governs: "short",
    },
    {
      initial: 0.413,
      previous: 0.5,
      actualLong: 0.352,
      actualShort: 0.4,
      yearsLong: 5,
      yearsShort: 1,
      long: 0.0122,
      short: 0.1,
      need: 0.3,
      life: 1,
      interval: 0.5,
    },
  ],
} as const;
