/** A visit's own page as data: sheets and how far they are looked at, odometer, what differs. Pure. */
import type { Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/index.js";
import { t } from "../texts/index.js";
import type { Telling } from "./because.js";
import { odometerText } from "./odometer.js";

/** Characters of an edition that tell it from another at a glance. */
export const EDITION_SHOWN = 8;

export interface VisitView {
  readonly closed: boolean;
  readonly odometer: string;
  readonly sheets: readonly {
    readonly id: string;
    readonly title: string;
    readonly looked: string;
    readonly edition: string;
  }[];
  readonly differ: number;
  /** Entries this version can't read. */
  readonly unreadable: number;
}

export function visitView(telling: Telling, visit: VisitState, assessment: Assessment): VisitView {
  const { known } = telling;
  const odometer = visit.odometer.at(-1)?.value;
  return {
    closed: visit.closed !== undefined,
    odometer: odometer ? odometerText(odometer) : t("visit.no-odometer"),
    sheets: visit.sheets.map((sheet) => {
      const coverage = assessment.coverage.find((one) => one.sheet === sheet.id);
      const looked = coverage ? t("visit.looked", { answered: coverage.answered, of: coverage.of }) : "";
      return {
        id: sheet.id,
        title: known.sheets.find((one) => one.sheet.id === sheet.id)?.texts.title ?? sheet.label,
        looked: coverage && !coverage.enough ? `${looked}, ${t("visit.not-enough")}` : looked,
        edition: t("visit.edition", { edition: sheet.edition.slice(0, EDITION_SHOWN) }),
      };
    }),
    differ: [...visit.replies.values()].filter((slot) => slot.differ).length,
    unreadable: visit.trouble.unknown.length,
  };
}
