/** Wear over time or distance: the lines through the readings, when the limit is reached, and between which dates. */
import {
  calculate,
  fittedLine,
  leastSquaresCrossing,
  medianLine,
  medianSlopeRange,
  TRADE_TABLE,
} from "../../core/trade/index.js";
import { caseOf, has, reckoned, remarks, type Section, tidy } from "./section.js";
import { type At, asFields, fields, figure, inside, list, positive } from "./shape.js";

const orNull = (value: number | undefined): number | null => (value === undefined ? null : tidy(value));

const series = caseOf(fields({ x: list(figure, 2), y: list(figure, 2), limit: figure }), ({ x, y, limit }, at) => {
  if (x.length !== y.length) {
    const params = { found: `${y.length}`, expected: `${x.length} readings, one for each time` };
    at.problems.push({ code: "plan-file.expected", where: { path: `${at.path}.y` }, params });
    return undefined;
  }
  const [fitted, crossing] = [fittedLine(x, y), leastSquaresCrossing(x, y, limit)];
  const [line, range] = [medianLine(x, y), medianSlopeRange(x, y)];
  const met = reckoned("limit_reached", [x, y, limit], at);
  return {
    x,
    y,
    limit,
    ols_slope: orNull(fitted?.slope),
    ols_intercept: orNull(fitted?.intercept),
    s: orNull(fitted?.scatter),
    se_slope: orNull(fitted?.slopeError),
    x_at_limit_ols: orNull(crossing?.at),
    fieller90: crossing?.from === undefined ? null : [tidy(crossing.from), orNull(crossing.to)],
    g: orNull(crossing?.g),
    ts_slope: orNull(line?.slope),
    ts_intercept_joint: orNull(line?.intercept),
    x_at_limit_ts: orNull(met),
    ts_slope_ci90: range === undefined ? null : range.map(tidy),
    // the same slope: the file holds another program's answer under this name
    scipy_ts: orNull(line?.slope),
  };
});

const pair = fields({ x1: figure, y1: figure, x2: figure, y2: figure, U: positive, limit: figure });

const twoPoint = caseOf(fields({ in: pair }), ({ in: given }, at) => {
  const { x1, y1, x2, y2, U, limit } = given;
  const two = [
    [x1, x2],
    [y1, y2],
  ] as const;
  const slope = reckoned("wear_rate", two, at);
  if (slope === undefined) return undefined;
  return {
    in: given,
    rate: tidy(Math.abs(slope)),
    x_at_limit: orNull(reckoned("limit_reached", [...two, limit], at)),
    earliest: orNull(reckoned("limit_reached_earliest", [...two, limit, U], at)),
    latest: latest(two, limit, U, at),
  };
});

/** None, and no fault of the file, where the readings are nearer to each other than their uncertainty. */
function latest(two: readonly [readonly number[], readonly number[]], limit: number, U: number, at: At): number | null {
  const fn = TRADE_TABLE.get("limit_reached_latest");
  const result = fn && calculate(fn, [...two, limit, U]);
  if (result?.ok === false && result.problems.every(({ code }) => code === "trade.no-trend")) return null;
  return orNull(reckoned("limit_reached_latest", [...two, limit, U], at));
}

const isSeries = (value: unknown): boolean => has(value, "x", "y", "limit");
const isPair = (value: unknown): boolean => has(value, "x1", "y1", "x2", "y2");
const isOne = (value: unknown): boolean => isSeries(value) || isPair(value) || isPair(asFields(value)?.["in"]);

function answerOne(value: unknown, at: At): unknown {
  if (isPair(value)) return twoPoint({ in: value }, at);
  return has(value, "in") ? twoPoint(value, at) : series(value, at);
}

/** Every series goes under a name of its own. */
export const trend: Section = {
  name: "trend",
  isSection: (value) => !isOne(value) && Object.values(asFields(value) ?? {}).some(isOne),
  answer: (value, at) => {
    const given = asFields(value) ?? {};
    const rows = Object.entries(given).filter(([, one]) => asFields(one) !== undefined);
    return {
      ...remarks(given),
      ...Object.fromEntries(rows.map(([key, one]) => [key, answerOne(one, inside(at, key))])),
    };
  },
  isCase: isOne,
  answerCase: answerOne,
};
