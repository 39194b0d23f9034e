/**
 * Complaints with their answers as lines: what was answered, what is carried on from an earlier visit, and which finding
 * may be the answer. A suggestion is never an answer. Pure.
 */
import type { Assessment } from "../../core/assess/contract.js";
import { type ComplaintStands, isOpen } from "../../core/plan/index.js";
import type { ComplaintAnswer } from "../../core/record/index.js";
import { levelOf } from "../../core/terms/index.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/release.js";
import type { Telling } from "./because.js";
import { barePoint } from "./complaint-lines.js";
import { atPlace, faultSays } from "./knowledge.js";

export interface HeardLine {
  readonly id: string;
  readonly text: string;
  readonly isCarried: boolean;
  readonly from?: string;
  readonly answer: string;
  readonly isOpen: boolean;
  /** Which finding it may be, while it is open; or that two answers stand. */
  readonly second?: string;
}

/** A finding of this visit to pick as the answer. */
export interface FaultChoice {
  readonly id: string;
  readonly fault: string;
  readonly place: string;
  readonly words: string;
  /** Among the points its complaint words put first. */
  readonly isLikely: boolean;
}

type Judged = Pick<Assessment, "faults" | "findings">;

const faultWords = (
  { known, who }: Telling,
  { fault, place, rules = [] }: { readonly fault: string; readonly place: string; readonly rules?: readonly string[] },
) => `${faultSays(known, fault, rules, who).says}${atPlace(known, place)}`;

/** So many are offered at once; more are found by a word. */
export const OFFERED = 6;
const FOUND_AT_MOST = 30;

/** What is offered: the likeliest and worst, with all that is chosen; with words typed, whatever holds them all. */
export function choicesOffered(
  choices: readonly FaultChoice[],
  isChosen: (id: string) => boolean,
  typed: string,
): readonly FaultChoice[] {
  const wanted = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const holds = ({ words }: FaultChoice): boolean => wanted.every((word) => words.toLowerCase().includes(word));
  const chosen = choices.filter(({ id }) => isChosen(id));
  const open = choices.filter(({ id }) => !isChosen(id));
  if (wanted.length === 0) return [...chosen, ...open.slice(0, Math.max(0, OFFERED - chosen.length))];
  return [...chosen, ...open.filter(holds).slice(0, FOUND_AT_MOST)];
}

/** Findings of this visit, those its words suspect first, and the worst first among equals. */
export function faultChoices(telling: Telling, judged: Judged, complaint: string | undefined): readonly FaultChoice[] {
  const points = likelyPoints(telling, complaint);
  const worstFirst = [...judged.faults].sort((a, b) => levelOf(b.grade) - levelOf(a.grade));
  const choices = worstFirst.map(({ fault, place, rules }): FaultChoice => {
    const isLikely = judged.findings.some(
      (finding) =>
        finding.fault === fault &&
        finding.place === place &&
        finding.because.some((step) => step.kind === "reply" && points.has(barePoint(step.key.point))),
    );
    return { id: `${fault}@${place}`, fault, place, words: faultWords(telling, { fault, place, rules }), isLikely };
  });
  return [...choices.filter(({ isLikely }) => isLikely), ...choices.filter(({ isLikely }) => !isLikely)];
}

function likelyPoints({ known }: Telling, complaint: string | undefined): ReadonlySet<string> {
  const listed = known.complaints?.listed.find((one) => one.id === complaint);
  return new Set((listed?.points ?? []).map(barePoint));
}

export function heardLine(telling: Telling, judged: Judged, heard: ComplaintStands, isQuiet: boolean): HeardLine {
  const { id, text, isCarried, on, answer, known, differ } = heard;
  const isStillOpen = isOpen(heard);
  const date = plainDay(on.slice(0, 10));
  // Where findings are covered, none is named.
  const [likely] = isStillOpen && !isQuiet ? faultChoices(telling, judged, known).filter((one) => one.isLikely) : [];
  const second = differ ? t("heard.differ") : likely && t("heard.maybe", { what: likely.words });
  return {
    id,
    text: `“${text}”`,
    isCarried,
    ...(isCarried ? { from: t(isStillOpen ? "heard.from" : "heard.from-answered", { date }) } : {}),
    answer: answer ? answerWords(telling, answer) : t("heard.open"),
    isOpen: isStillOpen,
    ...(second === undefined ? {} : { second }),
  };
}

/** An answer in one line, with who gave it and when. */
function answerWords(telling: Telling, answer: ComplaintAnswer): string {
  const { who, on } = answer;
  return t("heard.by", { says: answerSays(telling, answer), who, date: plainDay(on) });
}

/** An answer in one line. */
function answerSays(telling: Telling, { word, findings, needs, words }: ComplaintAnswer): string {
  const said = words === "" ? [] : [words];
  const what = [
    ...findings.map((one) => faultWords(telling, one)),
    ...(needs === undefined ? [] : [t(`heard.needs.${needs}`)]),
    ...said,
  ].join("; ");
  return t(`heard.${word}`, { what });
}
