/**
 * The work list as the screen shows it: jobs in urgency order with by-when, own minutes and the reasons in words.
 * Pure; the order comes from core/plan.
 */
import type { ByWhen, JobDue, Why } from "../../core/assess/contract.js";
import type { Reason } from "../../core/plan/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { show } from "../../core/units/index.js";
import { plainDay } from "../texts/days.js";
import { decimalComma, fill, t } from "../texts/index.js";
import { unitShown } from "../texts/units.js";
import { whyTexts, whyWord } from "../texts/why.js";
import type { Telling } from "./because.js";
import { jobSays } from "./job-words.js";
import { atPlace, capital, faultSays, type OwnJob, placeName, pointName } from "./knowledge.js";
import { to } from "./routes.js";

export interface JobLine {
  readonly id: string;
  readonly job: string;
  readonly place: string;
  readonly number: number;
  readonly title: string;
  readonly mark: JobDue["grade"];
  readonly byWhen: string;
  readonly hours: string;
  readonly href: string;
}

export interface JobView extends JobLine {
  readonly does: string;
  readonly why: readonly string[];
  readonly whyAbove?: string;
  readonly access: readonly string[];
  readonly parts: readonly { readonly id: string; readonly words: string; readonly second?: string }[];
  readonly consumables: readonly string[];
  /** Smaller jobs due here that this one contains. */
  readonly includes: readonly string[];
  readonly follows: readonly string[];
  readonly after: readonly string[];
  readonly lookToo?: string;
  readonly recheck?: string;
  readonly basis: string;
  readonly faults: readonly {
    readonly id: string;
    readonly title: string;
    readonly second: string;
    readonly href: string;
  }[];
  readonly cautions: readonly string[];
}

/** Fixed only so that the order is always the same; no reason to a person. */
const BY_NAME = "above.id";

/** By when, in words: the class, or the nearer of its figures. */
export function byWhenText({ class: due, distance, date }: ByWhen): string {
  if (due < 2) return t(due === 0 ? "by-when.0" : "by-when.1");
  const figures = [
    ...(distance ? [t("by-when.2.distance", { value: distance.value, unit: unitShown(distance.unit) })] : []),
    ...(date ? [t("by-when.2.date", { date: plainDay(date) })] : []),
  ];
  if (figures.length > 0) return figures.join(", ");
  return t(due === 2 ? "by-when.2" : due === 3 ? "by-when.3" : "by-when.4");
}

/** One reason in words; a code without words is our mistake and shows as its code. */
export function whyText(why: Why): string {
  const text = whyTexts[why.code];
  if (text === undefined) return why.code;
  return fill(
    text,
    Object.fromEntries(Object.entries(why.params).map(([name, value]) => [name, whyWord(why.code, name, value)])),
  );
}

/** `0.5–1.0 h`, or minutes when all of it stays under an hour. */
function hoursText([low = 0, , high = 0]: readonly number[]): string {
  if (high < 60) return low === high ? t("work.min", { n: low }) : t("work.min-range", { low, high });
  const write = (minutes: number): string => show(minutes / 60, 1, decimalComma.value);
  return low === high
    ? t("work.hours", { n: write(low) })
    : t("work.hours-range", { low: write(low), high: write(high) });
}

/** Hours a person gave a job of their own; none given, none told. */
const ownHours = (own: OwnJob | undefined): string =>
  own?.hours === undefined ? "" : t("work.hours", { n: decimalComma.value ? own.hours.replace(".", ",") : own.hours });

function jobLine({ known, who, visit }: Telling, due: JobDue, index: number): JobLine {
  const job = known.jobs.get(due.job)?.job;
  return {
    id: `${due.job}@${due.place}`,
    job: due.job,
    place: due.place,
    number: index + 1,
    title: `${jobSays(known, due.job, who).name}${atPlace(known, due.place)}`,
    mark: due.grade,
    byWhen: byWhenText(due.byWhen),
    hours: job ? hoursText(job.minutes) : ownHours(known.ownJobs?.get(due.job)),
    href: to("job", { visit, job: due.job, place: due.place }),
  };
}

export const workLines = (telling: Telling, jobs: readonly JobDue[]): readonly JobLine[] =>
  jobs.map((due, index) => jobLine(telling, due, index));

/** One job with everything the sheet says of it; undefined when no finding calls for it any more. */
export function jobView(
  telling: Telling,
  tree: PlaceTree,
  jobs: readonly JobDue[],
  id: { readonly job: string; readonly place: string },
  above: (due: JobDue, next: JobDue) => Reason,
): JobView | undefined {
  const index = jobs.findIndex((due) => due.job === id.job && due.place === id.place);
  const due = jobs[index];
  if (!due) return undefined;
  const { known, who, visit } = telling;
  const entry = known.jobs.get(due.job);
  const texts = entry?.texts;
  const partName = (part: string): string => texts?.parts?.[part] ?? known.words.parts?.[part] ?? part;
  const next = jobs[index + 1];
  const lookToo = entry?.job["look-too"];
  const beside = lookToo === undefined ? [] : tree.related(lookToo, due.place);
  const reason = next && above(due, next);
  return {
    ...jobLine(telling, due, index),
    does: jobSays(known, due.job, who).does,
    why: due.why.map(whyText),
    ...(reason && reason.why.code !== BY_NAME ? { whyAbove: whyText(reason.why) } : {}),
    access: (entry?.job.access ?? []).map((access) => capital(known.words.access[access] ?? access)),
    parts: (entry?.job.parts ?? []).map((part) => {
      const second = [
        ...(part.set === undefined ? [] : [`${t("work.together")}: ${partName(part.set)}`]),
        ...(part.reuse === "never" ? [t("work.never-reuse")] : []),
      ].join(", ");
      return {
        id: part.part,
        words: `${part.count !== undefined && part.count > 1 ? `${part.count} × ` : ""}${partName(part.part)}`,
        ...(second === "" ? {} : { second }),
      };
    }),
    consumables: (entry?.job.consumables ?? []).map(partName),
    includes: due.includes.map((job) => jobSays(known, job, who).name),
    follows: (entry?.job.follows ?? []).map((job) => jobSays(known, job, who).name),
    after: (entry?.job.after ?? []).map((point) => pointName(known, point)),
    ...(beside.length > 0
      ? { lookToo: t("work.look-too", { place: beside.map((place) => placeName(known, place)).join(", ") }) }
      : {}),
    ...(entry?.job["recheck-km"] === undefined ? {} : { recheck: t("work.recheck", { n: entry.job["recheck-km"] }) }),
    basis: t("work.basis", { basis: t(`basis.${entry?.job.minutesBasis ?? "unverified"}`) }),
    faults: due.faults.map(({ fault, place }) => ({
      id: `${fault}@${place}`,
      title: faultSays(known, fault, [], who).says,
      second: capital(placeName(known, place)),
      href: to("finding", { visit, fault, place }),
    })),
    cautions: entry?.job.cautions ?? [],
  };
}
