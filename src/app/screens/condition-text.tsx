/** A condition as text: checked while it is written, with what may stand next as a list to choose from. */
import { useEffect, useRef, useState } from "preact/hooks";
import { type Completions, completions, type Use } from "../../core/expr/work.js";
import type { CelTold } from "../state/sheet-tools.js";
import type { ItemTold } from "../state/sheet-work.js";
import { t } from "../texts/sheet-rules.js";
import type { RuleDesk } from "./use-rule-desk.js";

interface TextProps {
  readonly id: string;
  readonly desk: RuleDesk;
  readonly value: string;
  readonly use: Use;
  /** Told of the sheet as a whole, when the checker looked last. */
  readonly told: readonly ItemTold[];
  readonly onChange: (cel: string) => void;
}
/** So long after the last key the text is checked and offers are told. */
const CHECKED_AFTER_MS = 350;
/** So many faults are told; the first usually explains the rest. */
const TOLD = 3;

export function ConditionText({ id, desk, value, use, told, onChange }: TextProps) {
  const box = useRef<HTMLTextAreaElement>(null);
  const [text, setText] = useState(value);
  const [cursor, setCursor] = useState(value.length);
  const [faults, setFaults] = useState<readonly CelTold[]>([]);
  const [offered, setOffered] = useState<Completions>();
  useEffect(() => setText(value), [value]);
  useEffect(() => {
    const timer = setTimeout(() => {
      setFaults(text.trim() === "" ? [] : desk.tools.checkCondition(text, desk.names.declared, use));
      const focused = document.activeElement === box.current;
      if (focused) setOffered(completions(text, cursor, desk.names.declared, desk.names.spoken));
    }, CHECKED_AFTER_MS);
    return () => clearTimeout(timer);
  }, [text, cursor, desk, use.scope, use.provisional]);
  const moved = (): void => setCursor(box.current?.selectionStart ?? text.length);
  const typed = (next: string): void => {
    setText(next);
    moved();
  };
  const choose = (chosen: string): void => {
    if (!offered) return;
    const next = text.slice(0, offered.from) + chosen + text.slice(offered.to);
    const at = offered.from + chosen.length;
    setText(next);
    setCursor(at);
    setOffered(undefined);
    onChange(next);
    const area = box.current;
    area?.focus();
    requestAnimationFrame(() => area?.setSelectionRange(at, at));
  };
  const problems = faults.length > 0 ? faults.slice(0, TOLD).map(({ says }) => says) : told.map(({ says }) => says);
  const first = faults[0];
  const offers = offered?.offers ?? [];
  return (
    <div class="field">
      <label for={`${id}-text`}>{t("cond.text")}</label>
      <textarea
        id={`${id}-text`}
        class="cel"
        ref={box}
        rows={4}
        spellcheck={false}
        autocapitalize="off"
        autocomplete="off"
        value={text}
        aria-invalid={problems.length > 0 ? "true" : undefined}
        aria-describedby={`${id}-problem ${id}-help`}
        onInput={(event) => typed(event.currentTarget.value)}
        onKeyUp={moved}
        onClick={moved}
        onKeyDown={(event) => {
          if (event.key === "Escape" && offers.length > 0) {
            event.preventDefault();
            setOffered(undefined);
          }
        }}
        onChange={(event) => event.currentTarget.value !== value && onChange(event.currentTarget.value)}
      />
      <p class="small field-help" id={`${id}-help`}>
        {t("cond.text.help")}
      </p>
      <div id={`${id}-problem`} role="status">
        {first && first.length > 0 && <Place text={text} {...first} />}
        {problems.map((says) => (
          <p class="problem" key={says}>
            {says}
          </p>
        ))}
      </div>
      <p class="spoken" role="status">
        {offers.length > 0 ? t("cond.offers", { n: offers.length }) : ""}
      </p>
      {offers.length > 0 && (
        <ul class="offers" aria-label={t("cond.offers.label")}>
          {offers.map((offer) => (
            <li key={`${offer.text} ${offer.says}`}>
              <button type="button" onClick={() => choose(offer.text)}>
                {offer.says}
                {offer.says !== offer.text && <span class="small cel">{offer.text}</span>}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** So many letters are shown before and behind. */
const AROUND = 24;

/** The text round the fault, with the fault underlined. */
function Place({ text, offset, length }: { readonly text: string } & Pick<CelTold, "offset" | "length">) {
  const [from, to] = [Math.max(0, offset - AROUND), offset + length];
  return (
    <p class="cel small">
      {from > 0 ? "… " : ""}
      {text.slice(from, offset)}
      <mark>{text.slice(offset, to)}</mark>
      {text.slice(to, to + AROUND)}
      {to + AROUND < text.length ? " …" : ""}
    </p>
  );
}
