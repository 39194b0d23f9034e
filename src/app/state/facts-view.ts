/** What the rules may ask about a car, and what is known of it. Pure. */
import type { CarState } from "../../core/record/index.js";
import type { BareCommon, BareCommonTexts } from "../../core/sheet/run.js";
import { t } from "../texts/index.js";

export interface FactLine {
  readonly id: string;
  readonly name: string;
  readonly kind: "word" | "number" | "year" | "yes";
  readonly unit?: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly words: string }[];
}

/** Every fact the shared files know, with what stands for it as a text. */
export function factLines(car: CarState, common: BareCommon, words: BareCommonTexts): readonly FactLine[] {
  return common.facts.map((fact) => {
    const text = words.facts[fact.id];
    const stands = car.facts.get(fact.id)?.at(-1)?.value;
    const unknown = { value: "", words: t("facts.unknown") };
    const yesNo = [
      { value: "true", words: t("app.yes") },
      { value: "false", words: t("app.no") },
    ];
    const choices = (fact.words ?? []).map((word) => ({ value: word, words: text?.words?.[word] ?? word }));
    return {
      id: fact.id,
      name: text?.name ?? fact.id,
      kind: fact.kind,
      ...(fact.unit === undefined ? {} : { unit: fact.unit }),
      value: stands === undefined ? "" : String(stands),
      options: fact.kind === "word" ? [unknown, ...choices] : fact.kind === "yes" ? [unknown, ...yesNo] : [],
    };
  });
}

/** A fact's text as its value; null takes it back, undefined is no value of this kind. */
export function factValue(kind: FactLine["kind"], text: string): string | number | boolean | null | undefined {
  if (text.trim() === "") return null;
  switch (kind) {
    case "word":
      return text;
    case "yes":
      return text === "true";
    case "year":
      return /^(18|19|20)\d\d$/.test(text.trim()) ? Number(text.trim()) : undefined;
    case "number": {
      const value = Number(text.trim().replace(",", "."));
      return Number.isFinite(value) ? value : undefined;
    }
  }
}
