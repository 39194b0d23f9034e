/** How a value of a chosen size is brought about under each limit of the clutch and gearbox sheet. Refuses to know any edge. */
import { type Applies, type Brought, mm, of, plain, type Said } from "./limit-brought.js";

const GEAR = "gear-3";
const SHAFT = "gearshaft-in";
const length = (key: string): Brought => plain(key, "mm");

/** A thickness this much over the maker's least. */
const over = (key: string, least: number): Brought => ({
  at: "car",
  says: (value) => ({ [key]: mm(least + value), [`${key}.least`]: mm(least) }),
});
/** Four places of a pair read on its own pitch circle. */
const backlash = (most: number, least: number): Said => ({
  [`trans.backlash.most@${GEAR}`]: mm(most),
  [`trans.backlash.least@${GEAR}`]: mm(least),
  [`trans.backlash.radius@${GEAR}`]: mm(50),
  [`trans.backlash.pitch@${GEAR}`]: mm(50),
  [`trans.backlash.way@${GEAR}`]: "circumference",
  [`trans.backlash.fitted@${GEAR}`]: "old",
});
/** A new straight gear of this module and its mate. */
const gears = (stated: number, teeth: number, mate: number, outside: number, helix = 0): Said => ({
  [`trans.gear-new.teeth@${GEAR}`]: teeth,
  [`trans.gear-new.outside@${GEAR}`]: mm(outside),
  [`trans.gear-new.helix@${GEAR}`]: of(helix, "deg"),
  [`trans.gear-mate.teeth@${GEAR}`]: mate,
  [`trans.stated.module@${GEAR}`]: mm(stated),
});
const degrees = (radians: number): number => (radians * 180) / Math.PI;

export const TRANS_BROUGHT: Readonly<Record<string, Brought>> = {
  "trans.oil-age": plain("trans.oil-age.km", "km"),
  "trans.oil-age_years": plain("trans.oil-age.years", "a"),
  "trans.pedal": length("trans.pedal.free"),
  // 3 330 turns in a gear of 3.33 roll 1 000 turns a minute; 2 m each are 120 km/h without slip.
  "trans.slip_share": {
    at: "car",
    says: (value) => ({
      "trans.slip-run.speed": of(120 * (1 - value / 100), "km/h"),
      "trans.slip-run.rpm": 3330,
      "trans.slip-run.gear": of(0.9, "1"),
      "trans.slip-run.final": of(3.7, "1"),
      "trans.slip-run.roll": mm(2000),
    }),
  },
  // Like bores: the slave is due the master's own 30 mm.
  "trans.slave_lost": {
    at: "car",
    says: (value) => ({
      "trans.travel.slave": mm(30 - value),
      "trans.travel.master": mm(30),
      "trans.bores.master": mm(19),
      "trans.bores.slave": mm(19),
    }),
  },
  "trans.release_way": {
    at: "car",
    says: (value) => ({ "trans.travel.slave": mm(2 * value), "trans.bores.lever": of(2, "1") }),
  },
  "trans.left": {
    at: "car",
    says: (value) => ({
      "trans.disc-thick.now": mm(7 + (2 * value) / 100),
      "trans.disc-thick.new": mm(9),
      "trans.disc-thick.least": mm(7),
    }),
  },
  "trans.disc_over": {
    at: "car",
    says: (value) => ({ "trans.disc-thick.now": mm(7 + value), "trans.disc-thick.least": mm(7) }),
  },
  "trans.rivet-depth": length("trans.rivet-depth"),
  "trans.face-left": length("trans.face-left"),
  "trans.disc-runout": length("trans.disc-runout"),
  "trans.finger": length("trans.finger.depth"),
  "trans.finger_width": length("trans.finger.width"),
  "trans.finger_tips": length("trans.finger.tips"),
  "trans.plate_flat": length("trans.plate.flat"),
  // 0.3 of 5 000 N on two faces 100 mm out: 300 N·m.
  "trans.reserve": {
    at: "car",
    says: (value) => ({
      "trans.load.friction": of(0.3, "1"),
      "trans.load.clamp": of(5000, "N"),
      "trans.load.radius": mm(100),
      "trans.load.faces": 2,
      "trans.load.engine": of(300 / value, "N.m"),
    }),
  },
  "trans.fly-runout": length("trans.fly-runout.face"),
  "trans.fly-runout_rim": length("trans.fly-runout.rim"),
  "trans.fly_over": over("trans.fly-left", 22),
  "trans.end_over": {
    at: SHAFT,
    says: (value) => ({
      [`trans.end-float.float@${SHAFT}`]: mm(0.2 + value),
      [`trans.end-float.most@${SHAFT}`]: mm(0.2),
    }),
  },
  "trans.end_under": {
    at: SHAFT,
    says: (value) => ({
      [`trans.end-float.float@${SHAFT}`]: mm(0.2 - value),
      [`trans.end-float.least@${SHAFT}`]: mm(0.2),
    }),
  },
  "trans.shaft-runout": length(`trans.shaft-runout@${SHAFT}`),
  "trans.backlash_play": { at: GEAR, says: (value) => backlash(value, value) },
  "trans.backlash_tight": { at: GEAR, says: (value) => backlash(value, value) },
  "trans.backlash_swing": { at: GEAR, says: (value) => backlash(0.1 + value, 0.1) },
  "trans.fork": length(`trans.fork@${GEAR}`),
  "trans.synchro": length(`trans.synchro.gap@${GEAR}`),
  // Sixty straight teeth of module 2 stand 60 mm apart.
  "trans.centre_off": {
    at: GEAR,
    says: (value) => ({ ...gears(2, 20, 40, 44), [`trans.centre@${GEAR}`]: mm(60 + value) }),
  },
  "trans.helix_off": {
    at: GEAR,
    says: (value) => ({
      ...gears(2, 20, 40, 44, degrees(Math.acos(60 / 64)) - value),
      [`trans.centre@${GEAR}`]: mm(64),
    }),
  },
  "trans.module_off": { at: GEAR, says: (value) => gears(2, 20, 40, 2 * (1 - value) * 22) },
};

export const TRANS_APPLIES: Applies = {
  "lim.clutch-free": { facts: { "clutch-operation": "cable" } },
};
