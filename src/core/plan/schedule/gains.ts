/** What it would gain if a part that is awaited came today: the whole is planned again for each. */
import { type Plan, planOnce } from "./attempt.js";
import { type LocalMinute, localTime } from "./calendar.js";
import type { PartGain } from "./contract.js";
import { DAY_MINUTES } from "./days.js";
import type { Ground } from "./prepare.js";
import { lastOf } from "./shown.js";

/** For each part that is still to come: the finish if it came today. */
export function gained(
  ground: Ground,
  plan: Plan,
  without: ReadonlySet<string>,
  order: readonly string[],
  finish: LocalMinute,
): { readonly gained: readonly PartGain[]; readonly stopped: boolean } {
  const rows: (PartGain & { readonly at: LocalMinute })[] = [];
  let stopped = false;
  const awaited = new Set(
    plan.prepared.waits.flatMap((waits) => waits.flatMap(({ hold }) => (hold.cause === "part" ? hold.part : []))),
  );
  for (const part of awaited) {
    if (ground.input.goOn?.() === false) return { gained: sorted(rows), stopped: true };
    const sooner = planOnce(ground, without, part, order);
    stopped ||= sooner.found.stopped;
    // The plan that stands is still one if a part comes sooner, so nothing is ever lost.
    const at = Math.min(finish, lastOf(ground, sooner.prepared, sooner.found.placing.starts).at);
    const days = Math.floor(finish / DAY_MINUTES) - Math.floor(at / DAY_MINUTES);
    const minutes = ground.axis.worked(finish) - ground.axis.worked(at);
    rows.push({ part, finish: localTime(at), days, minutes, at });
  }
  return { gained: sorted(rows), stopped };
}

const sorted = (rows: readonly (PartGain & { readonly at: LocalMinute })[]): readonly PartGain[] =>
  [...rows].sort((a, b) => a.at - b.at || (a.part < b.part ? -1 : 1)).map(({ at: _, ...row }) => row);
