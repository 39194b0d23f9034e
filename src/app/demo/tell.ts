/** Short ways to write the demo's story down as data: replies, readings, what a person adds. Refuses to grade anything. */
import type { Bodies, FreeFinding, Odometer, PictureMark } from "../../core/record/index.js";
import type { GaugeUsed, Grade, NonAnswer, Reason, ReplyValue } from "../../core/terms/index.js";
import type { DemoPerson } from "./names.js";

/** One reply: point, place, car state, field, value. */
export type Told = readonly [point: string, place: string, state: string, field: string, value: ReplyValue];

/** Places (several, with spaces between) and what was said there; a plain text is words, with spaces between. */
type Answers = Readonly<Record<string, string | ReplyValue>>;

/** What happened in a visit, in order; by who looks where nobody is named. */
export type Step = { readonly by?: DemoPerson } & (
  | { readonly told: readonly Told[] }
  /** On another phone, which had not seen the replies before it. */
  | { readonly apart: readonly Told[] }
  | { readonly complaint: { readonly text: string; readonly complaint?: string } }
  | { readonly note: Omit<Bodies["note"], "replaces"> }
  | {
      readonly regrade: {
        readonly fault: string;
        readonly place: string;
        readonly grade: Grade;
        readonly reason: string;
      };
    }
  | { readonly finding: string; readonly found: FreeFinding }
  | { readonly warned: readonly string[] }
  | {
      readonly picture: DemoScene;
      readonly nonce?: string;
      readonly pin?: Pin;
      readonly name?: string;
      /** Drawn over it, under the names m1, m2 and so on. */
      readonly marks?: readonly PictureMark[];
    }
  | { readonly sound: DemoNoise; readonly pin: Pin }
);
/** Where a picture or a sound belongs. */
export interface Pin {
  readonly point: string;
  readonly place: string;
  readonly state: string;
}
/** What the drawn pictures show. */
export type DemoScene = "grease" | "seep" | "tube" | "boot" | "carpet" | "label";
/** What the made sounds are like. */
export type DemoNoise = "quiet" | "first-grumble" | "grumble";

/** One visit, as it is written into the record. */
export interface Story {
  readonly stream: string;
  readonly daysAgo: number;
  readonly purpose: Bodies["visit.opened"]["purpose"];
  readonly odometer: Odometer;
  readonly steps: readonly Step[];
  /** Closed with its judgement; the last one is under way. */
  readonly closed: boolean;
}

export const CORNERS = "FL FR RL RR";
/** The joints of a corner by what they are on this car. */
const at = (corners: string, ends: string): string =>
  corners
    .split(" ")
    .flatMap((corner) => ends.split(" ").map((end) => `${corner}-${end}`))
    .join(" ");
export const BALL_JOINTS = `${at("FL FR", "upper-outer lower-outer trackrod-inner trackrod-outer")}`;
export const ROD_ENDS = at("RL RR", "lower-fore lower-aft toelink-inner toelink-outer");
export const RUBBER = at("FL FR", "lower-fore lower-aft");
export const REAR_BALLS = at("RL RR", "upper-outer lower-outer");
export const JOINTS = `${BALL_JOINTS} ${ROD_ENDS} ${RUBBER} ${REAR_BALLS}`;
/** Those that steer: track rods and rear toe links. */
export const STEERED = `${at("FL FR", "trackrod-inner trackrod-outer")} ${at("RL RR", "toelink-inner toelink-outer")}`;
export const OUTER_BALLS = at(CORNERS, "upper-outer lower-outer");
export const PICKUPS =
  "pickup-FL-lower-fore pickup-FR-lower-fore pickup-FL-lower-aft pickup-FR-lower-aft pickup-RL-lower-aft pickup-RR-lower-aft";

/** All but some. */
export const but = (all: string, some: string): string =>
  all
    .split(" ")
    .filter((one) => !some.split(" ").includes(one))
    .join(" ");

export const words = (all: string): ReplyValue => ({ type: "words", words: all.split(" ") });
const reading =
  (unit: string) =>
  (values: string, gauge?: GaugeUsed): ReplyValue => ({
    type: "reading",
    values: values.split(" "),
    unit,
    ...(gauge ? { gauge } : {}),
  });
export const mm = reading("mm");
export const cel = reading("Cel");
export const km = reading("km");
export const years = reading("a");
export const weeks = reading("wk");
export const percent = reading("%");
export const seconds = reading("s");
export const speed = reading("km/h");
export const count = (of: number): ReplyValue => ({ type: "count", count: of });
export const not = (nonAnswer: NonAnswer, reason?: Reason): ReplyValue => ({
  type: "non-answer",
  nonAnswer,
  ...(reason ? { reason } : {}),
});

/** Replies given while the car stood like this: point, field, and what was said where. A non-answer covers all fields. */
export const standing = (
  state: string,
  rows: readonly (readonly [point: string, field: string, answers: Answers])[],
): readonly Told[] =>
  rows.flatMap(([point, field, answers]) =>
    Object.entries(answers).flatMap(([places, said]) =>
      places.split(" ").map((place): Told => {
        const value = typeof said === "string" ? words(said) : said;
        return [point, place, state, value.type === "non-answer" ? "*" : field, value];
      }),
    ),
  );
