// [AS17]–[AS33] When a rule fires, where it concludes, replies that differ, and what effects do.
import { expect, test } from "vitest";
import { replies, smallEngine, visit } from "../../../tests/support/small-car.js";
import { rule } from "../../../tests/support/small-sheets.js";
import { type AssessInput, assess, explain, type StandingReply } from "./index.js";

const engine = smallEngine();
type Said = Parameters<typeof replies>[1];
const on = (said: Said, more: Partial<AssessInput> = {}) => assess(engine, visit(replies(engine, said), more));
const both = (one: Said, two: Said): StandingReply[] => [...replies(engine, one, "a"), ...replies(engine, two, "b")];
const of = (a: ReturnType<typeof on>, id: string) => a.findings.filter((f) => f.rule === id);

test("[AS21] a rule fires when every deciding term is known and true, and names what it rests on", () => {
  const [found] = of(on({ "hub.rock@FR": "none", "hub.spin@FR": "grumble" }), "hub.r01");
  expect(found).toMatchObject({
    fault: "hub.race",
    place: "FR",
    grade: "major",
    sure: "likely",
    jobs: ["job.hub.bearing"],
    cautions: ["cau.to-workshop"],
  });
  expect(found?.because.map((b) => b.kind === "reply" && [b.key.point, b.id, b.supports])).toEqual([
    ["hub.rock", "e0", false],
    ["hub.spin", "e1", false],
  ]);
});

test("[AS21] with a term missing it neither fires nor clears, and the missing reply is to settle", () => {
  const a = on({ "hub.rock@FR": "none" });
  expect(a.findings).toEqual([]);
  expect(a.settle[0]).toMatchObject({ point: "hub.spin", place: "FR", decides: ["hub.r01"] });
  expect(explain(engine, visit(replies(engine, { "hub.rock@FR": "none" })), "hub.r01", "FR")).toEqual({
    is: "unknown",
    missing: ["hub.spin@FR#w7-hang.feel"],
  });
  expect(
    explain(engine, visit(replies(engine, { "hub.rock@FR": "none", "hub.spin@FR": "smooth" })), "hub.r01", "FR").is,
  ).toBe("false");
});

test("[AS21] what can only become false is false: no reply would make it fire", () => {
  const said = { "hub.rock@FR": "not-fitted", "hub.noise": "none" } as const;
  expect(explain(engine, visit(replies(engine, said)), "hub.r01", "FR")).toEqual({ is: "false", missing: [] });
});

test("[AS21] nothing is to settle where nothing it looks at was answered", () => {
  expect(on({}).settle).toEqual([]);
});

test("[AS17] not fitted is not known with nothing missing: the rule does not apply", () => {
  const said = { "hub.rock@FR": "none", "hub.spin@FR": "not-fitted" } as const;
  const a = on(said);
  expect([a.findings, a.settle]).toEqual([[], []]);
  expect(explain(engine, visit(replies(engine, said)), "hub.r01", "FR")).toEqual({ is: "unknown", missing: [] });
  expect(a.points.find((p) => p.point === "hub.rock" && p.place === "FR")?.is).toBe("sound");
  expect(a.points.find((p) => p.point === "hub.spin" && p.place === "FR")?.is).toBe("not-fitted");
});

test("[AS17] any other non-answer leaves the rule waiting for that reply", () => {
  const a = on({ "hub.rock@FR": "none", "hub.spin@FR": "not-reached" });
  expect(a.settle[0]).toMatchObject({ point: "hub.spin", place: "FR" });
  expect(a.points.find((p) => p.point === "hub.spin" && p.place === "FR")?.is).toBe("cannot-get-at");
});

test("[AS17] a place where the point is not fitted drops out of 'every' and 'some'", () => {
  const three = { "hub.nuts@FL": "tight", "hub.nuts@RL": "tight", "hub.nuts@RR": "tight" };
  const gate = (said: Said) => on(said).gates.find((g) => g.gate === "gate.no-road")?.state;
  expect(gate(three)).toBe("not cleared");
  expect(gate({ ...three, "hub.nuts@FR": "not-fitted" })).toBe("cleared");
});

test("[AS18] looked at in two car states: what either shows counts", () => {
  expect(of(on({ "hub.seen-twice@FR#w1-cold": "sound", "hub.seen-twice@FR#w8-off": "torn" }), "hub.r20")).toMatchObject(
    [{ differ: [] }],
  );
  expect(
    of(on({ "hub.seen-twice@FR#w1-cold": "not-reached", "hub.seen-twice@FR#w8-off": "sound" }), "hub.r20"),
  ).toEqual([]);
});

test("[AS18] not reached on the ground but seen with the wheel off is seen", () => {
  const said = { "hub.seen-twice@FR#w1-cold": "not-reached", "hub.seen-twice@FR#w8-off": "sound" } as const;
  expect(explain(engine, visit(replies(engine, said)), "hub.r20", "FR")).toEqual({ is: "false", missing: [] });
});

test("[AS19] two replies on one point both stand: the rule fires under either, and says which", () => {
  const a = assess(
    engine,
    visit(both({ "hub.rock@FR": "none", "hub.spin@FR": "grumble" }, { "hub.spin@FR": "smooth" })),
  );
  expect(of(a, "hub.r01")).toMatchObject([{ place: "FR", grade: "major", differ: ["a1"] }]);
  expect(a.points.find((p) => p.point === "hub.spin" && p.place === "FR")?.is).toBe("major");
});

test("[AS19] where every choice fires alike nothing differs; the worst grade of all choices stands", () => {
  const alike = assess(
    engine,
    visit(both({ "hub.rock@FR": "none", "hub.spin@FR": "grumble" }, { "hub.spin@FR": "rough" })),
  );
  expect(of(alike, "hub.r01")).toMatchObject([{ differ: [] }]);
  const worse = assess(
    engine,
    visit(both({ "hub.float@FR": "0.30 mm", "hub.kind@FR": "taper" }, { "hub.float@FR": "0.90 mm" })),
  );
  expect(of(worse, "hub.r03")).toMatchObject([{ grade: "dangerous", differ: ["b0"] }]);
});

test("[AS19] true under one choice, not known under another: it fires; false under one, not known under another: not known", () => {
  const fires = assess(
    engine,
    visit(both({ "hub.rock@FR": "none", "hub.spin@FR": "grumble" }, { "hub.spin@FR": "not-reached" })),
  );
  expect(of(fires, "hub.r01")).toHaveLength(1);
  const waits = explain(
    engine,
    visit(both({ "hub.rock@FR": "none", "hub.spin@FR": "smooth" }, { "hub.spin@FR": "could-not-tell" })),
    "hub.r01",
    "FR",
  );
  expect(waits).toEqual({ is: "unknown", missing: ["hub.spin@FR#w7-hang.feel"] });
});

test("[AS19] a gate is tripped by either of two replies, and cleared only by both", () => {
  const tight = { "hub.nuts@FL": "tight", "hub.nuts@FR": "tight", "hub.nuts@RL": "tight", "hub.nuts@RR": "tight" };
  const gate = (standing: StandingReply[]) =>
    assess(engine, visit(standing)).gates.find((g) => g.gate === "gate.no-road")?.state;
  expect(gate(both(tight, { "hub.nuts@FR": "loose" }))).toBe("not cleared");
  expect(gate(both({ "hub.rock@FR": "none" }, { "hub.rock@FR": "bad" }))).toBe("tripped");
});

test("[AS19] more than sixty-four choices are not gone through: not known, every one named", () => {
  const everywhere = smallEngine([
    rule("hub.t1", "car", "hub.t", "minor", 'places("corner").all(c, c.hub.spin == "rough" && c.hub.rock == "none")'),
  ]);
  const corners = ["FL", "FR", "RL", "RR"];
  const said = (spin: string, rock: string) =>
    Object.fromEntries(
      corners.flatMap((c) => [
        [`hub.spin@${c}`, spin],
        [`hub.rock@${c}`, rock],
      ]),
    );
  const standing = both(said("rough", "none"), said("smooth", "clear"));
  const got = explain(everywhere, visit(standing), "hub.t1", "car");
  expect(got.is).toBe("unknown");
  expect(got.missing).toHaveLength(8);
  // six replies that differ are sixty-four choices: those are gone through
  const six = both(said("rough", "none"), {
    "hub.spin@FL": "smooth",
    "hub.spin@FR": "smooth",
    "hub.spin@RL": "smooth",
    "hub.spin@RR": "smooth",
    "hub.rock@FL": "clear",
    "hub.rock@FR": "clear",
  });
  expect(explain(everywhere, visit(six), "hub.t1", "car").is).toBe("true");
  const seven = [...six, ...replies(engine, { "hub.rock@RL": "clear" }, "c")];
  expect(explain(everywhere, visit(seven), "hub.t1", "car").is).toBe("unknown");
});

test("[AS19] two values of a car fact are choices too", () => {
  const said = replies(engine, { "hub.rock@FR": "clear" });
  const car = { facts: { brakes: "inboard" }, otherFacts: { brakes: ["outboard"] }, limits: [] };
  expect(of(assess(engine, visit(said, { car })), "hub.r18")).toMatchObject([{ differ: ["car@car#.brakes"] }]);
  expect(of(on({ "hub.rock@FR": "clear" }, { car: { facts: { brakes: "inboard" }, limits: [] } }), "hub.r18")).toEqual(
    [],
  );
});

test("[AS20] the same said twice is not two that differ", () => {
  const a = assess(
    engine,
    visit(both({ "hub.rock@FR": "none", "hub.spin@FR": "grumble" }, { "hub.spin@FR": "grumble" })),
  );
  expect(of(a, "hub.r01")).toMatchObject([{ differ: [] }]);
  const sound = assess(engine, visit(both({ "hub.listen@FR": "quiet" }, { "hub.listen@FR": "quiet" })));
  expect(sound.points.find((p) => p.point === "hub.listen" && p.place === "FR")?.is).toBe("sound");
});

test("[AS22] a worse grade while its condition is known true", () => {
  expect(of(on({ "hub.noise": "hum", "hub.bend": "left-bend" }), "hub.r02")).toMatchObject([{ grade: "minor" }]);
  expect(of(on({ "hub.noise": "loud", "hub.bend": "left-bend" }), "hub.r02")).toMatchObject([{ grade: "major" }]);
});

test("[AS22] the grade of a reading not taken yet is the least it may be, and the reading is opened", () => {
  const a = on({ "hub.rock@FR": "clear", "hub.spin@FR": "smooth" });
  expect(of(a, "hub.r06")).toMatchObject([{ grade: "minor", atLeast: true }]);
  expect(a.open).toContainEqual({ point: "hub.float", place: "FR", because: "hub.r06" });
  expect(
    of(
      on({ "hub.rock@FR": "clear", "hub.spin@FR": "smooth", "hub.float@FR": "0.90 mm", "hub.kind@FR": "unit" }),
      "hub.r06",
    ),
  ).toMatchObject([{ grade: "dangerous", atLeast: false }]);
});

test("[AS23] a supporting term known true raises how sure; not known it opens the point; false it does nothing", () => {
  const said = { "hub.rock@FR": "none", "hub.spin@FR": "grumble" };
  const sure = (more: Said) => of(on({ ...said, ...more }), "hub.r01")[0]?.sure;
  expect([sure({}), sure({ "hub.listen@FR": "grumble" }), sure({ "hub.listen@FR": "quiet" })]).toEqual([
    "likely",
    "certain",
    "likely",
  ]);
  expect(on(said).faults[0]?.settle).toContainEqual({ point: "hub.listen", place: "FR", because: "hub.r01" });
});

test("[AS24] it concludes at every place inside the wider one where 'where' holds, else at the wider one", () => {
  const noise = { "hub.noise": "hum", "hub.bend": "left-bend" };
  expect(of(on(noise), "hub.r02").map((f) => f.place)).toEqual(["side-R"]);
  expect(of(on({ ...noise, "hub.spin@FR": "grumble", "hub.spin@RR": "rough" }), "hub.r02").map((f) => f.place)).toEqual(
    ["FR", "RR"],
  );
  // a rough wheel on the other side says nothing about this one
  expect(of(on({ ...noise, "hub.spin@FL": "grumble" }), "hub.r02").map((f) => f.place)).toEqual(["side-R"]);
});

test("[AS24] a relation that is a kind concludes at the wider place, once", () => {
  expect(of(on({ "hub.joint@FR-upper": "clear" }), "hub.r17").map((f) => f.place)).toEqual(["axle-F", "axle-R"]);
});

test("[AS25] it opens points here, at the twin, and of sheets that are not there", () => {
  const [found] = of(on({ "hub.rock@FR": "none", "hub.spin@FR": "grumble" }), "hub.r01");
  expect(found?.opens.map((o) => `${o.point}@${o.place}`)).toEqual(["hub.listen@FR", "hub.spin@FL", "joi.boot@FR"]);
  expect(
    on({ "hub.rock@FR": "none", "hub.spin@FR": "grumble", "hub.spin@FL": "smooth" }).open.map(
      (o) => `${o.point}@${o.place}`,
    ),
  ).toEqual(["hub.listen@FR", "joi.boot@FR"]);
});

test("[AS27] a discarded reading grades nothing and is not checked; the discarding is listed", () => {
  const a = on({ "hub.wall@FR": "0.60 mm", "hub.probe": "single" });
  expect(of(a, "hub.r08")).toEqual([]);
  expect(of(a, "hub.r09")).toMatchObject([{ effect: "discard-reading", grade: null, place: "FR" }]);
  expect(a.points.find((p) => p.point === "hub.wall" && p.place === "FR")?.is).toBe("answered");
  expect(a.coverage.find((c) => c.sheet === "hub")?.notChecked).toBe(1);
  expect(of(on({ "hub.wall@FR": "0.60 mm", "hub.probe": "twin" }), "hub.r08")).toMatchObject([{ grade: "dangerous" }]);
});

test("[AS27] two replies about the probe: the reading still grades under the one that keeps it", () => {
  const a = assess(engine, visit(both({ "hub.wall@FR": "0.60 mm", "hub.probe": "single" }, { "hub.probe": "twin" })));
  expect(of(a, "hub.r08")).toMatchObject([{ grade: "dangerous", differ: ["b0"] }]);
});

test("[AS28] a raise lifts one step in all, never above dangerous, and says so", () => {
  const floats = {
    "hub.float@FL": "0.06 mm",
    "hub.float@FR": "0.16 mm",
    "hub.kind@FL": "taper",
    "hub.kind@FR": "taper",
  };
  const a = on(floats);
  expect(a.faults.find((f) => f.fault === "hub.play" && f.place === "FR")?.grade).toBe("major");
  expect(of(a, "hub.r03")[0]?.because).toContainEqual({ kind: "raised", rule: "hub.r10" });
  expect(of(a, "hub.r10")).toMatchObject([{ effect: "raise", grade: null, place: "FR" }]);
  // the cross rule raises the same fault as well: still one step
  const twice = on({ ...floats, "hub.rock@FR": "none", "hub.spin@FR": "rough", "joi.boot@FR": "split" });
  expect(twice.faults.find((f) => f.fault === "hub.play" && f.place === "FR")?.grade).toBe("major");
  const top = on({ ...floats, "hub.float@FR": "0.95 mm" });
  expect(top.faults.find((f) => f.fault === "hub.play" && f.place === "FR")?.grade).toBe("dangerous");
});

test("[AS28] readings no further apart than their gauge can tell raise nothing", () => {
  expect(of(on({ "hub.float@FL": "0.01 mm", "hub.float@FR": "0.03 mm" }), "hub.r10")).toEqual([]);
});

test("[AS29] what rests on a point heard under a louder noise is no more than possible", () => {
  const said = { "hub.noise": "loud", "hub.bend": "left-bend" } as const;
  const heard = smallEngine([rule("hub.t1", "car", "hub.t", "minor", 'hub.noise == "loud"', { sure: "certain" })]);
  const sure = (more: Said) =>
    assess(heard, visit(replies(heard, { ...said, ...more }))).findings.find((f) => f.rule === "hub.t1")?.sure;
  expect([sure({ "hub.masked": "no" }), sure({ "hub.masked": "exhaust" })]).toEqual(["certain", "possible"]);
});

test("[AS30] 'not checked' keeps an answer from counting", () => {
  const a = on({ "hub.masked": "exhaust", "hub.noise": "none" });
  expect(of(a, "hub.r11")).toMatchObject([{ effect: "not-checked", grade: null }]);
  expect(a.points.find((p) => p.point === "hub.noise")?.is).toBe("answered");
  expect(a.coverage.find((c) => c.sheet === "hub")).toMatchObject({ answered: 2, notChecked: 1 });
});

test("[AS31] 'open' opens points and 'order' orders jobs", () => {
  const a = on({ "hub.spin@FR": "rough", "joi.boot@FR": "split" });
  expect(a.open.map((o) => `${o.point}@${o.place}`)).toEqual(
    expect.arrayContaining(["hub.grease@FR", "hub.listen@FL"]),
  );
  expect(a.orders).toEqual([{ before: "job.joi.boot", after: "job.hub.bearing", place: "car", rule: "x.r02" }]);
});

test("[AS32] the third pass sees faults of the second; a raise never feeds another", () => {
  const chain = smallEngine([
    { id: "hub.t1", scope: "corner", effect: { raise: "hub.race" }, when: 'found("hub.race")', sure: "certain" },
    { id: "hub.t2", scope: "car", effect: { open: ["hub.grease@FR"] }, when: 'found("hub.race")', sure: "certain" },
    { id: "hub.t3", scope: "corner", effect: { open: ["hub.grease"] }, when: '!found("hub.race")', sure: "certain" },
  ]);
  const a = assess(chain, visit(replies(chain, { "hub.rock@FR": "none", "hub.spin@FR": "grumble" })));
  expect(
    a.findings
      .filter((f) => f.grade === null)
      .map((f) => `${f.rule}@${f.place}`)
      .sort(),
  ).toEqual(["hub.t1@FR", "hub.t2@car", "hub.t3@FL", "hub.t3@RL", "hub.t3@RR"]);
  expect(a.faults.find((f) => f.fault === "hub.race")?.grade).toBe("dangerous");
});

test("[AS33] a rule across sheets applies only when all its sheets are open", () => {
  const said = { "hub.rock@FR": "none", "hub.spin@FR": "rough", "joi.boot@FR": "split" };
  expect(of(on(said), "x.r01")).toHaveLength(1);
  expect(of(on(said, { sheets: ["hub"] }), "x.r01")).toEqual([]);
});

test("[AS21] a provisional rule may rest on silence, and says it does", () => {
  expect(of(on({ "hub.rock@FR": "just-felt" }), "hub.r19")).toMatchObject([{ provisional: true }]);
  expect(of(on({ "hub.rock@FR": "just-felt", "hub.float@FR": "0.01 mm" }), "hub.r19")).toEqual([]);
  expect(on({ "hub.rock@FR": "just-felt" }).faults[0]?.provisional).toBe(true);
});

test("a reply for a place this car has not, or a point nobody knows, is told", () => {
  const stray: StandingReply = {
    key: { point: "hub.rock", place: "XX", state: "w7-hang", field: "feel" },
    value: { type: "words", words: ["bad"] },
    id: "s",
  };
  const a = assess(engine, visit([stray, { ...stray, key: { ...stray.key, point: "hub.nothing", place: "FR" } }]));
  expect(a.problems.map((p) => [p.code, p.params["what"]])).toEqual([
    ["assess.reply-nowhere", "place"],
    ["assess.reply-nowhere", "point"],
  ]);
});
