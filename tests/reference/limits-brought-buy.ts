/** How a value of a chosen size is brought about under each limit of the buyer's sheet. Refuses to know any edge. */
import { type Applies, type Brought, mm, of, plain } from "./limit-brought.js";

const DOOR = "panel-door-L";
const NOSE = "panel-nose";
const TWIN = "panel-door-R";
/** Ten years of ten thousand kilometres each; the last of them driven so many times as much. */
const lately: Brought = {
  at: "car",
  says: (share) => ({
    "buy.odo": of(100_000, "km"),
    "buy.km.then": of(0, "km"),
    "buy.km.years": of(10, "a"),
    "buy.km.recent": of(100_000 - 10_000 * share, "km"),
    "buy.km.recent-years": of(1, "a"),
  }),
};
/** What is asked for a car of which a good one costs this many, no work to be done. */
const GOOD = 1_024_000;

export const BUY_BROUGHT: Readonly<Record<string, Brought>> = {
  "buy.block_over": {
    at: "car",
    says: (value) => ({ "buy.seller-cold.block": of(20 + value, "Cel"), "buy.seller-cold.air": "20 Cel" }),
  },
  "buy.gap_more": { at: DOOR, says: (value) => ({ [`buy.gap@${DOOR}`]: mm(5 + value), [`buy.gap@${TWIN}`]: mm(5) }) },
  "buy.paint_share": {
    at: DOOR,
    says: (value) => ({
      [`buy.paint-depth.usual@${DOOR}`]: of(100 * value, "um"),
      [`buy.paint-depth.usual@${TWIN}`]: "100 um",
    }),
  },
  "buy.paint-depth": plain(`buy.paint-depth.usual@${NOSE}`, "um"),
  "buy.paint_fill": plain(`buy.paint-depth.most@${NOSE}`, "um"),
  "buy.id-history_gap": plain("buy.id-history.gap", "mo"),
  "buy.km_share": lately,
  "buy.km_little": lately,
  "buy.price_share": {
    at: "car",
    says: (share) => ({
      "buy.price.asked": Math.round(GOOD * share),
      "buy.price.work": 0,
      "buy.price.good-car": GOOD,
    }),
  },
};

const steel = { says: { [`buy.paint-depth.skin@${NOSE}`]: "steel" } } as const;
export const BUY_APPLIES: Applies = { "lim.paint-again": steel, "lim.paint-fill": steel };
