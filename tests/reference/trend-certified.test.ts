/**
 * The line of least squares against certified values: NIST, Statistical Reference Datasets, linear regression, Norris
 * (ozone monitors, 36 readings). Data and certified values from memory; that they belong together is seen by their
 * agreeing to nine figures. The interval of a crossing is then held to the certified standard deviations.
 */
import { expect, test } from "vitest";
import { fittedLine, leastSquaresCrossing } from "../../src/core/trade/trend.js";

/** Read by the monitor, and true concentration. */
const NORRIS = [
  [0.1, 0.2],
  [338.8, 337.4],
  [118.1, 118.2],
  [888.0, 884.6],
  [9.2, 10.1],
  [228.1, 226.5],
  [668.5, 666.3],
  [998.5, 996.3],
  [449.1, 448.6],
  [778.9, 777.0],
  [559.2, 558.2],
  [0.3, 0.4],
  [0.1, 0.6],
  [778.1, 775.5],
  [668.8, 666.9],
  [339.3, 338.0],
  [448.9, 447.5],
  [10.8, 11.6],
  [557.7, 556.0],
  [228.3, 228.1],
  [998.0, 995.8],
  [888.8, 887.6],
  [119.6, 120.2],
  [0.3, 0.3],
  [0.6, 0.3],
  [557.6, 556.8],
  [339.3, 339.1],
  [888.0, 887.2],
  [998.5, 999.0],
  [778.9, 779.0],
  [10.2, 11.1],
  [117.6, 118.3],
  [228.9, 229.2],
  [668.4, 669.1],
  [449.2, 448.9],
  [0.2, 0.5],
] as const;
const CERTIFIED = {
  slope: 1.00211681802045,
  slopeError: 0.429796848199937e-3,
  intercept: -0.262323073774029,
  interceptError: 0.232818234301152,
  scatter: 0.884796396144373,
} as const;
const X = NORRIS.map(([, x]) => x);
const Y = NORRIS.map(([y]) => y);
const mean = X.reduce((sum, x) => sum + x, 0) / X.length;
const sxx = X.reduce((sum, x) => sum + (x - mean) ** 2, 0);

test("slope, value at zero, scatter and the standard deviation of the slope as certified, to nine figures", () => {
  const line = fittedLine(X, Y);
  for (const name of ["slope", "intercept", "scatter", "slopeError"] as const)
    expect((line?.[name] ?? Number.NaN) / CERTIFIED[name]).toBeCloseTo(1, 9);
  const interceptError = (line?.scatter ?? Number.NaN) * Math.sqrt(1 / X.length + mean ** 2 / sxx);
  expect(interceptError / CERTIFIED.interceptError).toBeCloseTo(1, 9);
});

/** Two-sided 90 % point of Student's t with 34 degrees of freedom, from printed tables (from memory). */
const T = 1.690924;

test.each([500, 1_200, 3_000])("where the line reaches %s: both ends by the certified values", (edge) => {
  const { slope, intercept, scatter } = CERTIFIED;
  const found = leastSquaresCrossing(X, Y, edge);
  expect(found?.at).toBeCloseTo((edge - intercept) / slope, 6);
  // Fieller: at its ends the line is just t standard deviations of its own away from the edge.
  for (const end of [found?.from ?? Number.NaN, found?.to ?? Number.NaN]) {
    const off = Math.abs(intercept + slope * end - edge);
    const sure = scatter * Math.sqrt(1 / X.length + (end - mean) ** 2 / sxx);
    expect(off / sure).toBeCloseTo(T, 2);
  }
});
