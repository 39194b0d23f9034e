/** How a value of a chosen size is brought about under each limit of the steering sheet. Refuses to know any edge. */
import { type Brought, mm, of, plain } from "./limit-brought.js";

export const STEER_BROUGHT: Readonly<Record<string, Brought>> = {
  "steer.bush": plain("steer.col-bush", "mm"),
  "steer.col_bush_along": plain("steer.col-bush.along", "mm"),
  "steer.finger": plain("susp.wheel-lash", "mm"),
  "steer.turn_gap": {
    at: "car",
    says: (value) => ({ "steer.turns": of(1 + value, "1"), "steer.turns.right": "1 1" }),
  },
  "steer.thread_share": {
    at: "side-L",
    says: (value) => ({ "steer.thread@side-L": mm(10 * value), "steer.thread.diameter@side-L": mm(10) }),
  },
  "steer.free_gap": {
    at: "side-L",
    says: (value) => ({ "steer.thread.free@side-L": mm(10 + value), "steer.thread.free@side-R": mm(10) }),
  },
};
