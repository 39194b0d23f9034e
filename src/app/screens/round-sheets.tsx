/** The sheets over the round: why a point can't be answered, a note, a sound, several replies in one step. */
import { useState } from "preact/hooks";
import { NON_ANSWERS, type NonAnswer, REASONS } from "../../core/terms/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { NonAnswers } from "../parts/non-answers.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { placeName, pointName } from "../state/knowledge.js";
import { type RoundView, repliedText } from "../state/round-view.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { pointText } from "../state/standing.js";
import { restOfPlace, sameElsewhere } from "../state/sweep.js";
import { note } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { t as media } from "../texts/media.js";
import { lookingAt, type OnDesk } from "./on-visit.js";
import { SoundSheet } from "./sound-sheet.js";
import type { Answering } from "./use-answering.js";

export type RoundOver = "cannot" | "note" | "sound" | "rest" | "same";

interface OverRound {
  readonly on: OnDesk;
  readonly view: RoundView;
  readonly answering: Answering;
  readonly onClose: () => void;
}

/** Non-answers that count only with a reason. */
const WANTS_REASON: ReadonlySet<NonAnswer> = new Set(["not-reached", "could-not-tell"]);

function CannotSheet({ view, answering, onClose, open }: OverRound & { readonly open: boolean }) {
  const stands = view.open.nonAnswer;
  const reasons = REASONS.map((id) => ({ id, words: t(`reason.${id}`) }));
  const choices = NON_ANSWERS.map((id) => ({
    id,
    words: t(`non-answer.${id}`),
    ...(id === "not-fitted" ? { says: media("non-answer.not-fitted.says") } : {}),
    ...(WANTS_REASON.has(id) ? { reasons } : {}),
  }));
  // What is meant most often stands open at the top.
  const order = [...choices].sort((a, b) => Number(b.id === "not-reached") - Number(a.id === "not-reached"));
  return (
    <Sheet open={open} title={t("round.cannot.title")} closeWords={t("app.close")} onClose={onClose}>
      <NonAnswers
        label={t("round.cannot.title")}
        choices={order}
        reasonLabel={media("reason.label")}
        start="not-reached"
        {...(stands
          ? { chosen: { nonAnswer: stands.nonAnswer, ...(stands.reason ? { reason: stands.reason } : {}) } }
          : {})}
        onChoose={(nonAnswer, reason) => {
          answering.cannot(nonAnswer, reason);
          onClose();
        }}
      />
    </Sheet>
  );
}

function NoteSheet({ on, view, onClose, open }: OverRound & { readonly open: boolean }) {
  const { journal, remembered } = useApp();
  const key = `${on.stream} ${pointText(view.open.at)}`;
  const [text, setText] = useState(() => typedBefore(remembered, key));
  const type = (typed: string): void => {
    setText(typed);
    keepTyped(remembered, key, typed);
  };
  const keep = (): void => {
    if (text.trim() === "") return;
    void note(journal, on.stream, text.trim(), view.open.at).then((kept) => {
      if (kept) type("");
    });
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("note.title")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("note.keep")} onPress={keep} disabled={text.trim() === ""} />}
    >
      <Field id="note" kind="area" label={t("note.label")} value={text} onInput={type} />
    </Sheet>
  );
}

function RestSheet({ on, view, answering, onClose, open }: OverRound & { readonly open: boolean }) {
  const rest = restOfPlace(lookingAt(on), view.stop);
  const keep = (): void => {
    answering.sweep(rest.enters.flatMap(({ replies }) => replies));
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("round.rest.title", { place: view.place })}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("round.rest.keep")} onPress={keep} />}
    >
      <p>{t("round.rest.says")}</p>
      {rest.enters.map(({ at }) => (
        <ListRow key={at.point} folded title={pointName(on.known, at.point)} />
      ))}
      {rest.left.length > 0 && <p>{t("round.rest.left")}</p>}
      {rest.left.map((at) => (
        <ListRow key={at.point} folded title={pointName(on.known, at.point)} />
      ))}
    </Sheet>
  );
}

function SameSheet({ on, view, answering, onClose, open }: OverRound & { readonly open: boolean }) {
  const looking = lookingAt(on);
  const targets = sameElsewhere(looking, view.open.at);
  const keep = (): void => {
    answering.sweep(targets.flatMap(({ replies }) => replies));
    onClose();
  };
  return (
    <Sheet
      open={open}
      title={t("round.same.title")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("round.same.keep")} onPress={keep} />}
    >
      <p>{t("round.same.says", { reply: repliedText(looking, view.open.at) ?? "" })}</p>
      {targets.map(({ at }) => (
        <ListRow key={at.place} folded title={placeName(on.known, at.place)} />
      ))}
    </Sheet>
  );
}

export function RoundSheets({ over, ...props }: OverRound & { readonly over: RoundOver | undefined }) {
  return (
    <>
      <CannotSheet {...props} open={over === "cannot"} />
      <NoteSheet {...props} open={over === "note"} />
      <SoundSheet on={props.on} at={props.view.open.at} open={over === "sound"} onClose={props.onClose} />
      <RestSheet {...props} open={over === "rest"} />
      <SameSheet {...props} open={over === "same"} />
    </>
  );
}
