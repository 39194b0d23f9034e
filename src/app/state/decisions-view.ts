/**
 * The owner's word on every job as facts, for whoever shows it: the page of decisions, a job, the hand-over. Pure;
 * nothing is told here that does not stand in the record.
 */
import type { JobDue } from "../../core/assess/contract.js";
import type { IsoDate, WorkInput, WorkPlan } from "../../core/plan/index.js";
import {
  type Decision,
  type DecisionSaid,
  type DecisionWord,
  decisionLine,
  type PlanState,
  type PriceShown,
  type SignedFor,
  type Stands,
  signaturesFor,
  type WarningShown,
} from "../../core/record/index.js";
import { isSamePerson } from "../../core/terms/run.js";
import { doDiffer, wordsOn } from "./owners-word.js";
import { idParts } from "./plan-words.js";

/** What stands on one job. */
export interface DecisionFacts {
  /** `job@place` */
  readonly id: string;
  readonly job: string;
  readonly place: string;
  /** Undefined: nobody has decided. Where people differ, the word said last: `differ` says that it does not count. */
  readonly word?: DecisionWord;
  readonly said?: Decision;
  readonly differ: boolean;
  /** Everybody's word that stands, oldest first. */
  readonly standing: readonly Stands<Decision>[];
  /** Moment of the entry, ms since 1970, and the entry. */
  readonly at?: number;
  readonly entry?: string;
  readonly price?: PriceShown;
  readonly warning?: WarningShown;
  readonly answer?: { readonly words: string; readonly on: IsoDate };
  readonly signatures: readonly SignedFor[];
  readonly line: readonly DecisionSaid[];
  /** Planned to end after the day wished. */
  readonly lateBy?: { readonly planned: IsoDate; readonly wanted: IsoDate };
}

interface Planned {
  readonly due: readonly JobDue[];
  readonly said: PlanState;
  readonly plan?: WorkPlan | undefined;
}

/** One job's facts by its id. */
export function decisionFacts({ said, plan }: Omit<Planned, "due">, id: string): DecisionFacts {
  const { what: job, place } = idParts(id);
  const standing = wordsOn(said, id);
  const last = standing.at(-1);
  const answer = last && said.ownerAnswers.get(last.id)?.at(-1)?.value.answer;
  const ends = plan?.schedule?.activities.find((one) => one.id === id)?.end.date;
  const wanted = last?.value.by;
  return {
    id,
    job,
    place,
    differ: doDiffer(standing),
    standing,
    signatures: signaturesFor(said, id),
    line: decisionLine(said, id),
    ...(last ? { word: last.value.word, said: last.value, at: last.at.wall, entry: last.id } : {}),
    ...(last?.value.price ? { price: last.value.price } : {}),
    ...(last?.value.warning ? { warning: last.value.warning } : {}),
    ...(answer ? { answer } : {}),
    ...(ends !== undefined && wanted !== undefined && ends > wanted ? { lateBy: { planned: ends, wanted } } : {}),
  };
}

/** Every job of the list in urgency order, with the owner's word on it. */
export const allDecisions = (of: Planned): readonly DecisionFacts[] =>
  of.due.map(({ job, place }) => decisionFacts(of, `${job}@${place}`));

/** Jobs that are still to be decided: nobody has, or people differ; what is done needs no word any more. */
export function undecided(
  facts: readonly DecisionFacts[],
  { jobs }: Pick<WorkInput, "jobs">,
): readonly DecisionFacts[] {
  const done = new Set(jobs.filter(({ isDone }) => isDone).map(({ id }) => id));
  return facts.filter(({ id, word, differ }) => !done.has(id) && (word === undefined || differ));
}

/** Questions the owner asked, those without an answer first. */
export const questionsOf = (facts: readonly DecisionFacts[]): readonly DecisionFacts[] =>
  facts
    .filter(({ standing }) => standing.some(({ value }) => value.word === "tell-me-more"))
    .sort((a, b) => Number(a.answer !== undefined) - Number(b.answer !== undefined));

/** Words somebody may sign: their own that stand and that no signature names yet. */
export const unsigned = (facts: readonly DecisionFacts[], who: string): readonly Stands<Decision>[] =>
  facts.flatMap(({ standing, signatures }) =>
    standing.filter(
      ({ id, value }) =>
        isSamePerson(value.who, who) && !signatures.some(({ signed }) => signed.value.decisions.includes(id)),
    ),
  );
