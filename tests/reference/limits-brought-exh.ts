/** How a value of a chosen size is brought about under each limit of the exhaust sheet. Refuses to know any edge. */
import { type Applies, type Brought, mm, of, plain } from "./limit-brought.js";

const RUN = "exh-run-1";
const GAP = "heat-wire";

export const EXH_BROUGHT: Readonly<Record<string, Brought>> = {
  "exh.exh-near": plain(`exh.exh-near@${GAP}`, "mm"),
  // A metre grows 6.8 mm from cold to hot.
  "exh.room_left": {
    at: RUN,
    says: (value) => ({
      [`exh.exh-hanger.run@${RUN}`]: mm(1000),
      [`exh.exh-hanger.room@${RUN}`]: mm(6.8 + value),
    }),
  },
  "exh.exh-co": plain("exh.exh-co", "1"),
  "exh.co_dose": {
    at: "car",
    says: (value) => ({ "exh.exh-co": of(value / 300, "1"), "exh.exh-co.time": "300 min" }),
  },
  "exh.noise_over": {
    at: "car",
    says: (value) => ({ "exh.exh-noise": of(90 + value, "1"), "exh.exh-noise.papers": "90 1" }),
  },
};

/** Two limits over one reading: of a line that holds petrol or brake fluid, and of any other part. */
export const EXH_BROUGHT_FOR: Readonly<Record<string, Brought>> = {
  "lim.hot-line": plain("exh.exh-temp@heat-fuel", "Cel"),
  "lim.hot-part": plain("exh.exh-temp@heat-mount", "Cel"),
};

export const EXH_APPLIES: Applies = {
  "lim.near-open": { says: { [`exh.exh-near.shield@${GAP}`]: "none" } },
  "lim.near-shielded": { says: { [`exh.exh-near.shield@${GAP}`]: "fixed" } },
};
