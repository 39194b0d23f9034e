/** Findings with their because as a hand-over takes them: words for words, figures for figures. Pure; concludes nothing. */
import type { Because, Fault, Finding } from "../../core/assess/contract.js";
import type { WorkTold } from "../../core/plan/index.js";
import {
  type FaultTold,
  type FaultWording,
  faultWords,
  type LimitTold,
  type StepTold,
  worstRules,
} from "../../core/report/index.js";
import { offListName } from "../../core/terms/index.js";
import { answerable, inTelling, senseOf, settleText, stepOf, worstFirst } from "./because.js";
import type { HandoverGround } from "./handover-ground.js";
import { capital, faultSays, placeName } from "./knowledge.js";
import { worksIn } from "./release-facts.js";

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

/** By `job@place`. */
type Works = ReadonlyMap<string, WorkTold>;

/**
 * The day the last of a fault's jobs was done; undefined while one is not. Found right is only what no longer stands:
 * a fault that does is still judged so by the newest replies, whoever measured again. One off the list has no replies;
 * there the word of who looked again counts.
 */
function mendedOf(works: Works, fault: string, jobs: readonly string[]): FaultTold["mended"] {
  const own = jobs.map((job) => works.get(job));
  const days = own.flatMap((work) => work?.doneOn ?? []);
  const on = [...days].sort().at(-1);
  if (on === undefined || days.length < jobs.length) return undefined;
  return { on, checked: offListName(fault) !== undefined && own.every((work) => work?.isMeasured === true) };
}

/** In the words of who reads; nobody hears of it more mildly than it is graded. */
function wordsOf({ telling: { known, who } }: HandoverGround, of: Fault, own: readonly Finding[]) {
  const all = [known.words, ...known.sheets.map(({ texts }) => texts)];
  const first = <Text>(from: (texts: (typeof all)[number]) => Text | undefined): Text | undefined =>
    all.map(from).find((text) => text !== undefined);
  const wording: FaultWording = {
    ofRule: (rule) => first((texts) => texts.rules?.[rule]),
    ofFault: first((texts) => texts.faults?.[of.fault]),
  };
  return faultWords(wording, of.rules, worstRules(own), who) ?? faultSays(known, of.fault, of.rules, who);
}

function faultTold(ground: HandoverGround, works: Works, of: Fault): FaultTold {
  const { telling, due } = ground;
  const { known } = telling;
  const own = findingsOf(ground, of);
  const { says, cause } = wordsOf(ground, of, own);
  const jobs = due
    .filter(({ faults }) => faults.some((one) => one.fault === of.fault && one.place === of.place))
    .map(({ job, place }) => `${job}@${place}`);
  const isOpen = of.sure !== "certain" || of.close;
  const settle = isOpen ? answerable(telling, of.settle).map((one) => settleText(telling, one)) : [];
  const items = own.flatMap((one) => known.rules.get(one.rule)?.["answers-to"] ?? []);
  const atLeast = own.some((one) => one.atLeast) && !own.some((one) => !one.atLeast && one.grade === of.grade);
  const mended = mendedOf(works, of.fault, jobs);
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

export function faultsTold(ground: HandoverGround): readonly FaultTold[] {
  const handing = { ...ground, known: ground.telling.known, param: ground.telling.visit };
  const works = new Map(worksIn(handing, []).map((work) => [`${work.job}@${work.place}`, work]));
  return worstFirst(ground.assessment.faults).map((one) => faultTold(ground, works, one));
}
