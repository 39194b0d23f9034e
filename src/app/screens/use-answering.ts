/**
 * Answering a point: each press becomes one act; when it completes the point the round goes on by itself, and the
 * last reply can be taken back where the next point stands. Keeps nothing itself.
 */
import { signal, useComputed } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import { type IdText, undoable } from "../../core/record/index.js";
import type { NonAnswer, Reason, ReplyValue } from "../../core/terms/index.js";
import { useApp } from "../state/app.js";
import { pointName } from "../state/knowledge.js";
import { reply, replyAll, undo } from "../state/reply-acts.js";
import { type FieldView, repliedText } from "../state/round-view.js";
import type { Moves } from "../state/router.js";
import { to } from "../state/routes.js";
import { ALL_FIELDS, keyOf, type PointAt, pointText } from "../state/standing.js";
import { isAllSaid, isDone, nextOpen, stopsOf } from "../state/stops.js";
import type { SweepReply } from "../state/sweep.js";
import { rememberPoint } from "../state/where-one-was.js";
import type { OnDesk } from "./on-visit.js";

/** Long enough to see the tick, short enough not to wait for it. */
const GO_ON_AFTER_MS = 320;

/** The last reply given in a visit, offered to be taken back. Survives the step to the next point. */
interface LastReply {
  readonly visit: string;
  readonly at: PointAt;
  /** What undoing names: looked for only when it is taken back. */
  readonly ids: () => readonly IdText[];
}
const lastReply = signal<LastReply | undefined>(undefined);

export interface Answering {
  /** One field's reply; `goOn` when it may complete the point by itself. */
  readonly answer: (field: Pick<FieldView, "at" | "name">, value: ReplyValue | null, goOn: boolean) => void;
  readonly cannot: (nonAnswer: NonAnswer, reason?: Reason) => void;
  readonly sweep: (replies: readonly SweepReply[]) => void;
  /** What can be taken back, in words; nothing when it was at another visit. */
  readonly last:
    | { readonly at: PointAt; readonly point: string; readonly says: string; readonly takeBack: () => void }
    | undefined;
}

export function useAnswering(on: OnDesk, at: PointAt): Answering {
  const { journal, router, remembered } = useApp();
  const now = useRef({ on, at });
  now.current = { on, at };
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);

  /** Points asked in the same entry: what can't be got at is the whole entry. */
  const fellows = on.assessment.asked.find((one) => pointText(one) === pointText(at))?.with ?? [];

  /** After a kept reply: offer it to be taken back and, when the point is complete, go on. */
  const kept = (wasDone: boolean, goOn: boolean, hence: Moves): void => {
    const opened = journal.keptVisit(on.stream).peek();
    const writer = journal.writer.peek();
    if (opened.is !== "open" || writer === undefined) return;
    lastReply.value = { visit: on.stream, at, ids: () => undoable(opened.state, writer)[0]?.ids ?? [] };
    rememberPoint(remembered, on.stream, at, opened.state.replies);
    const { replies } = opened.state;
    if (!goOn || wasDone || !isDone(on.known, replies, { ...at, with: fellows }) || !isAllSaid(on.known, replies, at))
      return;
    clearTimeout(timer.current);
    timer.current = setTimeout(() => {
      const { on: latest, at: still } = now.current;
      const judged = latest.desk.assessment.peek() ?? latest.assessment;
      const next = nextOpen(
        latest.known,
        stopsOf(latest.known, latest.who, judged, latest.visit.replies),
        latest.visit.replies,
        still,
      );
      // Only within the place: leaving it is the person's own step.
      if (next && next.place === still.place && next.state === still.state)
        hence.swap(to("point", { visit: latest.param, ...next }));
    }, GO_ON_AFTER_MS);
  };

  const keep = async (act: Promise<boolean>, goOn: boolean): Promise<void> => {
    on.desk.judge();
    const wasDone = isDone(on.known, on.visit.replies, { ...at, with: fellows });
    const hence = router.fromHere();
    if (await act) kept(wasDone, goOn, hence);
  };
  // Offered where the next point stands only: the reply just given draws its own point no second time.
  const stands = useComputed(() => {
    const last = lastReply.value;
    return last && last.visit === on.stream && pointText(last.at) !== pointText(at) ? last : undefined;
  }).value;
  const says = stands && repliedText(on, stands.at);
  return {
    answer: (field, value, goOn) => void keep(reply(journal, on.stream, keyOf(field.at, field.name), value), goOn),
    cannot: (nonAnswer, reason) =>
      void keep(
        replyAll(
          journal,
          on.stream,
          [at.point, ...fellows].map((point) => ({
            key: keyOf({ ...at, point }, ALL_FIELDS),
            value: { type: "non-answer", nonAnswer, ...(reason ? { reason } : {}) },
          })),
        ),
        true,
      ),
    sweep: (replies) => void keep(replyAll(journal, on.stream, replies), false),
    last:
      stands && says !== undefined
        ? {
            at: stands.at,
            point: pointName(on.known, stands.at.point),
            says,
            takeBack: () => {
              lastReply.value = undefined;
              const hence = router.fromHere();
              // Arriving there goes to the head, where its place and question are.
              void undo(journal, on.stream, { ids: stands.ids() }).then(
                (done) => done && hence.swap(to("point", { visit: on.param, ...stands.at })),
              );
            },
          }
        : undefined,
  };
}
