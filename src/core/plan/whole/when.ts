/**
 * Dates of the chosen jobs. What is sent out is away for as long as whoever takes it in is at work, which is known only
 * once the day it leaves is: so the dates are worked out again until they stand.
 */
import { type Problem, problem } from "../../terms/index.js";
import type { ReachedJob } from "../access/index.js";
import { arrivesOn, type Schedule, schedule } from "../schedule/door.js";
import { ANY_SUPPLIER, type Away, piecesOf, sentAway } from "./activities.js";
import type { WorkInput } from "./contract.js";

/** A day that leaves later is not away for less: two rounds stand in practice, more never come back to where they were. */
const ROUNDS = 4;

export interface Dates {
  readonly schedule?: Schedule;
  readonly problems: readonly Problem[];
  readonly remarks: readonly Problem[];
}

/** The schedule, where the house has said its working days. */
export function datesOf(input: WorkInput, jobs: readonly ReachedJob[], goOn?: () => boolean): Dates {
  const { calendar, suppliers = [], today, begins = today } = input;
  if (!calendar || jobs.length === 0) return { problems: [], remarks: [] };
  const chosen = new Set(jobs.map(({ id }) => id));
  // Where nobody knows how long it takes, it is a part without a date like any other, and told.
  const away = sentAway(
    input.jobs.filter(({ id }) => chosen.has(id)),
    suppliers,
  ).filter((one) => minutesAway(one, today) !== undefined);
  let walls = new Map(away.map((one) => [one.id, minutesAway(one, today) ?? 0]));
  for (let round = 1; ; round += 1) {
    const { activities, blocks, parts, assumed } = piecesOf(input, jobs, away, walls);
    const made = schedule({
      today,
      from: { date: begins, minute: 0 },
      calendar,
      activities,
      blocks,
      parts,
      suppliers: [...suppliers, ANY_SUPPLIER],
      ...(goOn === undefined ? {} : { goOn }),
    });
    if (!made.ok) return { problems: made.problems, remarks: [] };
    const leaves = new Map(made.value.activities.map(({ id, start }) => [id, start.date]));
    const again = new Map(
      away.map((one) => [one.id, minutesAway(one, leaves.get(one.id) ?? today) ?? walls.get(one.id) ?? 0]),
    );
    const stands = [...again].every(([id, minutes]) => walls.get(id) === minutes);
    if (stands || round === ROUNDS)
      return {
        schedule: made.value,
        problems: made.value.problems,
        remarks: assumed.length === 0 ? [] : [problem("plan.parts-assumed", {}, { n: assumed.length, parts: assumed })],
      };
    walls = again;
  }
}

/** Real minutes from the day it leaves to the day it is back; undefined where nobody knows how long it takes. */
function minutesAway({ part, supplier }: Away, leaves: string): number | undefined {
  const leadDays = part.leadDays ?? supplier.leadDays;
  const back = arrivesOn({ ...supplier, ...(leadDays === undefined ? {} : { leadDays }) }, leaves);
  return back.ok ? Math.max(0, Date.parse(back.value) - Date.parse(leaves)) / 60_000 : undefined;
}
