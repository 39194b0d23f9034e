/**
 * What the plan of a visit holds that can be deleted for good by itself: the owner's word, answers, signatures, notes
 * sent, whoever looked again or took the car. What tells of the work (steps, parts, what is left loose) is no paper: it
 * goes with the whole visit, so that nothing loose is lost sight of. Pure.
 */
import {
  type Entry,
  type FoldedState,
  idText,
  isEntry,
  type PlanState,
  type VisitState,
} from "../../core/record/index.js";
import { calendarDay, t } from "../texts/files.js";
import { type Paper, papersOf } from "./papers-view.js";

/** What each kind is called. The owner's answers at the intake stand in a plan too. */
const KINDS = {
  decision: "decision",
  "decision.answer": "owner-answer",
  "decision.signed": "signature",
  "complaint.answered": "answer",
  "progress.sent": "sent",
  "second-look": "second-look",
  "recheck.done": "recheck",
  "plan.release": "release",
  "estimate.addition": "addition",
  "plan.intake": "intake",
  claim: "claim",
  "claim.seen": "claim",
} as const;
export type PlanPaperIs = (typeof KINDS)[keyof typeof KINDS];

const ownKind = ({ kind }: Entry): PlanPaperIs | undefined =>
  Object.hasOwn(KINDS, kind) ? KINDS[kind as keyof typeof KINDS] : undefined;

type Fields = Readonly<Record<string, unknown>>;
const fieldsOf = (value: unknown): Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Fields) : {};

/** What one thing is about: everything ever said of it goes together, or an earlier word would be left. */
const ABOUT = ["job", "place", "complaint", "question", "addition", "item", "claim"] as const;
/** Said once and never written over: each is a paper of its own. */
const ONCE: ReadonlySet<PlanPaperIs> = new Set(["signature", "sent", "second-look", "recheck"]);

function keyOf(entry: Entry, is: PlanPaperIs): string {
  if (ONCE.has(is)) return idText(entry);
  const body = fieldsOf(entry.body);
  return `${is}|${ABOUT.map((field) => String(body[field] ?? "")).join("|")}`;
}

const WORDS = ["yes-now", "yes-by", "no", "tell-me-more"] as const;
const INSIDE = ["said", "answer", "release", "agreed", "says", "seen"] as const;
const SAID = ["because", "what", "words", "text", "says", "reason"] as const;

/** Who said what and when, read off a body whatever its version: `Anna, 2 Mar 2026, no, too dear`. */
function wordsOf({ body }: Entry): string {
  const all = [fieldsOf(body), ...INSIDE.map((field) => fieldsOf(fieldsOf(body)[field]))];
  const found = (field: string): readonly string[] =>
    all.flatMap((one) => (typeof one[field] === "string" && one[field] !== "" ? [one[field]] : []));
  const days = found("on").filter((on) => /^\d{4}-\d\d-\d\d$/.test(on));
  const word = WORDS.filter((one) => found("word").includes(one)).map((one) => t(`erase.word.${one}`));
  return [...found("who"), ...days.map(calendarDay), ...word, ...SAID.flatMap(found)].join(", ");
}

/** Everything that stands in a plan and is a paper. */
function standingIn(plan: PlanState): ReadonlySet<string> {
  const maps = [
    plan.decisions,
    plan.ownerAnswers,
    plan.answers,
    plan.secondLooks,
    plan.rechecked,
    plan.additions,
    plan.intake,
    plan.claims,
    plan.claimsSeen,
  ];
  const lists = [plan.signed, plan.progressSent, plan.release, ...maps.flatMap((map) => [...map.values()])];
  return new Set(lists.flatMap((list) => list.map(({ id }) => id)));
}

/** The papers of a plan, in the order in which their first words were said. */
export function planPapersOf(plan: PlanState): readonly Paper[] {
  const groups = new Map<string, { readonly is: PlanPaperIs; readonly entries: Entry[] }>();
  for (const entry of [...plan.ledger.log.values()].filter(isEntry)) {
    const is = ownKind(entry);
    if (is === undefined) continue;
    const key = keyOf(entry, is);
    const there = groups.get(key);
    if (there) there.entries.push(entry);
    else groups.set(key, { is, entries: [entry] });
  }
  const stands = standingIn(plan);
  return [...groups].map(([key, { is, entries }]) => {
    const ids = entries.map(idText);
    const shown = entries.filter((one) => stands.has(idText(one)));
    const told = (shown.length > 0 ? shown : entries).map(wordsOf).filter((words) => words !== "");
    return { key, is, words: told.at(-1) ?? "", hidden: shown.length === 0, ids };
  });
}

/** Entries of a newer version: what they say can't be shown here, and may be anybody's words. */
function unreadIn({ trouble }: FoldedState, offered: ReadonlySet<string>): readonly Paper[] {
  const unread = trouble.unknown.filter(({ id }) => !offered.has(id));
  return unread.map(({ id }) => ({ key: id, is: "unread", words: "", hidden: false, ids: [id] }));
}

/** Everything of a visit and its plan that can be deleted for good by itself. */
export function papersOfVisit(visit: VisitState, plan: PlanState | undefined): readonly Paper[] {
  const read = [...papersOf(visit), ...(plan ? planPapersOf(plan) : [])];
  const offered = new Set(read.flatMap(({ ids }) => ids));
  return [...read, ...[visit, ...(plan ? [plan] : [])].flatMap((one) => unreadIn(one, offered))];
}
