import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import type { Asked } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import { buildPlaces, type PlaceDef, type Point } from "../../core/sheet/run.js";
import { keyText, type ReplyValue } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";
import { keyOf, type PointAt } from "./standing.js";
import { sameElsewhere } from "./sweep.js";

const JOINTS: readonly PlaceDef[] = ["FL", "FR"].flatMap((corner) =>
  ["upper", "lower", "damper"].map((joint) => ({ id: `${corner}-${joint}`, kind: "joint", in: corner })),
);
const boot: Point = {
  id: "hub.boot",
  place: "joint",
  states: ["w7-hang"],
  fields: { look: { words: ["whole", "split"] } },
  who: ["technician"],
};
const base = miniKnowledge();
const known: Knowledge = {
  ...base,
  points: new Map([
    ...base.points,
    ["hub.boot", { point: boot, text: { name: "Boot", ask: {} }, sheet: "hub" }],
    [
      "hub.kind",
      { point: { ...boot, id: "hub.kind", states: ["w0-talk"] }, text: { name: "Kind", ask: {} }, sheet: "hub" },
    ],
  ]),
};
const { tree } = buildPlaces([...base.common.places, ...JOINTS]);
const asked = (point: string, state: string): readonly Asked[] =>
  JOINTS.map(({ id }) => ({ point, place: id, state, fields: [], with: [], safetyCritical: false, openedBy: [] }));

function replied(
  replies: readonly (readonly [PointAt, ReplyValue])[],
): Pick<VisitState, "replies" | "notes" | "pictures"> {
  const slots = replies.map(([at, value]) => {
    const key = keyOf(at, value.type === "non-answer" ? "*" : "look");
    return [
      keyText(key),
      { key, standing: [{ id: "e1", value, at: { wall: 1, count: 0 }, by: "p" }], differ: false },
    ] as const;
  });
  return { replies: new Map(slots), notes: [], pictures: [] };
}
const split: ReplyValue = { type: "words", words: ["split"] };

test("'all joints here the same' enters the reply at the other joints of that corner, and at no other corner's", () => {
  const at = { point: "hub.boot", place: "FL-upper", state: "w7-hang" };
  const targets = sameElsewhere(
    { known, tree, asked: asked("hub.boot", "w7-hang"), visit: replied([[at, split]]) },
    at,
  );
  expect(targets.map((one) => one.at.place)).toEqual(["FL-lower", "FL-damper"]);
  expect(targets[0]?.replies).toEqual([{ key: keyOf({ ...at, place: "FL-lower" }, "look"), value: split }]);
});

test("a joint that was answered by itself is left as it was answered", () => {
  const at = { point: "hub.boot", place: "FL-upper", state: "w7-hang" };
  const visit = replied([
    [at, split],
    [
      { ...at, place: "FL-damper" },
      { type: "words", words: ["whole"] },
    ],
  ]);
  const targets = sameElsewhere({ known, tree, asked: asked("hub.boot", "w7-hang"), visit }, at);
  expect(targets.map((one) => one.at.place)).toEqual(["FL-lower"]);
});

test("what is told before anything is touched may hold for the whole car", () => {
  const at = { point: "hub.kind", place: "FL-upper", state: "w0-talk" };
  const targets = sameElsewhere(
    { known, tree, asked: asked("hub.kind", "w0-talk"), visit: replied([[at, split]]) },
    at,
  );
  expect(targets).toHaveLength(JOINTS.length - 1);
});
