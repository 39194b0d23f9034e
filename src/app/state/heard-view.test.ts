import { expect, test } from "vitest";
import type { Heard } from "../../core/record/sound.js";
import { type HeardOne, heardView } from "./heard-view.js";

const HEARD: Heard = {
  seconds: 2,
  levels: [-60, -40, -50],
  step: 0.05,
  bands: [
    { at: 50, height: -70 },
    { at: 100, height: -50 },
  ],
  peaks: [{ at: 62, height: -30, within: 3 }],
  beats: [{ at: 7, height: 0.4 }],
  beatPeaks: [{ at: 7, height: 0.4, within: 1 }],
};
const one = (part: Partial<HeardOne>): HeardOne => ({
  id: "a",
  blob: "",
  which: "Left, this visit",
  look: "full",
  listened: { is: "heard", heard: HEARD },
  ...part,
});
const TURNS = { id: "turns", from: 7.5, to: 8.5, about: false } as const;
const OUTER = { id: "outer", from: 55, to: 60, about: true } as const;

test("what stands out is told with what it may be near to, and nothing where nothing is", () => {
  expect(heardView([one({})], [TURNS, OUTER]).lines).toEqual([
    "Left, this visit: 2 s, middle loudness -50 dB.",
    "Left, this visit: a tone stands out at 62 Hz, near about, outer race.",
    "Left, this visit: swells 7 times a second, by 40 %, near one a turn.",
  ]);
  const far = { ...OUTER, from: 70, to: 80 };
  expect(heardView([one({})], [far]).lines[1]).toBe("Left, this visit: a tone stands out at 62 Hz.");
  const plain = one({ listened: { is: "heard", heard: { ...HEARD, peaks: [], beatPeaks: [] } } });
  expect(heardView([plain], []).lines.at(-1)).toBe("Left, this visit: no tone and no beat stands out.");
});

test("multiples of one beat are one beat", () => {
  const beatPeaks = [7, 14, 21.2, 17.3].map((at, i) => ({ at, height: 0.4 - i / 10, within: 1 }));
  const many = one({ listened: { is: "heard", heard: { ...HEARD, peaks: [], beatPeaks } } });
  expect(heardView([many], []).lines.slice(1)).toEqual([
    "Left, this visit: swells 7 times a second, by 40 %, and at its multiples.",
    "Left, this visit: swells 17.3 times a second, by 10 %.",
  ]);
});

test("all recordings lie on one scale; hiss alone is not blown up to fill it", () => {
  const quiet = one({
    id: "b",
    look: "dotted",
    listened: { is: "heard", heard: { ...HEARD, beats: [{ at: 7, height: 0.02 }] } },
  });
  const view = heardView([one({}), quiet], []);
  expect(view.pitch.traces.map(({ look }) => look)).toEqual(["full", "dotted"]);
  expect(view.beat.heights.to).toBe(40);
  expect(heardView([quiet], []).beat.heights.to).toBe(20);
});

test("what can't be drawn is told with why, beside what can", () => {
  const view = heardView(
    [
      one({}),
      one({ id: "b", which: "Right, this visit", listened: { is: "nothing", why: "short" } }),
      one({ id: "c", which: "Last time, 3 May 2026", listened: { is: "gone" } }),
    ],
    [],
  );
  expect(view.pitch.traces).toHaveLength(1);
  expect(view.silent).toEqual([
    "Right, this visit: too short to draw. A second and a half at least.",
    "Last time, 3 May 2026: its bytes are not on this phone.",
  ]);
});
