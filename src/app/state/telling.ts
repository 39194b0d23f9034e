/** Replies, units and amounts put into words for the screen. Pure; decides nothing about what they mean. */

import type { Audience, ReplyValue } from "../../core/terms/index.js";
import { figure, t } from "../texts/round.js";
import { unitShown } from "../texts/units.js";
import { type KnownPoint, replyWord } from "./knowledge.js";

/** A non-answer with its reason: `Could not tell: too hot`. */
export function nonAnswerText(value: Extract<ReplyValue, { type: "non-answer" }>): string {
  const why = value.words ?? (value.reason ? t(`reason.${value.reason}`) : undefined);
  const said = t(`non-answer.${value.nonAnswer}`);
  return why ? `${said}: ${why}` : said;
}

/** What was replied, in the words of who reads. `known` may be missing: the sheet is not on this phone. */
export function replyText(known: KnownPoint | undefined, field: string, value: ReplyValue, who: Audience): string {
  switch (value.type) {
    case "words":
      return value.words.map((word) => (known ? replyWord(known.text, field, word, who) : word)).join(", ");
    case "reading":
      return `${value.values.map((one) => figure(one)).join(" / ")} ${unitShown(value.unit)}`;
    case "count":
      return figure(value.count);
    case "yes":
      return value.yes ? t("app.yes") : t("app.no");
    case "date-code":
      return value.text;
    case "non-answer":
      return nonAnswerText(value);
  }
}
