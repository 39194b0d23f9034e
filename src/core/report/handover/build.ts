/** Makes the one model of a hand-over from what is known of a visit. Pure; every form is written from it. */
import { buyingOf } from "./buying.js";
import { dueDates } from "./due-dates.js";
import { cannotWait, complaintLines, lookedOf, moneyLine } from "./first-page.js";
import type { CautionTold, HandoverInput } from "./input.js";
import { lettered } from "./lettering.js";
import type { HandoverModel } from "./model.js";
import { nextSteps } from "./next-steps.js";
import { withoutPersons } from "./private.js";
import { gateState, standingCautions, standingOf } from "./standing.js";
import { verdictOf } from "./verdict.js";

const SIGNALS: readonly CautionTold["signal"][] = ["danger", "warning", "caution", "notice"];

/** The hand-over for whom the input is made. A buyer's holds nothing personal of the seller. */
export function handover(given: HandoverInput): HandoverModel {
  const input = given.for === "buyer" ? withoutPersons(given) : given;
  const standing = standingOf(input.faults);
  const parts = lettered(input);
  const { findings, work } = parts;
  const verdict = verdictOf(input, findings, work, standing);
  const dates = dueDates(input, work);
  const pressing = cannotWait(parts);
  const money = moneyLine(input, pressing);
  const isBuyer = input.for === "buyer";
  const gates = input.gates.map((gate) => ({ ...gate, state: gateState(gate, standing) }));
  const { madeAt, engine, visit, car, notSeen, readings, sheets, plan, release } = input;
  return {
    for: input.for,
    madeAt,
    engine,
    visit,
    car,
    first: {
      complaints: complaintLines(input, parts),
      verdict,
      cannotWait: pressing,
      next: nextSteps(input, parts, { pressing, verdict, dates, standing }),
      looked: lookedOf(input),
      ...(money === undefined || isBuyer ? {} : { money }),
    },
    findings,
    notSeen,
    gates,
    cautions: [...standingCautions(input.cautions, standing)].sort(
      (a, b) => SIGNALS.indexOf(a.signal) - SIGNALS.indexOf(b.signal),
    ),
    readings,
    work,
    declined: work.filter(({ decision }) => decision?.is === "no"),
    done: input.done ?? [],
    ...(input.firstUntold === undefined || isBuyer ? {} : { firstUntold: input.firstUntold }),
    ...(input.money === undefined ? {} : { money: input.money }),
    loose: input.loose ?? [],
    isProgressUnread: input.isProgressUnread === true,
    visitsUnread: input.visitsUnread ?? 0,
    trends: input.trends ?? [],
    dates,
    pictures: input.pictures ?? [],
    picturesLeft: input.picturesLeft ?? [],
    sheets,
    ...(plan === undefined ? {} : { plan }),
    ...(release === undefined ? {} : { release }),
    signatures: isBuyer ? [] : (input.signatures ?? []),
    ...(isBuyer ? { buying: buyingOf(parts, { ...input, gates }) } : {}),
  };
}
