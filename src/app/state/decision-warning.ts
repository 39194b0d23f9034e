/**
 * What must be shown before a job is refused or put off: dangerous findings, cautions that forbid driving, and that it
 * can't wait for the next drive. Pure; whether a finding or caution stands is core/assess's word.
 */
import type { Assessment, Fault, JobDue } from "../../core/assess/contract.js";
import type { VisitState, Warned } from "../../core/record/index.js";
import { forbidsOf, standFor } from "../../core/terms/index.js";
import { t } from "../texts/owners-word.js";
import type { Telling } from "./because.js";
import { type CautionLine, cautionLine } from "./cautions-view.js";
import { atPlace, faultSays } from "./knowledge.js";
import { byWhenText } from "./work-view.js";

/** The last due class that comes before the next drive. */
const BEFORE_DRIVING = 1;

export interface Warning {
  readonly cautions: readonly CautionLine[];
  readonly lines: readonly string[];
  /** The same as it goes into the record, in the very words shown. */
  readonly shown: readonly Warned[];
}

export interface WarningNeeds {
  readonly telling: Telling;
  readonly assessment: Pick<Assessment, "cautions" | "faults">;
  readonly visit: Pick<VisitState, "told">;
  readonly due: readonly JobDue[];
}

/** The warning over a job (`job@place`); undefined where nothing of it is dangerous or keeps the car off the road. */
export function warningOver({ telling, assessment, visit, due }: WarningNeeds, id: string): Warning | undefined {
  const job = due.find((one) => `${one.job}@${one.place}` === id);
  if (!job) return undefined;
  const { known } = telling;
  const behind = assessment.faults.filter((fault) => job.faults.some((one) => isSame(one, fault)));
  const dangerous = behind.filter(({ grade }) => grade === "dangerous");
  const named = behind.flatMap((fault) => fault.cautions);
  const cautions = standFor(assessment.cautions, named)
    .filter((caution) => forbidsOf(caution) !== undefined || known.cautions.get(caution)?.signal === "danger")
    .map((caution) => cautionLine(known, caution, visit.told));
  const cannotWait = job.byWhen.class <= BEFORE_DRIVING;
  const isDangerous = job.grade === "dangerous" || dangerous.length > 0;
  if (!isDangerous && cautions.length === 0 && !cannotWait) return undefined;
  const raising = behind.filter((fault) =>
    standFor(assessment.cautions, fault.cautions).some((caution) => cautions.some(({ id }) => id === caution)),
  );
  const told = [dangerous, raising, behind].find(({ length }) => length > 0) ?? [];
  const findings = told.map((fault) => findingWarned(telling, fault));
  const when: readonly Warned[] = cannotWait
    ? [{ of: "due", id: String(job.byWhen.class), words: t("owner.due", { when: byWhenText(job.byWhen) }) }]
    : [];
  const shown = [...findings, ...when, ...cautions.map(cautionWarned)];
  return { cautions, lines: [...findings, ...when].map(({ words }) => words), shown };
}

type At = Pick<Fault, "fault" | "place">;
const isSame = (a: At, b: At): boolean => a.fault === b.fault && a.place === b.place;

function findingWarned({ known, who }: Telling, { fault, place, rules, grade }: Fault): Warned {
  const { says } = faultSays(known, fault, rules, who);
  return { of: "finding", id: `${fault}@${place}`, words: `${says}${atPlace(known, place)}: ${t(`mark.${grade}`)}` };
}

const cautionWarned = ({ id, word, not, why, can, todo }: CautionLine): Warned => ({
  of: "caution",
  id,
  words: `${word.toUpperCase()}: ${[not, why, can, todo].filter((part) => part !== "").join(" ")}`,
});
