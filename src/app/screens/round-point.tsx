/** The open point in the light: its question, how to look, the replies of each field. Draws replies all alike. */
import type { ReplyValue } from "../../core/terms/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Pool, Question } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import type { FieldView, RoundView } from "../state/round-view.js";
import { to } from "../state/routes.js";
import { wordsAfter } from "../state/standing.js";
import { t } from "../texts/index.js";
import type { OnDesk } from "./on-visit.js";
import { PointPictures } from "./point-pictures.js";
import type { RoundOver } from "./round-sheets.js";
import type { Answering } from "./use-answering.js";

interface PointProps {
  readonly on: OnDesk;
  readonly view: RoundView;
  readonly answering: Answering;
  readonly open: (over: RoundOver) => void;
}

/** At most this many numbers as replies of their own; more are typed. */
const MOST_NUMBERS = 12;

type Last = NonNullable<Parameters<typeof ReplyGrid>[0]["last"]>;

function cannotReply({ on, view, open }: PointProps): Last {
  const { nonAnswer } = view.open;
  return {
    words: on.who === "owner" ? t("round.cannot.owner") : t("round.cannot"),
    says: nonAnswer?.says,
    chosen: nonAnswer !== undefined,
    onPress: () => open("cannot"),
  };
}

function WordsField({
  field,
  props,
  last,
}: {
  readonly field: FieldView;
  readonly props: PointProps;
  readonly last: Last | undefined;
}) {
  const { on, view, answering } = props;
  const point = on.known.points.get(view.open.at.point)?.point;
  const before = field.words.filter((word) => word.chosen).map((word) => word.id);
  const choose = (word: string, chosen: boolean): void => {
    if (!point) return;
    const words = wordsAfter(point, field.name, before, word, chosen);
    const value: ReplyValue | null = words.length > 0 ? { type: "words", words } : null;
    answering.answer(field.name, value, !field.several);
  };
  return (
    <ReplyGrid
      kind={field.several ? "several" : "one"}
      label={field.label}
      replies={field.words}
      columns={on.who === "owner" ? 1 : undefined}
      onChoose={choose}
      last={last}
      disabled={on.visit.closed !== undefined}
    />
  );
}

function YesField({
  field,
  props,
  last,
}: {
  readonly field: FieldView;
  readonly props: PointProps;
  readonly last: Last | undefined;
}) {
  const { on, answering } = props;
  const replies = ([true, false] as const).map((yes) => ({
    id: String(yes),
    words: t(yes ? "app.yes" : "app.no"),
    chosen: field.yes === yes,
  }));
  return (
    <ReplyGrid
      kind="one"
      label={field.label}
      replies={replies}
      columns={on.who === "owner" ? 1 : undefined}
      onChoose={(id) => answering.answer(field.name, { type: "yes", yes: id === "true" }, true)}
      last={last}
      disabled={on.visit.closed !== undefined}
    />
  );
}

function CountField({
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
        answering.answer(field.name, { type: "count", count }, true);
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
      onChoose={(id) => answering.answer(field.name, { type: "count", count: Number(id) }, true)}
      last={last}
      disabled={on.visit.closed !== undefined}
    />
  );
}

function ReadingField({ field, props }: { readonly field: FieldView; readonly props: PointProps }) {
  const { on, view } = props;
  const href = to("reading", { visit: on.param, ...view.open.at, field: field.name });
  return (
    <NextAction
      words={field.reply ?? t("round.reading")}
      {...(field.reply === undefined ? { says: field.label } : { says: `${field.label}. ${t("app.change")}` })}
      href={href}
      onward
    />
  );
}

function DateCodeField({ field, props }: { readonly field: FieldView; readonly props: PointProps }) {
  const keep = (text: string): void => {
    if (text.trim() !== "" && text.trim() !== field.reply)
      props.answering.answer(field.name, { type: "date-code", text: text.trim() }, true);
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

function OneField(all: { readonly field: FieldView; readonly props: PointProps; readonly last: Last | undefined }) {
  switch (all.field.kind) {
    case "words":
      return <WordsField {...all} />;
    case "yes":
      return <YesField {...all} />;
    case "count":
      return <CountField {...all} />;
    case "reading":
      return <ReadingField {...all} />;
    case "date-code":
      return <DateCodeField {...all} />;
  }
}

const CARRIES_LAST = new Set(["words", "yes"]);

export function OpenPointPool(props: PointProps) {
  const { on, view } = props;
  const { open } = view;
  const several = open.several ? t("round.several") : undefined;
  const lastField = open.fields.at(-1);
  const carried = lastField !== undefined && CARRIES_LAST.has(lastField.kind);
  return (
    <Pool as="section" label={open.question} edge={view.stop.place === "car" ? "line" : "joined"}>
      <Question question={open.question} how={[open.how, several].filter(Boolean).join(" ") || undefined} />
      {open.leave !== undefined && <p class="leave">{`${t("round.leave")}. ${open.leave}`}</p>}
      {open.fields.map((field) => (
        <div key={field.name} class="point-field">
          {open.fields.length > 1 && <h3>{field.label}</h3>}
          <OneField
            field={field}
            props={props}
            last={carried && field === lastField ? cannotReply(props) : undefined}
          />
        </div>
      ))}
      {!carried && (
        <ReplyGrid
          kind="several"
          columns={1}
          label={t("round.cannot.title")}
          replies={[]}
          onChoose={() => undefined}
          last={cannotReply(props)}
          disabled={on.visit.closed !== undefined}
        />
      )}
      {open.trap !== undefined && (
        <p class="small trap">
          <strong>{t("round.trap")}</strong> {open.trap}
        </p>
      )}
      {open.fields.some((field) => field.differ) && (
        <p>
          <a class="plain-link" href={to("differ", { visit: on.param })}>
            {t("round.differ")}
          </a>
        </p>
      )}
      {open.notes.map((text) => (
        <p key={text} class="small noted">{`${t("round.note")}: ${text}`}</p>
      ))}
      <PointPictures on={on} pictures={open.pictures} point={open.question} place={view.place} />
    </Pool>
  );
}
