import { expect, test } from "vitest";
import { miniKnowledge, miniTree } from "../../../tests/support/app-bench.js";
import type { Asked } from "../../core/assess/contract.js";
import type { Audience } from "../../core/terms/index.js";
import { findPoints } from "./find-view.js";
import type { Looking } from "./round-view.js";

const known = miniKnowledge();
const asked = (point: string, place: string, state: string, along: readonly string[] = []): Asked => ({
  point,
  place,
  state,
  fields: [],
  with: along,
  safetyCritical: false,
  openedBy: [],
});
const looking = (who: Audience, list: readonly Asked[]): Looking => ({
  known,
  tree: miniTree(),
  who,
  asked: list,
  suggested: [],
  visit: { replies: new Map(), notes: [], pictures: [] },
});
const ROUND = [
  asked("hub.noise", "car", "w0-talk"),
  asked("hub.spin", "FL", "w7-hang"),
  asked("hub.spin", "FR", "w7-hang"),
];
const where = (who: Audience, typed: string, list: readonly Asked[] = ROUND): readonly string[] =>
  findPoints(looking(who, list), typed).flatMap(({ point, spots }) => spots.map(({ at }) => `${point} ${at.place}`));

test("a word finds every place of a point, a word of the place narrows it", () => {
  expect(where("technician", "turn")).toEqual(["hub.spin FL", "hub.spin FR"]);
  expect(where("technician", "turn right")).toEqual(["hub.spin FR"]);
  expect(where("technician", "RIGHT  tur")).toEqual(["hub.spin FR"]);
  expect(where("technician", "turn rear")).toEqual([]);
  expect(where("technician", "  ")).toEqual([]);
});

test("a reply finds its point, the middle of a word finds nothing", () => {
  expect(where("technician", "rough")).toEqual(["hub.spin FL", "hub.spin FR"]);
  expect(where("technician", "ough")).toEqual([]);
});

test("a point asked together with another opens with that one", () => {
  const list = [asked("hub.spin", "FL", "w7-hang", ["hub.float"])];
  const found = findPoints(looking("technician", list), "end float left").find(({ point }) => point === "hub.float");
  expect(found?.spots.map(({ at }) => at)).toEqual([{ point: "hub.spin", place: "FL", state: "w7-hang" }]);
});
