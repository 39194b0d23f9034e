/** Two visits of a small car: in the first a rough hub front right is found and its renewal declined, the second is later. */
import { openVisit } from "../../src/app/state/car-acts.js";
import { decide } from "../../src/app/state/decision-acts.js";
import type { Opening } from "../../src/app/state/new-visit.js";
import { reply } from "../../src/app/state/reply-acts.js";
import { type Bench, benchVisit, commonFrozen, key, sheetFrozen, words } from "./app-bench.js";

/** The job that was declined. */
export const DECLINED = { job: "job.hub.renew", place: "FR" } as const;

/** The car, the visit it was found in, and the later one. */
export async function leftStanding(on: Bench, more: Partial<Pick<Opening, "purpose" | "who">> = {}) {
  const { car, visit } = await benchVisit(on);
  await reply(on.journal, visit, key("hub.spin", "FR", "feel"), words("rough"));
  const said = {
    word: "no",
    because: "Next year",
    who: "Mo",
    role: "owner",
    how: "in-person",
    on: "2026-11-25",
  } as const;
  await decide(on.journal, visit, [{ at: DECLINED, said }]);
  const files = { common: commonFrozen, sheets: [sheetFrozen], limits: [] };
  const opening = { car, purpose: "workshop" as const, who: "technician" as const, on: "2026-12-30T10:00:00+01:00" };
  const next = await openVisit(on.journal, on.phone, { ...opening, ...more, ...files });
  if (next === undefined) throw new Error("the bench keeps what it is given");
  await on.journal.refresh();
  return { car, visit, next };
}
