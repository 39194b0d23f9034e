/** How a value of a chosen size is brought about under each limit of the engine health sheet. Refuses to know any edge. */
import { type Applies, type Brought, of, plain, type Said } from "./limit-brought.js";

const LOW = "cyl-3";
/** Eight cylinders at 10 bar, one of them with this share of it. */
const uneven = (share: number): Said =>
  Object.fromEntries(
    Array.from({ length: 8 }, (_, i) => `cyl-${i + 1}`).map((at) => [
      `eng.comp-dry@${at}`,
      of(at === LOW ? 10 * share : 10, "bar"),
    ]),
  );
const leak = plain(`eng.leak@${LOW}`, "%");
const lash = plain("eng.lash@cyl-1-in", "mm");

export const ENG_BROUGHT: Readonly<Record<string, Brought>> = {
  "eng.oil-age": plain("eng.oil-age@engine", "mo"),
  "eng.oil-age_km": plain("eng.oil-age.km@engine", "km"),
  "eng.belt-age": plain("eng.belt-age@engine", "a"),
  "eng.oil_rate": {
    at: "engine",
    says: (litres) => ({ "eng.oil-use@engine": of(litres, "L"), "eng.oil-use.km@engine": "1000 km" }),
  },
  "eng.oil-rise": plain("eng.oil-rise@engine", "s"),
  "eng.start-rattle": plain("eng.start-rattle@engine", "s"),
  "eng.oil-press": plain("eng.oil-press@engine", "bar"),
  "eng.oil-press_fast": plain("eng.oil-press.fast@engine", "bar"),
  "eng.leak-pool": plain("eng.leak-pool@engine", "mm"),
  "eng.carbon-monoxide": plain("eng.carbon-monoxide@engine", "%"),
  "eng.carb_spread": {
    at: "engine",
    says: (share) => ({
      "eng.carb-bal@engine": of(10 * (1 + share / 2), "1"),
      "eng.carb-bal.low@engine": of(10 * (1 - share / 2), "1"),
    }),
  },
  "eng.comp_abs": plain(`eng.comp-dry@${LOW}`, "bar"),
  "eng.comp_spread": { at: "cylinders", says: (percent) => uneven(1 - percent / 100) },
  "eng.comp_ratio": { at: "cylinders", says: (percent) => uneven(percent / 100) },
  // A good cylinder gains a tenth by the same oil.
  "eng.wet_more": {
    at: LOW,
    says: (percent) => ({
      [`eng.comp-dry@${LOW}`]: "10 bar",
      [`eng.comp-wet@${LOW}`]: of(11 + percent / 10, "bar"),
      [`eng.comp-wet.good-dry@${LOW}`]: "10 bar",
      [`eng.comp-wet.good-wet@${LOW}`]: "11 bar",
    }),
  },
  "eng.leak_down": leak,
  "eng.leak_floor": leak,
  "eng.lash": lash,
  "eng.lash_wide": lash,
};

export const ENG_APPLIES: Applies = {
  "lim.co-old": { facts: { "first-used": 1972 } },
  "lim.co-new": { facts: { "first-used": 1990 } },
};
