import { expect, test } from "vitest";
import { act, HASH_A, HASH_B } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { miniKnowledge, miniTree } from "../../../tests/support/app-bench.js";
import { draftPicture } from "../../core/record/index.js";
import { picturesOfFinding, picturesView, recentPlaces, takenAt, whereView } from "./pictures-view.js";

const known = miniKnowledge();
const tree = miniTree();
const picture = { blob: HASH_A, thumb: HASH_B, type: "image/jpeg", width: 4, height: 3 };

function shot(...spots: readonly object[]) {
  const log = new SampleLog();
  const ids = spots.map((spot) => log.add(draftPicture(act(), log.visit, { ...picture, ...spot })));
  return { log, ids };
}

test("pictures stand by place in walking order; what is pinned to nothing lies apart", () => {
  const { log } = shot({ place: "RL" }, {}, { point: "hub.spin", place: "FR", state: "w7-hang" }, { place: "RL" });
  const view = picturesView(known, tree, log.visit.pictures);
  expect([view.count, view.unsorted.length]).toEqual([4, 1]);
  expect(view.groups.map(({ place, pictures }) => [place, pictures.length])).toEqual(
    [
      ["FR", 1],
      ["RL", 2],
    ].sort(([a], [b]) => tree.order(String(a)) - tree.order(String(b))),
  );
});

test("a finding shows the pictures pinned to itself, not those of its place", () => {
  const { log } = shot({ place: "FR" }, { place: "FR", fault: "hub.race" }, { place: "FL", fault: "hub.race" });
  expect(picturesOfFinding(log.visit.pictures, "hub.race", "FR")).toHaveLength(1);
});

test("a picture sorted later was still taken when it was shot", () => {
  const { log, ids } = shot({});
  const [first = ""] = ids;
  const sorted = log.add(draftPicture(act(), log.visit, { ...picture, place: "FR" }, [first]));
  const again = log.add(draftPicture(act(), log.visit, { ...picture, place: "FL" }, [sorted]));
  const began = log.visit.ledger.log.get(first)?.at;
  expect(began).toBeDefined();
  expect(takenAt(log.visit, again)).toEqual(began);
  expect(log.visit.ledger.log.get(again)?.at).not.toEqual(began);
});

test("where one was last is offered first; a word finds places and points asked", () => {
  const { log } = shot({ place: "FL" }, { place: "FR" });
  expect(recentPlaces(log.visit)).toEqual(["FR", "FL"]);
  const asked = [
    { point: "hub.spin", place: "FR", state: "w7-hang" },
    { point: "hub.spin", place: "FR", state: "w7-hang" },
  ];
  const plain = whereView(known, tree, log.visit, asked, " ");
  expect(plain.recent.map(({ id }) => id)).toEqual(["FR", "FL"]);
  expect(plain.lines).toHaveLength(tree.all.length);
  const word = plain.recent[0]?.title.split(" ")[0] ?? "";
  const found = whereView(known, tree, log.visit, asked, word.toUpperCase());
  expect(found.recent).toEqual([]);
  expect(found.lines.length).toBeGreaterThan(0);
  expect(found.lines.filter(({ spot }) => spot.point === "hub.spin")).toHaveLength(1);
  expect(whereView(known, tree, log.visit, asked, "no such thing").lines).toEqual([]);
});
