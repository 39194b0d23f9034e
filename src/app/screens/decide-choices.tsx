/** The four words, one per line; the one that stands carries its tick and is pressed again to be mended. */
import { DECISION_WORDS, type Decision, type DecisionWord } from "../../core/record/index.js";
import { TickIcon } from "../parts/icons.js";
import { decisionText } from "../state/decision-words.js";
import { t } from "../texts/decisions.js";

interface ChoicesProps {
  readonly stands: Decision | undefined;
  readonly onChoose: (word: DecisionWord) => void;
  readonly disabled: boolean;
}

export function DecideChoices({ stands, onChoose, disabled }: ChoicesProps) {
  return (
    <fieldset class="replies one-column" aria-label={t("decisions.choose")}>
      {DECISION_WORDS.map((word) => (
        <button
          key={word}
          class="reply"
          type="button"
          aria-pressed={stands?.word === word}
          disabled={disabled}
          onClick={() => onChoose(word)}
        >
          <span class="reply-words">
            {t(`decisions.say.${word}`)}
            {stands?.word === word && word !== "yes-now" && <small>{decisionText(stands)}</small>}
          </span>
          {stands?.word === word && <TickIcon />}
        </button>
      ))}
    </fieldset>
  );
}
