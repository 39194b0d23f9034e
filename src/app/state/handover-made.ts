/** A hand-over made for one reader: the model, the pages it is read on, their words, and what is still open. Pure. */
import {
  english,
  type HandoverModel,
  type HandoverPages,
  type HandoverWords,
  handover,
  handoverPages,
} from "../../core/report/index.js";
import type { Audience } from "../../core/terms/index.js";
import { t } from "../texts/hand-over.js";
import { decimalComma } from "../texts/index.js";
import type { HandoverGround } from "./handover-ground.js";
import { handoverInput } from "./handover-input.js";
import { picturesLeftOut } from "./handover-told.js";
import { to } from "./routes.js";

export interface MadeHandover {
  readonly model: HandoverModel;
  readonly pages: HandoverPages;
  readonly words: HandoverWords;
}

export const handoverWords = (): HandoverWords => ({ lang: "en", decimalComma: decimalComma.value, texts: english });

export function madeHandover(ground: HandoverGround): MadeHandover {
  const words = handoverWords();
  const model = handover(handoverInput(ground));
  return { model, pages: handoverPages(model, words), words };
}

/** Who most likely was not there: a workshop's visit is read by the owner. */
export const readerOf = (looker: Audience): Audience => (looker === "technician" ? "owner" : looker);

/** Something still open, and where it is seen to. */
export interface OpenLine {
  readonly id: string;
  readonly words: string;
  readonly href?: string;
}

/** What a reader would ask first, said before anything is handed on. */
export function openLines(ground: HandoverGround, { model }: MadeHandover): readonly OpenLine[] {
  const { visit } = ground.telling;
  const waiting = model.first.complaints.filter(({ answer }) => answer === undefined).length;
  const undecided = model.work.filter(({ decision, doneOn }) => decision === undefined && doneOn === undefined).length;
  const scant = model.sheets.filter(({ enough }) => !enough).length;
  const left = picturesLeftOut(ground);
  const missing = model.money?.missing ?? 0;
  const page = (name: string): string => to("plan", { visit, page: name });
  const line = (id: string, words: string, href?: string): OpenLine => ({ id, words, ...(href ? { href } : {}) });
  return [
    ...(ground.visit.closed ? [] : [line("visit", t("hand-over.open.visit"), to("visit", { visit }))]),
    ...(waiting > 0
      ? [line("complaints", t("hand-over.open.complaints", { n: waiting }), to("visit", { visit }))]
      : []),
    ...(undecided > 0 && model.for !== "buyer"
      ? [line("undecided", t("hand-over.open.undecided", { n: undecided }), to("work", { visit }))]
      : []),
    ...(ground.plan === undefined && ground.due.length > 0 ? [line("planning", t("hand-over.open.planning"))] : []),
    ...(ground.trends === undefined ? [line("wearing", t("hand-over.open.wearing"))] : []),
    ...(model.money === undefined && model.work.length > 0
      ? [line("money", t("hand-over.open.no-money"), page("estimate"))]
      : []),
    ...(missing > 0 ? [line("missing", t("hand-over.open.missing", { n: missing }), page("estimate"))] : []),
    ...(scant > 0 ? [line("unseen", t("hand-over.open.unseen", { n: scant }), to("findings", { visit }))] : []),
    ...(model.loose.length > 0
      ? [line("loose", t("hand-over.open.loose", { n: model.loose.length }), page("left-loose"))]
      : []),
    ...(left.length > 0
      ? [
          line(
            "pictures",
            t("hand-over.open.pictures", { n: left.length, names: left.join("; ") }),
            to("pictures", { visit }),
          ),
        ]
      : []),
  ];
}
