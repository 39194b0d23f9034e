/** What is entered about a decision until it is whole: nothing of it is kept before. Pure. */
import type { Decision, DecisionWord, IdText, PlanState, PriceShown, Stands } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import { isSamePerson } from "../../core/terms/run.js";
import type { Warning } from "./decision-warning.js";

/** Whose word it is, how and on which day it was told. */
export type Deciding = Pick<Decision, "who" | "role" | "how" | "on">;

export interface DecisionForm {
  readonly word: DecisionWord;
  readonly by: string;
  readonly odometer: string;
  readonly because: string;
  readonly what: string;
  /** When the warning was said to be read. */
  readonly acknowledged?: string;
}

/** With what the same person said before of the same word. */
export const decisionForm = (word: DecisionWord, before: Decision | undefined): DecisionForm => ({
  word,
  by: before?.by ?? "",
  odometer: before?.odometer === undefined ? "" : String(before.odometer.value),
  because: before?.because ?? "",
  what: before?.what ?? "",
});

/** A whole number of kilometres or miles, blanks between its digits allowed; null: no such number; undefined: nothing. */
export function typedOdometer(typed: string): number | null | undefined {
  const bare = typed.replace(/[\s\u202f\u00a0]/g, "");
  if (bare === "") return undefined;
  return /^\d{1,7}$/.test(bare) ? Number(bare) : null;
}

/** Refused or put off: then the warning must have been read. */
export const asksForWarning = (word: DecisionWord): boolean => word === "no" || word === "yes-by";

interface Shown {
  readonly warning: Warning | undefined;
  readonly price: PriceShown | undefined;
  readonly estimate: IdText | undefined;
  readonly unit: "km" | "[mi_i]";
}

/** The decision as it would be kept; undefined while something is missing, above all that the warning was read. */
export function decisionSaid(form: DecisionForm, deciding: Deciding, shown: Shown): Decision | undefined {
  const { word } = form;
  const who = deciding.who.trim();
  const odometer = typedOdometer(form.odometer);
  const [because, what] = [form.because.trim(), form.what.trim()];
  const mustRead = shown.warning !== undefined && asksForWarning(word);
  if (who === "" || (mustRead && form.acknowledged === undefined)) return undefined;
  if (word === "yes-by" && (odometer === null || (form.by === "" && odometer === undefined))) return undefined;
  if ((word === "no" && because === "") || (word === "tell-me-more" && what === "")) return undefined;
  return {
    ...deciding,
    who,
    word,
    ...(word === "yes-by" && form.by !== "" ? { by: form.by } : {}),
    ...(word === "yes-by" && typeof odometer === "number" ? { odometer: { value: odometer, unit: shown.unit } } : {}),
    ...(word === "no" ? { because } : {}),
    ...(word === "tell-me-more" ? { what } : {}),
    ...(shown.price ? { price: shown.price } : {}),
    ...(shown.estimate === undefined ? {} : { estimate: shown.estimate }),
    ...(mustRead && shown.warning && form.acknowledged !== undefined
      ? { warning: { shown: shown.warning.shown, acknowledged: form.acknowledged } }
      : {}),
  };
}

/** Whoever decided last goes on deciding; nobody is made up. A day told before today is asked for anew. */
export function decidingNow({ decisions }: Pick<PlanState, "decisions">, today: IsoDate): Deciding {
  const all = [...decisions.values()].flat().sort((a, b) => a.at.wall - b.at.wall || a.at.count - b.at.count);
  const last = all.at(-1)?.value;
  if (!last) return { who: "", role: "owner", how: "in-person", on: today };
  return { who: last.who, role: last.role, how: last.on === today ? last.how : "in-person", on: today };
}

/** Words of other people that stand beside this one's. */
export const othersWords = (standing: readonly Stands<Decision>[], who: string): readonly Stands<Decision>[] =>
  standing.filter(({ value }) => !isSamePerson(value.who, who));

export const ownWord = (standing: readonly Stands<Decision>[], who: string): Decision | undefined =>
  standing.findLast(({ value }) => isSamePerson(value.who, who))?.value;
