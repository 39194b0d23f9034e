/**
 * What one line of the bench table holds, and fair timing of contenders side by side. Any file
 * `tests/bench/NAME.bench.ts` that exports `bench` is taken into the table. Refuses to judge: figures, no failures.
 */

/** One line: the same work done by each contender, lower is better. */
export interface BenchRow {
  readonly what: string;
  readonly unit: "ns" | "µs" | "ms" | "s" | "min" | "B" | "";
  /** Contender (ours first) → figure. */
  readonly figures: Readonly<Record<string, number>>;
  /** The figure to reach and where it is written, in words. */
  readonly goal?: string;
  readonly note?: string;
}

/** What a bench file exports. */
export type Bench = () => Promise<readonly BenchRow[]>;

/** The value below which `share` (0…1) of the samples lie. */
export function percentile(samples: readonly number[], share: number): number {
  const sorted = [...samples].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** A clock tick is small beside this. */
const FILLS_MS = 4;

/** Keeps results alive so that no engine may drop the work. */
const sink: { last: unknown } = { last: undefined };

function timeOnce(work: () => unknown, repeats: number): number {
  const began = performance.now();
  for (let done = 0; done < repeats; done++) sink.last = work();
  return performance.now() - began;
}

/** How often `work` must be repeated to fill a few milliseconds: a clock tick is then small beside it. */
function repeatsFor(work: () => unknown): number {
  let repeats = 1;
  while (timeOnce(work, repeats) < FILLS_MS && repeats < 1 << 22) repeats *= 2;
  return repeats;
}

/**
 * Median time of one call in milliseconds for each contender, measured in turns so that a busy machine hits all of
 * them alike. Works done synchronously.
 */
export function interleaved(
  contenders: Readonly<Record<string, () => unknown>>,
  rounds = 31,
): Readonly<Record<string, number>> {
  const plans = Object.entries(contenders).map(([name, work]) => ({
    name,
    work,
    repeats: repeatsFor(work),
    samples: [] as number[],
  }));
  for (let round = 0; round < rounds; round++) {
    for (const plan of plans) plan.samples.push(timeOnce(plan.work, plan.repeats) / plan.repeats);
  }
  return Object.fromEntries(plans.map(({ name, samples }) => [name, percentile(samples, 0.5)]));
}

/**
 * The same for works that must be waited for, few of them short: `rounds` in turns, each repeated until it fills a few
 * milliseconds.
 */
export async function interleavedAwaited(
  contenders: Readonly<Record<string, () => unknown>>,
  rounds = 9,
): Promise<Readonly<Record<string, number>>> {
  const timed = async (work: () => unknown, repeats: number): Promise<number> => {
    const began = performance.now();
    for (let done = 0; done < repeats; done++) sink.last = await work();
    return (performance.now() - began) / repeats;
  };
  const plans = await Promise.all(
    Object.entries(contenders).map(async ([name, work]) => {
      const once = await timed(work, 1);
      return { name, work, repeats: Math.max(1, Math.ceil(FILLS_MS / once)), samples: [] as number[] };
    }),
  );
  for (let round = 0; round < rounds; round++) {
    for (const plan of plans) plan.samples.push(await timed(plan.work, plan.repeats));
  }
  return Object.fromEntries(plans.map(({ name, samples }) => [name, percentile(samples, 0.5)]));
}
