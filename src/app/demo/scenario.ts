/**
 * The demo's story as data: an invented low-volume mid-engined car, two visits about a year apart, two invented people.
 * Nothing here is or resembles a real marque, person or plate. Replies only; every grade comes from the rules.
 */
import type { NonAnswer, Reason, ReplyValue } from "../../core/terms/index.js";

export const DEMO_CAR = "car:demo-tarn";
export const DEMO_FIRST = "visit:demo-first";
export const DEMO_SECOND = "visit:demo-second";
/** Named by hand, so that its address is known. */
export const DEMO_PICTURE = "demo-picture";

/** The sheets its visits were opened with. */
export const DEMO_SHEETS: readonly string[] = ["whl"];

export const CAR_NAME = "Brindlow Tarn 1992";
export const INES = { id: "demo-ines", name: "Ines (demo)" };
export const JORIN = { id: "demo-jorin", name: "Jorin (demo)" };

export const FACTS: Readonly<Record<string, string | number | boolean>> = {
  brakes: "outboard",
  "wheel-fixing": "centre-lock",
  driven: "rear",
  "tyre-sizes": "differ-front-rear",
  abs: false,
  "first-used": 1992,
  country: "gb",
  seat: "right",
};

/** The rear cartridges' figure in the car's own book: for the rear hubs only, the front ones are another kind. */
export const MAKERS_FIGURES = (["RL", "RR"] as const).map((place) => ({
  limit: "lim.float-unit",
  place,
  value: "0.08",
  unit: "mm",
  grade: "major" as const,
  basis: "maker" as const,
  source: "Workshop notes for the Tarn, sheet 5 (demo)",
}));

/** One reply: point, place, car state, field, value. */
export type Told = readonly [point: string, place: string, state: string, field: string, value: ReplyValue];

const words = (...all: readonly string[]): ReplyValue => ({ type: "words", words: all });
const reading = (
  value: string,
  unit: string,
  gauge?: { id: string; resolution: number; error: number },
): ReplyValue => ({ type: "reading", values: [value], unit, ...(gauge ? { gauge } : {}) });
const not = (nonAnswer: NonAnswer, reason?: Reason): ReplyValue => ({
  type: "non-answer",
  nonAnswer,
  ...(reason ? { reason } : {}),
});

const CORNERS = ["FL", "FR", "RL", "RR"] as const;
type Corner = (typeof CORNERS)[number];
const at = (
  point: string,
  state: string,
  field: string,
  values: Readonly<Partial<Record<Corner, ReplyValue>>>,
): readonly Told[] =>
  CORNERS.flatMap((corner) => {
    const value = values[corner];
    return value ? [[point, corner, state, value.type === "non-answer" ? "*" : field, value] as const] : [];
  });
const all = (value: ReplyValue): Readonly<Record<Corner, ReplyValue>> => ({
  FL: value,
  FR: value,
  RL: value,
  RR: value,
});
const KINDS = at("whl.kind", "w0-talk", "kind", {
  FL: words("taper-adjust"),
  FR: words("taper-adjust"),
  RL: words("cartridge"),
  RR: words("cartridge"),
});

/** About a year ago: a spring check, nearly all sound. */
export const FIRST_VISIT: readonly Told[] = [
  ["whl.since", "car", "w0-talk", "km", reading("8200", "km")],
  ["whl.since", "car", "w0-talk", "record", words("on-paper")],
  ["whl.stood", "car", "w0-talk", "past", words("stood-months")],
  ...KINDS,
  ...at("whl.retain", "w1-cold", "fixing", all(words("locked"))),
  ["whl.drone", "car", "w4-road", "noise", words("none")],
  ["whl.masked", "car", "w4-road", "by", words("no")],
  ["whl.knockback", "car", "w4-road", "long", words("no")],
  ["whl.clunk", "car", "w4-road", "heard", words("no")],
  ["whl.shimmy", "car", "w4-road", "felt", words("none")],
  ["whl.air", "car", "w5-hot", "reading", reading("14", "Cel")],
  ...at("whl.heat", "w5-hot", "reading", {
    FL: reading("31", "Cel"),
    FR: reading("32", "Cel"),
    RL: reading("34", "Cel"),
    RR: reading("35", "Cel"),
  }),
  ...at("whl.smoke", "w5-hot", "seen", all(words("none"))),
  ...at("whl.rock", "w7-hang", "feel", {
    FL: words("none"),
    FR: words("just-felt"),
    RL: words("none"),
    RR: words("none"),
  }),
  ...at("whl.spin", "w7-hang", "feel", all(words("smooth"))),
  ...at("whl.listen", "w7-hang", "heard", all(words("quiet"))),
  ...at("whl.nut", "w8-off", "lock", all(words("locked"))),
  ...at("whl.retain", "w8-off", "fixing", all(words("locked"))),
  ...at("whl.float", "w8-off", "play", { FL: reading("0.06", "mm"), FR: reading("0.09", "mm") }),
  ...at("whl.grease", "w8-off", "look", all(words("clean"))),
  ...at("whl.seal", "w8-off", "look", all(words("sound"))),
  ...at("whl.spline", "w8-off", "drive", all(words("snug"))),
];

/** Now: a hum from behind, a rear bearing near its end, a front float too close to call. Still under way. */
export const SECOND_VISIT: readonly Told[] = [
  ["whl.since", "car", "w0-talk", "km", reading("11800", "km")],
  ["whl.since", "car", "w0-talk", "record", words("from-memory")],
  ["whl.stood", "car", "w0-talk", "past", words("stood-months", "jet-washed")],
  ...KINDS,
  ...at("whl.retain", "w1-cold", "fixing", all(words("locked"))),
  ["whl.drone", "car", "w4-road", "noise", words("clear")],
  ["whl.masked", "car", "w4-road", "by", words("no")],
  ["whl.bend", "car", "w4-road", "change", words("louder-left-bend")],
  ["whl.drive", "car", "w4-road", "change", words("same")],
  ["whl.surface", "car", "w4-road", "change", words("no")],
  ["whl.onset", "car", "w4-road", "speed", reading("55", "km/h")],
  ["whl.knockback", "car", "w4-road", "long", words("yes")],
  ["whl.clunk", "car", "w4-road", "heard", words("no")],
  ["whl.air", "car", "w5-hot", "reading", reading("9", "Cel")],
  ...at("whl.heat", "w5-hot", "reading", {
    FL: reading("29", "Cel"),
    FR: reading("31", "Cel"),
    RL: reading("33", "Cel"),
    RR: reading("58", "Cel"),
  }),
  ...at("whl.smoke", "w5-hot", "seen", { FL: words("none"), FR: words("none"), RL: words("none"), RR: words("none") }),
  ...at("whl.rock", "w7-hang", "feel", {
    FL: words("none"),
    FR: words("just-felt"),
    RL: words("none"),
    RR: words("clear"),
  }),
  ...at("whl.rock-braked", "w7-hang", "rock", { FR: words("gone"), RR: words("gone") }),
  ...at("whl.spin", "w7-hang", "feel", {
    FL: words("smooth"),
    FR: words("smooth"),
    RL: words("smooth"),
    RR: words("rough"),
  }),
  ...at("whl.listen", "w7-hang", "heard", {
    FL: words("quiet"),
    FR: words("quiet"),
    RL: not("not-reached", "no-time"),
    RR: words("grumble"),
  }),
  ...at("whl.nut", "w8-off", "lock", { FR: words("locked"), RR: words("locked"), RL: not("could-not-tell", "seized") }),
  ...at("whl.float", "w8-off", "play", {
    FL: reading("0.08", "mm"),
    FR: reading("0.26", "mm"),
    RR: reading("0.31", "mm"),
  }),
  ...at("whl.grease", "w8-off", "look", { FR: words("clean"), RR: words("burnt", "metal-flakes") }),
  ...at("whl.seal", "w8-off", "look", { FR: words("weeping"), RR: words("torn") }),
];

/** The same wheel, felt by the other person: both stand until someone settles it. */
export const SECOND_OPINION: Told = ["whl.spin", "FL", "w7-hang", "feel", words("light-grumble")];

export const COMPLAINT = { text: "It hums from behind, worse in long left-hand bends", complaint: "sym.drone-bend" };
export const UNPROVEN = {
  gate: "gate.no-road",
  why: "Pedal, leaks and tyres checked by hand before the drive; only the wheel sheet is open.",
};
export const LIFTED = {
  gate: "gate.no-lift-here",
  why: "Lifted on the main rails with spreader blocks, rails tapped sound.",
};
export const NOTE = {
  point: "whl.grease",
  place: "RR",
  state: "w8-off",
  text: "Grease black and gritty, sample kept in a bag.",
};
/** Where the round was left. */
export const LEFT_AT = { point: "whl.nut", place: "FL", state: "w8-off" };

export const FIRST_ODOMETER = { value: "61240", unit: "km" };
export const SECOND_ODOMETER = { value: "64905", unit: "km" };
