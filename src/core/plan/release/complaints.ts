/** How each complaint of a car stands: answered, or still open and carried on. Answers none of them by itself. */
import type { ComplaintAnswer, IdText, PlanState, Stands, VisitState } from "../../record/index.js";

/** One visit of the car with what its plan says. */
export interface HeardIn {
  readonly visit: Pick<VisitState, "stream" | "complaints" | "on" | "ledger">;
  readonly answers: PlanState["answers"];
}

export interface ComplaintStands {
  /** Of the entry that tells it. */
  readonly id: IdText;
  /** The visit it was told in, and when that was. */
  readonly visit: string;
  readonly on: string;
  /** As spoken. */
  readonly text: string;
  /** The known complaint it sounds like. */
  readonly known?: string;
  /** Told in an earlier visit. */
  readonly isCarried: boolean;
  /** Said last; absent while nobody has answered. */
  readonly answer?: ComplaintAnswer;
  /** Two answers stand beside each other. */
  readonly differ: boolean;
}

type Told = VisitState["complaints"][number];

/**
 * The complaints this visit has to do with: its own, then those of earlier visits that are still open or that were
 * answered here. `earlier`: oldest first.
 */
export function complaintsOf(here: HeardIn, earlier: readonly HeardIn[]): readonly ComplaintStands[] {
  const everywhere = [...earlier, here];
  const standing = ({ visit }: HeardIn, isCarried: boolean): readonly ComplaintStands[] =>
    visit.complaints.map((told) => stands(visit, told, isCarried, everywhere));
  const carried = earlier.flatMap((one) =>
    standing(one, true).filter((told) => isOpen(told) || answersTo(here, lineOf(one.visit, told.id)).length > 0),
  );
  return [...standing(here, false), ...carried];
}

/** Unanswered, answered by what it needs first, or in two ways: each is carried on to the next visit. */
export const isOpen = ({ answer, differ }: Pick<ComplaintStands, "answer" | "differ">): boolean =>
  answer === undefined || answer.word === "needs" || differ;

export const openComplaints = (all: readonly ComplaintStands[]): readonly ComplaintStands[] => all.filter(isOpen);

function stands(
  visit: HeardIn["visit"],
  { id, value }: Told,
  isCarried: boolean,
  everywhere: readonly HeardIn[],
): ComplaintStands {
  const line = lineOf(visit, id);
  const answers = everywhere.flatMap((one) => answersTo(one, line));
  const answer = answers.reduce<Stands<ComplaintAnswer> | undefined>(
    (last, one) => (last === undefined || last.at.wall <= one.at.wall ? one : last),
    undefined,
  );
  return {
    id,
    visit: visit.stream,
    on: visit.on.at(-1)?.value ?? "",
    text: value.text,
    ...(value.complaint === undefined ? {} : { known: value.complaint }),
    isCarried,
    ...(answer === undefined ? {} : { answer: answer.value }),
    differ: new Set(answers.map((one) => one.value.word)).size > 1,
  };
}

const answersTo = ({ answers }: HeardIn, line: readonly IdText[]): readonly Stands<ComplaintAnswer>[] =>
  line.flatMap((id) => answers.get(id) ?? []);

/** The entry and everything it mends: an answer to the words before a slip of the pen was mended still answers it. */
function lineOf({ ledger }: HeardIn["visit"], id: IdText): readonly IdText[] {
  const line = new Set<IdText>([id]);
  for (const one of line) {
    const logged = ledger.log.get(one);
    const body: unknown = logged && "body" in logged ? logged.body : undefined;
    if (typeof body !== "object" || body === null || !("replaces" in body) || !Array.isArray(body.replaces)) continue;
    for (const mended of body.replaces) if (typeof mended === "string") line.add(mended);
  }
  return [...line];
}
