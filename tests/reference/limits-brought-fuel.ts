/** How a value of a chosen size is brought about under each limit of the fuel sheet. Refuses to know any edge. */
import { type Applies, type Brought, of, plain } from "./limit-brought.js";

const RUN = "run-bay";
const hot = plain(`fuel.fuel-route.hot@${RUN}`, "mm");
const years = plain(`fuel.hose-date@${RUN}`, "a");

export const FUEL_BROUGHT: Readonly<Record<string, Brought>> = {
  "fuel.hose-date": years,
  "fuel.lined_years": years,
  "fuel.filter-years": plain("fuel.filter.years", "a"),
  "fuel.fuel-route-hot": hot,
  "fuel.hot_behind": hot,
  "fuel.fuel-route-moving": plain(`fuel.fuel-route.moving@${RUN}`, "mm"),
  "fuel.shield-gap": plain("fuel.shield.gap@tank-1", "mm"),
  "fuel.fuel-press": plain("fuel.fuel-press", "bar"),
  "fuel.press_short": plain("fuel.fuel-press", "bar"),
  "fuel.hold_fall": {
    at: "car",
    says: (share) => ({ "fuel.press-hold": "4 bar", "fuel.press-hold.after-10": of(4 * (1 - share), "bar") }),
  },
  "fuel.hold_fall_hot": {
    at: "car",
    says: (share) => ({
      "fuel.press-hold": "4 bar",
      "fuel.press-hold.after-10": "4 bar",
      "fuel.press-hold.after-30": of(4 * (1 - share), "bar"),
    }),
  },
  "fuel.fuel-age": plain("fuel.fuel-age", "mo"),
  "fuel.ethanol_share": {
    at: "car",
    says: (share) => ({
      "fuel.ethanol": "200 mL",
      "fuel.ethanol.water": "20 mL",
      "fuel.ethanol.lower": of(20 + 200 * share, "mL"),
    }),
  },
  "fuel.ext-bottle-holds": plain("fuel.ext-bottle.holds", "kg"),
  "fuel.ext-bottle-serviced": plain("fuel.ext-bottle.serviced", "mo"),
};

export const FUEL_APPLIES: Applies = {
  "lim.hose-life": { says: { [`fuel.hose-type@${RUN}`]: "low-pressure" } },
  "lim.lined-life": { says: { [`fuel.hose-type@${RUN}`]: "lined" } },
  "lim.hot-open": { says: { [`fuel.fuel-route.shield@${RUN}`]: "none" } },
  "lim.hot-shielded": { says: { [`fuel.fuel-route.shield@${RUN}`]: "fixed" } },
  "lim.feed-high": { facts: { "fuel-feed": "carburettor" } },
  "lim.feed-low": { facts: { "fuel-feed": "carburettor" } },
};
