/**
 * What a recording holds, from its samples: loudness over time, bands of a twelfth of an octave, what stands out, and
 * how its loudness swings. Pure arithmetic; refuses to say what that means for a car.
 */
import type { Heard, HeardLine, HeardPeak, Listened } from "../../core/record/sound.js";
import { decibels, HANN_NOISE_WIDTH, type Lines, linesOf, peaksOf, SILENCE } from "./lines.js";

/** All recordings are taken apart alike: lines 2.9 Hz apart at 48 kHz. A shorter window would merge hum and turning. */
const WINDOW = 16_384;
/** Twenty values a second draw a swell and no single knock. Own choice. */
const LOUDNESS_STEP_S = 0.05;
/** Loudness every 4 ms shows beats up to 125 Hz; eight seconds' worth would need more than most people record. */
const BEAT_STEP_S = 0.004;
/** Lines of the beats 0.98 Hz apart: a wheel turned by hand comes round about once or twice a second. */
const BEAT_WINDOW = 256;
/** Less than this holds one turn of a wheel turned by hand at best. Own choice. */
const LEAST_S = 1.5;
/** Below, phones hear next to nothing; above, nothing of a wheel is left. Own choice. */
const LOWEST_HZ = 20;
const HIGHEST_HZ = 8_000;
/** A semitone wide: fine enough for a whine, broad enough for hiss. Own choice. */
const PER_OCTAVE = 12;
/** A tone this far above what is around it is heard as a tone. Own choice. */
const TONE_DB = 9;
/** More strokes than this cannot be told apart on a phone. Own choice. */
const MOST_PEAKS = 5;
/** A beat that stands so far above its neighbours, and swings the loudness at least so much. Own choice. */
const BEAT_DB = 9;
const LEAST_SWING = 0.03;
/** Just below what a loudness every 4 ms can show. */
const HIGHEST_BEAT_HZ = 120;
/** Rumble of hands and wind lies below, and deep tones whose every half swing would count; beats are above. Own choice. */
const BEAT_FROM_HZ = 250;
/** All of it below this is taken for an empty file: the last of sixteen bits is worth -90 dB. */
const EMPTY_DB = -90;

/** Mean power of each stretch of `step` seconds; a full sine is 1. */
function powers(samples: Float32Array, rate: number, step: number): Float64Array {
  const size = Math.max(1, Math.round(rate * step));
  const out = new Float64Array(Math.floor(samples.length / size));
  for (let at = 0; at < out.length; at++) {
    let sum = 0;
    for (let i = at * size; i < (at + 1) * size; i++) sum += (samples[i] ?? 0) ** 2;
    out[at] = (2 * sum) / size;
  }
  return out;
}

/** A first-order high pass. */
function highPass(samples: Float32Array, rate: number): Float32Array {
  const keep = 1 / (1 + (2 * Math.PI * BEAT_FROM_HZ) / rate);
  const out = new Float32Array(samples.length);
  for (let i = 1; i < samples.length; i++)
    out[i] = keep * ((out[i - 1] ?? 0) + (samples[i] ?? 0) - (samples[i - 1] ?? 0));
  return out;
}

/** Twice over, so that what is slow does not pass for beats. */
const withoutRumble = (samples: Float32Array, rate: number): Float32Array => highPass(highPass(samples, rate), rate);

/** Level of each band; a band narrower than a line takes its share of the nearest. */
function bandsOf({ width, power }: Lines): readonly HeardLine[] {
  const bands: HeardLine[] = [];
  const half = 2 ** (1 / (2 * PER_OCTAVE));
  const count = Math.floor(PER_OCTAVE * Math.log2(HIGHEST_HZ / LOWEST_HZ));
  for (let i = 0; i <= count; i++) {
    const at = LOWEST_HZ * 2 ** (i / PER_OCTAVE);
    const [from, to] = [at / half / width, (at * half) / width];
    let sum = 0;
    // Each line stands for the room from half a line below it to half a line above.
    for (let line = Math.round(from); line <= Math.round(to); line++) {
      const share = Math.min(to, line + 0.5) - Math.max(from, line - 0.5);
      sum += Math.max(0, share) * (power[line] ?? 0);
    }
    bands.push({ at, height: decibels(sum / HANN_NOISE_WIDTH) });
  }
  return bands;
}

const asPeak = (lines: Lines, line: number, height: number): HeardPeak => ({
  at: line * lines.width,
  height,
  within: lines.width,
});

/** How far the loudness swings about its mean, by how often. */
function beatsOf(samples: Float32Array, rate: number): Pick<Heard, "beats" | "beatPeaks"> {
  const loud = powers(withoutRumble(samples, rate), rate, BEAT_STEP_S).map(Math.sqrt);
  const mean = loud.reduce((sum, one) => sum + one, 0) / loud.length;
  const swing = loud.map((one) => (mean === 0 ? 0 : one / mean - 1));
  const lines = linesOf(swing, 1 / BEAT_STEP_S, BEAT_WINDOW);
  if (!lines) return { beats: [], beatPeaks: [] };
  const depth = (line: number): number => Math.sqrt(lines.power[line] ?? 0);
  const last = Math.floor(HIGHEST_BEAT_HZ / lines.width);
  const beats = Array.from({ length: last }, (_, i) => ({ at: (i + 1) * lines.width, height: depth(i + 1) }));
  const wishes = { from: lines.width, to: HIGHEST_BEAT_HZ, over: BEAT_DB, most: MOST_PEAKS };
  const found = peaksOf(lines, wishes).filter((line) => depth(line) >= LEAST_SWING);
  return { beats, beatPeaks: found.map((line) => asPeak(lines, line, depth(line))) };
}

/**
 * Takes a recording apart.
 * @param samples one channel, -1 to 1
 * @param rate samples a second
 */
export function hear(samples: Float32Array, rate: number): Listened {
  const seconds = samples.length / rate;
  const lines = linesOf(samples, rate, WINDOW);
  if (seconds < LEAST_S || !lines) return { is: "nothing", why: "short" };
  const levels = Array.from(powers(samples, rate, LOUDNESS_STEP_S), decibels);
  if (levels.every((level) => level <= EMPTY_DB)) return { is: "nothing", why: "silent" };
  const wishes = { from: LOWEST_HZ, to: HIGHEST_HZ, over: TONE_DB, most: MOST_PEAKS };
  const tones = peaksOf(lines, wishes).filter((line) => (lines.power[line] ?? 0) > 10 ** (SILENCE / 10));
  return {
    is: "heard",
    heard: {
      seconds,
      levels,
      step: LOUDNESS_STEP_S,
      bands: bandsOf(lines),
      peaks: tones.map((line) => asPeak(lines, line, decibels(lines.power[line] ?? 0))),
      ...beatsOf(samples, rate),
    },
  };
}
