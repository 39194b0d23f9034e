/** Minutes, openings and jobs of a plan in words. Pure; knows no screen. */

import { type Three, tellPlan } from "../../core/plan/index.js";
import type { PlanState } from "../../core/record/index.js";
import type { Problem } from "../../core/terms/index.js";
import { show } from "../../core/units/index.js";
import { decimalComma } from "../texts/index.js";
import { t } from "../texts/plan-work.js";
import type { Telling } from "./because.js";
import { jobSays } from "./job-words.js";
import { atPlace, capital } from "./knowledge.js";

const HOUR = 60;
/** From here on minutes are told in hours. */
const HOURS_FROM = 60;

/** `45 min`, or `1.8 h`. */
export function minutesText(minutes: number): string {
  return minutes < HOURS_FROM ? t("work.min", { n: minutes }) : t("work.hours", { n: hours(minutes) });
}

/** `0.6–1.5 h`, or minutes where all of it stays under an hour. */
export function spanText([low, , high]: Three): string {
  if (low === high) return minutesText(low);
  if (high < HOURS_FROM) return t("work.min-range", { low, high });
  return t("work.hours-range", { low: hours(low), high: hours(high) });
}

const hours = (minutes: number): string => show(minutes / HOUR, 1, decimalComma.value);

/** The two halves of an id `what@place`. */
export function idParts(id: string): { readonly what: string; readonly place: string } {
  const at = id.lastIndexOf("@");
  return at < 0 ? { what: id, place: "car" } : { what: id.slice(0, at), place: id.slice(at + 1) };
}

/** What a job of a plan is called, with its place. */
export function jobTitle({ known, who }: Telling, id: string): string {
  const { what, place } = idParts(id);
  return `${jobSays(known, what, who).name}${atPlace(known, place)}`;
}

/** What an opening is called, with its place. */
export function openingTitle({ known }: Telling, id: string): string {
  const { what, place } = idParts(id);
  return `${capital(known.words.access[what] ?? what)}${atPlace(known, place)}`;
}

/** What a part is called: by hand, else in the words of the sheets. `key` is `job@place/part`. */
export function partTitle({ known }: Telling, { parts }: Pick<PlanState, "parts">, key: string): string {
  const { job, part } = partOf(key);
  const said = parts.get(key)?.at(-1)?.value.figures.name;
  const texts = known.jobs.get(idParts(job).what)?.texts;
  return said ?? texts?.parts?.[part] ?? known.words.parts?.[part] ?? part;
}

/** The two halves of a part's key. Places and parts have no slash in their names. */
export function partOf(key: string): { readonly job: string; readonly part: string } {
  const at = key.lastIndexOf("/");
  return { job: key.slice(0, at), part: key.slice(at + 1) };
}

/** Anything a plan names, in words: a job, an opening or a putting back, a part of a job, a part that is away. */
export function planName(telling: Telling, said: Pick<PlanState, "parts">, id: string): string {
  const [, act, rest = id] = /^(open|close|away) (.*)$/.exec(id) ?? [];
  if (rest.includes("/") && rest.includes("@"))
    return `${partTitle(telling, said, rest)} (${jobTitle(telling, partOf(rest).job)})`;
  if (!rest.includes("@")) return rest;
  const isOpening = telling.known.words.access[idParts(rest).what] !== undefined;
  if (!isOpening) return jobTitle(telling, rest);
  const title = openingTitle(telling, rest);
  return act === "close" ? t("plan.put-back", { title }) : title;
}

/** A problem of planning in words, with names in place of ids. */
export function planProblem(
  telling: Telling,
  said: Pick<PlanState, "parts">,
  { code, where, params }: Problem,
): string {
  const named = (value: string | number): string | number =>
    typeof value === "number"
      ? value
      : value
          .split(" → ")
          .map((one) => planName(telling, said, one))
          .join(" → ");
  const words = Object.entries(params).map(([name, value]) => [
    name,
    typeof value === "object" ? value.map((one) => String(named(one))) : named(value),
  ]);
  return tellPlan({ code, where, params: Object.fromEntries(words) });
}
