/** One good body of every kind that tells of handing a car back, version 1, with every field it may have. */
import type { ReleaseBodies } from "../../src/core/record/index.js";

export const RELEASE_BODIES: ReleaseBodies = {
  "complaint.answered": {
    complaint: "visit:v/w1/2/n",
    answer: {
      word: "found",
      findings: [{ fault: "whl.race", place: "RR" }],
      words: "Loud from the moment it is turned by hand",
      who: "Anna",
      on: "2026-03-03",
    },
    replaces: [],
  },
  "progress.sent": { text: "The bearing is ordered.", who: "Anna", how: "share sheet", on: "2026-03-04" },
  "second-look": {
    job: "job.whl.bearing",
    place: "RR",
    who: "Jo",
    on: "2026-03-12",
    words: "Nut locked, wheel turns free",
    same: false,
  },
  "recheck.done": { recheck: "wheel-nuts", who: "Jo", on: "2026-03-30", words: "All five held" },
  "plan.release": {
    release: {
      who: "Anna",
      on: "2026-03-12",
      odometer: { value: "61 260", unit: "km" },
      how: "not-driven",
      told: ["A front tyre is past its limit."],
      warned: true,
    },
    replaces: [],
  },
};
