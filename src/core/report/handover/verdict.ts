/**
 * May it be driven? The worst of everything that stands decides; what nobody looked at, measured well enough or cleared
 * never counts as good. Rules: SPEC.md HO10–HO19. Knows no words.
 */
import type { HandoverInput } from "./input.js";
import type { LetteredFinding, NumberedJob, Verdict, VerdictKind, VerdictReason } from "./model.js";
import {
  gateState,
  isSettled,
  isUnlooked,
  openComplaints,
  type Standing,
  standingCautions,
  unseenCount,
} from "./standing.js";

interface Weighed {
  readonly kind: Exclude<VerdictKind, "nothing-against">;
  readonly reason: VerdictReason;
}

/** The verdict with all its reasons, those of a worse kind first. */
export function verdictOf(
  input: HandoverInput,
  findings: readonly LetteredFinding[],
  work: readonly NumberedJob[],
  standing: Standing,
): Verdict {
  const weighed = [
    ...forbidding(input, findings, work, standing),
    ...limiting(input, findings, standing),
    ...unshown(input, findings, standing),
  ];
  const is: VerdictKind = weighed[0]?.kind ?? "nothing-against";
  const reasons = weighed.map(({ reason }) => reason);
  return { is, owner: ownerWord(is, reasons, findings, input), reasons };
}

const lettersOf = (findings: readonly LetteredFinding[], is: (one: LetteredFinding) => boolean): readonly string[] =>
  findings.filter((one) => !isSettled(one) && is(one)).map(({ letter }) => letter);

/** Weighed as this kind, where there is anything to tell. */
const when = (holds: boolean, kind: Weighed["kind"], reason: VerdictReason): readonly Weighed[] =>
  holds ? [{ kind, reason }] : [];

function forbidding(
  { cautions, gates, loose = [], release }: HandoverInput,
  findings: readonly LetteredFinding[],
  work: readonly NumberedJob[],
  standing: Standing,
): readonly Weighed[] {
  const kind = "do-not-drive";
  const dangerous = lettersOf(findings, ({ grade, mustStand }) => grade === "dangerous" || mustStand);
  const tripped = gates.filter((one) => one.drives && gateState(one, standing) === "tripped");
  const forbidden = standingCautions(cautions, standing).filter(({ forbids }) => forbids === "driving");
  const first = work.filter(
    ({ byWhen, doneOn, faults }) => byWhen.class < 2 && doneOn === undefined && standing.hangs(faults),
  );
  return [
    ...when(dangerous.length > 0, kind, { is: "dangerous", letters: dangerous }),
    ...when(tripped.length > 0, kind, { is: "gate-tripped", gates: tripped.map(({ title }) => title) }),
    ...when(forbidden.length > 0, kind, { is: "forbidden", cautions: forbidden.map(({ not }) => not) }),
    ...when(release?.is === "not-released", kind, { is: "not-released", words: release?.words ?? "" }),
    ...when(loose.length > 0, kind, { is: "left-loose", count: loose.length }),
    ...when(first.length > 0, kind, { is: "work-before-driving", numbers: first.map(({ number }) => number) }),
  ];
}

function limiting(
  { cautions }: HandoverInput,
  findings: readonly LetteredFinding[],
  standing: Standing,
): readonly Weighed[] {
  const workshop = standingCautions(cautions, standing).filter(({ forbids }) => forbids === "beyond-workshop");
  const major = lettersOf(findings, ({ grade }) => grade === "major");
  return [
    ...when(workshop.length > 0, "workshop-only", { is: "workshop", cautions: workshop.map(({ not }) => not) }),
    ...when(major.length > 0, "put-right-first", { is: "major", letters: major }),
  ];
}

function unshown(input: HandoverInput, findings: readonly LetteredFinding[], standing: Standing): readonly Weighed[] {
  const kind = "not-shown";
  const { gates, sheets, visit } = input;
  const laidUp = visit.laidUp === true;
  const answered = sheets.reduce((sum, one) => sum + one.answered, 0);
  // A car that lies is not driven away: what stands before the road waits until it is woken.
  const driving = gates.filter(({ drives }) => drives);
  const shut = laidUp ? [] : driving.filter((one) => gateState(one, standing) === "not cleared");
  const letters = {
    close: lettersOf(findings, ({ close }) => close),
    differ: lettersOf(findings, ({ differ }) => differ === true),
    provisional: lettersOf(findings, ({ provisional }) => provisional),
    done: lettersOf(findings, ({ mended }) => mended !== undefined),
  };
  const thin = sheets.filter(({ enough }) => !enough).map(({ name }) => name);
  const unseen = unseenCount(input);
  const waiting = openComplaints(input);
  const open = waiting.filter(({ answer }) => answer?.is !== "not-read").length;
  const unlooked = (input.done ?? [])
    .filter(isUnlooked)
    .map(({ title, where }) => (where ? `${title}, ${where}` : title));
  const unread = input.unread ?? 0;
  return [
    ...when(laidUp, "laid-up", { is: "laid-up" }),
    ...when(answered === 0, kind, { is: "nothing-looked-at" }),
    ...when(letters.close.length > 0, kind, { is: "close", letters: letters.close }),
    ...when(letters.done.length > 0, kind, { is: "done-not-checked", letters: letters.done }),
    ...when(unlooked.length > 0, kind, { is: "work-not-looked-at", jobs: unlooked }),
    ...when(driving.length === 0 && !laidUp, kind, { is: "no-gate" }),
    ...when(shut.length > 0, kind, { is: "gate-not-cleared", gates: shut.map(({ title }) => title) }),
    ...when(thin.length > 0 && answered > 0, kind, { is: "not-enough-seen", sheets: thin }),
    ...when(unseen > 0, kind, { is: "not-seen", count: unseen }),
    ...when(letters.differ.length > 0, kind, { is: "differ", letters: letters.differ }),
    ...when(letters.provisional.length > 0, kind, { is: "provisional", letters: letters.provisional }),
    ...when(open > 0, kind, { is: "complaints-open", count: open }),
    ...when(waiting.length > open, kind, { is: "answers-unread" }),
    ...when(input.isProgressUnread === true, kind, { is: "progress-unread" }),
    ...when(unread > 0, kind, { is: "unread", count: unread }),
  ];
}

/** With one of these nobody can say of a car that lies that nothing was found. */
const NOTHING_TO_GO_BY: readonly VerdictReason["is"][] = [
  "nothing-looked-at",
  "unread",
  "progress-unread",
  "work-not-looked-at",
  "done-not-checked",
];

/** One word for an owner. Fine needs the best verdict and nothing above an advisory. */
function ownerWord(
  is: VerdictKind,
  reasons: readonly VerdictReason[],
  findings: readonly LetteredFinding[],
  input: HandoverInput,
): Verdict["owner"] {
  if (is === "do-not-drive") return "dont-drive";
  if (is === "workshop-only" || is === "put-right-first") return "tell";
  const toTell =
    lettersOf(findings, ({ grade, close }) => grade !== "advisory" || close).length > 0 ||
    openComplaints(input).length > 0;
  if (toTell) return "tell";
  if (is === "laid-up") return reasons.some((one) => NOTHING_TO_GO_BY.includes(one.is)) ? "not-shown" : "laid-up";
  return is === "not-shown" ? is : "fine";
}
