/**
 * Takes samples apart into lines of frequency: averaged over overlapping windows, and what stands out of its
 * neighbours. Refuses to know what was recorded.
 */
import FFT from "fft.js";

/** Power of each line from nought up, and how far apart lines are. */
export interface Lines {
  readonly width: number;
  readonly power: Float64Array;
}

/** A Hann window of `size` samples. */
function hann(size: number): Float64Array {
  return Float64Array.from({ length: size }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / size));
}

/** A sine on a line spreads over its neighbours under a Hann window: their powers together are 1.5 times the middle one. */
export const HANN_NOISE_WIDTH = 1.5;

/**
 * Mean power by line over windows that overlap by half (Welch 1967, 'The use of fast Fourier transform for the
 * estimation of power spectra'; the method from memory). A sine that swings from -1 to 1 has power 1 on its line.
 * @param size samples in a window, a power of two; fewer samples than that give undefined.
 */
export function linesOf(samples: ArrayLike<number>, rate: number, size: number): Lines | undefined {
  if (samples.length < size) return undefined;
  const window = hann(size);
  const gain = 2 / window.reduce((sum, one) => sum + one, 0);
  const fft = new FFT(size);
  const input = new Array<number>(size).fill(0);
  const output: number[] = fft.createComplexArray();
  const power = new Float64Array(size / 2 + 1);
  let windows = 0;
  for (let from = 0; from + size <= samples.length; from += size / 2) {
    for (let i = 0; i < size; i++) input[i] = (samples[from + i] ?? 0) * (window[i] ?? 0);
    fft.realTransform(output, input);
    for (let line = 0; line < power.length; line++)
      power[line] = (power[line] ?? 0) + ((output[2 * line] ?? 0) ** 2 + (output[2 * line + 1] ?? 0) ** 2) * gain ** 2;
    windows++;
  }
  return { width: rate / size, power: power.map((sum) => sum / windows) };
}

/** What is taken for silence, dB: no recorder resolves less. */
export const SILENCE = -120;
export const decibels = (power: number): number => Math.max(SILENCE, 10 * Math.log10(power));

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};

export interface PeakWishes {
  /** Hz, both ends included. */
  readonly from: number;
  readonly to: number;
  /** How far a peak stands out of the middle one of its neighbours, dB. */
  readonly over: number;
  readonly most: number;
}

/** Neighbours a peak is held against: so many lines, or so much of its own frequency, each way. Own choice. */
const NEAR_LINES = 8;
const NEAR_SHARE = 0.25;

/** Lines higher than both beside them that stand out of those around, strongest first: number of the line. */
export function peaksOf({ width, power }: Lines, wishes: PeakWishes): readonly number[] {
  const first = Math.max(2, Math.ceil(wishes.from / width));
  const last = Math.min(power.length - 2, Math.floor(wishes.to / width));
  const found: number[] = [];
  for (let line = first; line <= last; line++) {
    const own = power[line] ?? 0;
    if (own <= (power[line - 1] ?? 0) || own < (power[line + 1] ?? 0)) continue;
    const reach = Math.max(NEAR_LINES, Math.round(line * NEAR_SHARE));
    const around = Array.from(power.subarray(Math.max(1, line - reach), line + reach + 1));
    if (decibels(own) - decibels(median(around)) >= wishes.over) found.push(line);
  }
  return found.sort((a, b) => (power[b] ?? 0) - (power[a] ?? 0)).slice(0, wishes.most);
}
