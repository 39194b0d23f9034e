/** How a value of a chosen size is brought about under each limit of the lay-up sheet. Refuses to know any edge. */
import { type Brought, of, plain } from "./limit-brought.js";

/** Air that is full: its dew point is its own temperature, so the metal is above it by what is asked for. */
const FULL = { "rest.lay-rh": "100 %", "rest.lay-rh.air": "10 Cel" };
const STOOD = plain("rest.up-stood", "mo");

export const REST_BROUGHT: Readonly<Record<string, Brought>> = {
  "rest.up-stood": STOOD,
  "rest.fuel_stood": STOOD,
  "rest.lay-rh": plain("rest.lay-rh", "%"),
  "rest.lay-rh-risk": plain("rest.lay-rh.risk", "%"),
  "rest.dew_margin": { at: "car", says: (value) => ({ ...FULL, "rest.lay-rh.metal": of(10 + value, "Cel") }) },
  "rest.still": { at: "car", says: (value) => ({ "rest.lay-monthly.turned": value }) },
  // One month at one temperature: what was set less what is left.
  "rest.tyre_loss": {
    at: "FL",
    says: (value) => ({
      "rest.up-stood": "1 mo",
      "rest.up-stood.air": "10 Cel",
      "tyre.tyre-press@FL": of(2.5 - value, "bar"),
    }),
    before: { "tyre.tyre-press.set@FL": "2.5 bar", "rest.lay-rh.air": "10 Cel" },
  },
  "rest.up-start": plain("rest.up-start", "s"),
};
