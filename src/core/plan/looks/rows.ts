/** What the open sheets state about looking again at a finding or at work done. Makes nothing up. */
import type { Fault } from "../../assess/contract.js";
import { concerns, type NextLookRow } from "../by-when.js";
import { looksFor, type SheetJobs } from "../order.js";
import type { LookRow } from "./contract.js";

const figures = ({ km, months }: NextLookRow): Pick<LookRow, "km" | "months"> => ({
  ...(km === undefined ? {} : { km }),
  ...(months === undefined ? {} : { months }),
});

/** Rows for the fault itself, and those of its own sheet for its grade. */
export function rowsForFault(fault: Pick<Fault, "fault" | "grade">, sheets: readonly SheetJobs[]): readonly LookRow[] {
  return looksFor(fault, sheets)
    .filter((look) => concerns(look, fault))
    .map(
      (look): LookRow => ({
        names: look.fault === undefined ? "grade" : "fault",
        basis: "practice",
        ...figures(look),
      }),
    );
}

/** A row with the same distance as the check after that work is that check, and is not told twice. */
export const rowsForJob = (
  job: string,
  sheets: readonly Pick<SheetJobs, "sheet">[],
  recheckKm?: number,
): readonly LookRow[] =>
  sheets.flatMap(({ sheet }) =>
    sheet.nextLooks
      .filter((look) => look.job === job && (look.km === undefined || look.km !== recheckKm))
      .map((look): LookRow => ({ names: "job", basis: "practice", ...figures(look) })),
  );
