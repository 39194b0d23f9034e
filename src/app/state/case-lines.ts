/** The lines of a case as they are read and written: what a key names in words, what is typed as a case keeps it. Pure. */

import type { Assessment } from "../../core/assess/contract.js";
import type { Rule } from "../../core/sheet/run.js";
import type { Typed } from "../../core/sheet/work.js";
import { t as shared } from "../texts/index.js";
import { t } from "../texts/sheet-rules.js";
import type { Choice } from "./sheet-choices.js";
import { kindWords, type SheetNames } from "./sheet-names.js";

const LIST = ", ";

/** What was written, as a case keeps it: a whole number, yes or no, several words, or the text as it stands. */
export function typedOf(text: string): Typed {
  const plain = text.trim();
  if (plain === "true" || plain === "false") return plain === "true";
  if (/^-?\d+$/.test(plain)) return Number(plain);
  return plain.includes(LIST) ? plain.split(LIST).map((one) => one.trim()) : plain;
}
export const writtenOf = (value: unknown): string => (Array.isArray(value) ? value.join(LIST) : String(value ?? ""));

/** The name a condition gives what a key of replies names. */
export const nameOfKey = (key: string): string => (key.split(/[@#]/)[0] ?? key).replaceAll("-", "_");

/** What can be said of a name, where it is one word of a few or yes and no; nothing of figures and of several words. */
export function valuesOf(names: Pick<SheetNames, "things" | "spoken">, name: string): readonly Choice[] {
  const type = names.things.get(name)?.type;
  if (type?.is === "word") return type.words.map((value) => ({ value, words: names.spoken.word(name, value) }));
  if (type?.is !== "yes") return [];
  return (["true", "false"] as const).map((value) => ({
    value,
    words: shared(value === "true" ? "app.yes" : "app.no"),
  }));
}

/** A key of replies in words: the point, and where. */
export function sayReplyKey(names: Pick<SheetNames, "spoken" | "place">, key: string): string {
  const place = /@([^#]+)/.exec(key)?.[1];
  const said = names.spoken.name(nameOfKey(key));
  return place === undefined ? said : `${said}, ${names.place(place)}`;
}

/** A key of what is expected, in words: a fault and where, a gate, a place. */
export function sayExpectKey(names: Pick<SheetNames, "fault" | "place">, key: string): string {
  if (key === "at") return t("case.expect.at");
  if (key.startsWith("gate.")) return t("case.expect.gate", { gate: kindWords(key.slice("gate.".length)) });
  const [fault = "", place] = key.split("@");
  return place === undefined ? names.fault(fault) : `${names.fault(fault)}, ${names.place(place)}`;
}

/** What the rule concludes in this outcome, as a case expects it. */
export function expectFrom(
  rule: Pick<Rule, "id">,
  { findings }: Pick<Assessment, "findings">,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    findings
      .filter((finding) => finding.rule === rule.id)
      .map(({ fault, place, grade }) =>
        fault !== null && grade !== null ? [place === "car" ? fault : `${fault}@${place}`, grade] : ["at", place],
      ),
  );
}
