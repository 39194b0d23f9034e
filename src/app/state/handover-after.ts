/**
 * What people said once the findings stood: answers to complaints, the owner's word, what is due after some way, handing
 * the car back. As a hand-over takes it. Pure; where people differ nothing counts as said.
 */
import type { ComplaintStands } from "../../core/plan/index.js";
import type {
  ComplaintAnswer,
  ComplaintTold,
  DateTold,
  DecisionTold,
  ReleaseTold,
  SignatureTold,
} from "../../core/report/index.js";
import { signatureDrawing } from "../../core/report/index.js";
import { t as h } from "../texts/hand-over.js";
import { t } from "../texts/release.js";
import { decisionTold } from "./decision-told.js";
import { decisionFacts } from "./decisions-view.js";
import type { HandoverGround } from "./handover-ground.js";
import { placeName } from "./knowledge.js";
import { last } from "./plan-input.js";
import { jobTitle } from "./plan-words.js";
import { checkDate, rechecksIn } from "./rechecks-in.js";
import { worksIn } from "./release-facts.js";

function answerTold({ answer, differ }: ComplaintStands): ComplaintAnswer | undefined {
  if (answer === undefined || differ) return undefined;
  const { word, findings, needs, words } = answer;
  const said = words === "" ? {} : { words };
  if (word === "found") return { is: "found", faults: findings, ...said };
  if (word === "not-heard") return { is: "not-met", ...said };
  const what = [...(needs === undefined ? [] : [t(`heard.needs.${needs}`)]), ...(words === "" ? [] : [words])];
  return { is: "needs", what: what.join("; ") };
}

/** Those of this visit and those carried on. While a plan is still being read all of them stand, each saying so. */
export function complaintsTold({ heard, visit, earlier }: HandoverGround): readonly ComplaintTold[] {
  if (!heard)
    return [...earlier, visit].flatMap(({ complaints }) =>
      complaints.map(({ id, value }) => ({ id, words: value.text, answer: { is: "not-read" } as const })),
    );
  return heard.map((one): ComplaintTold => {
    const answer = answerTold(one);
    return { id: one.id, words: one.text, ...(answer ? { answer } : {}) };
  });
}

export const decisionOn = ({ said, plan }: HandoverGround, id: string): DecisionTold | undefined =>
  decisionTold(decisionFacts({ said, plan }, id));

/** Every signature given, with how many of the words it was given for stand unchanged. */
export function signaturesTold({ said }: HandoverGround): readonly SignatureTold[] {
  const standing = new Set([...said.decisions.values()].flat().map(({ id }) => id));
  return said.signed.map(({ id, value: { who, on, decisions, drawn } }) => ({
    id,
    who,
    on,
    of: decisions.length,
    standing: decisions.filter((one) => standing.has(one)).length,
    ...(drawn ? { drawing: signatureDrawing(drawn) } : {}),
  }));
}

/**
 * Left standing, or taken away on a trailer, is not released: it must not be driven. Where two people said different
 * things, that one stands.
 */
export function releaseTold({ said }: HandoverGround): ReleaseTold | undefined {
  const release = said.release.findLast(({ value }) => value.how !== "driven")?.value ?? last(said.release);
  if (!release) return undefined;
  const { how, who, on, told } = release;
  const words = told.join("; ");
  return { is: how === "driven" ? "released" : "not-released", who, on, ...(words === "" ? {} : { words }) };
}

/** What is tightened or looked at again after some way, as far as nobody has yet. */
export function rechecksTold(ground: HandoverGround): readonly DateTold[] {
  const { telling, earlier } = ground;
  const handing = { ...ground, known: telling.known, param: telling.visit };
  return rechecksIn(handing, worksIn(handing, []), earlier)
    .filter(({ done }) => done === undefined)
    .map(({ id, is, job, places, km, on }) => ({
      id: checkDate(id),
      is: is === "wheel-nuts" ? "re-torque" : "look-again",
      words:
        is === "wheel-nuts"
          ? h("hand-over.nuts", { places: places.map((place) => placeName(telling.known, place)).join(", ") })
          : h("hand-over.recheck", { job: jobTitle(telling, `${job ?? ""}@${places[0] ?? "car"}`) }),
      on,
      distance: { value: km, unit: "km" },
    }));
}
