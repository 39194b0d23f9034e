/** The replies of one field: words, yes or no, a count, a reading to enter, a date code. All drawn alike. */
import type { ReplyValue } from "../../core/terms/index.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import type { FieldView, RoundView } from "../state/round-view.js";
import { wordsAfter } from "../state/standing.js";
import { t } from "../texts/round.js";
import type { OnDesk } from "./on-visit.js";
import type { RoundOver } from "./round-sheets.js";
import { CountField, DateCodeField, ReadingField } from "./round-typed-fields.js";
import type { Answering } from "./use-answering.js";

export interface PointProps {
  readonly on: OnDesk;
  readonly view: RoundView;
  readonly answering: Answering;
  readonly open: (over: RoundOver) => void;
}

/** The last reply of a point: it can't be got at. */
export type Last = NonNullable<Parameters<typeof ReplyGrid>[0]["last"]>;

function WordsField({
  field,
  props,
  last,
}: {
  readonly field: FieldView;
  readonly props: PointProps;
  readonly last: Last | undefined;
}) {
  const { on, answering } = props;
  const point = on.known.points.get(field.at.point)?.point;
  const before = field.words.filter((word) => word.chosen).map((word) => word.id);
  const choose = (word: string, chosen: boolean): void => {
    if (!point) return;
    const words = wordsAfter(point, field.name, before, word, chosen);
    const value: ReplyValue | null = words.length > 0 ? { type: "words", words } : null;
    answering.answer(field, value, !field.several);
  };
  return (
    <ReplyGrid
      kind={field.several ? "several" : "one"}
      label={field.label}
      says={field.says}
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
      onChoose={(id) => answering.answer(field, { type: "yes", yes: id === "true" }, true)}
      last={last}
      disabled={on.visit.closed !== undefined}
    />
  );
}

export function OneField(all: {
  readonly field: FieldView;
  readonly props: PointProps;
  readonly last: Last | undefined;
}) {
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
