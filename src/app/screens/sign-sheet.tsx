/** Signing on the glass, or agreeing in person under a typed name: below the very decisions it is for. */
import { useState } from "preact/hooks";
import type { Decision, DrawnSignature, Stands } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { SigningPad } from "../parts/signing-pad.js";
import { useApp } from "../state/app.js";
import { signDecisions } from "../state/decision-acts.js";
import { openingOf, sumOf } from "../state/decision-prices.js";
import { decisionText } from "../state/decision-words.js";
import { jobTitle } from "../state/plan-words.js";
import { isName, strokesOf } from "../state/signature-strokes.js";
import { t } from "../texts/decisions.js";
import { openingText, rangeText } from "./decide-price.js";
import type { OnPlan } from "./on-plan.js";
import { forOwner } from "./use-deciding.js";

/** A word to be signed, with the job it is about. */
export interface ToSign {
  readonly job: string;
  readonly word: Stands<Decision>;
}

interface SignProps {
  readonly on: OnPlan;
  readonly who: string;
  readonly words: readonly ToSign[];
  readonly onClose: () => void;
}

const isYes = ({ word }: Decision): boolean => word === "yes-now" || word === "yes-by";

/** What is signed: each word, what was said yes to comes to this, and what was declined. */
function Signing({ on, words }: Pick<SignProps, "on" | "words">) {
  const yes = words.filter(({ word }) => isYes(word.value)).map(({ job }) => job);
  const opening = openingText(openingOf(on, yes), on.currency, "decisions.price.opening.all");
  const listed = (title: string, lines: readonly ToSign[]) =>
    lines.length > 0 && (
      <>
        <p class="label">{title}</p>
        <ul class="small">
          {lines.map(({ job, word }) => (
            <li key={word.id}>{`${jobTitle(forOwner(on.telling), job)}: ${decisionText(word.value)}`}</li>
          ))}
        </ul>
      </>
    );
  return (
    <>
      {listed(
        t("decisions.sign.for"),
        words.filter(({ word }) => word.value.word !== "no"),
      )}
      {yes.length > 0 && (
        <>
          <p class="label">{t("decisions.sign.sum")}</p>
          <p class="n">{rangeText(sumOf(on, yes), on.currency)}</p>
          {opening !== undefined && <p class="small n">{opening}</p>}
        </>
      )}
      {listed(
        t("decisions.sign.declined"),
        words.filter(({ word }) => word.value.word === "no"),
      )}
    </>
  );
}

export function SignSheet({ on, who, words, onClose }: SignProps) {
  const { journal } = useApp();
  const [name, setName] = useState(who);
  const [drawn, setDrawn] = useState<DrawnSignature>();
  const signer = name.trim();
  const isSigned = drawn !== undefined && isName(drawn);
  const keep = (strokes: DrawnSignature | undefined): void => {
    if (signer === "") return;
    void signDecisions(journal, on.stream, {
      decisions: words.map(({ word }) => word.id),
      who: signer,
      on: on.input.today,
      ...(strokes ? { drawn: strokes } : {}),
    });
    onClose();
  };
  return (
    <Sheet
      open
      title={t("decisions.sign.title")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={
        <NextAction
          words={t("decisions.sign.keep")}
          says={isSigned ? undefined : t(drawn ? "decisions.sign.too-little" : "decisions.sign.none")}
          disabled={!isSigned || signer === ""}
          onPress={() => keep(drawn)}
        />
      }
    >
      <Signing on={on} words={words} />
      <Field id="sign-name" kind="text" label={t("decisions.by.name")} value={name} onInput={setName} required />
      <SigningPad
        label={t("decisions.sign.pad")}
        clearWords={t("decisions.sign.clear")}
        onDrawn={(glass) => setDrawn(strokesOf(glass))}
      />
      <p class="small">{t("decisions.sign.pad.says")}</p>
      <Tool words={t("decisions.sign.typed")} disabled={signer === ""} onPress={() => keep(undefined)} />
    </Sheet>
  );
}
