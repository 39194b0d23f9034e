/** The bench reckoner's boxes: what still lacks, units, several figures, refusals in the box's own unit, the note. */
import { afterEach, expect, test } from "vitest";
import type { Summary } from "../../core/record/index.js";
import { TRADE_TABLE, type TradeFunction } from "../../core/trade/index.js";
import { decimalComma } from "../texts/figures.js";
import { functionsFound, openVisits } from "./reckoner-view.js";
import {
  emptyReckoning,
  type ReckoningForm,
  reckoning,
  reckoningNote,
  reckoningTyped,
  unitsFor,
} from "./reckoning-view.js";

function fnOf(name: string): TradeFunction {
  const fn = TRADE_TABLE.get(name);
  if (!fn) throw new Error(`no function ${name}`);
  return fn;
}
/** A form with these texts in the boxes; units as they stand empty, but for those named. */
function filled(
  fn: TradeFunction,
  texts: Readonly<Record<string, readonly string[]>>,
  units: Readonly<Record<string, string>> = {},
): ReckoningForm {
  const empty = emptyReckoning(fn);
  const boxes = Object.entries(empty.boxes).map(([name, box]) => [
    name,
    { texts: texts[name] ?? box.texts, unit: units[name] ?? box.unit },
  ]);
  return { ...empty, boxes: Object.fromEntries(boxes) };
}
const IMBALANCE = fnOf("brake_imbalance");
const [LEFT = "", RIGHT = ""] = IMBALANCE.arguments.map(({ name }) => name);
const SPREAD = fnOf("disc_spread");

afterEach(() => {
  decimalComma.value = false;
});

test("an empty box is counted, not taken for nought", () => {
  expect(reckoning(IMBALANCE, emptyReckoning(IMBALANCE))).toMatchObject({ is: "open", left: 2 });
  expect(reckoning(IMBALANCE, filled(IMBALANCE, { [LEFT]: ["2000"] }))).toMatchObject({ is: "open", left: 1 });
});

test("an axle's imbalance: the difference over the greater effort, whatever unit the efforts are typed in", () => {
  const newtons = filled(IMBALANCE, { [LEFT]: ["2000"], [RIGHT]: ["1500"] });
  expect(reckoning(IMBALANCE, newtons)).toMatchObject({ is: "answer", says: "25\u00a0%" });
  const pounds = filled(IMBALANCE, { [LEFT]: ["400"], [RIGHT]: ["300"] }, { [LEFT]: "[lbf_av]", [RIGHT]: "[lbf_av]" });
  expect(reckoning(IMBALANCE, pounds)).toMatchObject({ is: "answer", says: "25\u00a0%" });
  const typedAlong = filled(IMBALANCE, { [LEFT]: ["400 lbf"], [RIGHT]: ["300 lbf"] });
  expect(reckoning(IMBALANCE, typedAlong)).toMatchObject({ is: "answer", says: "25\u00a0%" });
});

test("boxes of a list beyond the least number may stay empty; an answer stands in the unit chosen, with the person's comma", () => {
  const boxes = { thicknesses: ["9.98", "10.01", "", "9.97", ""] };
  expect(reckoning(SPREAD, filled(SPREAD, boxes))).toMatchObject({ is: "answer", says: "0.04\u00a0mm" });
  decimalComma.value = true;
  const thou = { ...filled(SPREAD, { thicknesses: ["9,98", "10,01"] }), resultUnit: "[mil_i]" };
  expect(reckoning(SPREAD, thou)).toMatchObject({ is: "answer", says: "1,181\u00a0thou" });
});

test("a figure out of range is told at its box, in the unit it was typed in", () => {
  const came = reckoning(SPREAD, filled(SPREAD, { thicknesses: ["0.4", "5"] }, { thicknesses: "[in_i]" }));
  expect(came.is).toBe("refused");
  expect(came.at.get("thicknesses")).toBe("5\u00a0in is out of range: over 0\u00a0in and at most 3.937\u00a0in.");
});

test("what is no figure is told at its box and nothing comes of it", () => {
  const came = reckoning(IMBALANCE, filled(IMBALANCE, { [LEFT]: ["a lot"], [RIGHT]: ["1500"] }));
  expect(came).toMatchObject({ is: "open", left: 0 });
  expect(came.at.get(LEFT)).toMatch(/a lot/);
});

test("figures that do not go together are refused in the trade's words, with their unit", () => {
  const tube = fnOf("round_tube_area");
  const came = reckoning(tube, filled(tube, { diameter: ["20"], wall: ["12"] }));
  expect(came).toMatchObject({
    is: "refused",
    says: "Area of metal, round tube: Wall leaves no hole; it must be under 10\u00a0mm.",
  });
});

test("every function of the table: a form typed before the page went away comes back as it was, any other text as empty boxes", () => {
  for (const fn of TRADE_TABLE.values()) {
    const typed = filled(fn, Object.fromEntries(fn.arguments.map(({ name }) => [name, ["1", "2", "3", "4"]])));
    const last = unitsFor(fn.gives).at(-1);
    const form = last === undefined ? typed : { ...typed, resultUnit: last };
    expect(reckoningTyped(fn, JSON.stringify(form)), fn.name).toEqual(form);
    for (const text of ["", "null", "[]", '{"boxes":{}}', '{"boxes":3,"resultUnit":"furlong"}'])
      expect(reckoningTyped(fn, text), fn.name).toEqual(emptyReckoning(fn));
  }
});

test("a sum is kept with its figures, formula and source", () => {
  const form = filled(IMBALANCE, { [LEFT]: ["2000"], [RIGHT]: ["1500"] });
  const text = reckoningNote(IMBALANCE, form, "25 %");
  expect(text).toContain("25 %");
  expect(text).toContain("2000 N");
  expect(text).toContain(IMBALANCE.formula);
  expect(text).toContain(IMBALANCE.source.document ?? "arithmetic");
});

test("functions are found by words of their name, arguments or subject; all stand there while nothing is typed", () => {
  const names = (typed: string) => functionsFound(typed).flatMap(({ functions }) => functions.map(({ name }) => name));
  expect(names("")).toHaveLength(TRADE_TABLE.size);
  expect(names("DEW point")).toContain("dew_point");
  expect(names("brakes imbalance")).toEqual(["brake_imbalance"]);
  expect(names("no such sum")).toEqual([]);
});

test("a sum may be kept in visits left open, the newest first; a closed one is not offered", () => {
  const any = { demo: false, entries: 1, last: { wall: 0, count: 0, writer: "w" }, trouble: false };
  const visit = (stream: string, on: string, closed: boolean): Summary => ({
    ...any,
    of: "visit",
    stream,
    car: "car:1",
    on,
    closed,
    purpose: "workshop",
    who: "technician",
    replies: 0,
    differ: 0,
    pictures: 0,
  });
  const car: Summary = {
    ...any,
    of: "car",
    stream: "car:1",
    names: ["Tarn"],
    facts: {},
    sameCars: [],
    sameOccasions: [],
  };
  const open = openVisits([
    car,
    visit("visit:a", "2025-03-01", false),
    visit("visit:b", "2026-03-01", false),
    visit("visit:c", "2026-04-01", true),
  ]);
  expect(open.map(({ stream, title }) => [stream, title])).toEqual([
    ["visit:b", "Tarn"],
    ["visit:a", "Tarn"],
  ]);
});
