/** The steps of telling something that came on top: words, hours, price, who agreed. Pure. */
import type { Three } from "../../core/plan/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import type { SaidAddition } from "./plan-forecast-view.js";

export const ADDITION_STEPS = ["words", "hours", "price", "agreed"] as const;
export type AdditionStep = (typeof ADDITION_STEPS)[number];

export interface AdditionForm {
  readonly words: string;
  readonly reason: string;
  readonly minutes?: Three | undefined;
  readonly price?: Three | undefined;
  readonly who: string;
  readonly how: string;
  readonly on: IsoDate;
}

export const additionForm = (said: SaidAddition | undefined, today: IsoDate): AdditionForm => ({
  words: said?.words ?? "",
  reason: said?.reason ?? "",
  minutes: said?.minutes,
  price: said?.price,
  who: said?.agreed?.who ?? "",
  how: said?.agreed?.how ?? "",
  on: said?.agreed?.on ?? today,
});

/** The first step that still wants something; who agreed is never wanted. */
export const openStep = ({ words, minutes, price }: AdditionForm): AdditionStep =>
  words.trim() === "" ? "words" : !minutes ? "hours" : price ? "agreed" : "price";

/** What is kept, under the name it has or is given; undefined while hours, price or words are missing. */
export function additionSaid(form: AdditionForm, addition: string): SaidAddition | undefined {
  const { minutes, price, on } = form;
  const [words, reason, who, how] = [form.words, form.reason, form.who, form.how].map((text) => text.trim());
  if (!words || !minutes || !price) return undefined;
  const agreed = who && on !== "" ? { who, how: how ?? "", on } : null;
  return { addition, words, reason: reason ?? "", minutes, price, agreed };
}
