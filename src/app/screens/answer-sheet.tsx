/** The answer to what the owner asked, told with its day and kept with the question. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { answerQuestion } from "../state/decision-acts.js";
import { toldText } from "../state/decision-words.js";
import type { DecisionFacts } from "../state/decisions-view.js";
import { t } from "../texts/decisions.js";
import type { OnPlan } from "./on-plan.js";

interface AnswerProps {
  readonly on: OnPlan;
  readonly facts: DecisionFacts;
  readonly onClose: () => void;
}

export function AnswerSheet({ on, facts, onClose }: AnswerProps) {
  const { journal } = useApp();
  const asked = facts.standing.findLast(({ value }) => value.word === "tell-me-more");
  const [words, setWords] = useState(facts.answer?.words ?? "");
  const said = words.trim();
  const keep = (): void => {
    if (!asked || said === "") return;
    void answerQuestion(journal, on.stream, { question: asked.id, answer: { words: said, on: on.input.today } });
    onClose();
  };
  return (
    <Sheet
      open
      title={asked?.value.what ?? t("decisions.answer")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} disabled={said === ""} onPress={keep} />}
    >
      {asked && <p class="small n">{toldText(asked.value)}</p>}
      <Field
        id="decision-answer"
        kind="area"
        label={t("decisions.answer.words")}
        value={words}
        onInput={setWords}
        required
      />
    </Sheet>
  );
}
