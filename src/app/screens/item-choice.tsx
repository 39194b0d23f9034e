/**
 * Choosing among what a sheet knows, always by the name it is spoken of: a short list at once, a long one in a dialog
 * where a word finds it. Knows no list of a sheet.
 */
import type { ComponentChildren } from "preact";
import { useMemo, useState } from "preact/hooks";
import { Field } from "../parts/field.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { type Choice, calledIn, choicesFound } from "../state/sheet-choices.js";
import { type Inside, namesAt, textAt, withAt } from "../state/sheet-forms.js";
import { t } from "../texts/sheet-forms.js";
import { boxId, useItem, useTold } from "./item-boxes.js";

/** More than these are looked for by a word. */
const AT_ONCE = 10;
/** So many are drawn; another word finds the rest. */
const SHOWN = 40;
const NONE = "";

interface PickProps {
  readonly title: string;
  readonly kind: "one" | "several";
  readonly choices: readonly Choice[];
  readonly chosen: readonly string[];
  readonly onChoose: (value: string, chosen: boolean) => void;
  readonly onClose: () => void;
}

/** The dialog: what was chosen stands first, so that it is found again. */
export function Pick({ title, kind, choices, chosen, onChoose, onClose }: PickProps) {
  const [typed, type] = useState("");
  const first = useMemo(() => new Set(chosen), []);
  const gone = chosen.filter((value) => !choices.some((one) => one.value === value));
  const all = [...gone.map((value) => ({ value, words: calledIn(choices, value) })), ...choices];
  const found = choicesFound(all, typed);
  const shown = [...found.filter(({ value }) => first.has(value)), ...found.filter(({ value }) => !first.has(value))];
  return (
    <Sheet open title={title} closeWords={t("sheet-form.done")} onClose={onClose} form="full">
      {all.length > AT_ONCE && (
        <Field id="pick-typed" kind="search" label={t("sheet-form.search")} value={typed} onInput={type} />
      )}
      <ReplyGrid
        kind={kind}
        label={title}
        columns={1}
        replies={shown.slice(0, SHOWN).map(({ value, words, says }) => ({
          id: value,
          words,
          ...(says === undefined ? {} : { says }),
          chosen: chosen.includes(value),
        }))}
        onChoose={onChoose}
      />
      <p class="remark small" role="status">
        {shown.length === 0 && t("sheet-form.none-found")}
        {shown.length > SHOWN && t("sheet-form.more-found", { n: shown.length - SHOWN })}
      </p>
    </Sheet>
  );
}

interface OpenerProps {
  readonly id: string;
  readonly label: string;
  readonly says: string;
  readonly help?: string | undefined;
  readonly problem?: string | undefined;
  readonly onPress: () => void;
  readonly children?: ComponentChildren;
}

/** A box that opens a dialog: its name, what is chosen, what is told. */
export function Opener({ id, label, says, help, problem, onPress, children }: OpenerProps) {
  return (
    <div class="field">
      <p class="field-name" id={`${id}-name`}>
        {label}
      </p>
      <button
        type="button"
        id={id}
        class="opener"
        aria-haspopup="dialog"
        aria-labelledby={`${id}-name ${id}`}
        aria-describedby={`${id}-told`}
        onClick={onPress}
      >
        {says}
      </button>
      <div id={`${id}-told`}>
        {help && <p class="small field-help">{help}</p>}
        <p class="problem" role="status">
          {problem}
        </p>
      </div>
      {children}
    </div>
  );
}

interface ChoiceBoxProps {
  readonly at: Inside;
  readonly label: string;
  readonly choices: readonly Choice[];
  /** What choosing none is called; absent: one must be chosen. */
  readonly none?: string;
  readonly help?: string;
  readonly wanted?: boolean;
  readonly value?: string;
  readonly onPut?: (value: string) => void;
}

/** One of several. */
export function ChoiceBox({ at, label, choices, none, help, wanted, value, onPut }: ChoiceBoxProps) {
  const { is, change } = useItem();
  const [open, setOpen] = useState(false);
  const told = useTold(at);
  const chosen = value ?? textAt(is, at);
  const id = boxId(at);
  const choose = (next: string): void => {
    if (next === chosen) return;
    if (onPut) onPut(next);
    else change((item) => withAt(item, at, next === NONE ? undefined : next));
  };
  const lacks = wanted && chosen === NONE ? t("sheet-form.choose") : undefined;
  const remarks = [help, told.note].filter(Boolean).join(" ");
  const shared = { id, label, problem: told.problem ?? lacks, ...(remarks === "" ? {} : { help: remarks }) };
  const isThere = choices.some((one) => one.value === chosen);
  const unset = none ?? (chosen === NONE ? t("sheet-form.not-chosen") : undefined);
  const gone = chosen === NONE || isThere ? [] : [{ value: chosen, words: calledIn(choices, chosen) }];
  const all = [...(unset === undefined ? [] : [{ value: NONE, words: unset }]), ...gone, ...choices];
  if (choices.length <= AT_ONCE)
    return <Field {...shared} kind="select" value={chosen} onInput={choose} options={all} />;
  return (
    <Opener
      {...shared}
      says={chosen === NONE ? (unset ?? "") : calledIn(choices, chosen)}
      onPress={() => setOpen(true)}
    >
      {open && (
        <Pick
          title={label}
          kind="one"
          choices={none === undefined ? choices : all}
          chosen={[chosen]}
          onChoose={(next) => {
            choose(next);
            setOpen(false);
          }}
          onClose={() => setOpen(false)}
        />
      )}
    </Opener>
  );
}

interface NamesBoxProps {
  readonly at: Inside;
  readonly label: string;
  readonly choices: readonly Choice[];
  readonly help?: string;
  /** An empty list stays there, since the sheet must say it. */
  readonly kept?: boolean;
  readonly value?: readonly string[];
  readonly onPut?: (names: readonly string[]) => void;
}

/** Any number of several, in the order they are chosen in. */
export function NamesBox({ at, label, choices, help, kept, value, onPut }: NamesBoxProps) {
  const { is, change } = useItem();
  const [open, setOpen] = useState(false);
  const { problem, note } = useTold(at);
  const chosen = value ?? namesAt(is, at);
  const choose = (name: string, isChosen: boolean): void => {
    const next = isChosen ? [...chosen, name] : chosen.filter((one) => one !== name);
    if (onPut) onPut(next);
    else change((item) => withAt(item, at, next.length === 0 && !kept ? undefined : next));
  };
  const says = chosen.map((name) => calledIn(choices, name).replace(/\.$/, "")).join(" · ");
  return (
    <Opener
      id={boxId(at)}
      label={label}
      says={says === "" ? t("sheet-form.none") : says}
      help={[help, note].filter(Boolean).join(" ") || undefined}
      problem={problem}
      onPress={() => setOpen(true)}
    >
      {open && (
        <Pick
          title={label}
          kind="several"
          choices={choices}
          chosen={chosen}
          onChoose={choose}
          onClose={() => setOpen(false)}
        />
      )}
    </Opener>
  );
}
