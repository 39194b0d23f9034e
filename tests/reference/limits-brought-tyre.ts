/** How a value of a chosen size is brought about under each limit of the tyre sheet. Refuses to know any edge. */
import { type Applies, type Brought, mm, of, plain } from "./limit-brought.js";

const bar = (value: number): string => of(value, "bar");
const atFL = (says: Brought["says"]): Brought => ({ at: "FL", says });
const tread = plain("tyre.tyre-tread@FL", "mm");
const topSpeed = (value: number) => ({ "tyre.need.top": of(value, "km/h") });

/** Two tyres of load number 88 carry 1120 kg, whatever the speed at letter T. */
const loaded = (share: number) => ({
  "tyre.service.index@FL": 88,
  "tyre.service.letter@FL": "t",
  "tyre.axle-load@axle-F": of(1120 * share, "kg"),
});

/** A tyre 200 mm wide and half as high is 200 mm more across than its rim: 600 mm on a rim of 400 mm. */
const sized = (place: string, name: "tyre.tyre-size" | "tyre.size-was", across: number) => ({
  [name === "tyre.size-was" ? `${name}@${place}` : `${name}.section@${place}`]: mm(200),
  [`${name}.aspect@${place}`]: "50 %",
  [`${name}.rim@${place}`]: mm(across - 200),
});
const builtWith = sized("axle-F", "tyre.size-was", 600);
const now = (place: string, percent: number) => sized(place, "tyre.tyre-size", 6 * (100 + percent));

export const TYRE_BROUGHT: Readonly<Record<string, Brought>> = {
  "tyre.tyre-tread": tread,
  "tyre.wet_tread": tread,
  "tyre.width": plain("tyre.tyre-size.section@FL", "mm"),
  "tyre.edge_gap": atFL((value) => ({
    "tyre.tyre-tread.inner@FL": mm(8),
    "tyre.tyre-tread.outer@FL": mm(8 - value),
  })),
  "tyre.centre_worn": atFL((value) => ({
    "tyre.tyre-tread.inner@FL": mm(8),
    "tyre.tyre-tread.centre@FL": mm(8 - value),
    "tyre.tyre-tread.outer@FL": mm(8),
  })),
  "tyre.edges_worn": atFL((value) => ({
    "tyre.tyre-tread.inner@FL": mm(8 - value),
    "tyre.tyre-tread.centre@FL": mm(8),
    "tyre.tyre-tread.outer@FL": mm(8 - value),
  })),
  "tyre.tyre_side_length": plain("tyre.tyre-side.length@FL", "mm"),
  "tyre.tyre_date_years": plain("tyre.tyre-date.years@FL", "a"),
  "tyre.age_gap": atFL((value) => ({
    "tyre.tyre-date.years@FL": of(2 + value, "a"),
    "tyre.tyre-date.years@FR": "2 a",
  })),
  "tyre.soft": atFL((value) => ({ "tyre.press-want@axle-F": bar(2.2), "tyre.tyre-press@FL": bar(2.2 - value) })),
  "tyre.hard": atFL((value) => ({ "tyre.press-want@axle-F": bar(2.2), "tyre.tyre-press@FL": bar(2.2 + value) })),
  "tyre.pair_gap": atFL((value) => ({ "tyre.tyre-press@FR": bar(2.2), "tyre.tyre-press@FL": bar(2.2 - value) })),
  // At one temperature, in one month.
  "tyre.leak": atFL((value) => ({
    "tyre.set-then": 1,
    "tyre.set-then.temp": "20 Cel",
    "tyre.press-air": "20 Cel",
    "tyre.press-then@FL": bar(2.2),
    "tyre.tyre-press@FL": bar(2.2 - value),
  })),
  // Letter H: 210 km/h.
  "tyre.top_short": atFL((value) => ({ "tyre.service.letter@FL": "h", ...topSpeed(210 + value) })),
  "tyre.driven_short": atFL((value) => ({
    "tyre.service.letter@FL": "h",
    "tyre.need.driven": of(210 + value, "km/h"),
  })),
  "tyre.load_share": atFL(loaded),
  "tyre.load_share_fast": atFL(loaded),
  "tyre.top_speed": atFL(topSpeed),
  "tyre.size_over": atFL((percent) => ({ ...builtWith, ...now("FL", percent) })),
  "tyre.size_under": atFL((percent) => ({ ...builtWith, ...now("FL", -percent) })),
  "tyre.side_gap": atFL((percent) => ({ ...now("FL", percent), ...now("FR", 0) })),
  // M12 × 1.5: eight turns are one diameter.
  "tyre.engaged": atFL((value) => ({
    "tyre.hub-engage@FL": of(8 * value, "1"),
    "tyre.hub-engage.diameter@FL": mm(12),
    "tyre.hub-engage.pitch@FL": mm(1.5),
  })),
  "tyre.cone": plain("tyre.cone@FL", "%"),
  "tyre.torque_off": atFL((value) => ({
    "tyre.torque@FL": of(100 * (1 + value), "N.m"),
    "tyre.torque.maker@FL": "100 N.m",
  })),
};

export const TYRE_APPLIES: Applies = {
  "lim.tyre-v": { says: { "tyre.service.letter@FL": "v" } },
  "lim.tyre-w": { says: { "tyre.service.letter@FL": "w" } },
};
