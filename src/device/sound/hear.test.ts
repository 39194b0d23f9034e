import { expect, test } from "vitest";
import type { Heard } from "../../core/record/sound.js";
import { hear } from "./hear.js";
import { linesOf } from "./lines.js";

const RATE = 48_000;
/** A fixed row of numbers between -1 and 1 (Lehmer's generator). */
function hiss(): () => number {
  let row = 1;
  return () => {
    row = (row * 16_807) % 2_147_483_647;
    return row / 1_073_741_823.5 - 1;
  };
}
const made = (seconds: number, sample: (at: number) => number): Float32Array =>
  Float32Array.from({ length: Math.round(seconds * RATE) }, (_, i) => sample(i / RATE));
const sine = (hz: number) => (at: number) => Math.sin(2 * Math.PI * hz * at);

function heardIn(samples: Float32Array): Heard {
  const listened = hear(samples, RATE);
  if (listened.is !== "heard") throw new Error(listened.why);
  return listened.heard;
}

test("a full sine stands at its frequency and at 0 dB; half as far out it is 6 dB less", () => {
  const line = RATE / 16_384;
  for (const [share, db] of [
    [1, 0],
    [0.5, -6.02],
  ] as const) {
    const heard = heardIn(made(2, (at) => share * sine(400 * line)(at)));
    expect(heard.peaks).toHaveLength(1);
    expect(heard.peaks[0]?.at).toBeCloseTo(400 * line, 6);
    expect(heard.peaks[0]?.height).toBeCloseTo(db, 1);
    // Where it falls between two bands, each has its share.
    const together = heard.bands.reduce((sum, { height }) => sum + 10 ** (height / 10), 0);
    expect(10 * Math.log10(together)).toBeCloseTo(db, 1);
    expect(heard.levels.every((level) => Math.abs(level - db) < 0.6)).toBe(true);
  }
});

test("two tones are told apart, the stronger first, each within a line of where it is", () => {
  const { peaks } = heardIn(made(3, (at) => 0.05 * sine(62)(at) + 0.2 * sine(440)(at)));
  expect(peaks).toHaveLength(2);
  for (const [i, hz] of [440, 62].entries())
    expect(Math.abs((peaks[i]?.at ?? 0) - hz)).toBeLessThanOrEqual(peaks[i]?.within ?? 0);
});

test("hiss has no tone, and rises 3 dB an octave in bands of one share of their frequency each (IEC 61260-1)", () => {
  const next = hiss();
  const heard = heardIn(made(8, () => 0.3 * next()));
  expect(heard.peaks).toEqual([]);
  expect(heard.beatPeaks).toEqual([]);
  const mean = (from: number, to: number): number => {
    const some = heard.bands.filter(({ at }) => at >= from && at < to).map(({ height }) => 10 ** (height / 10));
    return 10 * Math.log10(some.reduce((a, b) => a + b, 0) / some.length);
  };
  expect(mean(2000, 4000) - mean(1000, 2000)).toBeCloseTo(3.01, 0);
  expect(mean(1000, 2000) - mean(250, 500)).toBeCloseTo(6.02, 0);
});

test("bands together hold what the samples hold", () => {
  const next = hiss();
  const samples = made(4, () => 0.3 * next());
  const { bands } = heardIn(samples);
  const inBands = bands.reduce((sum, { height }) => sum + 10 ** (height / 10), 0);
  // White: what lies between the lowest and the highest band is that share of the half rate.
  const whole = (2 * samples.reduce((sum, one) => sum + one ** 2, 0)) / samples.length;
  expect(inBands / (whole * ((8000 - 20) / (RATE / 2)))).toBeCloseTo(1, 1);
});

test("the same sound recorded longer lies on the same scale", () => {
  const [one, two] = [hiss(), hiss()];
  const [short, long] = [heardIn(made(2, () => 0.3 * one())), heardIn(made(6, () => 0.3 * two()))];
  const level = ({ bands }: Heard): number =>
    10 * Math.log10(bands.filter(({ at }) => at > 500).reduce((sum, { height }) => sum + 10 ** (height / 10), 0));
  expect(level(short)).toBeCloseTo(level(long), 0);
});

test("hiss that swells seven times a second beats at 7 Hz, as deep as it swings", () => {
  const next = hiss();
  const heard = heardIn(made(6, (at) => 0.2 * next() * (1 + 0.6 * sine(7)(at))));
  expect(heard.peaks).toEqual([]);
  const [first] = heard.beatPeaks;
  expect(Math.abs((first?.at ?? 0) - 7)).toBeLessThanOrEqual(first?.within ?? 0);
  expect(first?.height).toBeGreaterThan(0.45);
  expect(first?.height).toBeLessThan(0.65);
});

test("a deep tone is no beat, although its every half swing is one", () => {
  const next = hiss();
  const heard = heardIn(made(4, (at) => 0.05 * next() + 0.2 * sine(50)(at)));
  expect(heard.beatPeaks).toEqual([]);
  expect(Math.round((heard.peaks[0]?.at ?? 0) / 3)).toBe(17);
});

test("too short, silent: said, not drawn", () => {
  expect(hear(made(1.4, sine(100)), RATE)).toEqual({ is: "nothing", why: "short" });
  expect(
    hear(
      made(3, () => 0),
      RATE,
    ),
  ).toEqual({ is: "nothing", why: "silent" });
  expect(linesOf([1, 2, 3], RATE, 4)).toBeUndefined();
});

test("the loudest samples a file can hold give figures, never infinity", () => {
  const heard = heardIn(made(2, (at) => (sine(50)(at) > 0 ? 1 : -1)));
  for (const { height } of [...heard.bands, ...heard.beats, ...heard.peaks]) expect(Number.isFinite(height)).toBe(true);
});
