/** Fields whose reply is a figure: a reading to enter, a count, a date code. */
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import type { FieldView } from "../state/round-view.js";
import { to } from "../state/routes.js";
import { t } from "../texts/round.js";
import type { Last, PointProps } from "./round-fields.js";

/** At most this many numbers as replies of their own; more are typed. */
const MOST_NUMBERS = 12;

/** The next action where the reading is all the point asks for and it is not taken yet; else a tool among the replies. */
export function ReadingField({ field, props }: { readonly field: FieldView; readonly props: PointProps }) {
  const { on, view } = props;
  const href = to("reading", { visit: on.param, ...field.at, field: field.name });
  if (field.reply !== undefined) return <Tool words={field.reply} says={t("app.change")} href={href} />;
  const isAll = view.open.fields.length === 1;
  return isAll ? (
    <NextAction words={t("round.reading")} says={field.label} href={href} onward />
  ) : (
    <Tool words={t("round.reading")} href={href} />
  );
}

export function DateCodeField({ field, props }: { readonly field: FieldView; readonly props: PointProps }) {
  const keep = (text: string): void => {
    if (text.trim() !== "" && text.trim() !== field.reply)
      props.answering.answer(field, { type: "date-code", text: text.trim() }, true);
  };
  return (
    <Field
      id={`field-${field.name}`}
      kind="text"
      label={field.label}
      help={t(`round.date-code.${field.dateCode ?? "year"}`)}
      value={field.reply ?? ""}
      onInput={() => undefined}
      onCommit={keep}
    />
  );
}

export function CountField({
  field,
  props,
  last,
}: {
  readonly field: FieldView;
  readonly props: PointProps;
  readonly last: Last | undefined;
}) {
  const { answering, on } = props;
  const { from = 0, to: upTo = 0, stands } = field.count ?? {};
  if (upTo - from >= MOST_NUMBERS) {
    const keep = (text: string): void => {
      const count = Number(text);
      if (text !== "" && Number.isInteger(count) && count >= from && count <= upTo)
        answering.answer(field, { type: "count", count }, true);
    };
    return (
      <Field
        id={`field-${field.name}`}
        kind="number"
        label={field.label}
        value={stands === undefined ? "" : String(stands)}
        onInput={() => undefined}
        onCommit={keep}
      />
    );
  }
  const replies = Array.from({ length: upTo - from + 1 }, (_, index) => ({
    id: String(from + index),
    words: String(from + index),
    chosen: stands === from + index,
  }));
  return (
    <ReplyGrid
      kind="one"
      label={field.label}
      replies={replies}
      onChoose={(id) => answering.answer(field, { type: "count", count: Number(id) }, true)}
      last={last}
      disabled={on.visit.closed !== undefined}
    />
  );
}
