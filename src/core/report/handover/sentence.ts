/** Small joins of words that several parts of a hand-over need. Knows no section. */
import type { Grade } from "../../terms/index.js";
import { dayText, untilText } from "./figures.js";
import type { DecisionTold, SignedTold } from "./input.js";
import type { LetteredFinding } from "./model.js";
import { type HandoverWords, say } from "./words.js";

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** With a stop, where there is none: a person's own words stand as a sentence. */
export const ended = (text: string): string => (text === "" || /[.!?…]$/.test(text) ? text : `${text}.`);
export const unended = (text: string): string => text.replace(/\.$/, "");

/** Name and place, or the name alone for the car as a whole. */
export const placed = (words: HandoverWords, title: string, where: string): string =>
  where === "" ? title : say(words, "at", { what: title, where });

export const gradeWord = (words: HandoverWords, grade: Grade): string => capital(say(words, `grade.${grade}`));

/** The owner's word on a job. */
export function decisionText(words: HandoverWords, decision: DecisionTold | undefined): string {
  if (decision === undefined) return say(words, "decision.none");
  if (decision.is === "now" || decision.is === "more") return say(words, `decision.${decision.is}`);
  if (decision.is === "no")
    return decision.reason ? say(words, "decision.no", { reason: decision.reason }) : say(words, "decision.no.none");
  const until = untilText(words, { on: decision.by?.date, odometer: decision.by?.odometer }).join(", ");
  return until === "" ? say(words, "decision.by.open") : say(words, "decision.by", { until });
}

/** Who signed for a word, or agreed to it without a signature. */
export const signedText = (words: HandoverWords, { who, on, isDrawn }: SignedTold): string =>
  say(words, isDrawn ? "decision.signed" : "decision.agreed", { who, day: dayText(words, on) });

/** Who told it, how, and on which day; nothing where none of it is known. */
export function decisionTold(words: HandoverWords, decision: DecisionTold | undefined): readonly string[] {
  const { who, how, on, signed } = decision ?? {};
  const isTold = who !== undefined || how !== undefined || on !== undefined;
  return [
    ...(isTold
      ? [
          say(words, "decision.told", {
            who: who ?? say(words, "decision.someone"),
            how: how === undefined ? "" : say(words, "decision.how", { how }),
            on: on === undefined ? "" : say(words, "decision.on", { day: dayText(words, on) }),
          }),
        ]
      : []),
    ...(signed === undefined ? [] : [signedText(words, signed)]),
  ];
}

/** What a finding means for driving, where its reader is told. One that is too close may also turn out good. */
export const beforeText = (
  words: HandoverWords,
  { beforeDriving, close }: Pick<LetteredFinding, "beforeDriving" | "close">,
): readonly string[] =>
  beforeDriving === undefined ? [] : [say(words, close ? `before.${beforeDriving}.close` : `before.${beforeDriving}`)];
