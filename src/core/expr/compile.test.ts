import { expect, test } from "vitest";
import { DECLARED } from "../../../tests/support/expr-world.js";
import { compile, EXPRESSION_MESSAGES, tellExpression, type Use } from "./author.js";

const CORNER: Use = { scope: "corner" };

/** Codes of what is wrong, in order. */
const codes = (text: string, use: Use = CORNER): readonly string[] => {
  const made = compile(text, DECLARED, use);
  return made.ok ? [] : made.problems.map(({ code }) => code);
};
const accepted = (text: string, use: Use = CORNER): void => {
  const made = compile(text, DECLARED, use);
  expect(made.ok ? "accepted" : `${text}: ${made.problems.map((p) => tellExpression(p)).join("; ")}`).toBe("accepted");
};
const first = (text: string, use: Use = CORNER) => {
  const made = compile(text, DECLARED, use);
  if (made.ok) throw new Error(`${text} was accepted`);
  const [problem] = made.problems;
  if (problem === undefined) throw new Error(`${text} was refused without a problem`);
  return problem;
};

test("[EX1] the conditions of the bearing sheet are accepted", () => {
  accepted(
    '(whl.rock == "none" || whl.rock == "just-felt" && whl.kind == "taper-adjust") && whl.spin in ["light-grumble", "rough"]',
  );
  accepted("whl.float >= 2.0 * opposite.whl.float && clearly_more(whl.float, opposite.whl.float)");
  accepted('places("corner").exists(c, c.whl.rock == "bad" || "burnt" in c.whl.grease)', { scope: "car" });
  accepted('places("corner").all(c, c.whl.spin == "smooth")', { scope: "car" });
  accepted('at_least(2, whl.rock == "clear", whl.spin == "rough", band(whl.float) >= minor)');
  accepted('whl.kind == "hub-unit" ? band(whl.float) >= major : band(whl.float) >= minor');
  accepted('car.brakes == "outboard" && car.first_used < 1992 && !car.limited_slip');
  accepted("whl.kind != opposite.whl.kind && whl.studs_loose in [1, 2]");
  accepted("whl.heat - opposite.whl.heat > whl.heat - whl.air");
  accepted("is_oval(whl.float) && ring_gap(whl.float, whl.studs_loose) < whl.runout");
  accepted('whl.wall == "no-echo" || whl.wall < 0.5 * car.wheelbase');
  accepted(
    'here.whl.rock == "bad" && axle.exists(c, c.opposite.whl.rock == "bad") && side.all(d, d.brk.balance == "even")',
  );
});

test("[EX46] last(x) is the reply of an earlier visit, of the same type, at any place x may be read", () => {
  accepted("clearly_more(whl.float, last(whl.float))");
  accepted("whl.float - last(whl.float) > 2.0 * last(opposite.whl.runout)");
  accepted('last(whl.rock) == "none" && last(whl.kind) == whl.kind && "milky" in last(whl.grease)');
  accepted('axle.exists(c, last(c.whl.rock) == "none") && last(whl.knockback) == whl.knockback');
  expect(codes('last(whl.rock) == "wobbly"')).toEqual(["expr.unknown-word"]);
  expect(codes("clearly_more(whl.float, last(whl.heat))")).toEqual(["expr.other-quantity"]);
  expect(codes("last(whl.float) > 0.1")).toEqual(["expr.bare-number"]);
});

test("[EX46] only replies are kept from visit to visit", () => {
  for (const what of ["car.brakes", "whl.rise", "last(whl.rock)", "2.0 * whl.float", "opposite"])
    expect(codes(`last(${what}) == whl.rock`), what).toEqual(["expr.last-of"]);
  expect(codes("since_last_km(whl.rise) < 5000")).toEqual(["expr.last-of"]);
  expect(codes("last(whl.rock, whl.spin)")).toEqual(["expr.arguments"]);
  expect(codes("band(last(whl.float)) >= minor")).toEqual(["expr.last-band"]);
  expect(codes("unanswered(last(whl.float))", { scope: "corner", provisional: true })).toEqual(["expr.unanswered-of"]);
  expect(codes("unanswered(since_last_km(whl.float))", { scope: "corner", provisional: true })).toEqual([
    "expr.unanswered-of",
  ]);
  const wrong = first("last.opposite.whl.float > whl.float");
  expect(wrong.code).toBe("expr.last-call");
  expect(tellExpression(wrong)).toContain("last(opposite.whl.float)");
  expect(codes("opposite.last.whl.float > whl.float")).toEqual(["expr.last-call"]);
});

test("[EX48] the distance since then is a plain number of kilometres", () => {
  accepted("since_last_km(whl.float) <= 5000");
  accepted("(whl.float - last(whl.float)) * (5000.0 / since_last_km(whl.float)) > whl.shim");
  expect(codes("since_last_km(whl.float) > whl.shim")).toEqual(["expr.bare-number"]);
});

test("[EX2] a whole number and a decimal are the same number", () => {
  const [whole, decimal] = ["whl.studs_loose >= 2", "whl.studs_loose >= 2.0"].map((text) =>
    compile(text, DECLARED, CORNER),
  );
  expect(whole?.ok && decimal?.ok && [whole.value.code, decimal.value.code]).toEqual([
    [">=", ["count", "whl.studs", "loose", 0], 2],
    [">=", ["count", "whl.studs", "loose", 0], 2],
  ]);
});

test.each([
  ["has(whl.rock)", "expr.refused"],
  ['whl.?rock == "bad"', "expr.refused"],
  ["axle.filter(c, true)", "expr.refused"],
  ["axle.map(c, c.whl.rock)", "expr.refused"],
  ["axle.exists_one(c, true)", "expr.refused"],
  ["known(whl.rock)", "expr.refused"],
  ["axle[0]", "expr.refused"],
  ["whl.studs_loose % 2 == 1", "expr.refused"],
  ["whl.studs_loose == 2u", "expr.refused"],
  ["null == whl.rock", "expr.refused"],
  ['{"a": 1} == {"a": 1}', "expr.refused"],
  ['b"x" == b"x"', "expr.refused"],
  ["size(whl.grease) > 1", "expr.unknown-function"],
  ['whl.rock.startsWith("n")', "expr.unknown-function"],
  ["cel.bind(x, 1, x) == 1", "expr.unknown-function"],
  ["1/2 < 0.7", "expr.whole-division"],
  ["-1/2 < 0.7", "expr.whole-division"],
  ["whl.float / 0 > whl.runout", "expr.zero-below"],
  ["whl.studs_loose > 99999999999999999999", "expr.number-range"],
])("[EX3] %s is refused: %s", (text, code) => {
  expect(codes(text)).toContain(code);
});

test.each([
  ['whl.rok == "bad"', "expr.unknown-name", "whl.rok", "whl.rock"],
  ['whk.rock == "bad"', "expr.unknown-name", "whk.rock", "whl.rock"],
  ['oposite.whl.rock == "bad"', "expr.unknown-name", "oposite", "opposite"],
  ['rock == "bad"', "expr.unknown-name", "rock", "whl.rock"],
  ['car.break == "outboard"', "expr.unknown-fact", "break", "brakes"],
  ['whl.rock == "jst-felt"', "expr.unknown-word", "jst-felt", "just-felt"],
  ['whl.rock != "loose"', "expr.unknown-word", "loose", "none"],
  ['whl.rock in ["bad", "cleer"]', "expr.unknown-word", "cleer", "clear"],
  ['"milkey" in whl.grease', "expr.unknown-word", "milkey", "milky"],
  ['whl.wall == "noecho"', "expr.unknown-word", "noecho", "no-echo"],
  ['places("corners").exists(c, true)', "expr.unknown-kind", "corners", "corner"],
  ["ring_gab(whl.float, 1.0) < whl.float", "expr.unknown-function", "ring_gab", "ring_gap"],
])("[EX4] %s names the word in question and the nearest one meant", (text, code, wrong, near) => {
  const problem = first(text);
  expect(problem.code).toBe(code);
  expect(problem.params["text"]).toBe(wrong);
  expect(problem.params["expected"]).toContain(near);
});

test("[EX4] the nearest name stands first", () => {
  expect(first('whl.rokc == "bad"').params["expected"]).toHaveProperty("0", "whl.rock");
  expect(first('whl.rock == "jst-felt"').params["expected"]).toHaveProperty("0", "just-felt");
});

test("[EX5] a name of a sheet that exists but is not loaded is told apart from a slip", () => {
  expect(first('susp.boot == "split"')).toMatchObject({
    code: "expr.sheet-not-loaded",
    params: { sheet: "susp", text: "susp.boot" },
  });
  expect(codes('found("susp.boot")', { scope: "corner", findings: true })).toEqual(["expr.sheet-not-loaded"]);
  expect(codes('sups.boot == "split"')).toEqual(["expr.unknown-name"]);
  const { otherSheets: _, ...alone } = DECLARED;
  const made = compile('susp.boot == "split" || whl.bot == "x" || whk.rock == "x"', alone, CORNER);
  expect(made.ok ? [] : made.problems.map(({ code }) => code)).toEqual([
    "expr.sheet-not-loaded",
    "expr.unknown-name",
    "expr.unknown-name",
  ]);
});

test("[EX6] a point is read where it is: here, at a place around, or at a place that is named", () => {
  accepted('whl.drone == "clear"');
  accepted('brk.balance == "even"');
  expect(first('whl.rock == "bad"', { scope: "car" })).toMatchObject({
    code: "expr.place-not-around",
    params: { kind: "car", of: "corner" },
  });
  expect(codes('brk.balance == "even"', { scope: "side" })).toEqual(["expr.place-not-around"]);
  expect(codes('opposite.whl.drone == "clear"')).toEqual([]);
  expect(codes('opposite.whl.rock == "bad"', { scope: "axle" })).toEqual(["expr.no-relation"]);
  expect(codes('axle.whl.rock == "bad"')).toEqual(["expr.list-not-place"]);
  expect(codes("opposite.exists(c, true)")).toEqual(["expr.not-places"]);
  expect(codes("whl.grease.exists(g, true)")).toEqual(["expr.not-places"]);
  expect(codes("here")).toEqual(["expr.not-yes-or-no"]);
});

test("[EX7] a reading is compared through a limit or with a reading, never with a bare number", () => {
  expect(codes("whl.float > 0.3")).toEqual(["expr.bare-number"]);
  expect(codes("0.3 < whl.float")).toEqual(["expr.bare-number"]);
  expect(codes("whl.float + 0.1 > whl.runout")).toEqual(["expr.bare-number"]);
  expect(codes("whl.float in [0.1, 0.2]")).toEqual(["expr.bare-number"]);
  expect(codes("car.wheelbase > 2400.0")).toEqual(["expr.bare-number"]);
  expect(codes("whl.float == opposite.whl.float")).toEqual(["expr.reading-equal"]);
  accepted("whl.float / opposite.whl.float > 2.0");
  accepted("1.5 * whl.float + whl.runout > 3 * opposite.whl.float / 2.0");
});

test("[EX8] quantities are types", () => {
  expect(first("whl.float > whl.heat")).toMatchObject({
    code: "expr.other-quantity",
    params: { left: "length", right: "temperature" },
  });
  expect(codes("whl.float + whl.heat > whl.float")).toEqual(["expr.other-quantity"]);
  expect(codes("whl.float * whl.runout > whl.float")).toEqual(["expr.no-such-quantity"]);
  expect(codes("1.0 / whl.float > 2.0")).toEqual(["expr.no-such-quantity"]);
  expect(codes("whl.heat + whl.air > whl.heat")).toEqual(["expr.temperatures-added"]);
  expect(codes("2.0 * whl.heat > whl.air")).toEqual(["expr.temperature-scaled"]);
  expect(codes("-whl.heat > whl.air")).toEqual(["expr.temperature-scaled"]);
  expect(codes("whl.heat / whl.air > 2.0")).toEqual(["expr.temperature-scaled"]);
  accepted("whl.heat + whl.rise > opposite.whl.heat");
  accepted("whl.heat - whl.air >= 1.5 * whl.rise");
  expect(codes("whl.rise - whl.heat > whl.rise")).toEqual(["expr.other-quantity"]);
  expect(codes("whl.rock + whl.float > whl.float")).toEqual(["expr.not-a-figure"]);
  expect(codes("ring_gap(whl.heat, 1.0) > whl.float")).toEqual(["expr.argument"]);
  expect(codes("ring_gap(whl.float, whl.float) > whl.float")).toEqual(["expr.argument"]);
  expect(codes("ring_gap(whl.float) > whl.float")).toEqual(["expr.arguments"]);
});

test("[EX9] a word is compared with a word its point has; several words with in", () => {
  expect(codes('whl.grease == "milky"')).toEqual(["expr.several-words"]);
  expect(codes('whl.grease in ["milky"]')).toEqual(["expr.several-words"]);
  expect(codes("whl.rock == whl.spin")).toEqual(["expr.words-apart"]);
  expect(codes('whl.rock < "bad"')).toEqual(["expr.no-order"]);
  expect(codes("whl.rock in []")).toEqual(["expr.empty-list"]);
  expect(codes('"bad" in whl.rock')).toEqual(["expr.not-a-list"]);
  expect(codes("whl.rock == 1")).toEqual(["expr.not-comparable"]);
  expect(codes('whl.float == "big"')).toEqual(["expr.not-comparable"]);
  expect(codes('"a" == "a"')).toEqual(["expr.not-comparable"]);
  expect(codes("whl.rock")).toEqual(["expr.not-yes-or-no"]);
  expect(codes("whl.knockback == car.limited_slip")).toEqual([]);
  expect(codes("(whl.knockback && true) == car.limited_slip")).toEqual(["expr.yes-equal"]);
  expect(codes('whl.made == "1204"')).toEqual(["expr.not-comparable"]);
});

test("[EX10] a grade compares with a grade only, and a band is of a reading", () => {
  accepted("band(whl.float) >= major && band(opposite.whl.float) < advisory && band(whl.rise) == minor");
  accepted("band(whl.float) > band(opposite.whl.float)");
  expect(codes("band(whl.float) >= 3")).toEqual(["expr.grade-with-other"]);
  expect(codes('band(whl.float) >= "major"')).toEqual(["expr.grade-with-other"]);
  expect(codes("band(whl.rock) >= major")).toEqual(["expr.band-of"]);
  expect(codes("band(2.0 * whl.float) >= major")).toEqual(["expr.band-of"]);
  expect(codes("band(car.wheelbase) >= major")).toEqual(["expr.band-of"]);
  expect(codes("major")).toEqual(["expr.not-yes-or-no"]);
});

test("[EX11] clearly_more takes readings of one quantity or a fixed factor times one", () => {
  accepted("clearly_more(whl.float, 2.0 * opposite.whl.float) && clearly_more(whl.runout / 2.0, whl.float)");
  accepted("clearly_more(whl.heat, opposite.whl.heat)");
  expect(codes("clearly_more(whl.float, whl.heat)")).toEqual(["expr.other-quantity"]);
  expect(codes("clearly_more(whl.float + whl.runout, whl.float)")).toEqual(["expr.not-scaled"]);
  expect(codes("clearly_more(whl.float, 0.5)")).toEqual(["expr.not-scaled"]);
  expect(codes("clearly_more(whl.float)")).toEqual(["expr.arguments"]);
});

test("[EX12] exists and all bind a fresh name and go two deep at most", () => {
  accepted('places("axle").exists(a, a.axle.all(c, c.whl.rock == "bad"))', { scope: "car" });
  expect(codes('axle.exists(whl, whl.rock == "bad")')).toEqual(["expr.name-taken"]);
  expect(codes('axle.exists(c, axle.exists(c, c.whl.rock == "bad"))')).toEqual(["expr.name-taken"]);
  expect(codes("axle.exists(car, true)")).toEqual(["expr.name-taken"]);
  expect(codes("axle.exists(minor, true)")).toEqual(["expr.name-taken"]);
  expect(codes("axle.exists(c, axle.exists(d, axle.exists(e, true)))")).toEqual(["expr.too-nested"]);
  expect(codes("axle.exists(c, c.whl.rock)")).toEqual(["expr.not-yes-or-no"]);
  expect(codes('axle.exists(c, c.whl.rock == "bad") && c.whl.rock == "bad"')).toEqual(["expr.unknown-name"]);
});

test("[EX52] median takes one reading of this visit by its bare name, and stands where a reading may", () => {
  accepted("whl.float < 0.75 * median(whl.float)");
  accepted("whl.rise - median(whl.rise) > 0.25 * whl.rise");
  accepted('places("corner").exists(c, c.whl.float > 2.0 * median(whl.float))');
  expect(codes("median(whl.float) > 0.1")).toEqual(["expr.bare-number"]);
  expect(codes("whl.float < median(whl.heat)")).toEqual(["expr.other-quantity"]);
  for (const what of [
    "opposite.whl.float",
    "last(whl.float)",
    "2.0 * whl.float",
    "whl.rock",
    "car.wheelbase",
    "whl.studs_loose",
  ])
    expect(codes(`whl.float < median(${what})`), what).toEqual(["expr.median-of"]);
  expect(codes("whl.float < median()")).toEqual(["expr.arguments"]);
  expect(codes("whl.float < median(whl.float)", { scope: "car" })).not.toEqual([]);
  expect(codes("axle.exists(c, side.all(d, whl.float < median(whl.float)))")).toEqual(["expr.too-nested"]);
});

test("[EX13] at_least counts conditions", () => {
  expect(codes("at_least(3, true, true)")).toEqual(["expr.at-least-count"]);
  expect(codes("at_least(0, true)")).toEqual(["expr.at-least-count"]);
  expect(codes("at_least(1.5, true, true)")).toEqual(["expr.at-least-count"]);
  expect(codes("at_least(1, whl.rock)")).toEqual(["expr.not-yes-or-no"]);
  expect(codes("at_least(1)")).toEqual(["expr.arguments"]);
});

test("[EX14] unanswered is for provisional rules and found for rules on findings", () => {
  expect(codes("unanswered(whl.rock)")).toEqual(["expr.only-provisional"]);
  accepted('unanswered(opposite.whl.float) && whl.rock == "bad"', { scope: "corner", provisional: true });
  expect(codes("unanswered(whl.rise)", { scope: "corner", provisional: true })).toEqual(["expr.unanswered-of"]);
  expect(codes("unanswered(car.brakes)", { scope: "corner", provisional: true })).toEqual(["expr.unanswered-of"]);
  expect(codes('found("whl.race")')).toEqual(["expr.only-findings"]);
  const third: Use = { scope: "corner", findings: true };
  accepted('found("whl.race") && !found("brk.drag", opposite) && axle.exists(c, found("whl.play", c))', third);
  expect(first('found("whl.rase")', third)).toMatchObject({ code: "expr.unknown-fault", params: { text: "whl.rase" } });
  expect(first('found("whl.rase")', third).params["expected"]).toHaveProperty("0", "whl.race");
  expect(codes("found(whl.race)", third)).toEqual(["expr.fault-text"]);
  expect(codes('found("whl.race", whl.rock)', third)).toEqual(["expr.not-a-place"]);
});

test("[EX15] a formula gives the quantity it is declared with", () => {
  accepted("whl.heat - whl.air", { scope: "corner", gives: "temperature_difference" });
  accepted("whl.float / opposite.whl.float", { scope: "corner", gives: "ratio" });
  accepted("age_of(whl.made, car.first_used)", { scope: "corner", gives: "age" });
  accepted('whl.kind == "hub-unit" ? whl.float : whl.runout', { scope: "corner", gives: "length" });
  expect(codes("whl.heat", { scope: "corner", gives: "temperature_difference" })).toEqual(["expr.gives"]);
  expect(codes('whl.rock == "bad"', { scope: "corner", gives: "length" })).toEqual(["expr.gives"]);
  expect(codes("whl.float", { scope: "corner" })).toEqual(["expr.not-yes-or-no"]);
  expect(codes("true ? whl.float : whl.heat", { scope: "corner", gives: "length" })).toEqual(["expr.choice-apart"]);
});

test("[EX16] all problems are told at once, each with its place in the text", () => {
  const text = 'whl.rok == "bad" ||\n  whl.spin == "ruff" ||\n  whl.float > 0.3';
  const made = compile(text, DECLARED, CORNER, { path: "rules/whl.r01/when" });
  const problems = made.ok ? [] : made.problems;
  expect(problems.map(({ code, params }) => [code, params["line"], params["column"]])).toEqual([
    ["expr.unknown-name", 1, 1],
    ["expr.unknown-word", 2, 15],
    ["expr.bare-number", 3, 3],
  ]);
  for (const { params, where } of problems) {
    const [offset, length] = [Number(params["offset"]), Number(params["length"])];
    expect(text.slice(offset, offset + length)).toContain(String(params["text"]));
    expect(where).toEqual({ path: "rules/whl.r01/when" });
  }
});

test("[EX16] text that cannot be parsed says where", () => {
  expect(first('whl.rock == "bad" &&')).toMatchObject({
    code: "expr.syntax",
    params: { offset: 20, line: 1, column: 21 },
  });
  expect(codes('whl.rock = "bad"')).toEqual(["expr.syntax"]);
  expect(codes("whl.rock == 'bad")).toEqual(["expr.syntax"]);
  expect(codes("")).toEqual(["expr.syntax"]);
});

test("[EX17] long, deep and wide text is refused within limits", () => {
  expect(codes(`${"true && ".repeat(300)}true`)).toEqual(["expr.too-long"]);
  expect(codes(`${"(".repeat(900)}true${")".repeat(900)}`)).toEqual(["expr.too-deep"]);
  expect(codes(`${"!".repeat(900)}true`)).toEqual(["expr.too-deep"]);
  expect(codes(`${"-".repeat(1999)}`)).toEqual(["expr.syntax"]);
  expect(codes(`${"true ? true : ".repeat(100)}true`)).toEqual(["expr.too-deep"]);
  accepted(`${"true && ".repeat(200)}true`);
  const many = Array.from({ length: 100 }, (_, i) => `x${i} == 1`).join(" && ");
  expect(codes(many)).toHaveLength(50);
});

test("every code the checker tells has a text that leaves no gap", () => {
  for (const [code, text] of Object.entries(EXPRESSION_MESSAGES)) {
    const said = text((param) => `‹${param}›`);
    expect(`${code}: ${said}`).not.toMatch(/undefined|: $/);
  }
  expect(tellExpression(first("whl.float > whl.heat"))).toBe("length > temperature: two kinds of quantity do not meet");
  expect(tellExpression({ code: "units.empty", where: {}, params: {} })).toBeUndefined();
});

test("[EX49] a trade function takes what its arguments say: count, quantity, range, words", () => {
  accepted('is_oval(spread_of([whl.float, amount(0.1, "mm")])) && ring_gap(whl.float, 3) < whl.runout');
  accepted('share_for(car.brakes, whl.rise) < share_for("inboard", amount(9, "[degF]"))');
  expect(first("ring_gap(whl.float) > whl.float")).toMatchObject({
    code: "expr.arguments",
    params: { text: "ring_gap", expected: "2 (play, count)", line: 1, column: 1 },
  });
  expect(first("ring_gap(whl.heat, 1.0) > whl.float")).toMatchObject({
    code: "expr.argument",
    params: { of: "ring_gap", argument: "play", expected: "length", found: "temperature", column: 10 },
  });
  expect(first('ring_gap(amount(2, "bar"), 1.0) > whl.float')).toMatchObject({
    code: "expr.argument",
    params: { argument: "play", expected: "length", found: "an amount in bar" },
  });
  expect(first('ring_gap(amount(3, "[in_i]"), 1.0) > whl.float')).toMatchObject({
    code: "expr.argument-range",
    params: { argument: "play", expected: "at least 0, at most 50 mm", text: 'amount(3, "[in_i]")' },
  });
  expect(first("ring_gap(whl.float, 0) > whl.float")).toMatchObject({
    code: "expr.argument-range",
    params: { argument: "count", expected: "over 0", text: "0" },
  });
  expect(first("ring_gap(whl.float, 1.5) > whl.float")).toMatchObject({
    code: "expr.argument-range",
    params: { argument: "count", expected: "a whole number" },
  });
  expect(first("is_oval(spread_of([whl.float]))")).toMatchObject({
    code: "expr.argument-few",
    params: { of: "spread_of", argument: "readings", expected: 2 },
  });
  expect(first('share_for("onboard", whl.rise) > share_for(car.brakes, whl.rise)')).toMatchObject({
    code: "expr.argument-word",
    params: { argument: "build", found: "onboard", expected: ["inboard", "outboard"] },
  });
  expect(first("share_for(whl.kind, whl.rise) > share_for(car.brakes, whl.rise)").code).toBe("expr.argument-word");
  expect(first("ring_gab(whl.float, 1.0) > whl.float")).toMatchObject({
    code: "expr.unknown-function",
    params: { text: "ring_gab", expected: expect.arrayContaining(["ring_gap"]) },
  });
});

test("[EX50] an amount stands as an argument or below a line; it is no way round a limit", () => {
  accepted('whl.float / amount(0.5, "mm") > 2.0');
  expect(codes('whl.float > amount(0.5, "mm")')).toEqual(["expr.not-comparable"]);
  expect(codes('whl.float - amount(0.5, "mm") > whl.runout')).toEqual(["expr.not-a-figure"]);
  expect(codes('clearly_more(whl.float, amount(0.5, "mm"))')).toEqual(["expr.not-scaled"]);
  expect(codes('whl.float / amount(0.0, "mm") > 2.0')).toEqual(["expr.zero-below"]);
  expect(codes('whl.float / amount(2.0, "bar") > 2.0')).toEqual(["expr.not-a-figure"]);
  expect(codes('is_oval(amount(0.5, "mmm"))')).toEqual(["expr.unknown-unit"]);
  expect(codes('is_oval(amount(whl.float, "mm"))')).toEqual(["expr.amount"]);
  accepted('is_oval(amount(whl.studs_loose / 2.0, "mm"))');
  expect(codes('is_oval(amount(whl.studs_loose, "[in_i]"))')).toEqual(["expr.argument"]);
  expect(codes("is_oval(amount(0.5))")).toEqual(["expr.arguments"]);
});
