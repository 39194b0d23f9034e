/**
 * A note to the owner of how far the work is, made of what was really recorded: what is not told is not in it. To be
 * read over and changed before it is sent. Pure.
 */
import type { Assessment } from "../../core/assess/contract.js";
import { type JobStands, type PartStands, progressOf } from "../../core/plan/index.js";
import { forbidsOf, isForbidden } from "../../core/terms/index.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/release.js";
import { atPlace, faultSays } from "./knowledge.js";
import type { Currency } from "./money-words.js";
import { holdsTold } from "./plan-dates-view.js";
import type { Estimating } from "./plan-estimate-view.js";
import { additionLines, forecastTold } from "./plan-forecast-view.js";
import type { PartsKnown } from "./plan-part-view.js";
import { jobTitle, partTitle } from "./plan-words.js";

export interface Noted extends PartsKnown, Estimating {
  readonly carName: string;
  readonly assessment: Pick<Assessment, "cautions" | "faults">;
  readonly currency: Currency | undefined;
}

/** The note as it stands today, one line a subject. */
export function progressNote(on: Noted): string {
  const { said, input } = on;
  const progress = progressOf(said, input.today);
  const jobs = progress.ok ? progress.value.jobs : [];
  const parts = progress.ok ? progress.value.parts : [];
  const declined = new Set(input.jobs.filter((job) => job.declined).map(({ id }) => id));
  const wanted = parts.filter(({ job, place }) => !declined.has(`${job}@${place}`));
  const work = [...jobLines(on, jobs), ...wanted.flatMap((part) => partLine(on, part))];
  return [
    t("note.line.car", { car: on.carName, date: plainDay(input.today) }),
    ...dangerLines(on),
    ...(declined.size === 0
      ? []
      : [t("note.line.declined", { what: all([...declined].map((id) => jobTitle(on.telling, id))) })]),
    ...(work.length === 0 ? [t("note.line.none")] : work),
    ...holdLines(on),
    ...moneyLines(on),
    ...askLines(on),
    ...said.release.map(({ value }) => t("note.line.release", { date: plainDay(value.on) })),
  ].join("\n");
}

/** What must not wait for the end of a note: that the car stands, and why. */
function dangerLines({ assessment, telling }: Noted): readonly string[] {
  const dangerous = assessment.faults.filter(({ grade }) => grade === "dangerous");
  const stands = isForbidden(assessment.cautions);
  const isToWorkshop = assessment.cautions.some(({ caution }) => forbidsOf(caution) === "beyond-workshop");
  const what = dangerous.map(
    ({ fault, place, rules }) =>
      `${faultSays(telling.known, fault, rules, telling.who).says}${atPlace(telling.known, place)}`,
  );
  return [
    ...(stands ? [t("note.line.stands")] : isToWorkshop ? [t("note.line.to-workshop")] : []),
    ...(what.length === 0 ? [] : [t("note.line.dangerous", { what: all(what) })]),
  ];
}

const all = (names: readonly string[]): string => names.join("; ");

function jobLines({ telling }: Noted, jobs: readonly JobStands[]): readonly string[] {
  const named = (stands: JobStands["stands"]): readonly string[] =>
    jobs.filter((one) => one.stands === stands).map(({ job, place }) => jobTitle(telling, `${job}@${place}`));
  const line = (key: "note.line.done" | "note.line.measured" | "note.line.begun", names: readonly string[]) =>
    names.length === 0 ? [] : [t(key, { what: all(names) })];
  return [
    ...line("note.line.measured", named("measured-again")),
    ...line("note.line.done", named("done")),
    ...line("note.line.begun", named("begun")),
    ...jobs.flatMap(({ stands, job, place, next }) => {
      if (stands !== "waiting") return [];
      const what = jobTitle(telling, `${job}@${place}`);
      return [
        next === undefined
          ? t("note.line.waiting.none", { what })
          : t("note.line.waiting", { date: plainDay(next), what }),
      ];
    }),
  ];
}

function partLine({ telling, said }: Noted, told: PartStands): readonly string[] {
  const { job, place, part, promised, overdueDays } = told;
  const what = partTitle(telling, said, `${job}@${place}/${part}`);
  switch (told.stands) {
    case "ordered":
    case "promised": {
      if (promised === undefined) return [t("note.line.ordered", { what })];
      const date = plainDay(promised);
      return [t(overdueDays === undefined ? "note.line.promised" : "note.line.overdue", { date, what })];
    }
    case "arrived":
    case "passed":
      return [t("note.line.arrived", { what })];
    case "failed":
    case "sent-back":
      return [t("note.line.failed", { what })];
    case "fitted":
      return [];
  }
}

function holdLines(on: Noted): readonly string[] {
  const schedule = on.plan?.schedule;
  const holds = holdsTold(on, schedule).map(({ title }) => title);
  const finish = schedule?.finish;
  // A day for part of the work is no day for the car.
  const stands =
    on.assessment.faults.some(({ grade }) => grade === "dangerous") && on.input.jobs.some((job) => job.declined);
  const isWhole = finish !== undefined && schedule?.leftOut.length === 0 && !stands;
  return [
    ...(holds.length === 0 ? [] : [t("note.line.hold", { what: all(holds) })]),
    ...(finish && isWhole ? [t("note.line.ready", { date: plainDay(finish.date) })] : []),
  ];
}

function moneyLines(on: Noted): readonly string[] {
  const told = on.currency && forecastTold(on, on.currency);
  if (!told || "trouble" in told) return [];
  const [first, now] = [told.rows[0]?.figure, told.rows.at(-1)?.figure];
  return first === undefined || now === undefined ? [] : [t("note.line.first", { first, now })];
}

function askLines(on: Noted): readonly string[] {
  const open = additionLines(on, on.currency).filter(({ isAgreed }) => !isAgreed);
  const what = open.map(({ title, figure }) => (figure === undefined ? title : `${title} (${figure})`));
  return what.length === 0 ? [] : [t("note.line.ask", { what: all(what) })];
}
