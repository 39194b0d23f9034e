/** A decision in words: the word itself, who told it and how, at which price, by whom it was signed. Pure. */
import type { Decision, PlanState, SignedFor, Stands } from "../../core/record/index.js";
import { minorDigitsOf } from "../../core/units/index.js";
import { plainDay } from "../texts/days.js";
import { figure } from "../texts/figures.js";
import { t } from "../texts/owners-word.js";
import { type Currency, roundMoneyText } from "./money-words.js";
import { doDiffer, wordsOn } from "./owners-word.js";

/** By when, as it was said: a day, an odometer, or whichever comes first. */
function whenText({ by, odometer }: Decision): string {
  const unit = odometer?.unit === "[mi_i]" ? "mi" : "km";
  const clock = odometer && t("owner.by-odometer", { value: figure(String(odometer.value)), unit });
  const date = by === undefined ? undefined : plainDay(by);
  if (date !== undefined && clock !== undefined) return t("owner.by-both", { date, odometer: clock });
  return date ?? clock ?? "";
}

/** `Yes, by 1 Jun 2026`; null is a taking back. */
export function decisionText(said: Decision): string {
  switch (said.word) {
    case "yes-now":
      return t("owner.yes-now");
    case "yes-by":
      return t("owner.yes-by", { when: whenText(said) });
    case "no":
      return t("owner.no", { because: said.because ?? "" });
    case "tell-me-more":
      return t("owner.tell-me-more", { what: said.what ?? "" });
  }
}

/** The few words of a row of the work list; undefined where nobody has decided. */
export function briefWord(said: Pick<PlanState, "decisions">, id: string): string | undefined {
  const standing = wordsOn(said, id);
  const one = standing.at(-1)?.value;
  if (!one) return undefined;
  if (doDiffer(standing)) return t("owner.brief.differ");
  return one.word === "yes-by" ? t("owner.brief.yes-by", { when: whenText(one) }) : t(`owner.brief.${one.word}`);
}

/** Everybody's word on a job, in one line. */
export function standingText(standing: readonly Stands<Decision>[]): string {
  const [one] = standing;
  if (!one) return t("owner.none");
  if (!doDiffer(standing)) return decisionText(standing.at(-1)?.value ?? one.value);
  const words = standing.map(({ value }) => t("owner.differ.one", { who: value.who, word: decisionText(value) }));
  return t("owner.differ", { words: words.join("; ") });
}

/** `Anna, owner, in person, 2 Mar 2026`. */
export const toldText = ({ who, role, how, on }: Decision): string =>
  t("owner.told", { who: t(`owner.who.${role}`, { who }), how: t(`owner.how.${how}`), day: plainDay(on) });

/** A price of long ago in its own currency, which the house may have left since. */
const writtenIn = (minor: number, currency: string, now: Currency | undefined): string =>
  roundMoneyText(minor, {
    currency,
    minorDigits: minorDigitsOf(currency) ?? (now?.currency === currency ? now.minorDigits : 2),
  });

/** The figure somebody decided on, in the money of then. */
export function priceText({ price }: Decision, now: Currency | undefined): string | undefined {
  if (!price) return undefined;
  const write = (minor: number): string => writtenIn(minor, price.currency, now);
  return t("owner.at-price", { likely: write(price.likely), p80: write(price.p80) });
}

/** Who signed for which word, and that it was an earlier one where another stands now. */
export function signedText({ signed, word, isForEarlier }: SignedFor): string {
  const { who, on, drawn } = signed.value;
  const told = t(drawn ? "owner.signed.drawn" : "owner.signed.typed", { who, day: plainDay(on) });
  if (!isForEarlier || !word.said) return told;
  return t("owner.signed.earlier", { signed: told, word: decisionText(word.said) });
}
