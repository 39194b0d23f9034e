/**
 * How a value of a chosen size is brought about under each limit: which replies at which place make the reading, or the
 * value worked out from readings, come out as wanted. Knows what is measured; refuses to know any edge.
 */
import { type Applies, type Brought, mm, of, plain, type Said } from "./limit-brought.js";
import { BUY_APPLIES, BUY_BROUGHT } from "./limits-brought-buy.js";
import { COOL_APPLIES, COOL_BROUGHT } from "./limits-brought-cool.js";
import { ELEC_APPLIES, ELEC_BROUGHT, ELEC_BROUGHT_FOR } from "./limits-brought-elec.js";
import { ENG_APPLIES, ENG_BROUGHT } from "./limits-brought-eng.js";
import { EXH_APPLIES, EXH_BROUGHT, EXH_BROUGHT_FOR } from "./limits-brought-exh.js";
import { FUEL_APPLIES, FUEL_BROUGHT } from "./limits-brought-fuel.js";
import { HEAD_BROUGHT } from "./limits-brought-head.js";
import { LEGAL_APPLIES, LEGAL_BROUGHT } from "./limits-brought-legal.js";
import { RECV_APPLIES, RECV_BROUGHT } from "./limits-brought-recv.js";
import { REST_BROUGHT } from "./limits-brought-rest.js";
import { ROAD_APPLIES, ROAD_BROUGHT } from "./limits-brought-road.js";
import { STEER_BROUGHT } from "./limits-brought-steer.js";
import { TRANS_APPLIES, TRANS_BROUGHT } from "./limits-brought-trans.js";
import { TRIM_APPLIES, TRIM_BROUGHT } from "./limits-brought-trim.js";
import { TYRE_APPLIES, TYRE_BROUGHT } from "./limits-brought-tyre.js";

const JOINT = "FL-lower-outer";
const ROD = "FL-trackrod-outer";
const PAD = "FL-pad-inner";
const VITAL = "post-FL-fore";
const MAIN = "sill-tube-L-aft";
const LIGHT = "battery-tray-under";
/** On that main tube. */
const BELT = "belt-mount-L-lap-outer";
/** Drawn and sound wall; thick enough for every floor in millimetres. */
const WALL = 2;
const lost = (tube: string, at = tube): Brought => ({
  at,
  says: (share) => ({ [`corr.wall-ref@${tube}`]: mm(WALL), [`corr.wall@${at}`]: mm(WALL * (1 - share)) }),
});
/** A tube that loses a tenth of a millimetre a year and has so many years left before that share of its wall is gone. */
const lasting = (tube: string, share: number): Brought => ({
  at: tube,
  says: (years) => {
    const today = WALL * (1 - share) + 0.1 * years;
    return {
      [`corr.wall-ref@${tube}`]: mm(WALL),
      [`corr.mark@${tube}`]: mm(today + 0.1),
      [`corr.mark.today@${tube}`]: mm(today),
      [`corr.mark.months@${tube}`]: 12,
    };
  },
});
const left = (tube: string): Brought => ({
  at: tube,
  says: (share) => ({ [`corr.tube-spec@${tube}`]: mm(WALL), [`corr.wall@${tube}`]: mm(WALL * share) }),
});
const wall = (tube: string): Brought => ({
  at: tube,
  says: (value) => ({ [`corr.tube-spec@${tube}`]: mm(WALL), [`corr.wall@${tube}`]: mm(value) }),
});
const lining = (over: string): Brought => ({
  at: "RL",
  says: (value) => ({ "brk.shoe@RL": mm(value), "brk.shoe.over@RL": over }),
});
/** A car of 1000 kgf: what it weighs in newtons. */
const WEIGHT = 9806.65;
const parked: Brought = {
  at: "car",
  says: (share) => ({
    "brk.weight": "1000 kgf",
    "brk.effort.parking@RL": of((share * WEIGHT) / 2, "N"),
    "brk.effort.parking@RR": of((share * WEIGHT) / 2, "N"),
  }),
};
const efforts = (value: number): Said => ({
  "brk.effort@FL": of(1000 * (1 - value), "N"),
  "brk.effort@FR": "1000 N",
});
/** Both ends of two pads of one brake, or of one pad. */
const pads = (one: number, oneTrail: number, other: string, otherLead: number): Said => ({
  [`brk.pad@${PAD}`]: mm(one),
  [`brk.pad.trail@${PAD}`]: mm(oneTrail),
  [`brk.pad@${other}`]: mm(otherLead),
  [`brk.pad.trail@${other}`]: mm(otherLead),
});

/** By what the limit is over. */
export const BROUGHT: Readonly<Record<string, Brought>> = {
  "susp.rodend-play": plain(`susp.rodend-play@${JOINT}`, "mm"),
  "susp.balljoint-play": plain(`susp.balljoint-play@${JOINT}`, "mm"),
  "susp.balljoint_play_side": plain(`susp.balljoint-play.side@${JOINT}`, "mm"),
  "susp.balljoint-torque": plain(`susp.balljoint-torque@${JOINT}`, "N.m"),
  "susp.trackrod-play": plain(`susp.trackrod-play@${ROD}`, "mm"),
  "susp.pivot-play": plain("susp.pivot-play@FL-upper-fore", "mm"),
  "susp.pivot_play_along": plain("susp.pivot-play.along@FL-upper-fore", "mm"),
  "susp.bush-shift": plain(`susp.bush-shift@${JOINT}`, "mm"),
  "susp.damper-eye": plain("susp.damper-eye@FL-damper-top", "mm"),
  "susp.rim": plain("susp.rim-play@FL", "mm"),
  "susp.lash": plain("susp.wheel-lash", "mm"),
  "susp.height_diff": {
    at: "FL",
    says: (value) => ({ "susp.ride-height@FL": mm(200), "susp.ride-height@FR": mm(200 + value) }),
  },
  "susp.toe_visit": { ...plain("susp.toe-camber@axle-F", "mm"), before: { "susp.toe-camber@axle-F": "0 mm" } },
  "susp.long_since": plain("susp.age", "a"),
  "susp.joint_run": plain("susp.age.km", "km"),
  "whl.float_rise": { ...plain("whl.float@FL", "mm"), before: { "whl.float@FL": "0 mm" } },
  "susp.toe_shift": {
    at: "axle-F",
    says: (value) => ({ "susp.toe-camber@axle-F": mm(value), "susp.toe-last@axle-F": mm(0) }),
  },
  "susp.camber_diff": {
    at: "axle-F",
    says: (value) => ({
      "susp.toe-camber.camber-left@axle-F": of(value, "deg"),
      "susp.toe-camber.camber-right@axle-F": of(0, "deg"),
    }),
  },
  "susp.age": plain("susp.age", "a"),

  "whl.float": plain("whl.float@FL", "mm"),
  "whl.heat_diff": {
    at: "FL",
    says: (value) => ({ "whl.heat@FL": of(20 + value, "Cel"), "whl.heat@FR": "20 Cel" }),
  },
  "whl.heat_rise": { at: "FL", says: (value) => ({ "whl.heat@FL": of(20 + value, "Cel"), "whl.air": "20 Cel" }) },
  "whl.heat": plain("whl.heat@FL", "Cel"),
  "whl.touch": plain("whl.heat@FL", "Cel"),
  "whl.runout": plain("whl.runout@FL", "mm"),
  "whl.runout_rim": plain("whl.runout.rim@FL", "mm"),
  "whl.run_km": { at: "FL", says: (value) => ({ "whl.since.km": of(value, "km") }) },
  "whl.run_years": { at: "FL", says: (value) => ({ "whl.since.years": of(value, "a") }) },

  "brk.pad_thin": plain(`brk.pad@${PAD}`, "mm"),
  "brk.pad_diff": { at: PAD, says: (value) => pads(8, 8, "FL-pad-outer", 8 + value) },
  "brk.pad_taper": { at: PAD, says: (value) => pads(8, 8 + value, "FL-pad-outer", 8) },
  "brk.pad_side": { at: PAD, says: (value) => pads(8, 8, "FR-pad-inner", 8 + value) },
  "brk.disc_left": {
    at: "FL",
    says: (value) => ({ "brk.disc-thick@FL": mm(20 + value), "brk.disc-thick.marked@FL": mm(20) }),
  },
  "brk.disc_worn": {
    at: "FL",
    says: (value) => ({ "brk.disc-thick@FL": mm(20), "brk.disc-thick.new@FL": mm(20 + value) }),
  },
  "brk.disc-var": {
    at: "FL",
    says: (value) => ({ "brk.disc-var@FL": [mm(20), mm(20 + value), ...Array<string>(6).fill(mm(20))] }),
  },
  "brk.disc-runout": plain("brk.disc-runout@FL", "mm"),
  "brk.temp_diff": {
    at: "FL",
    says: (value) => ({ "brk.temp@FL": of(20 + value, "Cel"), "brk.temp@FR": "20 Cel" }),
  },
  "brk.touch": plain("brk.temp@FL", "Cel"),
  "brk.fluid-boil": { at: "car", says: (value) => ({ "brk.fluid-boil": [of(value, "Cel"), of(value + 5, "Cel")] }) },
  "brk.fluid-water": plain("brk.fluid-water", "%"),
  "brk.fluid-age": plain("brk.fluid-age", "a"),
  "brk.hose-age": plain("brk.hose-age@FL", "a"),
  "brk.seal-age": plain("brk.seal-age", "a"),
  "brk.seal_set": plain("brk.seal-age", "a"),
  "brk.pipe-wall": plain("brk.pipe-wall@axle-F", "mm"),
  "brk.pedal_share": {
    at: "car",
    says: (value) => ({ "brk.pedal-left": mm(100 * value), "brk.pedal-left.full": mm(100) }),
  },
  "brk.park_clicks": { at: "car", says: (value) => ({ "brk.park-travel": value }) },
  "brk.imbalance": { at: "FL", says: efforts },
  "brk.imbalance_steered": { at: "FL", says: efforts },
  "brk.effort": plain("brk.effort@FL", "N"),
  "brk.service_share": plain("brk.decel", "1"),
  "brk.park_share": parked,
  "brk.park_alone": parked,

  "corr.loss_vital": lost(VITAL),
  "corr.loss_main": lost(MAIN),
  "corr.loss_light": lost(LIGHT),
  "corr.belt_loss": { ...lost(MAIN), at: BELT },
  "corr.left_main": left(MAIN),
  "corr.left_vital": left(VITAL),
  "corr.drawn": plain(`corr.tube-spec@${MAIN}`, "mm"),
  "corr.rate": {
    at: MAIN,
    says: (value) => ({
      [`corr.mark@${MAIN}`]: mm(WALL),
      [`corr.mark.today@${MAIN}`]: mm(WALL - value),
      [`corr.mark.months@${MAIN}`]: 12,
    }),
  },
  "corr.life_vital": lasting(VITAL, 0.15),
  "corr.life_main": lasting(MAIN, 0.2),
  "corr.area": plain(`corr.area@${MAIN}`, "%"),
  "corr.area_scale": plain(`corr.area@${MAIN}`, "%"),
  "corr.gap": plain("corr.gap@side-L", "mm"),
  "corr.out": plain("corr.straight", "mm"),
  "corr.straight_heights": plain("corr.straight.heights", "mm"),
  "corr.crack_share": {
    at: MAIN,
    says: (value) => ({ [`corr.crack@${MAIN}`]: mm(100 * value), [`corr.crack.seam@${MAIN}`]: mm(100) }),
  },

  // The hole and head the limit is drawn up for.
  "drn.pour_12": {
    at: "scuttle-L",
    says: (value) => ({
      "drn.pour-time@scuttle-L": of(value, "s"),
      "drn.pour-time.hole@scuttle-L": 12,
      "drn.pour-time.head@scuttle-L": 50,
    }),
  },
  "drn.hose": plain("drn.hose@foot-FL", "min"),
  "drn.moist_diff": {
    at: "foot-FL",
    says: (value) => ({ "drn.moist@foot-FL": of(10 + value, "%"), "drn.moist-dry": "10 %" }),
  },
  "drn.depth": plain("drn.depth@foot-FL", "mm"),
  "drn.wet_since": plain("drn.wet-since@foot-FL", "wk"),
  "drn.dew_margin": {
    at: "car",
    says: (value) => ({ "drn.floor-temp": of(10 + value, "Cel"), "drn.dew": "10 Cel" }),
  },

  ...BUY_BROUGHT,
  ...COOL_BROUGHT,
  ...ELEC_BROUGHT,
  ...ENG_BROUGHT,
  ...EXH_BROUGHT,
  ...FUEL_BROUGHT,
  ...HEAD_BROUGHT,
  ...STEER_BROUGHT,
  ...TYRE_BROUGHT,
  ...TRANS_BROUGHT,
  ...RECV_BROUGHT,
  ...REST_BROUGHT,
  ...ROAD_BROUGHT,
  ...LEGAL_BROUGHT,
  ...TRIM_BROUGHT,
};

/** Where two limits are over one reading of unlike parts: by the limit. */
export const BROUGHT_FOR: Readonly<Record<string, Brought>> = {
  "lim.shoe-rivet": lining("over-rivet"),
  "lim.shoe-bond": lining("over-shoe"),
  "lim.shoe-law": lining("over-shoe"),
  "lim.wall-least": wall(MAIN),
  "lim.wall-least-A": wall(VITAL),
  "lim.wall-least-A-thin": wall(VITAL),
  ...ELEC_BROUGHT_FOR,
  ...EXH_BROUGHT_FOR,
};

/** What makes a limit apply that asks for more than its reading: replies and facts of the car. */
export const APPLIES: Applies = {
  "lim.rodend-play": { says: { [`susp.joint-kind.liner@${JOINT}`]: "lined" } },
  "lim.rodend-play-bare": { says: { [`susp.joint-kind.liner@${JOINT}`]: "bare" } },
  "lim.balljoint-torque": { says: { [`susp.balljoint-torque.type@${JOINT}`]: "greaseable-steel" } },
  "lim.trackrod-rodend": {
    says: { [`susp.joint-kind@${ROD}`]: "rod-end", [`susp.joint-kind.liner@${ROD}`]: "lined" },
  },
  "lim.trackrod-rodend-bare": {
    says: { [`susp.joint-kind@${ROD}`]: "rod-end", [`susp.joint-kind.liner@${ROD}`]: "bare" },
  },
  "lim.wheel-lash": { facts: { steering: "rack" } },
  "lim.wheel-lash-joints": { facts: { steering: "rack-with-joints" } },
  "lim.wheel-lash-box": { facts: { steering: "box" } },
  "lim.float-taper": { says: { "whl.kind@FL": "taper-adjust" } },
  "lim.float-ang": { says: { "whl.kind@FL": "angular-pair" } },
  "lim.float-unit": { says: { "whl.kind@FL": "cartridge" } },
  "lim.repack": { says: { "whl.kind@FL": "taper-adjust" } },
  "lim.repack-years": { says: { "whl.kind@FL": "taper-adjust" } },
  "lim.bearing-age": { says: { "whl.kind@FL": "hub-unit" } },
  "lim.bearing-age-years": { says: { "whl.kind@FL": "hub-unit" } },
  "lim.fluid-age-hard": { says: { "brk.use": "track" } },
  "lim.seal-age-hard": { says: { "brk.use": "mountains" } },
  "lim.service-eu": { facts: { country: "de", "first-used": 2012 } },
  "lim.service-eu-older": { facts: { country: "fr", "first-used": 1992, abs: true } },
  "lim.service-eu-no-abs": { facts: { country: "it", "first-used": 2011, abs: false } },
  "lim.service-gb": { facts: { country: "gb", "first-used": 2010 } },
  "lim.service-gb-older": { facts: { country: "gb", "first-used": 1968 } },
  "lim.service-gb-early": { facts: { country: "gb", "first-used": 1967 } },
  "lim.service-elsewhere": { facts: { country: "us" } },
  ...BUY_APPLIES,
  ...COOL_APPLIES,
  ...ELEC_APPLIES,
  ...ENG_APPLIES,
  ...EXH_APPLIES,
  ...FUEL_APPLIES,
  ...TYRE_APPLIES,
  ...TRANS_APPLIES,
  ...RECV_APPLIES,
  ...ROAD_APPLIES,
  ...LEGAL_APPLIES,
  ...TRIM_APPLIES,
};
