/**
 * What may be asked of an owner at home: standing, kneeling or sitting beside or in the car, on level ground, engine off
 * and cold unless the step says otherwise; nothing raised, nothing apart, no fuel or brake part opened. Judges a point
 * by its car states, its tool, the gates before it and every sentence shown with it. Knows no sheet by name.
 */
import type { Common, Point, PointText } from "../../src/core/sheet/run.js";

/** What an owner may have in the hand; a spanner only for the nuts of a wheel that stands on the ground. */
const IN_HAND: ReadonlySet<string> = new Set([
  ...["papers", "foot", "hand", "eye", "ears", "nose", "torch", "paper", "rag", "wire", "rule", "jug", "hose"],
  ...["odometer", "speedometer", "stopwatch", "hygrometer", "ir-thermometer", "spanner", "tyre-gauge", "tread-gauge"],
]);

/** A sentence that forbids, or leaves it to the workshop, asks for nothing. */
const EXCUSED = /\b(?:never|nobody|no one|nothing|not|don't|leave it|workshop|garage)\b/i;
/** Mats and luggage are no part of the car. */
const LOOSE_THINGS = /\b(?:mat|mats|carpet|luggage|spare|pockets)\b/i;

const ACTS: readonly (readonly [what: string, said: RegExp])[] = [
  [
    "raises the car",
    /\bjack(?:ed)?(?: \w+){0,2} up\b|\bon (?:stands|ramps|the jack|a jack)\b|\braise\b|\blift (?:the|your) (?:car|wheel)\b|\bin the air\b|\bwheels? off\b/i,
  ],
  ["goes under the car", /\b(?:lie|crawl|get|reach|roll) (?:\w+ )?under\b/i],
  [
    "takes something apart",
    /\b(?:unscrew|undo|unbolt|remove|slacken|loosen|dismantle|prise|drill|unplug)\b|\btake \w+(?: \w+)? (?:off|apart|out)\b|\bpull (?!away)(?:\w+ ){1,4}(?:back|off|out)\b/i,
  ],
  [
    "opens a brake or fuel part",
    /\b(?:bleed|bleeder|nipple)\b|\bcap\b.*\blift it\b|\b(?:under|lift|open|off) the (?:cap|pot|reservoir|tank)\b|\bdrop into\b|\bcap off\b/i,
  ],
];
const ELECTRIC =
  /\bstart (?:it|the engine)\b|\bengine running\b|\bignition on\b|\bturn the key\b|\bbattery (?:on|off)\b/i;
const SNIFFED = /\bsniff\b|\bfirst breath\b/i;
const HANDS_OFF = /\bnever on\b|\barm's length\b|\btouch nothing\b|\bkeep off\b/i;

const sentences = (text: PointText): readonly string[] =>
  [text.ask.owner, text.how, text.trap].flatMap((said) => said?.split(/(?<=[.?!])\s+/) ?? []);

/** Why this point is nothing for an owner at home in this car state; empty when it is safe. */
export function unsafeAtHome(
  point: Point,
  text: PointText,
  stateId: string,
  common: Pick<Common, "states" | "gates">,
): readonly string[] {
  const state = common.states.find(({ id }) => id === stateId);
  const told = sentences(text);
  const all = told.join(" ");
  const found: string[] = [];
  if (!state || state.lifted) found.push(`the car is off the ground in ${stateId}`);
  if (point.tool !== undefined && !IN_HAND.has(point.tool)) found.push(`wants ${point.tool}`);
  if (point.tool === "spanner" && !/\bnuts?\b.*maker's torque/is.test(all))
    found.push("a spanner for more than wheel nuts");
  for (const sentence of told) {
    if (EXCUSED.test(sentence)) continue;
    for (const [what, said] of ACTS)
      if (said.test(sentence) && !(LOOSE_THINGS.test(sentence) && what !== "opens a brake or fuel part"))
        found.push(`${what}: ${sentence}`);
  }
  const guards = common.gates.filter((gate) => gate.guards === stateId);
  const sniffs = guards.some((gate) => (gate.set ?? []).some((one) => /smell/.test(one)));
  const isDriven = /road/.test(stateId);
  if (isDriven && !sniffs) found.push("driven without a gate that asks for the smell of fuel");
  if (!isDriven && told.some((one) => ELECTRIC.test(one) && !EXCUSED.test(one)) && !SNIFFED.test(all))
    found.push("engine or key before sniffing for fuel");
  if (state?.within !== undefined && !HANDS_OFF.test(all)) found.push("hot, and hands are not kept off");
  return found;
}
