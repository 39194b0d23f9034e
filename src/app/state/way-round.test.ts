/** The way round the car, made again out of any order of looking; what fits is not guessed without an order. */
import { expect, test } from "vitest";
import { miniKnowledge, miniTree } from "../../../tests/support/app-bench.js";
import type { Asked } from "../../core/assess/contract.js";
import { stillWorth } from "./still-worth.js";
import type { Stop } from "./stops.js";
import { wayRound } from "./way-round.js";

const asked = (state: string, place: string, point: string): Asked => ({
  state,
  place,
  point,
  fields: [],
  with: [],
  safetyCritical: false,
  openedBy: [],
});
const stop = (state: string, place: string, done: number, ...points: readonly string[]): Stop => ({
  state,
  place,
  done,
  asked: points.map((point) => asked(state, place, point)),
});

test("a place looked at in two laps is one stop again, in walking order, with what was answered in both", () => {
  const looking = { known: miniKnowledge(), tree: miniTree() };
  const way = wayRound(looking, [
    stop("w7-hang", "RL", 1, "hub.spin"),
    stop("w0-talk", "car", 0, "hub.noise"),
    stop("w7-hang", "FL", 0, "hub.spin"),
    stop("w7-hang", "RL", 1, "hub.float"),
  ]);
  expect(way.map((one) => `${one.state} ${one.place} ${one.done}`)).toEqual([
    "w0-talk car 0",
    "w7-hang FL 0",
    "w7-hang RL 2",
  ]);
  expect(way.at(-1)?.asked.map(({ point }) => point)).toEqual(["hub.spin", "hub.float"]);
});

test("while the order of value is not there, nobody is told that the rest fits into the time", () => {
  const visit = { replies: new Map(), stream: "visit:never-judged" };
  const assessment = { asked: [asked("w0-talk", "car", "hub.noise")] };
  const worth = stillWorth({ known: miniKnowledge(), who: "technician", assessment, visit }, 60);
  expect(worth).toEqual({ open: 1, beyond: undefined, gravest: [] });
});
