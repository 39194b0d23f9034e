/**
 * The boxes of an item's form: each stands at a path inside the item, shows what is told of it, and keeps itself when it
 * is left or pressed. Knows no list of a sheet.
 */
import { type ComponentChildren, createContext } from "preact";
import { useContext, useMemo, useRef, useState } from "preact/hooks";
import { type DraftItem, itemsOf } from "../../core/sheet/work.js";
import { Field } from "../parts/field.js";
import { Band } from "../parts/pool.js";
import { Switch } from "../parts/switch.js";
import { figureFrom, type Inside, isOnAt, languageOf, textAt, toldAt, valueAt, withAt } from "../state/sheet-forms.js";
import type { ItemTold } from "../state/sheet-work.js";
import { decimalComma } from "../texts/figures.js";
import { t } from "../texts/sheet-forms.js";
import type { ItemFormProps } from "./item-form.js";

interface ItemInForm extends ItemFormProps {
  /** The language its words are changed in. */
  readonly language: string;
  /** Path of the item's words in that language. */
  readonly words: Inside;
  /** What the item was when the work was begun. */
  readonly base: DraftItem | undefined;
  /** Changes the item as it is now, also while an earlier change is still being kept. */
  readonly change: (how: (is: DraftItem) => DraftItem) => void;
}

const ItemContext = createContext<ItemInForm | undefined>(undefined);

/** The item whose form a box stands in. */
export function useItem(): ItemInForm {
  const item = useContext(ItemContext);
  if (!item) throw new Error("A box stands in no form of an item");
  return item;
}

/** Hands an item to the boxes of its form; what is told of its id, which nobody sees, stands above them. */
export function ItemForm({ children, ...props }: ItemFormProps & { readonly children: ComponentChildren }) {
  const { is, put, work, told, list, item: name } = props;
  const latest = useRef(is);
  const shown = useRef(is);
  if (shown.current !== is) {
    shown.current = is;
    latest.current = is;
  }
  const language = languageOf(work.sheet);
  const item = useMemo(
    (): ItemInForm => ({
      ...props,
      base: itemsOf(work.base, list).get(name),
      language,
      words: ["texts", language],
      change: (how) => {
        const next = how(latest.current);
        if (next === latest.current) return;
        latest.current = next;
        put(next);
      },
    }),
    [is, told, work],
  );
  const ofId = toldAt(told, ["id"]);
  return (
    <ItemContext.Provider value={item}>
      <div class="item-form">
        {ofId && <p class="remark problem">{ofId}</p>}
        {children}
      </div>
    </ItemContext.Provider>
  );
}

/** Boxes under a heading. */
export function Boxes({ heading, children }: { readonly heading?: string; readonly children: ComponentChildren }) {
  return (
    <Band {...(heading === undefined ? {} : { heading })}>
      <div class="form">{children}</div>
    </Band>
  );
}

/** An id for a box that no other on the screen has. */
export const boxId = (at: Inside): string => `item-${at.map((step) => String(step).replace(/[^\w-]/g, "_")).join("-")}`;

/** What is told of a box: problems under it, remarks with its help. */
export function useTold(at: Inside): { readonly problem: string | undefined; readonly note: string | undefined } {
  const { told } = useItem();
  const of = (kind: ItemTold["is"]) =>
    toldAt(
      told.filter(({ is }) => is === kind),
      at,
    );
  return { problem: of("problem"), note: of("note") };
}

/** What stands in a box while it is typed; what was kept, once that changes. */
export function useTyped(kept: string): readonly [typed: string, type: (text: string) => void, isTyped: boolean] {
  const [state, set] = useState<{ readonly text: string; readonly of: string }>();
  const isTyped = state !== undefined && state.of === kept;
  return [isTyped ? state.text : kept, (text) => set({ text, of: kept }), isTyped];
}

interface BoxProps {
  readonly at: Inside;
  readonly label: string;
  readonly help?: string;
  /** An empty one is told. */
  readonly wanted?: boolean;
}

const helpOf = (help: string | undefined, note: string | undefined): { readonly help?: string } => {
  const all = [help, note].filter(Boolean).join(" ");
  return all === "" ? {} : { help: all };
};

interface TextBoxProps extends BoxProps {
  readonly long?: boolean;
  /** Other than putting the text there. */
  readonly onPut?: (text: string) => void;
  readonly value?: string;
}

/** Words. Emptied, they are taken away where they may be missing, and stay empty and told where they are wanted. */
export function TextBox({ at, label, help, wanted, long, onPut, value }: TextBoxProps) {
  const { is, change } = useItem();
  const kept = value ?? textAt(is, at);
  const [typed, type] = useTyped(kept);
  const { problem, note } = useTold(at);
  const lacks = wanted && typed.trim() === "" ? t("sheet-form.wanted") : undefined;
  const commit = (text: string): void => {
    const next = text.trim();
    if (next === kept) return;
    if (onPut) onPut(next);
    else change((item) => withAt(item, at, next === "" && !wanted ? undefined : next));
  };
  return (
    <Field
      id={boxId(at)}
      kind={long ? "area" : "text"}
      label={label}
      value={typed}
      onInput={type}
      onCommit={commit}
      problem={problem ?? lacks}
      {...helpOf(help, note)}
    />
  );
}

interface FigureBoxProps extends BoxProps {
  readonly unit?: string | undefined;
  readonly whole?: boolean;
  /** What this screen sees is wrong with it at once. */
  readonly astray?: string | undefined;
  /** Other than putting the figure there; given text that reads. */
  readonly onPut?: (text: string) => void;
}

/** A figure. What can't be read is told and not kept; emptied, it is taken away unless it is wanted. */
export function FigureBox({ at, label, help, wanted, unit, whole, astray, onPut }: FigureBoxProps) {
  const { is, change } = useItem();
  const kept = valueAt(is, at);
  const [typed, type, isTyped] = useTyped(typeof kept === "number" ? shownFigure(kept) : "");
  const { problem, note } = useTold(at);
  const odd = oddIn(typed, { wanted, whole });
  const commit = (text: string): void => {
    const figure = figureFrom(text);
    if (oddIn(text, { wanted, whole }) !== undefined || figure === kept) return;
    if (onPut) onPut(text);
    else change((item) => withAt(item, at, figure));
  };
  return (
    <Field
      id={boxId(at)}
      kind="number"
      label={label}
      value={typed}
      onInput={type}
      onCommit={commit}
      unit={unit}
      problem={(isTyped || typed === "" ? odd : undefined) ?? problem ?? astray}
      {...helpOf(help, note)}
    />
  );
}

const shownFigure = (figure: number): string => {
  const text = String(figure);
  return decimalComma.value ? text.replace(".", ",") : text;
};

function oddIn(
  text: string,
  { wanted, whole }: { readonly wanted: boolean | undefined; readonly whole: boolean | undefined },
): string | undefined {
  if (text.trim() === "") return wanted ? t("sheet-form.wanted") : undefined;
  const figure = figureFrom(text);
  if (figure === undefined) return t("sheet-form.no-figure");
  return whole && !Number.isInteger(figure) ? t("sheet-form.no-whole") : undefined;
}

interface SwitchBoxProps {
  readonly at: Inside;
  readonly label: string;
  readonly says?: string;
  readonly on?: boolean;
  readonly onPut?: (on: boolean) => void;
}

/** On or off; off is not there. */
export function SwitchBox({ at, label, says, on, onPut }: SwitchBoxProps) {
  const { is, change } = useItem();
  const { problem } = useTold(at);
  return (
    <>
      <Switch
        id={boxId(at)}
        label={label}
        {...(says === undefined ? {} : { says })}
        on={on ?? isOnAt(is, at)}
        onChange={onPut ?? ((next) => change((item) => withAt(item, at, next || undefined)))}
        words={{ on: t("sheet-form.on"), off: t("sheet-form.off") }}
      />
      {problem && <p class="remark problem">{problem}</p>}
    </>
  );
}
