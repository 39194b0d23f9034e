// [AS34]–[AS51] Faults, gates, cautions, what to settle, what was looked at, grades given by hand.
import { expect, test } from "vitest";
import { planned, replies, smallEngine, visit } from "../../../tests/support/small-car.js";
import { HUB_SHEET, JOINT_SHEET, rule, SMALL_COMMON } from "../../../tests/support/small-sheets.js";
import type { CarState, Gate } from "../sheet/run.js";
import { TRADE_WORK } from "../trade/index.js";
import { type AssessInput, type Assessment, applyRegrades, assess, complaintsIn, prepare } from "./index.js";

const engine = smallEngine();
type Said = Parameters<typeof replies>[1];
const on = (said: Said, more: Partial<AssessInput> = {}) => assess(engine, visit(replies(engine, said), more));
const gate = (a: Assessment, id: string) => a.gates.find((g) => g.gate === id);
const state = (a: Assessment, point: string, place = "FR") =>
  a.points.find((p) => p.point === point && p.place === place)?.is;
const rough = { "hub.rock@FR": "none", "hub.spin@FR": "grumble" } as const;

test("[AS34] findings stay apart; a fault takes the worst grade, every rule, job and caution", () => {
  const a = on({ ...rough, "hub.noise": "loud", "hub.bend": "left-bend" });
  expect(a.findings.map((f) => [f.rule, f.place])).toEqual([
    ["hub.r02", "FR"],
    ["hub.r01", "FR"],
  ]);
  expect(a.faults).toMatchObject([
    {
      fault: "hub.race",
      place: "FR",
      grade: "major",
      sure: "likely",
      rules: ["hub.r01", "hub.r02"],
      jobs: ["job.hub.bearing"],
      consequence: 2,
      likelihood: "C",
    },
  ]);
});

test("[AS34] a fault is close only when every finding of its grade is", () => {
  const heard = smallEngine([rule("hub.t1", "corner", "hub.play", "major", 'hub.listen == "grumble"')]);
  const close = { "hub.float@FR": "0.24 mm", "hub.kind@FR": "taper" };
  const fault = (said: Said) => assess(heard, visit(replies(heard, said))).faults.find((f) => f.fault === "hub.play");
  expect(fault(close)).toMatchObject({ grade: "major", close: true });
  expect(fault({ ...close, "hub.listen@FR": "grumble" })).toMatchObject({ grade: "major", close: false });
});

test("[AS35] a fault at a place inside that of the same fault takes the wider one in", () => {
  const a = on({ "hub.noise": "hum", "hub.bend": "left-bend" });
  expect(a.faults.map((f) => `${f.fault}@${f.place}`)).toEqual(["hub.race@side-R"]);
  const wide = smallEngine([rule("hub.t1", "car", "hub.race", "advisory", 'hub.noise == "hum"')]);
  const said = replies(wide, { ...rough, "hub.noise": "hum" });
  expect(assess(wide, visit(said)).faults).toMatchObject([
    { place: "FR", grade: "major", rules: ["hub.r01", "hub.t1"] },
  ]);
  expect(assess(wide, visit(said)).findings.map((f) => f.place)).toEqual(["FR", "car"]);
});

test("[AS35] the wider one is taken in by every narrower one, and by none that is not inside", () => {
  const a = on({ "hub.noise": "hum", "hub.bend": "left-bend", "hub.rock@FL": "none", "hub.spin@FL": "grumble" });
  expect(a.faults.map((f) => `${f.fault}@${f.place}`)).toEqual(["hub.race@FL", "hub.race@side-R"]);
});

test("[AS36] a gate is shut until its set is answered clear, and says what to do first", () => {
  const a = on({});
  expect(gate(a, "gate.no-road")).toMatchObject({ state: "not cleared", missingSheets: ["brk"], trippedBy: [] });
  expect(gate(a, "gate.no-road")?.first.map((o) => `${o.point}@${o.place}`)).toEqual([
    "hub.nuts@FL",
    "hub.nuts@FR",
    "hub.nuts@RL",
    "hub.nuts@RR",
    "brk.pedal@car",
  ]);
  const three = on({ "hub.nuts@FL": "tight", "hub.nuts@RL": "tight", "hub.nuts@RR": "loose" });
  expect(gate(three, "gate.no-road")?.first.map((o) => `${o.point}@${o.place}`)).toEqual(
    expect.arrayContaining(["hub.nuts@FR", "hub.nuts@RR"]),
  );
});

test("[AS36] cleared when every clearing condition is known true", () => {
  const tight = { "hub.nuts@FL": "tight", "hub.nuts@FR": "tight", "hub.nuts@RL": "tight", "hub.nuts@RR": "tight" };
  expect(gate(on(tight), "gate.no-road")).toMatchObject({ state: "cleared", first: [], missingSheets: [] });
  expect(gate(on({ ...tight, "hub.rock@FR": "bad" }), "gate.no-road")?.state).toBe("tripped");
});

test("[AS37] a tripped gate names what tripped it, and its cautions are due", () => {
  const a = on({ "hub.heat@FL": "60 Cel" });
  expect(gate(a, "gate.no-touch")).toMatchObject({
    state: "tripped",
    trippedBy: [{ kind: "condition", path: "common:gates/gate.no-touch/trips/0", places: ["FL"] }],
    first: [{ point: "hub.heat", place: "FL", because: "gate.no-touch" }],
  });
  expect(a.cautions).toEqual([{ caution: "cau.hot", signal: "caution", places: ["FL"], because: ["gate.no-touch"] }]);
  expect(gate(on({}), "gate.no-touch")?.state).toBe("cleared");
});

test("[AS52] a gate over all corners names each corner that would shut it alone, and asks about no other", () => {
  const a = on({ "hub.heat@FL": "60 Cel", "hub.heat@RR": "70 Cel", "hub.heat@FR": "20 Cel" });
  expect(gate(a, "gate.no-touch")).toMatchObject({
    trippedBy: [{ kind: "condition", places: ["FL", "RR"] }],
    first: [
      { point: "hub.heat", place: "FL" },
      { point: "hub.heat", place: "RR" },
    ],
  });
  expect(a.cautions.map(({ caution, places }) => [caution, places])).toEqual([["cau.hot", ["FL", "RR"]]]);
});

test("[AS38] any dangerous finding shuts road and drive-away, and so does 'do not drive'", () => {
  const thin = on({ "hub.wall@FR": "0.50 mm" });
  for (const id of ["gate.no-road", "gate.no-drive-away"])
    expect(gate(thin, id)).toMatchObject({
      state: "tripped",
      trippedBy: [{ kind: "dangerous", fault: "hub.thin", place: "FR" }],
    });
  expect(gate(thin, "gate.no-touch")?.state).toBe("cleared");
  const told = smallEngine([
    rule("hub.t1", "corner", "hub.t", "major", 'hub.listen == "grumble"', { cautions: ["cau.dont-drive"] }),
  ]);
  const a = assess(told, visit(replies(told, { "hub.listen@FR": "grumble" })));
  expect(gate(a, "gate.no-drive-away")).toMatchObject({
    state: "tripped",
    trippedBy: [{ kind: "caution", rule: "hub.t1", place: "FR" }],
  });
});

test("[AS38] and before a car state of a sheet's own in which the car drives; not before one in which it stands", () => {
  const shut = (engine: "driving" | "running") => {
    const own: CarState = { id: "z9-track", order: 9, lifted: false, plan: "none", engine };
    const track: Gate = { id: "gate.track", guards: "z9-track", starts: "cleared", trips: [], cautions: [] };
    const built = planned(
      { ...SMALL_COMMON, states: [...SMALL_COMMON.states, own], gates: [...SMALL_COMMON.gates, track] },
      [HUB_SHEET, JOINT_SHEET],
    );
    const engineOf = prepare(built.common, built.sheets, TRADE_WORK);
    return gate(assess(engineOf, visit(replies(engineOf, { "hub.wall@FR": "0.50 mm" }))), "gate.track");
  };
  expect(shut("driving")).toMatchObject({ drives: true, state: "tripped", trippedBy: [{ kind: "dangerous" }] });
  expect(shut("running")).toMatchObject({ drives: false, state: "cleared" });
});

test("[AS39] a gate's set counts whatever sheets are open, and is asked", () => {
  const a = on({ "hub.rock@FR": "bad" }, { sheets: ["joi"] });
  expect(gate(a, "gate.no-road")?.state).toBe("tripped");
  expect(a.findings).toEqual([]);
  expect(a.asked.map((p) => p.point)).toContain("hub.nuts");
  expect(a.asked.map((p) => p.point)).not.toContain("hub.spin");
  expect(a.coverage.map((c) => c.sheet)).toEqual(["joi"]);
});

test("[AS41] cautions stand gravest first", () => {
  const a = on({ ...rough, "hub.rock@RL": "bad", "hub.heat@FL": "60 Cel" });
  expect(a.cautions.map((c) => c.caution)).toEqual(["cau.dont-drive", "cau.stop", "cau.to-workshop", "cau.hot"]);
  expect(a.cautions[0]?.because).toEqual(["hub.r05", "gate.no-drive-away"]);
});

test("[AS42] settle-it points are ranked by what they alone would decide, worst grade first", () => {
  const a = on({ "hub.rock@FR": "none", "hub.noise": "hum", "hub.heat@FL": "30 Cel" });
  const first = a.settle.slice(0, 3).map((s) => [s.point, s.place, s.decides[0]]);
  // race major at FR, race up to major for the side, hot hub minor
  expect(first).toEqual([
    ["hub.bend", "car", "hub.r02"],
    ["hub.spin", "FR", "hub.r01"],
    ["hub.air", "car", "hub.r14"],
  ]);
});

test("[AS45] sound only when really answered, with every rule and limit over it known and none fired", () => {
  const said = { "hub.rock@FR": "none", "hub.spin@FR": "smooth", "hub.listen@FR": "quiet" };
  const a = on(said);
  expect([state(a, "hub.rock"), state(a, "hub.spin"), state(a, "hub.listen")]).toEqual(["sound", "sound", "sound"]);
  expect(state(on({ "hub.rock@FR": "none" }), "hub.rock")).toBe("answered");
  expect(state(on(rough), "hub.spin")).toBe("major");
  expect(state(on({}), "hub.spin")).toBe("not-looked-at");
  expect(state(on({ "hub.spin@FR": "could-not-tell" }), "hub.spin")).toBe("cannot-get-at");
});

test("[AS45] a reading past a limit no rule speaks of is not sound, nor one too close to call", () => {
  const silent = smallEngine([], [{ ...HUB_SHEET, rules: HUB_SHEET.rules.filter((r) => r.id === "hub.r01") }]);
  const at = (mm: string) =>
    state(assess(silent, visit(replies(silent, { "hub.pad@FR": mm }), { sheets: ["hub"] })), "hub.pad");
  expect([at("5.0 mm"), at("3.1 mm"), at("2.0 mm")]).toEqual(["sound", "answered", "answered"]);
});

test("[AS45] two replies that differ are not sound, though both be good", () => {
  const standing = [
    ...replies(engine, { "hub.grease@FR": ["clean"] }, "a"),
    ...replies(engine, { "hub.grease@FR": ["burnt"] }, "b"),
  ];
  expect(state(assess(engine, visit(standing)), "hub.grease")).toBe("answered");
});

test("[AS44] a point with several fields is answered when every one that is not optional is", () => {
  const a = on({ "hub.float.mark@FR": "bright" });
  expect(state(a, "hub.float")).toBe("answered");
  expect(a.coverage[0]?.answered).toBe(0);
  expect(on({ "hub.float@FR": "0.01 mm" }).coverage[0]?.answered).toBe(1);
});

/** A point like the boot, elsewhere. */
const more = (id: string, place: string) => JOINT_SHEET.points.map((p) => ({ ...p, id, place }));

test("[AS46] coverage counts what this person is asked; not fitted leaves the count; three tenths unseen is still enough", () => {
  const a = on({ "hub.rock@FR": "none", "hub.rock@FL": "not-fitted", "hub.rock@RL": "not-reached" });
  const hub = a.coverage.find((c) => c.sheet === "hub");
  const whole = on({}).coverage.find((c) => c.sheet === "hub");
  expect(hub).toMatchObject({
    answered: 1,
    nonAnswers: { "not-fitted": 1, "not-reached": 1 },
    notForThisLook: 0,
    enough: false,
  });
  expect(hub?.of).toBe((whole?.of ?? 0) - 1);
  // ten points asked: three unseen are enough, four are not
  const ten = {
    ...JOINT_SHEET,
    rules: [],
    points: [...JOINT_SHEET.points, ...more("joi.cap", "corner"), ...more("joi.bar", "axle")],
  };
  const wider = smallEngine([], [ten]);
  const spots = [
    "boot@FL",
    "boot@FR",
    "boot@RL",
    "boot@RR",
    "cap@FL",
    "cap@FR",
    "cap@RL",
    "cap@RR",
    "bar@axle-F",
    "bar@axle-R",
  ];
  const seen = (n: number) => {
    const said = Object.fromEntries(spots.slice(0, n).map((at) => [`joi.${at}`, "sound"]));
    return assess(wider, visit(replies(wider, said), { sheets: ["joi"] })).coverage[0];
  };
  expect([seen(7), seen(6)]).toMatchObject([
    { of: 10, enough: true },
    { of: 10, enough: false },
  ]);
});

test("[AS46] points for other people stand apart", () => {
  const buyer = on({}, { who: "buyer" }).coverage.find((c) => c.sheet === "hub");
  expect(buyer?.notForThisLook).toBe(8);
  expect(on({}, { who: "buyer" }).asked.map((p) => p.point)).not.toContain("hub.kind");
});

test("[AS47] asked in walking order: car state, then place, then safety-critical first", () => {
  const asked = on({}).asked.map((p) => `${p.state} ${p.place} ${p.point}`);
  const states = on({}).asked.map((p) => p.state);
  expect(states).toEqual([...states].sort());
  expect(asked.slice(0, 3)).toEqual(["w1-cold FL hub.nuts", "w1-cold FL hub.seen-twice", "w1-cold FL hub.kind"]);
  expect(asked.filter((t) => t.includes("w7-hang FR "))).toEqual([
    "w7-hang FR hub.rock",
    "w7-hang FR hub.spin",
    "w7-hang FR hub.listen",
  ]);
});

test("[AS47] a point looked at in two states is asked in both; one answered together with another stands with it", () => {
  const { asked } = on({});
  expect(asked.filter((p) => p.point === "hub.seen-twice" && p.place === "FR").map((p) => p.state)).toEqual([
    "w1-cold",
    "w8-off",
  ]);
  expect(asked.some((p) => p.point === "hub.cap")).toBe(false);
  expect(asked.find((p) => p.point === "hub.studs")?.with).toEqual(["hub.cap"]);
});

test("[AS48] felt first, measured second: hidden until the feel asks for it, a rule opens it, or it is answered", () => {
  const isAsked = (said: Said) => on(said).asked.some((p) => p.point === "hub.float" && p.place === "FR");
  expect([isAsked({}), isAsked({ "hub.rock@FR": "none" }), isAsked({ "hub.rock@FR": "clear" })]).toEqual([
    false,
    false,
    true,
  ]);
  expect(isAsked({ "hub.float@FR": "0.02 mm" })).toBe(true);
  expect(
    on({ "hub.rock@FR": "clear", "hub.spin@FR": "smooth" }).asked.find(
      (p) => p.point === "hub.float" && p.place === "FR",
    )?.openedBy,
  ).toEqual(["hub.r06"]);
});

test("[AS59] a stand-in is asked only while the fuller point's sheet is not open; answered before, it stays", () => {
  const standIn = (fuller: string) => {
    const points = HUB_SHEET.points.map((point) =>
      point.id === "hub.nuts" ? { ...point, "instead-of": fuller } : point,
    );
    const own = smallEngine([], [{ ...HUB_SHEET, points }, JOINT_SHEET]);
    const a = (said: Said) => assess(own, visit(replies(own, said)));
    const asks = (said: Said) => a(said).asked.filter(({ point }) => point === "hub.nuts").length;
    return { alone: asks({}), answered: asks({ "hub.nuts@FR": "loose" }), first: gate(a({}), "gate.no-road")?.first };
  };
  expect(standIn("brk.pedal")).toMatchObject({ alone: 4, answered: 4 });
  const beside = standIn("hub.rock");
  expect(beside).toMatchObject({ alone: 0, answered: 1 });
  expect(beside.first?.map(({ point }) => point)).toEqual(["brk.pedal"]);
});

test("[AS49] a complaint puts its points first, while they are unanswered", () => {
  const places = (said: Said) => on(said, { complaints: ["sym.hum"] }).suggested.map((o) => `${o.point}@${o.place}`);
  expect(places({})).toEqual(["hub.spin@FL", "hub.spin@FR", "hub.spin@RL", "hub.spin@RR", "hub.noise@car"]);
  expect(places({ "hub.spin@FL": "smooth" })[0]).toBe("hub.spin@FR");
  expect(on({}, { complaints: ["it hums"] }).suggested).toEqual([]);
});

test("[AS49] the owner's words are known in other endings and among others", () => {
  const complaint = (says: string[]) => ({ name: "", says, suspects: {} });
  const texts = {
    "sym.hum": complaint(["drone", "noise rises with speed"]),
    "sym.clunk": complaint(["clunk when I pull away"]),
  };
  expect(complaintsIn("There is a droning from the back", texts)).toEqual(["sym.hum"]);
  expect(complaintsIn("It clunks when I pull away, and the noise rises with the speed", texts)).toEqual([
    "sym.hum",
    "sym.clunk",
  ]);
  expect(complaintsIn("Nothing wrong with it", texts)).toEqual([]);
  const short = { "sym.hum": complaint(["hum"]) };
  for (const said of ["It hums from the back right", "a humming", "it hummed all day", "hum"])
    expect(complaintsIn(said, short), said).toEqual(["sym.hum"]);
  for (const said of ["only human", "humble"]) expect(complaintsIn(said, short), said).toEqual([]);
});

test("[AS51] a grade given by hand goes up freely, down only with a reason", () => {
  const a = on(rough);
  const at = { fault: "hub.race", place: "FR", id: "g1" } as const;
  const up = applyRegrades(a, [{ ...at, grade: "dangerous", reason: "" }]);
  expect(up.faults[0]).toMatchObject({ grade: "dangerous", byHand: { was: "major", id: "g1" } });
  expect(gate(up, "gate.no-drive-away")).toMatchObject({
    state: "tripped",
    trippedBy: [{ kind: "dangerous", fault: "hub.race", place: "FR" }],
  });
  expect(up.cautions.map((c) => c.caution)).toContain("cau.dont-drive");
  const down = applyRegrades(a, [{ ...at, grade: "minor", reason: " " }]);
  expect([down.faults[0]?.grade, down.problems.map((p) => p.code)]).toEqual(["major", ["assess.regrade-no-reason"]]);
  expect(applyRegrades(a, [{ ...at, grade: "minor", reason: "new part, noted" }]).faults[0]?.grade).toBe("minor");
});

test("[AS51] two grades given by hand both stand: the worse rules; one for a fault that is not there is told", () => {
  const a = on(rough);
  const at = { fault: "hub.race", place: "FR", reason: "seen" } as const;
  expect(
    applyRegrades(a, [
      { ...at, grade: "minor", id: "1" },
      { ...at, grade: "dangerous", id: "2" },
    ]).faults[0]?.grade,
  ).toBe("dangerous");
  const stray = applyRegrades(a, [{ ...at, place: "RL", grade: "minor", id: "3" }]);
  expect([stray.faults, stray.problems.map((p) => p.code)]).toEqual([a.faults, ["assess.regrade-no-fault"]]);
});

test("[AS51] a dangerous fault lowered with a reason opens the road again; its caution is still told", () => {
  const a = on({ "hub.rock@FR": "bad" });
  const lowered = applyRegrades(a, [
    { fault: "hub.loose", place: "FR", grade: "major", reason: "nut had been left off for the test", id: "1" },
  ]);
  expect(gate(lowered, "gate.no-drive-away")?.state).toBe("cleared");
  expect(gate(lowered, "gate.no-road")?.trippedBy.map((c) => c.kind)).toEqual(["condition"]);
  expect(lowered.cautions.find((c) => c.caution === "cau.dont-drive")?.because).toEqual(["hub.r05"]);
});
