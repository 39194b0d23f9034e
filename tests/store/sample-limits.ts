/** One good body of every kind that tells of a figure in the limits book, version 1, with every field it may have. */
import type { LimitBodies } from "../../src/core/record/index.js";

export const LIMIT_BODIES: LimitBodies = {
  "limit.told": {
    key: "lim.float-taper",
    of: "n2",
    told: {
      condition: "cold, dry thread",
      holdsFor: { build: "second series", engine: "six-cylinder", from: "1201", to: "1640" },
      source: {
        trust: "maker-this",
        way: "book",
        title: "Workshop manual",
        edition: "2nd",
        page: "5-12",
        who: "Anna",
        on: "2026-03-03",
      },
      odd: { low: 0.02, high: 4, unit: "mm" },
    },
    why: "the later edition corrects it",
  },
  "limit.looked": { key: "lim.float-taper", of: "car:c/w1/2/n2", who: "Jo", words: "page seen" },
};
