/** What a visit is after all its entries. Refuses to judge replies. */
import { type Grade, keyText, type ReplyKey } from "../terms/index.js";
import type {
  Bodies,
  FreeFinding,
  FrozenSheet,
  Ledger,
  Logged,
  ReplySlot,
  Standing,
  Stands,
  VisitState,
} from "./contract.js";
import { everIn, fold, liveIn, type Own, type Parts, setOrDrop } from "./fold.js";
import { compareShown } from "./identity.js";
import { KINDS, type Known } from "./kinds.js";
import { differ, sameReply } from "./same-value.js";
import { standingIn, stands, standsIn } from "./standing.js";

type Visit = Own<VisitState>;
type RegradeStands = Stands<Bodies["regrade"] & { readonly grade: Grade }>;

/** Field of a non-answer, which covers every field of the point there. */
export const ALL_FIELDS = "*";

const FILL: Parts<VisitState>["fill"] = {
  reply: (visit, ledger, slot) => fillReplies(visit.replies, ledger, slot),
  regrade: (visit, ledger, slot, rest) => setOrDrop(visit.regrades, rest, standsIn(ledger, slot, regradeOf)),
  finding: (visit, ledger, slot, rest) => setOrDrop(visit.found, rest, standsIn(ledger, slot, foundOf)),
  opened: (visit, ledger) => fillFrozen(visit, ledger),
  "sheet-added": (visit, ledger) => fillFrozen(visit, ledger),
  on: (visit, ledger, slot) => {
    visit.on = standsIn(ledger, slot, onOf);
  },
  odometer: (visit, ledger, slot) => {
    visit.odometer = standsIn(ledger, slot, odometerOf);
  },
  complaint: (visit, ledger, slot) => {
    visit.complaints = standsIn(ledger, slot, (e) => (e.kind === "visit.complaint" ? e.body : null));
  },
  note: (visit, ledger, slot) => {
    visit.notes = standsIn(ledger, slot, noteOf);
  },
  picture: (visit, ledger, slot) => {
    visit.pictures = standsIn(ledger, slot, pictureOf);
  },
  sound: (visit, ledger, slot) => {
    visit.sounds = standsIn(ledger, slot, (e) => (e.kind === "sound" ? e.body : null));
  },
  clock: (visit, ledger, slot) => {
    visit.clock = standsIn(ledger, slot, (e) => (e.kind === "visit.clock" ? e.body.clock : null));
  },
  told: (visit, ledger, slot) => {
    visit.told = standsIn(ledger, slot, (e) => (e.kind === "caution.told" ? e.body : null));
  },
  closing: (visit, ledger, slot) => fillClosing(visit, ledger, slot),
  "judged-again": (visit, ledger, slot) => {
    visit.judgedAgain = standsIn(ledger, slot, (e) => (e.kind === "visit.judged-again" ? e.body : null));
    fillFrozen(visit, ledger);
  },
};

const VISIT: Parts<VisitState> = {
  of: "visit",
  kinds: KINDS,
  begins: "opened|",
  empty: () => ({
    of: "visit",
    on: [],
    odometer: [],
    sheets: [],
    complaints: [],
    replies: new Map(),
    notes: [],
    pictures: [],
    sounds: [],
    regrades: new Map(),
    found: new Map(),
    clock: [],
    told: [],
    closings: [],
    reopened: [],
    judgedAgain: [],
  }),
  copy: (visit) => ({
    ...visit,
    replies: new Map(visit.replies),
    regrades: new Map(visit.regrades),
    found: new Map(visit.found),
  }),
  fill: FILL,
  join: (own, folded) => ({ ...own, ...folded }),
};

/** The visit these entries tell of, in whatever order, however often. Several streams: visits of one occasion. */
export const foldVisit = (entries: Iterable<Logged>): VisitState => fold(VISIT, entries);

export const noteOf = (e: Known): Bodies["note"] | null => (e.kind === "note" ? e.body : null);
export const pictureOf = (e: Known): Bodies["picture"] | null => (e.kind === "picture" ? e.body : null);

function onOf(e: Known): string | null {
  return e.kind === "visit.dated" || e.kind === "visit.opened" ? e.body.on : null;
}

function odometerOf(e: Known): VisitState["odometer"][number]["value"] | null {
  if (e.kind === "visit.odometer") return { value: e.body.value, unit: e.body.unit };
  return e.kind === "visit.opened" ? (e.body.odometer ?? null) : null;
}

function regradeOf(e: Known): RegradeStands["value"] | null {
  return e.kind === "regrade" && e.body.grade !== null ? { ...e.body, grade: e.body.grade } : null;
}

const foundOf = (e: Known): FreeFinding | null => (e.kind === "finding" ? e.body.found : null);

/**
 * Per sheet the edition frozen last; earliest opening, and what the newest froze. Judging again comes after both,
 * whatever the clocks said: it was done in view of them.
 */
function fillFrozen(visit: Visit, ledger: Ledger): void {
  const openings = standsIn(ledger, "opened|", (e) => (e.kind === "visit.opened" ? e.body : null));
  const [earliest] = openings;
  const newest = openings.at(-1);
  if (earliest) visit.opened = earliest;
  else delete visit.opened;
  const again = visit.judgedAgain.findLast(({ value }) => frozenWith(value))?.value;
  const frozen = (again && frozenWith(again)) ?? newest?.value;
  if (frozen) visit.frozen = { common: frozen.common, limits: frozen.limits };
  else delete visit.frozen;
  const bySheet = new Map<string, FrozenSheet>();
  for (const entry of [...standingIn(ledger, "opened|"), ...standingIn(ledger, "sheet-added|")].sort(compareShown)) {
    for (const sheet of frozenBy(entry)) bySheet.set(sheet.id, sheet);
  }
  for (const sheet of again?.sheets ?? []) bySheet.set(sheet.id, sheet);
  visit.sheets = [...bySheet.values()];
}

/** What judging again froze beside the sheets; nothing in its first version. */
function frozenWith({ common, limits }: Bodies["visit.judged-again"]): VisitState["frozen"] {
  return common !== undefined && limits !== undefined ? { common, limits } : undefined;
}

function frozenBy(entry: Known): readonly FrozenSheet[] {
  if (entry.kind === "visit.opened") return entry.body.sheets;
  return entry.kind === "visit.sheet-added" ? [entry.body] : [];
}

function fillClosing(visit: Visit, ledger: Ledger, slot: string): void {
  const standing = standingIn(ledger, slot);
  const closing = (e: Known): Bodies["visit.closed"] | null => (e.kind === "visit.closed" ? e.body : null);
  visit.closings = stands(liveIn(ledger, slot), closing);
  visit.reopened = stands(standing, (e) => (e.kind === "visit.reopened" ? e.body : null));
  const [closed] = stands(standing, closing);
  if (closed && visit.reopened.length === 0) visit.closed = closed;
  else delete visit.closed;
}

/** Brings every field of one point, place and state up to date. */
function fillReplies(replies: Map<string, ReplySlot>, ledger: Ledger, slot: string): void {
  for (const key of keysEver(ledger, slot)) replies.delete(keyText(key));
  const byField = new Map<string, { readonly key: ReplyKey; readonly standing: Standing[] }>();
  for (const entry of standingIn(ledger, slot)) {
    if (entry.kind !== "reply" || entry.body.value === null) continue;
    const { key, value } = entry.body;
    const field = byField.get(key.field) ?? { key, standing: [] };
    for (const one of stands([entry], () => value)) field.standing.push(one);
    byField.set(key.field, field);
  }
  const isAlsoRefused = byField.has(ALL_FIELDS) && byField.size > 1;
  for (const { key, standing } of byField.values()) {
    replies.set(keyText(key), { key, standing, differ: isAlsoRefused || differ(standing, sameReply) });
  }
}

function keysEver(ledger: Ledger, slot: string): readonly ReplyKey[] {
  const keys: ReplyKey[] = [];
  for (const entry of everIn(ledger, slot)) if (entry.kind === "reply") keys.push(entry.body.key);
  return keys;
}
