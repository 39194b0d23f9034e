/**
 * What the owner said when the first estimate lay on the bench: four jobs, four words, a signature under all of them.
 * Words, reasons and strokes are invented.
 */
import type { Decision, DrawnSignature, JobAt, WarningShown } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import { PEOPLE } from "./names.js";
import { BEARING } from "./third-plan.js";

export interface DemoDecision {
  readonly at: JobAt;
  readonly said: (told: Told) => Decision;
}
interface Told {
  /** The day it was told, one some weeks on, and the moment what is dangerous was read. */
  readonly on: IsoDate;
  readonly later: IsoDate;
  readonly read: string;
}

const by = ({ on }: Told): Pick<Decision, "who" | "role" | "how" | "on"> => ({
  who: PEOPLE.ottilie.name,
  role: "owner",
  how: "in-person",
  on,
});

const STUCK: WarningShown["shown"] = [
  { of: "finding", id: "brk.stuck-corner@FR", words: "The brake of this wheel is stuck, front right: Major" },
  {
    of: "caution",
    id: "cau.to-workshop",
    words:
      "WARNING: Do not use the car; drive only to the nearest workshop. A part is worn so far that it may get worse on " +
      "the way. It could fail at speed and injure you or others.",
  },
];

export const DECISIONS: readonly DemoDecision[] = [
  { at: BEARING, said: (told) => ({ ...by(told), word: "yes-now" }) },
  {
    at: { job: "job.drn.floor", place: "car" },
    said: (told) => ({ ...by(told), word: "yes-by", by: told.later }),
  },
  {
    at: { job: "job.brk.find", place: "FR" },
    said: (told) => ({
      ...by(told),
      word: "no",
      because: "The calipers come off anyway: look for it then",
      warning: { shown: STUCK, acknowledged: told.read },
    }),
  },
  {
    at: { job: "job.susp.balljoint", place: "FL-lower-outer" },
    said: (told) => ({ ...by(told), word: "tell-me-more", what: "Would a new boot alone last another season?" }),
  },
];

/** An invented hand. */
export const SIGNATURE: DrawnSignature = {
  width: 340,
  height: 180,
  strokes: [
    [78, 70, 58, 78, 48, 100, 56, 122, 78, 130, 98, 118, 104, 94, 92, 74, 76, 70],
    [112, 112, 120, 84, 124, 60, 118, 88, 116, 118, 128, 124, 138, 108, 142, 66, 140, 118, 152, 124, 164, 106],
    [168, 110, 176, 122, 184, 104, 194, 122, 206, 100, 216, 120, 232, 96, 244, 118, 286, 88],
    [104, 84, 158, 78],
    [170, 92],
  ],
};
