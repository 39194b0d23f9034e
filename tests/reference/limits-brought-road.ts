/** How a value of a chosen size is brought about under each limit of the road test sheet. Refuses to know any edge. */
import { type Applies, type Brought, of, plain } from "./limit-brought.js";

/** A level phone, in a car that has to reach half of its weight. */
const OLDER = { country: "de", "first-used": 1995 };
const ASKED = 50;
const speedo = (share: number) => ({
  "road.rt-speedo.high-shown": of(100 * (1 + share), "km/h"),
  "road.rt-speedo.high-true": "100 km/h",
});

export const ROAD_BROUGHT: Readonly<Record<string, Brought>> = {
  "road.brake_left": {
    at: "car",
    says: (share) => ({ "road.rt-brake": of(ASKED * share, "%"), "road.rt-brake.tilt": "0 deg" }),
  },
  "road.speedo_most": { at: "car", says: speedo },
  "road.speedo_least": { at: "car", says: speedo },
  "road.climb": {
    at: "car",
    says: (value) => ({
      "road.rt-temp.begin": "80 Cel",
      "road.rt-temp.end": of(80 + value, "Cel"),
      "road.rt-temp.minutes": 1,
    }),
  },
  "road.rt-start-cold-time": plain("road.rt-start-cold.time", "s"),
  "road.rt-restart-time": plain("road.rt-restart.time", "s"),
};

export const ROAD_APPLIES: Applies = {
  "lim.road-brake": { facts: OLDER },
};
