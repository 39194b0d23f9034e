import { expect, test } from "vitest";
import { miniKnowledge, miniTree } from "../../../tests/support/app-bench.js";
import type { Asked } from "../../core/assess/contract.js";
import type { Point } from "../../core/sheet/run.js";
import { keyText, type ReplyValue } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";
import { entryOf, readingRound } from "./reading-round.js";
import type { Looking } from "./round-view.js";
import { keyOf, type PointAt } from "./standing.js";

const heat = (id: string): Point => ({
  id,
  place: "corner",
  states: ["w7-hang"],
  fields: { reading: { quantity: "temperature", unit: "Cel", window: [-20, 250] } },
  who: ["technician"],
});
const base = miniKnowledge();
const known: Knowledge = {
  ...base,
  points: new Map([
    ...base.points,
    ["hub.heat", { point: heat("hub.heat"), text: { name: "Hub heat", ask: {} }, sheet: "hub" }],
    ["disc.heat", { point: heat("disc.heat"), text: { name: "Disc heat", ask: {} }, sheet: "hub" }],
  ]),
};
const asked = (place: string, along: readonly string[]): Asked => ({
  point: "hub.heat",
  place,
  state: "w7-hang",
  fields: [],
  with: along,
  safetyCritical: false,
  openedBy: [],
});
const at = (point: string, place: string): PointAt => ({ point, place, state: "w7-hang" });
const spot = (point: string, place: string) => ({ at: at(point, place), field: "reading" });

function looking(
  replied: readonly (readonly [PointAt, ReplyValue])[],
  along: readonly string[] = ["disc.heat"],
): Looking {
  const slots = replied.map(([one, value]) => {
    const key = keyOf(one, value.type === "non-answer" ? "*" : "reading");
    const standing = [{ id: "e1", value, at: { wall: 1, count: 0 }, by: "p" }];
    return [keyText(key), { key, standing, differ: false }] as const;
  });
  return {
    known,
    tree: miniTree(),
    who: "technician",
    asked: [asked("FL", along), asked("FR", along)],
    suggested: [],
    visit: { replies: new Map(slots), notes: [], pictures: [] },
  };
}
const warm: ReplyValue = { type: "reading", values: ["41"], unit: "Cel" };

test("hub and disc are one round of the thermometer: both at a wheel, then the next wheel", () => {
  const look = looking([[at("hub.heat", "FL"), warm]]);
  expect(readingRound(look, spot("hub.heat", "FL"))).toEqual({
    next: { ...spot("disc.heat", "FL"), words: "Disc heat" },
    done: 1,
    all: 4,
  });
  expect(readingRound(look, spot("disc.heat", "FL"))?.next).toMatchObject({
    ...spot("hub.heat", "FR"),
    words: "Front right",
  });
});

test("a round begun in the middle comes back to what was passed, and ends when all is read", () => {
  const three = ["hub.heat FR", "disc.heat FR", "disc.heat FL"].map((name): readonly [PointAt, ReplyValue] => {
    const [point = "", place = ""] = name.split(" ");
    return [at(point, place), warm];
  });
  expect(readingRound(looking(three), spot("disc.heat", "FR"))?.next).toMatchObject(spot("hub.heat", "FL"));
  const all = readingRound(looking([...three, [at("hub.heat", "FL"), warm]]), spot("hub.heat", "FL"));
  expect(all).toEqual({ done: 4, all: 4 });
});

test("a wheel that could not be reached is left out; a reading asked once has no round", () => {
  const seized: ReplyValue = { type: "non-answer", nonAnswer: "not-reached", reason: "covered" };
  expect(readingRound(looking([[at("hub.heat", "FR"), seized]]), spot("disc.heat", "FL"))).toMatchObject({ all: 3 });
  const look = looking([], []);
  expect(readingRound({ ...look, asked: look.asked.slice(0, 1) }, spot("hub.heat", "FL"))).toBeUndefined();
});

test("after the disc, asked with the hub, one goes back to the hub's entry at that wheel; the hub itself stays", () => {
  const { asked: all } = looking([]);
  expect(entryOf(all, at("disc.heat", "FR"))).toEqual(at("hub.heat", "FR"));
  expect(entryOf(all, at("hub.heat", "FL"))).toEqual(at("hub.heat", "FL"));
  // Asked nowhere, or in another car state: it stands for itself.
  expect(entryOf(all, { ...at("disc.heat", "FR"), state: "w5-hot" })).toEqual({
    ...at("disc.heat", "FR"),
    state: "w5-hot",
  });
});
