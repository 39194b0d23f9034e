/** One complaint answered: found, not met today, or what it needs first; said by somebody, and open to be mended. */
import { useState } from "preact/hooks";
import type { ComplaintStands } from "../../core/plan/index.js";
import { ANSWERS, type AnswerWord, type ComplaintAnswer, NEEDS } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { choicesOffered, faultChoices, OFFERED } from "../state/complaint-answers.js";
import { answerComplaint } from "../state/release-acts.js";
import { dayOf } from "../state/today.js";
import { t } from "../texts/release.js";
import type { OnDesk } from "./on-visit.js";

interface AnswerSheetProps {
  readonly on: OnDesk;
  readonly heard: ComplaintStands;
  readonly onClose: () => void;
}

/** What is typed so far, as an answer; undefined while something is missing. */
function answerOf(
  word: AnswerWord | undefined,
  findings: ComplaintAnswer["findings"],
  needs: ComplaintAnswer["needs"],
  typed: string,
  who: string,
  on: string,
): ComplaintAnswer | undefined {
  const words = typed.trim();
  if (word === undefined || who.trim() === "") return undefined;
  const base = { word, findings: [], words, who: who.trim(), on };
  if (word === "needs") return needs === undefined ? undefined : { ...base, needs };
  if (word === "not-heard") return words === "" ? undefined : base;
  return words === "" && findings.length === 0 ? undefined : { ...base, findings };
}

export function AnswerSheet({ on, heard, onClose }: AnswerSheetProps) {
  const { journal, phone, settings } = useApp();
  const before = heard.answer;
  const [word, setWord] = useState(before?.word);
  const [findings, setFindings] = useState(before?.findings ?? []);
  const [needs, setNeeds] = useState(before?.needs);
  const [words, setWords] = useState(before?.words ?? "");
  const [typed, setTyped] = useState("");
  const [who, setWho] = useState(settings.value.name);
  // Where findings are covered, none is offered.
  const choices = on.quiet ? [] : faultChoices(on.telling, on.assessment, heard.known);
  const isChosen = (id: string): boolean => findings.some(({ fault, place }) => `${fault}@${place}` === id);
  const offered = choicesOffered(choices, isChosen, typed);
  const answer = answerOf(word, findings, needs, words, who, dayOf(phone.now()));
  const keep = (said: ComplaintAnswer | null): void => {
    void answerComplaint(journal, on.stream, heard.id, said);
    onClose();
  };
  const pick = (id: string, isChosen: boolean): void => {
    const choice = choices.find((one) => one.id === id);
    const rest = findings.filter(({ fault, place }) => `${fault}@${place}` !== id);
    if (choice) setFindings(isChosen ? [...rest, { fault: choice.fault, place: choice.place }] : rest);
  };
  return (
    <Sheet
      open
      title={`“${heard.text}”`}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("heard.keep")} onPress={() => answer && keep(answer)} disabled={!answer} />}
    >
      <ReplyGrid
        kind="choice"
        columns={1}
        label={t("heard.word")}
        replies={ANSWERS.map((id) => ({ id, words: t(`heard.word.${id}`), chosen: id === word }))}
        onChoose={(id) => setWord(ANSWERS.find((one) => one === id))}
      />
      {word === "found" && choices.length > 0 && (
        <>
          <p class="label">{t("heard.findings")}</p>
          {choices.length > OFFERED && (
            <div class="form">
              <Field
                id="answer-find"
                kind="search"
                label={t("heard.find", { n: choices.length })}
                value={typed}
                onInput={setTyped}
              />
            </div>
          )}
          <ReplyGrid
            kind="several"
            columns={1}
            label={t("heard.findings")}
            replies={offered.map((one) => ({
              id: one.id,
              words: one.words,
              chosen: isChosen(one.id),
            }))}
            onChoose={pick}
          />
        </>
      )}
      {word === "needs" && (
        <>
          <p class="label">{t("heard.needs.what")}</p>
          <ReplyGrid
            kind="choice"
            columns={1}
            label={t("heard.needs.what")}
            replies={NEEDS.map((id) => ({ id, words: t(`heard.needs.${id}`), chosen: id === needs }))}
            onChoose={(id) => setNeeds(NEEDS.find((one) => one === id))}
          />
        </>
      )}
      {word && (
        <div class="form">
          <Field
            id="answer-words"
            kind="area"
            label={t(`heard.words.${word}`)}
            value={words}
            onInput={setWords}
            required={word === "not-heard"}
          />
          <Field id="answer-who" kind="text" label={t("heard.who")} value={who} onInput={setWho} required />
        </div>
      )}
      {before && <Tool words={t("heard.reopen")} onPress={() => keep(null)} />}
    </Sheet>
  );
}
