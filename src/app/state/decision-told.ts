/** The owner's word on one job as a hand-over takes it, with whoever signed for it. Pure. */
import type { DecisionTold } from "../../core/report/handover/index.js";
import { t } from "../texts/owners-word.js";
import { decisionText } from "./decision-words.js";
import type { DecisionFacts } from "./decisions-view.js";
import { momentOf } from "./handover-moment.js";

/** The newest signature for the word that stands, where there is one. */
export const signatureOf = ({
  signatures,
}: DecisionFacts): DecisionFacts["signatures"][number]["signed"]["value"] | undefined =>
  signatures.findLast(({ isForEarlier }) => !isForEarlier)?.signed.value;

const TOLD = { "yes-now": "now", "yes-by": "by", no: "no", "tell-me-more": "more" } as const;

/** As the hand-over is given it; undefined where nobody has decided. People who differ are told in the reason. */
export function decisionTold(facts: DecisionFacts): DecisionTold | undefined {
  const { said, differ, standing } = facts;
  if (!said) return undefined;
  const signed = signatureOf(facts);
  const { by, odometer } = said;
  const reason = differ
    ? t("owner.differ", {
        words: standing
          .map(({ value }) => t("owner.differ.one", { who: value.who, word: decisionText(value) }))
          .join("; "),
      })
    : (said.because ?? said.what);
  const until = {
    ...(by === undefined ? {} : { date: by }),
    ...(odometer === undefined ? {} : { odometer }),
  };
  return {
    is: differ ? "more" : TOLD[said.word],
    ...(said.word === "yes-by" ? { by: until } : {}),
    ...(reason === undefined ? {} : { reason }),
    who: said.who,
    how: t(`owner.how.${said.how}`),
    on: said.on,
    ...(signed ? { signed: { who: signed.who, on: signed.on, isDrawn: signed.drawn !== undefined } } : {}),
    ...(said.warning
      ? {
          warned: {
            words: said.warning.shown.map(({ words }) => words).join(" "),
            at: momentOf(Date.parse(said.warning.acknowledged)),
          },
        }
      : {}),
  };
}
