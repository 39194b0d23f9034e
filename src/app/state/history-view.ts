/** What was entered in a visit, newest first, and what can be undone or brought back; replies that differ. Pure. */
import { type IdText, redoable, type Stands, type Step, undoable, type VisitState } from "../../core/record/index.js";
import type { Audience, ReplyKey, ReplyValue } from "../../core/terms/index.js";
import { clock, day, isTextKey, t } from "../texts/index.js";
import { atPlace, type Knowledge, pointName } from "./knowledge.js";
import { replyText } from "./telling.js";

interface ReplyBody {
  readonly key: ReplyKey;
  readonly value: ReplyValue | null;
}
const isReply = (body: unknown): body is ReplyBody =>
  typeof body === "object" && body !== null && "key" in body && "value" in body;

/** What a step entered, in words: the reply where it is one, else its kind. */
export function stepText(
  known: Knowledge,
  who: Audience,
  visit: VisitState,
  step: Pick<Step, "ids" | "kinds">,
): string {
  const entries = step.ids.flatMap((id) => visit.ledger.log.get(id) ?? []);
  const entry = entries.find((one) => one.kind === "reply") ?? entries[0];
  const others = entries.filter((one) => one.kind !== "person").length - 1;
  const more = others > 0 ? ` +${others}` : "";
  if (entry && "body" in entry && entry.kind === "reply" && isReply(entry.body)) {
    const { key, value } = entry.body;
    const said = value ? replyText(known.points.get(key.point), key.field, value, who) : t("history.taken-back");
    return `${pointName(known, key.point)}${atPlace(known, key.place)}: ${said}${more}`;
  }
  // An undo is told by what it undid; the text of that name is the button's.
  const key = `history.${step.kinds.find((kind) => kind !== "person" && kind !== "undo") ?? "other"}`;
  return `${isTextKey(key) ? t(key as "history.note") : t("history.other")}${more}`;
}

export interface HistoryLine {
  readonly id: string;
  readonly title: string;
  readonly second: string;
  readonly step: Step;
}

/** A person's name as the visit knows it. */
export const personName = (visit: VisitState, by: string): string =>
  visit.people.get(by)?.at(-1)?.value.name || t("differ.nameless");

export interface HistoryView {
  readonly undo: readonly HistoryLine[];
  readonly redo: readonly HistoryLine[];
}

export function historyView(known: Knowledge, who: Audience, visit: VisitState, writer: string): HistoryView {
  const line = (step: Step): HistoryLine => ({
    id: step.ids[0] ?? "",
    title: stepText(known, who, visit, step),
    second: `${personName(visit, step.by)}, ${day(step.at.wall)}, ${clock(step.at.wall)}`,
    step,
  });
  return {
    undo: undoable(visit, writer).map(line),
    redo: redoable(visit, writer).map((step) => undoneBy(known, who, visit, step, line(step))),
  };
}

/** An undone step is told by what it would bring back, not by the undo itself. */
function undoneBy(known: Knowledge, who: Audience, visit: VisitState, step: Step, line: HistoryLine): HistoryLine {
  const undo = step.ids[0] === undefined ? undefined : visit.ledger.log.get(step.ids[0]);
  if (!undo || !("body" in undo) || typeof undo.body !== "object" || undo.body === null || !("of" in undo.body))
    return line;
  // An undo entry of core/record names the ids it undoes.
  const of = undo.body.of as readonly IdText[];
  const kinds = of.flatMap((id) => {
    const entry = visit.ledger.log.get(id);
    return entry && "kind" in entry && entry.kind !== undefined ? [entry.kind] : [];
  });
  return { ...line, title: stepText(known, who, visit, { ids: of, kinds }) };
}

export interface DifferLine {
  readonly id: string;
  readonly key: ReplyKey;
  readonly title: string;
  readonly replies: readonly { readonly id: IdText; readonly says: string; readonly by: string }[];
}

/** Every point with replies that differ, and who said what. A non-answer beside answers stands with each of them. */
export function differLines(known: Knowledge, who: Audience, visit: VisitState): readonly DifferLine[] {
  const differing = [...visit.replies.entries()].filter(([, slot]) => slot.differ);
  return differing.flatMap(([id, slot]) => {
    const beside = differing.map(([, one]) => one).filter((one) => one !== slot && samePoint(one.key, slot.key));
    // The answers beside it list the non-answer; alone it is told once.
    if (slot.key.field === "*" && beside.length > 0) return [];
    const standing = [
      ...slot.standing,
      ...beside.filter((one) => one.key.field === "*").flatMap((one) => one.standing),
    ];
    return [
      {
        id,
        key: slot.key,
        title: `${pointName(known, slot.key.point)}${atPlace(known, slot.key.place)}`,
        replies: standing.map((one) => said(known, who, visit, slot.key, one)),
      },
    ];
  });
}

const samePoint = (a: ReplyKey, b: ReplyKey): boolean =>
  a.point === b.point && a.place === b.place && a.state === b.state;

const said = (
  known: Knowledge,
  who: Audience,
  visit: VisitState,
  key: ReplyKey,
  one: Stands<ReplyValue>,
): DifferLine["replies"][number] => ({
  id: one.id,
  says: replyText(known.points.get(key.point), key.field, one.value, who),
  by: t("differ.by", { name: personName(visit, one.by), when: `${day(one.at.wall)}, ${clock(one.at.wall)}` }),
});
