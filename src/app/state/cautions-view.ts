/**
 * Cautions and gates as the screens show them: worst signal first, when the owner was told, what a gate waits for.
 * Pure; whether a caution or gate stands is core/assess's word.
 */

import type { CautionDue, GateState } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import { toTell } from "../../core/terms/index.js";
import { clock, day, isTextKey, t } from "../texts/index.js";
import { answerable, settleHref, settleText, type Telling } from "./because.js";
import { mayBePassed, unprovenNote } from "./gates.js";
import { atPlace, faultSays, type Knowledge, placeName, stateName } from "./knowledge.js";
import { to } from "./routes.js";

const SIGNALS = ["danger", "warning", "caution", "notice"] as const;
export type Signal = (typeof SIGNALS)[number];

export interface CautionLine {
  readonly id: string;
  readonly signal: Signal;
  readonly word: string;
  readonly not: string;
  readonly why: string;
  readonly can: string;
  readonly todo: string;
  readonly places?: string;
  readonly told?: string;
}

/** One caution in words; its id alone where the shared files of this visit don't hold it. */
export function cautionLine(
  known: Knowledge,
  caution: string,
  told: VisitState["told"],
  places: readonly string[] = [],
): CautionLine {
  const text = known.words.cautions[caution];
  const signal = known.cautions.get(caution)?.signal ?? "warning";
  const last = told.filter(({ value }) => value.caution === caution).at(-1);
  const named = places.filter((place) => place !== "car").map((place) => placeName(known, place));
  return {
    id: caution,
    signal,
    word: t(`signal.${signal}`),
    not: text?.not ?? caution,
    why: text?.why ?? "",
    can: text?.can ?? "",
    todo: text?.do ?? "",
    ...(named.length > 0 ? { places: t("cautions.at", { places: named.join(", ") }) } : {}),
    ...(last ? { told: t("cautions.told", { when: `${day(last.at.wall)}, ${clock(last.at.wall)}` }) } : {}),
  };
}

/** Cautions of one signal word in the order the shared files list them: the most telling first. */
const rankIn = (known: Knowledge, due: CautionDue): number => [...known.cautions.keys()].indexOf(due.caution);

/** The worst caution that stands, where its signal word is DANGER or WARNING: shown wherever the car is judged. */
export const worstCaution = (
  known: Knowledge,
  due: readonly CautionDue[],
  told: VisitState["told"],
): CautionLine | undefined =>
  cautionLines(known, due, told).find((line) => line.signal === "danger" || line.signal === "warning");

/** Every caution that is told, worst signal first. */
export function cautionLines(
  known: Knowledge,
  due: readonly CautionDue[],
  told: VisitState["told"],
): readonly CautionLine[] {
  return [...toTell(due)]
    .sort((a, b) => SIGNALS.indexOf(a.signal) - SIGNALS.indexOf(b.signal) || rankIn(known, a) - rankIn(known, b))
    .map((one) => cautionLine(known, one.caution, told, one.places));
}

export interface GateLine {
  readonly id: string;
  readonly state: "tripped" | "cleared" | "not-cleared";
  readonly title: string;
  /** Its own page. */
  readonly href: string;
  readonly stateWords: string;
  readonly says: string;
  readonly guards: string;
  readonly first: readonly { readonly id: string; readonly words: string; readonly href?: string }[];
  readonly cautions: readonly CautionLine[];
  readonly missing?: string;
  /** Why it was passed unproven, where someone noted that. */
  readonly unproven?: string;
}

/** Acts a gate may guard besides car states. */
const ACTS = ["lift", "drive-away", "touch", "spark"] as const;
type Act = (typeof ACTS)[number];
const isAct = (guards: string): guards is Act => (ACTS as readonly string[]).includes(guards);

/** What tripped a gate or what it waits for, one line each. */
function firstOf(telling: Telling, gate: GateState): GateLine["first"] {
  const faults = gate.trippedBy.flatMap((cause) =>
    cause.kind === "dangerous"
      ? [
          {
            id: `${cause.fault} ${cause.place}`,
            words: `${faultSays(telling.known, cause.fault, [], telling.who).says}${atPlace(telling.known, cause.place)}`,
            href: to("finding", { visit: telling.visit, fault: cause.fault, place: cause.place }),
          },
        ]
      : [],
  );
  return [
    ...faults,
    // Points of sheets that are not open here can't be answered here: their sheets are named instead.
    ...answerable(telling, gate.first).map((one) => ({
      id: `${one.point} ${one.place}`,
      words: settleText(telling, one),
      ...settleHref(telling, one),
    })),
  ];
}

/**
 * Tripped, a gate tells all its cautions. Not cleared, it tells what to mind at the step; that there is danger is
 * said only once it is known.
 */
function cautionsTold({ state, cautions, signals }: GateState): readonly string[] {
  if (state === "cleared") return [];
  return state === "tripped" ? cautions : cautions.filter((_, index) => signals[index] !== "danger");
}

/** A sheet that is not open, by its subject. */
function sheetName(id: string): string {
  const key = `sheet-id.${id}`;
  return isTextKey(key) ? t(key as "sheet-id.brk") : id;
}

export function gateLine(telling: Telling, gate: GateState, visit: Pick<VisitState, "notes" | "told">): GateLine {
  const { known } = telling;
  const text = known.words.gates[gate.gate];
  const state = gate.state === "not cleared" ? "not-cleared" : gate.state;
  const unproven = mayBePassed(gate) ? unprovenNote(visit.notes, gate.gate) : undefined;
  return {
    id: gate.gate,
    state,
    title: text?.name ?? gate.gate,
    href: to("gate", { visit: telling.visit, gate: gate.gate }),
    stateWords: t(`gate.${state}`),
    says: state === "tripped" ? (text?.tripped ?? "") : state === "not-cleared" ? (text?.first ?? "") : "",
    guards: isAct(gate.guards) ? t(`gate.act.${gate.guards}`) : stateName(known, gate.guards),
    first: firstOf(telling, gate),
    cautions: cautionsTold(gate).map((caution) => cautionLine(known, caution, visit.told)),
    ...(gate.missingSheets.length > 0
      ? { missing: t("gate.missing", { sheets: gate.missingSheets.map(sheetName).join(", ") }) }
      : {}),
    ...(unproven === undefined ? {} : { unproven: t("gate.unproven.noted", { why: unproven }) }),
  };
}
