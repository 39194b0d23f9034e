/** What the newest act in a plan was, in words, for the row that takes it back. Pure. */
import { type Bodies, isEntry, type PlanKind, type PlanState } from "../../core/record/index.js";
import { t } from "../texts/plan-parts.js";
import type { Telling } from "./because.js";
import { decisionText } from "./decision-words.js";
import { lastPlanStep } from "./plan-acts.js";
import { jobTitle, partTitle } from "./plan-words.js";

type Step = NonNullable<ReturnType<typeof lastPlanStep>>;

export interface PlanUndo {
  readonly says: string;
  readonly step: Step;
}

/** Of this phone's newest act that is not undone; undefined when there is none. */
export function planUndo(telling: Telling, said: PlanState, writer: string | undefined): PlanUndo | undefined {
  const step = writer === undefined ? undefined : lastPlanStep(said, writer);
  if (!step) return undefined;
  const who = said.people.get(step.by)?.at(-1)?.value.name;
  const says = saysOf(telling, said, step);
  return { step, says: who === undefined ? says : t("plan-undo.of", { says, who }) };
}

const OWN = new Set(["person", "plan.begun", "undo"]);

function saysOf(telling: Telling, said: PlanState, { ids }: Step): string {
  const entries = ids.flatMap((id) => {
    const entry = said.ledger.log.get(id);
    return entry && isEntry(entry) && !OWN.has(entry.kind) ? [entry] : [];
  });
  const [first] = entries;
  return first ? wordsOf(telling, said, first.kind, first.body) : t("plan-undo.other");
}

/** A body is what its kind says: it was checked when it was folded. */
function wordsOf(telling: Telling, said: PlanState, kind: string, body: unknown): string {
  const as = <K extends PlanKind>(): Bodies[K] => body as Bodies[K];
  const job = ({ job: what, place }: { readonly job: string; readonly place: string }): string =>
    jobTitle(telling, `${what}@${place}`);
  switch (kind) {
    case "plan.part": {
      const { job: what, place, part, figures } = as<"plan.part">();
      return t("plan-undo.part", { what: figures?.name ?? partTitle(telling, said, `${what}@${place}/${part}`) });
    }
    case "part.step": {
      const { job: what, place, part, step } = as<"part.step">();
      const name = partTitle(telling, said, `${what}@${place}/${part}`);
      return t("plan-undo.step", { step: t(`part-way.${step}`), what: name });
    }
    case "job.step": {
      const body = as<"job.step">();
      return t("plan-undo.step", { step: t(`job-step.${body.step}`), what: job(body) });
    }
    case "plan.minutes":
      return t("plan-undo.minutes", { what: job(as<"plan.minutes">()) });
    case "plan.wanted":
      return t("plan-undo.wanted", { what: job(as<"plan.wanted">()) });
    case "plan.begins":
      return t("plan-undo.begins");
    case "left-loose":
      return t("plan-undo.loose", { what: as<"left-loose">().words });
    case "decision": {
      const body = as<"decision">();
      const what = body.said ? decisionText(body.said) : t("plan-undo.decision.back");
      return body.said
        ? t("plan-undo.decision.of", { who: body.said.who, what, job: job(body) })
        : t("plan-undo.decision", { what, job: job(body) });
    }
    case "decision.answer":
      return t("plan-undo.answer");
    case "decision.signed":
      return t("plan-undo.signed", { who: as<"decision.signed">().who });
    case "left-loose.cleared":
      return t("plan-undo.cleared");
    default:
      return t("plan-undo.other");
  }
}
