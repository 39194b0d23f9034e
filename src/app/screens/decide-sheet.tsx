/**
 * One job decided: the four words, then only what the word asks for. What is dangerous is read before it is refused or
 * put off; nothing is kept before that.
 */
import { useState } from "preact/hooks";
import type { DecisionWord, InPlaceOf } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { CautionPanel } from "../parts/caution-panel.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { asksForWarning, type DecisionForm, decisionForm, othersWords, ownWord } from "../state/decision-form.js";
import { openingOf, pricesOf } from "../state/decision-prices.js";
import type { Warning } from "../state/decision-warning.js";
import { decisionText } from "../state/decision-words.js";
import { wordsOn } from "../state/owners-word.js";
import { jobTitle } from "../state/plan-words.js";
import { t } from "../texts/decisions.js";
import { cautionPanel } from "./caution-panels.js";
import { DecideChoices } from "./decide-choices.js";
import { DecideDetails } from "./decide-details.js";
import { openingText, rangeText } from "./decide-price.js";
import type { OnPlan } from "./on-plan.js";
import { forOwner, useDeciding, warningOn } from "./use-deciding.js";
import { WhoDecides } from "./who-decides.js";

interface DecideSheetProps {
  readonly on: OnPlan;
  /** `job@place` */
  readonly id: string;
  /** Chosen already, on the page. */
  readonly word?: DecisionWord | undefined;
  readonly onClose: () => void;
}

function WarningRead({ warning }: { readonly warning: Warning }) {
  return (
    <>
      {warning.lines.map((line) => (
        <p key={line} class="row-title">
          {line}
        </p>
      ))}
      {warning.cautions.map((line, index) => (
        <CautionPanel key={line.id} {...cautionPanel(line, index === 0 ? "full" : "small", 3)} />
      ))}
      <p class="small">{t("decisions.warning.says")}</p>
    </>
  );
}

export function DecideSheet({ on, id, word, onClose }: DecideSheetProps) {
  const { phone } = useApp();
  const { deciding, setDeciding, saidOf, keep } = useDeciding(on);
  const standing = wordsOn(on.said, id);
  const own = ownWord(standing, deciding.who);
  const others = othersWords(standing, deciding.who);
  const [form, setForm] = useState<DecisionForm | undefined>(() => word && decisionForm(word, own));
  const [over, setOver] = useState<InPlaceOf>("own");
  const warning = warningOn(on, id);
  const title = jobTitle(forOwner(on.telling), id);
  const opening = openingText(openingOf(on, [id]), on.currency, "decisions.price.opening");
  const said = form && saidOf(id, form);
  const mustRead = form !== undefined && warning !== undefined && asksForWarning(form.word) && !form.acknowledged;

  const keepIt = (): void => {
    if (!said) return;
    void keep(id, said, over);
    onClose();
  };
  const choose = (chosen: DecisionWord): void => {
    const next = decisionForm(chosen, own);
    const whole = saidOf(id, next);
    if (chosen === "yes-now" && others.length === 0 && whole) {
      void keep(id, whole);
      onClose();
    } else setForm(next);
  };

  if (mustRead)
    return (
      <Sheet
        open
        title={t(form.word === "no" ? "decisions.warning.no" : "decisions.warning")}
        closeWords={t("app.cancel")}
        onClose={onClose}
        foot={
          <NextAction
            words={t("decisions.warning.read")}
            onPress={() => setForm({ ...form, acknowledged: new Date(phone.now()).toISOString() })}
          />
        }
      >
        <WarningRead warning={warning} />
        <Tool words={t("decisions.warning.back")} onPress={() => (word ? onClose() : setForm(undefined))} />
      </Sheet>
    );
  if (form)
    return (
      <Sheet
        open
        title={title}
        closeWords={t("app.cancel")}
        onClose={onClose}
        foot={
          <NextAction
            words={said ? t("decisions.keep", { word: decisionText(said) }) : t("app.keep")}
            disabled={!said}
            onPress={keepIt}
          />
        }
      >
        <DecideDetails on={on} id={id} form={form} onForm={setForm} others={others} over={over} onOver={setOver} />
      </Sheet>
    );
  return (
    <Sheet open title={title} closeWords={t("app.cancel")} onClose={onClose}>
      <p class="small n">{rangeText(pricesOf(on, [id]), on.currency)}</p>
      {opening !== undefined && <p class="small n">{opening}</p>}
      <WhoDecides deciding={deciding} onChange={setDeciding} today={on.input.today} />
      <DecideChoices stands={own} onChoose={choose} disabled={deciding.who.trim() === ""} />
      {standing.length > 0 && (
        <Tool
          words={t("decisions.say.back")}
          onPress={() => {
            void keep(id, null);
            onClose();
          }}
        />
      )}
    </Sheet>
  );
}
