/** How a value of a chosen size is brought about under each limit of the cooling sheet. Refuses to know any edge. */
import { type Applies, type Brought, of, plain } from "./limit-brought.js";

const HOSE = "cool-top";
/** Two readings of one unit that differ by the value, the first the larger. */
const apart = (first: string, second: string, base: number, unit: string, more = {}): Brought => ({
  at: "car",
  says: (value) => ({ [first]: of(base + value, unit), [second]: of(base, unit), ...more }),
});
const opens = { "cool.cool-therm": "opens" };
const cap = { "cool.cool-cap": "holds" };
const flow = apart("cool.cool-flow", "cool.cool-flow.out-of", 70, "Cel");
const strength = plain("cool.strength", "%");

export const COOL_BROUGHT: Readonly<Record<string, Brought>> = {
  "cool.frost_margin": apart("cool.forecast-low", "cool.cool-freeze", -20, "Cel"),
  "cool.forecast-low": plain("cool.forecast-low", "Cel"),
  "cool.strength": strength,
  "cool.strength_low": strength,
  // From plain water to 45 %: that share of the whole is let out.
  "cool.let_out": {
    at: "car",
    says: (value) => ({ "cool.strength": "0 %", "cool.strength.volume": of(value / 0.45, "L") }),
  },
  "cool.cool-since": plain("cool.cool-since", "a"),
  "cool.organic_years": plain("cool.cool-since", "a"),
  "cool.cool-ph": plain("cool.cool-ph", "1"),
  "cool.ph_high": plain("cool.cool-ph", "1"),
  "cool.stray": {
    at: "car",
    says: (value) => ({
      "cool.cool-elec": "10 mV",
      "cool.cool-elec.key-on": "20 mV",
      "cool.cool-elec.all-on": of(value, "mV"),
    }),
  },
  "cool.hold_fall": apart("cool.cool-hold", "cool.cool-hold.after-15", 0.5, "bar"),
  "cool.cap_over": apart("cool.cool-cap.marked", "cool.cool-cap.wanted", 0.5, "bar", cap),
  "cool.cap_under": apart("cool.cool-cap.wanted", "cool.cool-cap.marked", 0.5, "bar", cap),
  "cool.hose-years": plain(`cool.hose-years@${HOSE}`, "a"),
  "cool.cool-fan-on": plain("cool.cool-fan.on@fan-1", "Cel"),
  "cool.drop": flow,
  "cool.drop_small": flow,
  "cool.therm_late": apart("cool.cool-therm.at", "cool.cool-therm.marked", 70, "Cel", opens),
  "cool.therm_early": apart("cool.cool-therm.marked", "cool.cool-therm.at", 70, "Cel", opens),
  "cool.dial_low": apart("cool.cool-gauge.boss", "cool.cool-gauge", 70, "Cel"),
  "cool.dial_high": apart("cool.cool-gauge", "cool.cool-gauge.boss", 70, "Cel"),
};

export const COOL_APPLIES: Applies = {
  "lim.frost-water": { says: { "cool.cool-kind": "water-only" } },
  "lim.coolant-age": { says: { "cool.cool-kind.inhibitor": "silicate" } },
  "lim.coolant-age-organic": { says: { "cool.cool-kind.inhibitor": "organic" } },
  "lim.stray-alloy": { facts: { "head-metal": "alloy" } },
  "lim.stray-iron": { facts: { "head-metal": "iron" } },
};
