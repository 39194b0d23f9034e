/** Findings with their because as a hand-over takes them: words for words, figures for figures. Pure; concludes nothing. */
import type { Because, Fault, Finding } from "../../core/assess/contract.js";
import type { FaultTold, LimitTold, StepTold } from "../../core/report/index.js";
import { answerable, inTelling, senseOf, settleText, stepOf, worstFirst } from "./because.js";
import type { HandoverGround } from "./handover-ground.js";
import { capital, faultSays, placeName } from "./knowledge.js";

/** Where something is, in words; nothing for the car as a whole. */
export const whereOf = ({ telling: { known } }: Pick<HandoverGround, "telling">, place: string): string =>
  place === "car" ? "" : capital(placeName(known, place));

const SENSES = {
  "finding.seen": "seen",
  "finding.heard": "heard",
  "finding.felt": "felt",
  "finding.told": "told",
  "finding.measured": "measured",
} as const;
const senseWord = (key: string): (typeof SENSES)[keyof typeof SENSES] => SENSES[key as keyof typeof SENSES] ?? "seen";

const KINDS = {
  fact: "fact",
  derived: "worked-out",
  earlier: "earlier",
  found: "found",
  raised: "raised",
  "own-words": "seen",
} as const;

/** What a limit says, as far as a hand-over tells it. */
export function limitTold(
  { telling: { known } }: Pick<HandoverGround, "telling">,
  limit: Pick<LimitTold, "limit" | "edge" | "unit" | "grade" | "basis" | "source" | "isDefault">,
): LimitTold {
  const { limit: id, edge, unit, grade, basis, source, isDefault } = limit;
  // A limit of a sheet that is gone is told as it is meant most: what is over it is worse.
  const direction = known.limits.get(id)?.direction ?? "over";
  return { limit: id, direction, edge, unit, grade, basis, source, isDefault };
}

function stepTold(ground: HandoverGround, because: Because, fault: Fault): StepTold {
  const { telling } = ground;
  if (because.kind === "limit")
    return { is: "limit", value: because.value, uncertainty: because.uncertainty, ...limitTold(ground, because) };
  const { says, aside } = stepOf(telling, because, fault, "");
  if (because.kind === "reply") {
    const is = senseWord(senseOf(telling.known, because.key, because.value.type === "reading"));
    return { is, words: says, ...(because.supports ? { supports: true } : {}) };
  }
  if (because.kind === "earlier") return { is: "earlier", words: says, on: because.at.slice(0, 10) };
  if (because.kind === "own-words") return { is: "seen", words: aside === undefined ? says : `${says} ${aside}` };
  return { is: KINDS[because.kind], words: says };
}

/** Findings of a fault, as its own page tells them. */
const findingsOf = ({ assessment }: HandoverGround, of: Fault): readonly Finding[] =>
  assessment.findings.filter((one) => one.fault === of.fault && one.place === of.place && of.rules.includes(one.rule));

/** The day the last of a fault's jobs was done, and whether each was measured again; undefined while one is not. */
function mendedOf({ said }: HandoverGround, jobs: readonly string[]): FaultTold["mended"] {
  const steps = jobs.map((job) => said.jobSteps.get(job)?.map(({ value }) => value) ?? []);
  const lasts = steps.map((own) => own.at(-1));
  const isDone = jobs.length > 0 && lasts.every((last) => last?.step === "done" || last?.step === "measured-again");
  if (!isDone) return undefined;
  const days = steps.flatMap((own) => own.findLast(({ step }) => step === "done")?.on ?? own.at(-1)?.on ?? []);
  return { on: days.sort().at(-1) ?? "", checked: lasts.every((last) => last?.step === "measured-again") };
}

function faultTold(ground: HandoverGround, of: Fault): FaultTold {
  const { telling, due } = ground;
  const { known, who } = telling;
  const own = findingsOf(ground, of);
  const { says, cause } = faultSays(known, of.fault, of.rules, who);
  const jobs = due
    .filter(({ faults }) => faults.some((one) => one.fault === of.fault && one.place === of.place))
    .map(({ job, place }) => `${job}@${place}`);
  const isOpen = of.sure !== "certain" || of.close;
  const settle = isOpen ? answerable(telling, of.settle).map((one) => settleText(telling, one)) : [];
  const items = own.flatMap((one) => known.rules.get(one.rule)?.["answers-to"] ?? []);
  const atLeast = own.some((one) => one.atLeast) && !own.some((one) => !one.atLeast && one.grade === of.grade);
  const mended = mendedOf(ground, jobs);
  return {
    fault: of.fault,
    place: of.place,
    title: says,
    where: whereOf(ground, of.place),
    grade: of.grade,
    sure: of.sure,
    close: of.close,
    provisional: of.provisional,
    ...(atLeast ? { atLeast } : {}),
    ...(own.some((one) => one.differ.length > 0) ? { differ: true } : {}),
    ...(of.byHand ? { byHand: { was: of.byHand.was, reason: of.byHand.reason } } : {}),
    consequence: of.consequence,
    mustStand: of.mustStand,
    rules: of.rules,
    answersTo: [...new Set(items)],
    ...(cause === undefined ? {} : { cause }),
    because: inTelling(own.flatMap((one) => one.because)).map((one) => stepTold(ground, one, of)),
    ...(settle.length > 0 ? { settle } : {}),
    jobs,
    ...(mended ? { mended } : {}),
  };
}

export const faultsTold = (ground: HandoverGround): readonly FaultTold[] =>
  worstFirst(ground.assessment.faults).map((one) => faultTold(ground, one));
