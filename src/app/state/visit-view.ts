/** A visit's own page as data: complaints with what they may be, sheets and how far they are looked at. Pure. */
import type { Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/index.js";
import { t } from "../texts/index.js";
import type { Knowledge } from "./knowledge.js";
import { odometerText } from "./odometer.js";

/** Characters of an edition that tell it from another at a glance. */
const EDITION_SHOWN = 8;

export interface VisitView {
  readonly closed: boolean;
  readonly complaints: readonly { readonly id: string; readonly text: string; readonly second?: string }[];
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

/** Suspects of a known complaint, the likeliest first. */
function suspects(known: Knowledge, complaint: string | undefined): string | undefined {
  const text = complaint === undefined ? undefined : known.words.complaints[complaint];
  const listed = known.common.complaints.find((one) => one.id === complaint);
  if (!text || !listed) return undefined;
  const names = [...listed.suspects]
    .sort((a, b) => b.weight - a.weight)
    .map(({ suspect }) => text.suspects[suspect] ?? suspect);
  return `${text.name}: ${names.join(", ")}`;
}

export function visitView(known: Knowledge, visit: VisitState, assessment: Assessment): VisitView {
  const odometer = visit.odometer.at(-1)?.value;
  return {
    closed: visit.closed !== undefined,
    complaints: visit.complaints.map(({ id, value }) => {
      const second = suspects(known, value.complaint);
      return { id, text: `“${value.text}”`, ...(second === undefined ? {} : { second }) };
    }),
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
