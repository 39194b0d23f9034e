import { expect, test } from "vitest";
import { bench, benchVisit, key, miniKnowledge, miniTree, until, words } from "../../../tests/support/app-bench.js";
import type { Asked, GateState } from "../../core/assess/contract.js";
import { foldVisit } from "../../core/record/index.js";
import type { Audience, ReplyKey, ReplyValue } from "../../core/terms/index.js";
import { nothingJudged } from "./before-judging.js";
import { atHand, gateBefore, mayEnterSeveral } from "./gates.js";
import { reply } from "./reply-acts.js";
import { type Looking, roundView } from "./round-view.js";
import { differing, isAnswered, wordsAfter } from "./standing.js";
import { nextOpen, stopsOf, whereToGoOn } from "./stops.js";
import { restOfPlace, sameElsewhere } from "./sweep.js";
import { note } from "./visit-acts.js";

const known = miniKnowledge();
const tree = miniTree();
const asked = (point: string, place: string, state = "w7-hang", openedBy: readonly string[] = []): Asked => ({
  point,
  place,
  state,
  fields: [],
  with: [],
  safetyCritical: false,
  openedBy,
});
const ROUND = [
  asked("hub.noise", "car", "w0-talk"),
  asked("hub.spin", "FL"),
  asked("hub.float", "FL"),
  asked("hub.spin", "FR"),
];

/** A look with these replies kept for real. */
async function looking(
  replies: readonly (readonly [ReplyKey, ReplyValue])[],
  who: Audience = "technician",
  notedGate?: string,
): Promise<Looking> {
  const on = bench();
  const { visit } = await benchVisit(on, who);
  for (const [at, value] of replies) await reply(on.journal, visit, at, value);
  if (notedGate !== undefined) await note(on.journal, visit, "no lift here", { point: notedGate });
  const opened = await until(on.journal.visit(visit), ({ is }) => is === "open");
  if (opened.is !== "open") throw new Error("the bench keeps what it is given");
  return { known, tree, who, asked: ROUND, suggested: [], visit: opened.state };
}
const at = (point: string, place: string, state = "w7-hang") => ({ point, place, state });

test("the round shows the open point in the reader's words, what stands, and what comes next", async () => {
  const view = roundView(await looking([[key("hub.spin", "FL", "feel"), words("rough")]]), at("hub.spin", "FL"));
  expect(view).toMatchObject({ place: "Front left", state: "Lifted", number: 1, of: 2, ticks: ["here", "open"] });
  expect(view?.open.question).toBe("How does it turn?");
  expect(view?.open.fields[0]?.words).toEqual([
    { id: "smooth", words: "smooth", chosen: false },
    { id: "rough", words: "rough", chosen: true },
    { id: "tight", words: "tight", chosen: false },
  ]);
  expect(view?.next).toMatchObject({ at: at("hub.float", "FL"), words: "Next point" });
});

test("the next place is named when this one is done, the next car state with it", async () => {
  const done = await looking([
    [key("hub.spin", "FL", "feel"), words("smooth")],
    [key("hub.float", "FL", "play"), { type: "reading", values: ["0.05"], unit: "mm" }],
  ]);
  expect(roundView(done, at("hub.float", "FL"))?.next).toMatchObject({ words: "Next place", says: "Front right" });
  const first = await looking([[key("hub.noise", "car", "heard", "w0-talk"), words("none")]]);
  expect(roundView(first, at("hub.noise", "car", "w0-talk"))?.next).toMatchObject({
    words: "Now: Lifted",
    says: "Front left",
  });
  expect(roundView(first, at("hub.spin", "FL"))?.begins).toBe("Wheels hang free.");
  expect(roundView(done, at("hub.spin", "FR"))?.begins).toBeUndefined();
});

test("where several replies may stand together, the field says so; where one stands, it does not", async () => {
  const look = await looking([]);
  const heard = roundView(look, at("hub.noise", "car", "w0-talk"))?.open.fields[0];
  expect(heard).toMatchObject({ several: true, says: "Choose all that are true." });
  const felt = roundView(look, at("hub.spin", "FL"))?.open.fields[0];
  expect(felt).toMatchObject({ several: false });
  expect(felt?.says).toBeUndefined();
});

test("a point that is not asked in this visit has no view", async () => {
  expect(roundView(await looking([]), at("hub.float", "car"))).toBeUndefined();
  expect(roundView(await looking([]), at("hub.spin", "RL"))).toBeUndefined();
});

test("a point no reply called for is offered at the end of its place, and opens there", async () => {
  const look = await looking([]);
  const also = roundView(look, at("hub.spin", "FR"))?.also.map((one) => one.at);
  expect(also).toContainEqual(at("hub.float", "FR"));
  expect(roundView(look, at("hub.spin", "FL"))?.also.map((one) => one.at)).not.toContainEqual(at("hub.float", "FL"));
  const opened = roundView(look, at("hub.float", "FR"));
  expect(opened).toMatchObject({ number: 2, of: 2, open: { at: at("hub.float", "FR") } });
  expect(opened?.also.map((one) => one.at)).not.toContainEqual(at("hub.float", "FR"));
});

test("a non-answer answers the whole point and says why", async () => {
  const look = await looking([
    [key("hub.spin", "FL", "*"), { type: "non-answer", nonAnswer: "not-reached", reason: "no-time" }],
  ]);
  expect(roundView(look, at("hub.spin", "FL"))?.open.nonAnswer).toMatchObject({ says: "Not reached: no time" });
  expect(roundView(look, at("hub.float", "FL"))?.folded).toMatchObject([
    { name: "Spin", says: "Not reached: no time", done: true },
  ]);
});

test("an opened point says what opened it, in the words of the finding", async () => {
  const look = { ...(await looking([])), asked: [...ROUND, asked("hub.float", "FR", "w7-hang", ["hub.r1"])] };
  expect(roundView(look, at("hub.spin", "FR"))?.folded).toMatchObject([{ says: "opened by The race breaks up." }]);
});

test("going on: where one was, else the first point without a reply, else the beginning", async () => {
  const look = await looking([[key("hub.noise", "car", "heard", "w0-talk"), words("none")]]);
  const stops = stopsOf(known, "technician", look, look.visit.replies);
  expect(whereToGoOn(known, stops, look.visit.replies, at("hub.spin", "FR"))).toEqual(at("hub.spin", "FR"));
  expect(whereToGoOn(known, stops, look.visit.replies, at("hub.gone", "FR"))).toEqual(at("hub.spin", "FL"));
  expect(nextOpen(known, stops, look.visit.replies, at("hub.spin", "FR"))).toEqual(at("hub.spin", "FL"));
});

test("what the complaint makes likely comes first at its place, and the way round stays", async () => {
  const look = { ...(await looking([])), suggested: [{ point: "hub.float", place: "FL", because: "sym.hum" }] };
  const stops = stopsOf(known, "technician", look, look.visit.replies);
  expect(stops.map((stop) => stop.asked.map((one) => `${one.point}@${one.place}`))).toEqual([
    ["hub.noise@car"],
    ["hub.float@FL", "hub.spin@FL"],
    ["hub.spin@FR"],
  ]);
});

test("an owner is not asked what only shows with the wheels off the ground", async () => {
  const look = await looking([], "owner");
  expect(stopsOf(known, "owner", look, look.visit.replies).map(({ state }) => state)).toEqual(["w0-talk"]);
});

test("'no fault seen' enters unremarkable words and leaves safety-critical points and readings alone", async () => {
  const look = await looking([]);
  const stop = stopsOf(known, "technician", look, look.visit.replies);
  const rest = (state: string, place: string) => {
    const one = stop.find((here) => here.state === state && here.place === place);
    if (!one) throw new Error("that stop is in the round");
    return restOfPlace(look, one);
  };
  expect(rest("w7-hang", "FL")).toMatchObject({ enters: [], left: [{ point: "hub.spin" }, { point: "hub.float" }] });
  expect(rest("w0-talk", "car").enters[0]?.replies).toEqual([
    { key: key("hub.noise", "car", "heard", "w0-talk"), value: words("none") },
  ]);
});

test("'the same everywhere' never copies a safety-critical reply or a reading", async () => {
  const look = await looking([
    [key("hub.spin", "FL", "feel"), words("smooth")],
    [key("hub.float", "FL", "play"), { type: "reading", values: ["0.05"], unit: "mm" }],
  ]);
  expect(sameElsewhere({ ...look, asked: [...ROUND, asked("hub.float", "FR")] }, at("hub.spin", "FL"))).toEqual([]);
  expect(sameElsewhere({ ...look, asked: [...ROUND, asked("hub.float", "FR")] }, at("hub.float", "FL"))).toEqual([]);
});

test("an exclusive word stands alone, others stand together in the sheet's order", () => {
  const noise = known.points.get("hub.noise")?.point;
  if (!noise) throw new Error("the small sheet has it");
  expect(wordsAfter(noise, "heard", ["none"], "click", true)).toEqual(["click"]);
  expect(wordsAfter(noise, "heard", ["click"], "hum", true)).toEqual(["hum", "click"]);
  expect(wordsAfter(noise, "heard", ["hum", "click"], "none", true)).toEqual(["none"]);
  expect(wordsAfter(noise, "heard", ["hum"], "hum", false)).toEqual([]);
  expect(isAnswered(foldVisit([]).replies, noise, at("hub.noise", "car", "w0-talk"))).toBe(false);
});

test("replies that differ are found; nothing differs in a visit of one mind", async () => {
  const look = await looking([[key("hub.spin", "FL", "feel"), words("smooth")]]);
  expect(differing(look.visit.replies)).toEqual([]);
});

test("before anything is entered only unguarded car states and points that wait for nothing are asked", () => {
  const empty = nothingJudged(known, tree, "technician");
  // The road is guarded by a gate; the float waits for the spin.
  expect(empty.asked.map((one) => `${one.state} ${one.point}@${one.place}`)).toEqual([
    "w0-talk hub.noise@car",
    "w7-hang hub.spin@FL",
    "w7-hang hub.spin@FR",
  ]);
  expect(empty.points).toEqual([]);
});

/** A gate of the given state before a car state or an act. */
const gateOf = (guards: string, state: GateState["state"]): GateState => ({
  gate: "gate.test",
  guards,
  drives: false,
  state,
  first: [],
  trippedBy: [],
  otherwise: state,
  missingSheets: [],
  cautions: [],
  signals: [],
});

test("a gate stands before its state until it is cleared or noted; tripped it lets no note pass", async () => {
  const road = { id: "w4-road", lifted: false };
  const before = (state: GateState["state"], visit: Looking["visit"], at = road) =>
    gateBefore({ gates: [gateOf("w4-road", state)] }, visit.notes, at, "")?.state;
  const bare = (await looking([])).visit;
  expect(before("not cleared", bare)).toBe("not cleared");
  expect(before("not cleared", bare, { id: "w0-talk", lifted: false })).toBeUndefined();
  expect(before("cleared", bare)).toBeUndefined();
  const noted = (await looking([], "technician", "gate.test")).visit;
  expect(before("not cleared", noted)).toBeUndefined();
  expect(before("tripped", noted)).toBe("tripped");
});

test("the gate before lifting stands before every lifted state, and a sound place elsewhere may be noted", async () => {
  const hang = { id: "w7-hang", lifted: true };
  const gates = [gateOf("lift", "tripped")];
  expect(gateBefore({ gates }, (await looking([])).visit.notes, hang, "")?.gate).toBe("gate.test");
  const noted = (await looking([], "technician", "gate.test")).visit;
  expect(gateBefore({ gates }, noted.notes, hang, "")).toBeUndefined();
});

test("hot parts and fuel vapour are warned of at every point once their gate is tripped, not before", () => {
  const gates = (state: GateState["state"]) => ["touch", "spark", "w4-road", "lift"].map((act) => gateOf(act, state));
  const warned = (state: GateState["state"]) => atHand({ gates: gates(state) }).map(({ guards }) => guards);
  expect(warned("tripped")).toEqual(["touch", "spark"]);
  expect(warned("not cleared")).toEqual([]);
  expect(warned("cleared")).toEqual([]);
});

test("a shut gate hides 'no fault seen', also at a point of its own set that may be answered", async () => {
  const road = { id: "w4-road", lifted: false };
  const look = { ...(await looking([])), asked: [asked("hub.noise", "car", "w4-road")] };
  const own: GateState = {
    ...gateOf("w4-road", "not cleared"),
    first: [{ point: "hub.noise", place: "car", because: "gate.test" }],
  };
  // Behind the open gate there is something to enter, so that what follows can fail.
  expect(mayEnterSeveral({ gates: [gateOf("w4-road", "cleared")] }, look.visit, road)).toBe(true);
  const [stop] = stopsOf(known, "technician", look, look.visit.replies);
  expect(stop && restOfPlace(look, stop).enters).toHaveLength(1);
  // The point itself is let through; entering several at once is not.
  expect(gateBefore({ gates: [own] }, look.visit.notes, road, "hub.noise")).toBeUndefined();
  for (const state of ["not cleared", "tripped"] as const)
    expect(mayEnterSeveral({ gates: [{ ...own, state }] }, look.visit, road)).toBe(false);
  const noted = (await looking([], "technician", "gate.test")).visit;
  expect(mayEnterSeveral({ gates: [own] }, noted, road)).toBe(true);
  expect(mayEnterSeveral({ gates: [{ ...own, state: "tripped" }] }, noted, road)).toBe(false);
});
