/**
 * What is worked out on the bench, from the figures typed to the figure told: shims, lapping, liner spacers. The
 * examples are the ones makers print, and the geometry of a valve seat, worked out here by hand.
 */
import { expect, test } from "vitest";
import { knowledgeOf } from "../../src/app/state/knowledge.js";
import { workingOf } from "../../src/app/state/working.js";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { prepare, start, worldOf } from "../../src/core/assess/index.js";
import { link } from "../../src/core/expr/run.js";
import { TRADE_SIGNATURES, TRADE_WORK, tellSource, tellTrade } from "../../src/core/trade/index.js";
import { replies, visit } from "../support/small-car.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("the shipped sheets are sound: npm run sheets");
const { common, commonWithTexts, sheets } = result.value;
const english = <Texts>(texts: Readonly<Record<string, Texts>>): Texts => {
  const found = texts["en"];
  if (!found) throw new Error("the shipped sheets speak English");
  return found;
};
const built = sheets.map((one) => one.built);
const known = knowledgeOf(
  common.common,
  english(commonWithTexts.texts),
  sheets.map((one) => ({ sheet: one.built.sheet, texts: english(one.sheet.texts) })),
);
const engine = prepare(common, built, TRADE_WORK);
const trade = { TRADE_SIGNATURES, TRADE_WORK, tellSource, tellTrade };

/** The figure a value comes out at, as told: `0.130` of `… = 0.130 ± 0.005 mm`. */
function figures(said: Parameters<typeof replies>[1], place: string, ids: readonly string[]) {
  const session = start(engine, visit(replies(engine, said), { sheets: ["head"] }));
  const ground = { core: { worldOf, link } as never, session, sheets: built };
  return ids.map((id) => {
    const numbers = workingOf({ ground, known, trade }, `head.${id}`, place)?.numbers ?? "not worked out";
    return Number(/= (?:.* = )?(−?[\d.]+)[^=]*$/.exec(numbers)?.[1]?.replace("−", "-"));
  });
}
const wanted = (mm: string) => ({ "head.wanted@engine": mm, "head.wanted.exhaust@engine": mm });

test("a maker's chart: shim 2.95 with 0.47, 0.27 wanted, gives 3.15 and 0.27", () => {
  const said = { ...wanted("0.27 mm"), "head.lash@cyl-1-in": "0.47 mm", "head.shim@cyl-1-in": "2.95 mm" };
  const [needed, fit, left] = figures(said, "cyl-1-in", ["shim_plain", "shim_fit", "lash_fit"]);
  expect(needed).toBeCloseTo(2.95 + 0.47 - 0.27, 2);
  expect(fit).toBeCloseTo(3.15, 2);
  expect(left).toBeCloseTo(0.27, 2);
});

test("shim 2.70 with 0.12, 0.20 wanted: 2.62 is needed, 2.60 is made and leaves 0.22", () => {
  const said = { ...wanted("0.20 mm"), "head.lash@cyl-1-in": "0.12 mm", "head.shim@cyl-1-in": "2.70 mm" };
  const [needed, fit, left] = figures(said, "cyl-1-in", ["shim_plain", "shim_fit", "lash_fit"]);
  expect(needed).toBeCloseTo(2.62, 2);
  expect(fit).toBeCloseTo(2.6, 2);
  expect(left).toBeCloseTo(0.22, 2);
});

test("lapped by 0.05 at 30°: the valve rises 0.05 ÷ cos 30°, the gap falls and the shim with it", () => {
  const said = {
    ...wanted("0.25 mm"),
    "head.lash@cyl-3-ex": "0.25 mm",
    "head.shim@cyl-3-ex": "2.70 mm",
    "head.lap.removed@cyl-3-ex": "0.05 mm",
    "head.lap.angle@cyl-3-ex": "30 deg",
  };
  const rise = 0.05 / Math.cos(Math.PI / 6);
  const [risen, gap, shim] = figures(said, "cyl-3-ex", ["rise_cut", "lash_lapped", "shim_lapped"]);
  expect(risen).toBeCloseTo(rise, 2);
  expect(gap).toBeCloseTo(0.25 - rise, 2);
  expect(shim).toBeCloseTo(2.7 - rise, 2);
});

test("lapped by 0.12 at 45°: 0.15 is not enough, the valve stays open by 0.02 and wants 2.83 in place of 3.00", () => {
  const said = {
    ...wanted("0.15 mm"),
    "head.lash@cyl-3-ex": "0.15 mm",
    "head.shim@cyl-3-ex": "3.00 mm",
    "head.lap.removed@cyl-3-ex": "0.12 mm",
    "head.lap.angle@cyl-3-ex": "45 deg",
  };
  const [gap, shim] = figures(said, "cyl-3-ex", ["lash_lapped", "shim_lapped"]);
  expect(gap).toBeCloseTo(0.15 - 0.12 * Math.SQRT2, 2);
  expect(shim).toBeCloseTo(3 - 0.12 * Math.SQRT2, 2);
});

test("a maker's liner: 0.23 wanted, 0.10 the largest of four: 0.13 under it, 0.122 is to be had and stands out 0.222", () => {
  const said = {
    "head.liner@cyl-1": "0.10 mm",
    "head.liner.aft@cyl-1": "0.08 mm",
    "head.liner.left@cyl-1": "0.10 mm",
    "head.liner.right@cyl-1": "0.09 mm",
    "head.spacer@cyl-1": "0 mm",
    "head.wanted-liner@engine": "0.23 mm",
    "head.wanted-liner.size-a@engine": "0.085 mm",
    "head.wanted-liner.size-b@engine": "0.102 mm",
    "head.wanted-liner.size-c@engine": "0.122 mm",
  };
  const [needed, taken, stands, tilt] = figures(said, "cyl-1", ["spacer_new", "spacer_of_3", "stand_out", "tilt"]);
  expect(needed).toBeCloseTo(0.13, 3);
  expect(taken).toBeCloseTo(0.122, 3);
  expect(stands).toBeCloseTo(0.222, 3);
  expect(tilt).toBeCloseTo(0.02, 3);
});
