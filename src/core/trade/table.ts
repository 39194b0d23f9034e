/** Every trade function by name: what conditions may call, what is reckoned on the terminal and on the bench screen. */
import { BEARINGS } from "./bearings.js";
import { BRAKE_FLUID } from "./brake-fluid.js";
import { BRAKES } from "./brakes.js";
import { CLUTCH } from "./clutch.js";
import { COMPRESSION } from "./compression.js";
import type { TradeFunction } from "./contract.js";
import { COOLANT } from "./coolant.js";
import { CORROSION_LIFE } from "./corrosion-life.js";
import { DAMP_AIR } from "./damp-air.js";
import { DRAINAGE } from "./drainage.js";
import { ELECTRICS } from "./electrics.js";
import { GEARS } from "./gears.js";
import { GUARD_BAND } from "./guard-band.js";
import { HOLLOW_SECTIONS } from "./hollow-sections.js";
import { LINERS } from "./liners.js";
import { PLAY } from "./play.js";
import { RUST_DEGREE } from "./rust-degree.js";
import { TREND } from "./trend.js";
import { TYRE_MARKS } from "./tyre-marks.js";
import { TYRE_SIZES } from "./tyre-sizes.js";
import { VALVES } from "./valves.js";
import { WALLS } from "./walls.js";

/** The subjects in the order they are shown. */
export const SUBJECTS = {
  tubes: [...HOLLOW_SECTIONS, ...WALLS, ...CORROSION_LIFE, ...RUST_DEGREE],
  brakes: [...BRAKES, ...BRAKE_FLUID],
  "bearings and play": [...BEARINGS, ...PLAY],
  "water and air": [...DRAINAGE, ...DAMP_AIR],
  tyres: [...TYRE_SIZES, ...TYRE_MARKS],
  "engine on the bench": [...COMPRESSION, ...VALVES, ...LINERS],
  "gears and clutch": [...GEARS, ...CLUTCH],
  "electrics and coolant": [...ELECTRICS, ...COOLANT],
  "readings and trend": [...GUARD_BAND, ...TREND],
} as const satisfies Readonly<Record<string, readonly TradeFunction[]>>;
export type Subject = keyof typeof SUBJECTS;

/** All functions by name; a name given twice is our own mistake. */
export const TRADE_TABLE: ReadonlyMap<string, TradeFunction> = joined();

function joined(): ReadonlyMap<string, TradeFunction> {
  const all = Object.values(SUBJECTS).flat();
  const table = new Map(all.map((fn) => [fn.name, fn]));
  if (table.size !== all.length) throw new Error("two trade functions share a name");
  return table;
}
