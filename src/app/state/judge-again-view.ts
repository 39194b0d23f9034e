/** Judging again in words: limits and editions before and after, and each finding that changes. Pure. */
import type { Fault } from "../../core/assess/contract.js";
import { faultKey } from "../../core/record/index.js";
import type { MarkKind } from "../../core/report/index.js";
import type { CarLimit } from "../../core/sheet/run.js";
import { type Audience, levelOf } from "../../core/terms/index.js";
import { t } from "../texts/index.js";
import type { FrozenSheetFile } from "./frozen.js";
import { type FindingChanges, limitChanges } from "./judge-again.js";
import { capital, faultSays, type Knowledge, placeName } from "./knowledge.js";
import { carLimitText, limitTitle } from "./limits-view.js";
import type { FrozenSet } from "./shelf.js";
import { EDITION_SHOWN } from "./visit-view.js";

export interface PlainLine {
  readonly id: string;
  readonly title: string;
  readonly second: string;
}
export interface ChangeLine extends PlainLine {
  readonly mark: MarkKind;
}
export interface ChangeLines {
  readonly changed: readonly ChangeLine[];
  readonly appeared: readonly ChangeLine[];
  readonly went: readonly ChangeLine[];
}

/** Every limit whose figure is another: `the default before, over 0.2 mm: major now`. */
export function limitLinesOf(known: Knowledge, frozen: FrozenSet, now: FrozenSet): readonly PlainLine[] {
  return limitChanges(frozen.limits.limits, now.limits.limits).flatMap((change) => {
    const limit = known.limits.get(change.limit);
    const open = limit && known.sheets.find(({ sheet }) => sheet.limits.some(({ id }) => id === limit.id));
    // A figure on a sheet that is not open in this visit changes nothing in it.
    if (!limit || !open) return [];
    const says = (figures: readonly CarLimit[]): string =>
      figures.length === 0 ? t("again.default") : figures.map((one) => carLimitText(limit, one)).join(" / ");
    const at = change.place === undefined ? "" : `, ${placeName(known, change.place)}`;
    const now = t("again.now", { before: says(change.before), after: says(change.after) });
    return [{ id: change.key, title: `${limitTitle(limit, open.texts)}${at}`, second: capital(now) }];
  });
}

/** Every sheet, and the shared files, whose edition is another. */
export function sheetLinesOf(
  frozen: FrozenSet,
  now: FrozenSet,
  title: (file: FrozenSheetFile) => string,
): readonly PlainLine[] {
  const line = (id: string, name: string, was: string, is: string): readonly PlainLine[] =>
    was === is
      ? []
      : [
          {
            id,
            title: name,
            second: t("again.now", {
              before: t("visit.edition", { edition: was.slice(0, EDITION_SHOWN) }),
              after: t("visit.edition", { edition: is.slice(0, EDITION_SHOWN) }),
            }),
          },
        ];
  return [
    ...frozen.sheets.flatMap((file, index) =>
      line(file.sheet.id, title(file), file.edition, now.sheets[index]?.edition ?? file.edition),
    ),
    ...line("common", t("again.common"), frozen.common.edition, now.common.edition),
  ];
}

/** The grade with what makes it less than plain: `minor, too close to call`. */
const standingOf = (fault: Fault): string => [t(`grade.${fault.grade}`), ...lessOf(fault)].join(", ");

const lessOf = (fault: Fault): readonly string[] => [
  ...(fault.close ? [t("findings.close").toLowerCase()] : []),
  ...(fault.sure === "certain" ? [] : [t(`sure.${fault.sure}`)]),
  ...(fault.provisional ? [t("findings.provisional")] : []),
];

/** The findings that change, the worst first in each heap. */
export function changeLines(known: Knowledge, who: Audience, changes: FindingChanges): ChangeLines {
  const line = (fault: Fault, second: string): ChangeLine => ({
    id: faultKey(fault.fault, fault.place),
    mark: fault.grade,
    title: faultSays(known, fault.fault, fault.rules, who).says,
    second: [capital(placeName(known, fault.place)), ...(second === "" ? [] : [capital(second)])].join(". "),
  });
  const worst = (a: Fault, b: Fault): number => levelOf(b.grade) - levelOf(a.grade);
  return {
    changed: [...changes.changed]
      .sort((a, b) => worst(a.after, b.after))
      .map(({ before, after }) =>
        line(after, t("again.now", { before: standingOf(before), after: standingOf(after) })),
      ),
    appeared: [...changes.appeared].sort(worst).map((fault) => line(fault, lessOf(fault).join(", "))),
    went: [...changes.went].sort(worst).map((fault) => line(fault, lessOf(fault).join(", "))),
  };
}
