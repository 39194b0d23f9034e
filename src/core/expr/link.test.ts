import { expect, test } from "vitest";
import { judged, key, linked, linkedFormula, planned, told } from "../../../tests/support/expr-told.js";
import { missingKey, NOT_FITTED, scopeOf, TRADE, worldOf } from "../../../tests/support/expr-world.js";
import type { Problem } from "../terms/index.js";
import type { Use } from "./author.js";
import { link, NOT_APPLICABLE, type Plan, readsOf, type Trade, Unknown, withUncertainty } from "./run.js";

const NOTHING = worldOf({});
const CAR: Use = { scope: "car" };

test("[EX20] a reply that is missing is not known and is named", () => {
  expect(told('whl.rock == "bad"', NOTHING)).toEqual([key("whl.rock", "FR")]);
  expect(told('whl.rock == "bad"', worldOf({ "whl.rock@FR": "bad" }))).toBe(true);
  expect(told('whl.rock != "bad"', worldOf({ "whl.rock@FR": "bad" }))).toBe(false);
  expect(told('car.brakes == "outboard"', NOTHING)).toEqual([missingKey("car", "brakes", "car")]);
  expect(told('!("milky" in whl.grease)', worldOf({ "whl.grease@FR": ["clean"] }))).toBe(true);
  expect(told("whl.knockback", NOTHING)).toEqual([key("whl.knockback", "car")]);
});

test("[EX47] without an earlier reply there nothing is asked and the condition does not apply", () => {
  const worn = 'last(whl.rock) == "none" && whl.rock == "clear"';
  expect(told(worn, worldOf({ "whl.rock@FR": "clear" }))).toBe("does not apply");
  expect(told(worn, worldOf({ "whl.rock@FR": "clear" }, { last: { "whl.rock@FL": "none" } }))).toBe("does not apply");
  expect(told(worn, worldOf({ "whl.rock@FR": "clear" }, { last: { "whl.rock@FR": "none" } }))).toBe(true);
  expect(told(worn, worldOf({}, { last: { "whl.rock@FR": "none" } }))).toEqual([key("whl.rock", "FR")]);
  expect(told('last(opposite.whl.rock) == "none"', worldOf({}, { last: { "whl.rock@FL": "none" } }))).toBe(true);
  expect(told('axle.exists(c, last(c.whl.rock) == "bad")', worldOf({}, { last: { "whl.rock@FL": "none" } }))).toBe(
    false,
  );
});

test("[EX30] [EX46] the last reading brings its own uncertainty", () => {
  const grew = (was: number, u: number) =>
    told(
      "clearly_more(whl.float, last(whl.float))",
      worldOf({ "whl.float@FR": { value: 0.5, u: 0.03 } }, { last: { "whl.float@FR": { value: was, u } } }),
    );
  expect(grew(0.38, 0.04)).toBe(true);
  expect(grew(0.42, 0.04)).toBe(false);
  const rise = withUncertainty(linkedFormula("whl.float - last(whl.float)"));
  const world = worldOf(
    { "whl.float@FR": { value: 0.5, u: 0.03 } },
    { last: { "whl.float@FR": { value: 0.2, u: 0.04 } } },
  );
  expect(rise(scopeOf(world), "FR")).toEqual({ value: 0.3, u: expect.closeTo(0.05, 12) });
});

test("[EX48] how far back it lies is a number, or does not apply", () => {
  const near = "since_last_km(whl.float) <= 5000";
  expect(told(near, worldOf({}, { since: 5000 }))).toBe(true);
  expect(told(near, worldOf({}, { since: 5001 }))).toBe(false);
  expect(told(near, NOTHING)).toBe("does not apply");
});

test("[EX36] what stands for an earlier visit in a plan is `last` and nothing else", () => {
  const { code, ...rest } = planned('last(whl.rock) == "bad"');
  expect(code).toEqual(["==", ["word", "whl.rock", "feel", 0, "last"], "bad"]);
  const other = { ...rest, code: ["==", ["word", "whl.rock", "feel", 0, "first"], "bad"] } as unknown as Plan;
  expect(link(other)).toMatchObject({ ok: false, problems: [{ code: "expr.plan-broken" }] });
});

test("[EX21] a false part settles && and a true part settles ||, in any order", () => {
  const world = worldOf({ "whl.rock@FR": "none" });
  for (const [no, open] of [
    ['whl.rock == "bad"', 'whl.spin == "rough"'],
    ['whl.spin == "rough"', 'whl.rock == "bad"'],
  ]) {
    expect(told(`${no} && ${open}`, world)).toBe(false);
    expect(told(`!(${no}) || ${open}`, worldOf({ "whl.rock@FR": "none", "whl.spin@FR": "smooth" }))).toBe(true);
  }
  expect(told('whl.rock == "none" && whl.spin == "rough" && whl.drone == "clear"', world)).toEqual(
    [key("whl.spin", "FR"), key("whl.drone", "car")].sort(),
  );
});

test("[EX22] only what can still decide is missing", () => {
  // Not fitted && not known can become false, never true.
  const world = worldOf({ "whl.rock@FR": NOT_FITTED });
  const outcome = judged('whl.rock == "bad" && whl.spin == "rough"', world);
  expect(outcome).toMatchObject({ missing: new Set([key("whl.spin", "FR")]), only: false });
  expect(judged('!(whl.rock == "bad" && whl.spin == "rough")', world)).toMatchObject({ only: true });
  expect(told('(whl.rock == "bad" && whl.spin == "rough") || whl.rock == "clear"', world)).toBe("does not apply");
  // The left side can only become true, so && hangs on the right side alone.
  expect(told('(whl.rock == "bad" || whl.spin == "rough") && whl.rock == "none"', world)).toBe("does not apply");
});

test("[EX23] at_least counts what is known and asks for what can still tip it", () => {
  const text = 'at_least(2, whl.rock == "bad", whl.spin == "rough", whl.drone == "clear")';
  expect(told(text, worldOf({ "whl.rock@FR": "bad", "whl.spin@FR": "rough" }))).toBe(true);
  expect(told(text, worldOf({ "whl.rock@FR": "none", "whl.spin@FR": "smooth" }))).toBe(false);
  expect(told(text, worldOf({ "whl.rock@FR": "bad", "whl.spin@FR": "smooth" }))).toEqual([key("whl.drone", "car")]);
  // One part not fitted: the two left can still both be true, or both be false.
  expect(told(text, worldOf({ "whl.rock@FR": NOT_FITTED }))).toEqual(
    [key("whl.drone", "car"), key("whl.spin", "FR")].sort(),
  );
  expect(judged(text, worldOf({ "whl.rock@FR": NOT_FITTED, "whl.spin@FR": "smooth" }))).toMatchObject({ only: false });
  expect(told(text, worldOf({ "whl.rock@FR": NOT_FITTED, "whl.spin@FR": NOT_FITTED }))).toBe("does not apply");
});

test("[EX24] one true place settles exists, one false place settles all, missing ones are named", () => {
  const some = 'places("corner").exists(c, c.whl.rock == "bad")';
  const every = 'places("corner").all(c, c.whl.rock == "none")';
  expect(told(some, worldOf({ "whl.rock@RL": "bad" }), "car", CAR)).toBe(true);
  expect(told(every, worldOf({ "whl.rock@RL": "bad" }), "car", CAR)).toBe(false);
  const three = { "whl.rock@FL": "none", "whl.rock@FR": "none", "whl.rock@RR": "none" };
  expect(told(some, worldOf(three), "car", CAR)).toEqual([key("whl.rock", "RL")]);
  expect(told(every, worldOf(three), "car", CAR)).toEqual([key("whl.rock", "RL")]);
  expect(told(every, worldOf({ ...three, "whl.rock@RL": "none" }), "car", CAR)).toBe(true);
  expect(told('axle.all(c, c.whl.rock == "none")', worldOf({ "whl.rock@FL": "none" }), "FL")).toEqual([
    key("whl.rock", "FR"),
  ]);
});

test("[EX25] a place where the part is not fitted drops out of exists and all; of nothing both do not apply", () => {
  const every = 'places("corner").all(c, c.whl.rock == "none")';
  const out = { "whl.rock@FL": NOT_FITTED, "whl.rock@FR": NOT_FITTED, "whl.rock@RL": NOT_FITTED } as const;
  expect(told(every, worldOf({ ...out, "whl.rock@RR": "none" }), "car", CAR)).toBe(true);
  expect(told(every, worldOf({ ...out, "whl.rock@RR": NOT_FITTED }), "car", CAR)).toBe("does not apply");
  expect(told(every.replace("all", "exists"), worldOf({ ...out, "whl.rock@RR": NOT_FITTED }), "car", CAR)).toBe(
    "does not apply",
  );
  expect(told(every, worldOf({}, { corners: [] }), "car", CAR)).toBe("does not apply");
  expect(told(every.replace("all", "exists"), worldOf({}, { corners: [] }), "car", CAR)).toBe("does not apply");
});

test("[EX25] an open place that can only agree with the known ones leaves no doubt", () => {
  const text = 'axle.exists(c, c.whl.rock == "bad" && c.whl.spin == "rough")';
  const world = worldOf({ "whl.rock@FL": "none", "whl.rock@FR": NOT_FITTED });
  expect(told(text, world, "FL")).toBe(false);
  expect(judged(text, worldOf({ "whl.rock@FL": NOT_FITTED, "whl.rock@FR": NOT_FITTED }), "FL")).toMatchObject({
    only: false,
  });
});

test("[EX26] not fitted outside exists and all, and a twin that is not there, do not apply", () => {
  expect(told('whl.rock == "bad"', worldOf({ "whl.rock@FR": NOT_FITTED }))).toBe("does not apply");
  expect(told('opposite.whl.rock == "bad"', worldOf({}, { corners: ["FR", "RL"] }))).toBe("does not apply");
  expect(told("whl.float > 2.0 * opposite.whl.float", worldOf({}, { corners: ["FR", "RL"] }))).toBe("does not apply");
  expect(told('opposite.axle.exists(c, c.whl.rock == "bad")', worldOf({}, { corners: ["FR"] }))).toBe("does not apply");
  expect(judged("whl.float > 2.0 * opposite.whl.float", worldOf({}, { corners: ["FR"] }))).toBe(NOT_APPLICABLE);
});

test("[EX27] comparing and calculating need all their parts", () => {
  expect(told("whl.float > opposite.whl.float", NOTHING)).toEqual([key("whl.float", "FL"), key("whl.float", "FR")]);
  expect(told("whl.float > opposite.whl.float", worldOf({ "whl.float@FL": NOT_FITTED }))).toBe("does not apply");
  expect(told("whl.float >= 2.0 * opposite.whl.float", worldOf({ "whl.float@FR": 0.2, "whl.float@FL": 0.1 }))).toBe(
    true,
  );
});

test("[EX28] ?: with a test not known holds what both ways agree on", () => {
  const text = 'whl.kind == "hub-unit" ? whl.rock == "bad" : whl.spin == "rough"';
  expect(told(text, worldOf({ "whl.kind@FR": "hub-unit", "whl.rock@FR": "bad" }))).toBe(true);
  expect(told(text, worldOf({ "whl.kind@FR": "deep-groove", "whl.rock@FR": "bad" }))).toEqual([key("whl.spin", "FR")]);
  expect(told(text, worldOf({ "whl.rock@FR": "bad", "whl.spin@FR": "rough" }))).toBe(true);
  expect(told(text, worldOf({ "whl.kind@FR": NOT_FITTED, "whl.rock@FR": "bad", "whl.spin@FR": "rough" }))).toBe(true);
  expect(told(text, worldOf({ "whl.kind@FR": NOT_FITTED, "whl.rock@FR": "bad", "whl.spin@FR": "smooth" }))).toBe(
    "does not apply",
  );
  expect(told(text, worldOf({ "whl.rock@FR": "bad" }))).toEqual([key("whl.kind", "FR"), key("whl.spin", "FR")].sort());
});

test("[EX29] a band comparison holds only when every grade the reading may have says so", () => {
  const at = (value: number, u: number) => worldOf({ "whl.float@FR": { value, u } });
  expect(told("band(whl.float) >= major", at(5, 0.1))).toBe(true);
  expect(told("band(whl.float) >= major", at(3, 0.1))).toBe(false);
  expect(told("band(whl.float) >= major", at(4.1, 0.1))).toEqual([`${key("whl.float", "FR")}!closer`]);
  expect(told("band(whl.float) >= minor", at(4.1, 0.1))).toBe(true);
  expect(told("band(whl.float) == minor", at(1.5, 0.2))).toBe(false);
  // Both ends differ from minor, but what lies between is minor.
  expect(told("band(whl.float) == minor", at(3, 0.9))).toEqual([`${key("whl.float", "FR")}!closer`]);
  expect(told("band(whl.float) > band(opposite.whl.float)", at(3, 0.1))).toEqual([key("whl.float", "FL")]);
  expect(told("band(whl.float) < advisory", at(0.5, 0.1))).toBe(true);
});

test("[EX30] clearly_more needs a difference above twice the joint uncertainty", () => {
  const pair = (a: number, b: number, u: number) =>
    worldOf({ "whl.float@FR": { value: a, u }, "whl.float@FL": { value: b, u } });
  const text = "clearly_more(whl.float, opposite.whl.float)";
  // 2 · √(0.03² + 0.04²) = 0.1
  const world = worldOf({ "whl.float@FR": { value: 0.21, u: 0.03 }, "whl.float@FL": { value: 0.1, u: 0.04 } });
  expect(told(text, world)).toBe(true);
  expect(
    told(text, worldOf({ "whl.float@FR": { value: 0.2, u: 0.03 }, "whl.float@FL": { value: 0.1, u: 0.04 } })),
  ).toBe(false);
  expect(told(text, pair(0.1, 0.3, 0))).toBe(false);
  expect(told("clearly_more(whl.float, 2.0 * opposite.whl.float)", pair(0.5, 0.2, 0.02))).toBe(true);
  expect(told("clearly_more(whl.float, 2.0 * opposite.whl.float)", pair(0.5, 0.2, 0.025))).toBe(false);
  expect(told(text, worldOf({ "whl.float@FR": 0.3 }))).toEqual([key("whl.float", "FL")]);
});

test("[EX31] figures that are equal in decimals are equal", () => {
  const world = worldOf({ "whl.float@FR": 0.3, "whl.float@FL": 0.1 });
  expect(told("whl.float >= 3.0 * opposite.whl.float", world)).toBe(true);
  expect(told("whl.float > 3.0 * opposite.whl.float", world)).toBe(false);
  expect(told("whl.float < 3.0 * opposite.whl.float", world)).toBe(false);
  expect(told("whl.float / opposite.whl.float == 3.0", world)).toBe(true);
  expect(told("whl.float / opposite.whl.float != 3.0", world)).toBe(false);
});

test("[EX32] what cannot be worked out is not known, is reported, and never clears anything", () => {
  const reported: Problem[] = [];
  const world = worldOf({ "whl.float@FR": 0.3, "whl.float@FL": 0 }, { reported });
  const text = "whl.float / opposite.whl.float > 2.0";
  const again = ["FL", "FR"].map((place) => `${key("whl.float", place)}!closer`);
  expect(told(text, world)).toEqual(again);
  expect(reported).toMatchObject([{ code: "expr.not-finite", params: { offset: 0, length: 30, place: "FR" } }]);
  // It does not drop out of `all` as a part that is not fitted would.
  const all = "axle.all(c, c.whl.float / c.opposite.whl.float < 9.0)";
  expect(told(all, worldOf({ "whl.float@FR": 0.3, "whl.float@FL": 0 }), "FR")).toEqual(again);
  expect(
    told("ring_gap(whl.float, whl.studs_loose) < whl.float", worldOf({ "whl.float@FR": 0.3, "whl.studs_loose@FR": 0 })),
  ).toEqual([`${key("whl.float", "FR")}!closer`, `${key("whl.studs_loose", "FR")}!closer`]);
  expect(
    told("clearly_more(whl.float, opposite.whl.float)", worldOf({ "whl.float@FR": Number.NaN, "whl.float@FL": 1 })),
  ).toEqual(again);
  expect(
    told("whl.float > opposite.whl.float", worldOf({ "whl.float@FR": Number.POSITIVE_INFINITY, "whl.float@FL": 1 })),
  ).toEqual([`${key("whl.float", "FR")}!closer`]);
});

test("[EX32] the scope may say itself which replies are to be taken again", () => {
  const scope = { ...scopeOf(worldOf({ "whl.float@FR": 0.3, "whl.float@FL": 0 })), again: () => new Set(["both"]) };
  expect(linked("whl.float / opposite.whl.float > 2.0")(scope, "FR")).toMatchObject({ missing: new Set(["both"]) });
});

test("[EX33] a reply of another kind than declared is neither true nor false", () => {
  const reported: Problem[] = [];
  expect(told('!(whl.rock == "bad")', worldOf({ "whl.rock@FR": 3 }, { reported }))).toEqual([
    `${key("whl.rock", "FR")}!closer`,
  ]);
  expect(told("!whl.knockback", worldOf({ "whl.knockback": "no" }, { reported }))).toEqual([
    `${key("whl.knockback", "FR")}!closer`,
  ]);
  expect(told('!("clean" in whl.grease)', worldOf({ "whl.grease@FR": "milky" }, { reported }))).toEqual([
    `${key("whl.grease", "FR")}!closer`,
  ]);
  expect(told('car.brakes != "inboard"', worldOf({}, { facts: { brakes: 2 }, reported }))).toEqual([
    `${missingKey("car", "brakes", "car")}!closer`,
  ]);
  expect(new Set(reported.map(({ code }) => code))).toEqual(new Set(["expr.other-reply"]));
});

test("[EX34] a word that stands instead of a number is compared as a word", () => {
  expect(told('whl.wall == "no-echo"', worldOf({ "whl.wall@FR": "no-echo" }))).toBe(true);
  expect(told('whl.wall == "no-echo"', worldOf({ "whl.wall@FR": 1.4 }))).toBe(false);
  expect(told('whl.wall in ["no-echo"]', NOTHING)).toEqual([key("whl.wall", "FR")]);
});

test("[EX35] unanswered looks at absence, found at conclusions, trade functions calculate", () => {
  const provisional: Use = { scope: "corner", provisional: true };
  expect(told("unanswered(whl.float)", NOTHING, "FR", provisional)).toBe(true);
  expect(told("unanswered(whl.float)", worldOf({ "whl.float@FR": 0.1 }), "FR", provisional)).toBe(false);
  expect(told("unanswered(opposite.whl.float)", worldOf({}, { corners: ["FR"] }), "FR", provisional)).toBe(
    "does not apply",
  );
  const third: Use = { scope: "corner", findings: true };
  const faults = new Set(["whl.race@FL"]);
  expect(told('found("whl.race")', worldOf({}, { faults }), "FR", third)).toBe(false);
  expect(told('found("whl.race", opposite)', worldOf({}, { faults }), "FR", third)).toBe(true);
  expect(told('axle.exists(c, found("whl.race", c))', worldOf({}, { faults }), "FR", third)).toBe(true);
  expect(told("is_oval(whl.float)", worldOf({ "whl.float@FR": 0.6 }))).toBe(true);
  expect(told("is_oval(whl.float)", NOTHING)).toEqual([key("whl.float", "FR")]);
  const age: Use = { scope: "corner", gives: "age" };
  expect(
    told(
      "age_of(whl.made, car.first_used)",
      worldOf({ "whl.made@FR": "1219" }, { facts: { first_used: 1998 } }),
      "FR",
      age,
    ),
  ).toBe(21);
});

test("[EX36] a plan is plain JSON and links the same after a journey through a file", () => {
  const plan = planned('axle.exists(c, c.whl.rock == "bad") && whl.float >= 2.0 * opposite.whl.float');
  const back: Plan = JSON.parse(JSON.stringify(plan));
  expect(back).toEqual(plan);
  const run = link(back);
  const world = scopeOf(worldOf({ "whl.rock@FL": "bad", "whl.float@FR": 0.4, "whl.float@FL": 0.1 }));
  expect(run.ok && run.value(world, "FR")).toBe(true);
});

test("[EX36] a plan of another version, a damaged one and a function that is not there are refused, not guessed", () => {
  const plan = planned("is_oval(whl.float)");
  const codes = (candidate: unknown, trade?: Trade) => {
    // A plan as it may come out of a file.
    const run = link(candidate as Plan, trade);
    return run.ok ? [] : run.problems.map(({ code }) => code);
  };
  expect(codes(plan, TRADE)).toEqual([]);
  expect(codes({ ...plan, v: 0 }, TRADE)).toEqual(["expr.plan-version"]);
  expect(codes(plan)).toEqual(["expr.no-function"]);
  expect(codes({ ...planned("is_oval(whl.float)"), code: ["call", "toString", []] })).toEqual(["expr.no-function"]);
  const whole = ["all", ["kind", "corner"], ["all", ["kind", "corner"], ["all", ["kind", "corner"], true]]];
  const deep = Array.from({ length: 200 }).reduce<unknown>((inner) => ["!", inner], true);
  for (const code of [
    ["maybe", true],
    ["&&", 3],
    ["grade", "~", 1, 2],
    {},
    [],
    null,
    undefined,
    whole,
    deep,
    ["!"],
    ["at_least", "2", [true]],
    ["exists", "rel", true],
    ["word", 1, 2, 0],
    ["word", "a", "b", "c"],
    ["in", true, 5],
    ["among", 5, true],
    ["found", "x", "y"],
    ["more", ["a", "b"], 3],
  ]) {
    expect([code, codes({ ...plan, code }, TRADE)]).toEqual([code, ["expr.plan-broken"]]);
  }
});

test("[EX37] readsOf names every reply, band, fact and fault once", () => {
  const third: Use = { scope: "corner", findings: true };
  const text =
    'found("whl.race") || whl.rock in ["bad", "none", "clear", "just-felt"] && band(whl.float) >= major || clearly_more(whl.float, opposite.whl.runout) && car.brakes == "inboard" && axle.exists(c, "milky" in c.whl.grease)';
  expect(readsOf(planned(text, third))).toEqual({
    refs: [
      { point: "whl.rock", field: "feel" },
      { point: "whl.float", field: "size" },
      { point: "whl.runout", field: "size" },
      { point: "whl.grease", field: "look" },
    ],
    bands: [{ point: "whl.float", field: "size" }],
    facts: ["brakes"],
    faults: ["whl.race"],
  });
});

test("[EX38] a formula carries the uncertainty of its readings", () => {
  const formula = (text: string, gives: "length" | "ratio" | "temperature_difference") =>
    withUncertainty(linked(text, { scope: "corner", gives }));
  const world = scopeOf(worldOf({ "whl.float@FR": { value: 0.4, u: 0.03 }, "whl.float@FL": { value: 0.2, u: 0.04 } }));
  // A difference: √(0.03² + 0.04²); the same reading twice is one reading, so x − x has none.
  expect(formula("whl.float - opposite.whl.float", "length")(world, "FR")).toMatchObject({
    value: 0.2,
    u: expect.closeTo(0.05, 12),
  });
  expect(formula("whl.float - whl.float", "length")(world, "FR")).toMatchObject({ value: 0, u: expect.closeTo(0, 12) });
  expect(formula("3.0 * whl.float", "length")(world, "FR")).toMatchObject({ u: expect.closeTo(0.09, 12) });
  expect(formula("whl.float - opposite.whl.runout", "length")(world, "FR")).toMatchObject({
    missing: new Set([key("whl.runout", "FL")]),
  });
  // The denominator may be zero within its u: no width is claimed.
  const near = scopeOf(worldOf({ "whl.float@FR": { value: 0.4, u: 0 }, "whl.float@FL": { value: 0.04, u: 0.04 } }));
  expect(formula("whl.float / opposite.whl.float", "ratio")(near, "FR")).toBeInstanceOf(Unknown);
});
