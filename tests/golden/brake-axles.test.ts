/** Where the brakes sit, as the shipped sheets take it: at which corners the brake-on test is asked. Judges no wording. */
import { expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { assess, prepare } from "../../src/core/assess/index.js";
import { TRADE_WORK } from "../../src/core/trade/index.js";
import { replies, visit } from "../support/small-car.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const { common, sheets } = result.value;
const engine = prepare(
  common,
  sheets.map(({ built }) => built),
  TRADE_WORK,
);

const CORNERS = ["FL", "FR", "RL", "RR"];
/** A rock just felt at every wheel: on a hub of a kind not told no rule opens the brake-on test, so it is asked or not. */
const rocks = replies(engine, Object.fromEntries(CORNERS.map((place) => [`whl.rock@${place}`, "just-felt"])));

test.each<readonly [string | undefined, readonly string[]]>([
  ["outboard", CORNERS],
  ["inboard-rear", ["FL", "FR"]],
  ["inboard-front", ["RL", "RR"]],
  ["inboard-both", []],
  ["inboard", []],
  [undefined, []],
])("brakes %s: the rock is tried again with the brake held at %j", (brakes, wanted) => {
  const facts: Readonly<Record<string, string>> = brakes === undefined ? {} : { brakes };
  const { asked } = assess(engine, { ...visit(rocks), sheets: ["whl"], car: { facts, limits: [] } });
  expect(asked.filter(({ point }) => point === "whl.rock-braked").map(({ place }) => place)).toEqual(wanted);
});
