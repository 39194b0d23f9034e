/** The because in words: every kind of step core/assess can give, and names nobody has words for. */
import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import type { Because, Fault, Finding } from "../../core/assess/contract.js";
import { settleText, traceOf } from "./because.js";

const known = miniKnowledge();
const key = { point: "hub.spin", place: "FR", state: "w7-hang", field: "feel" };
const value = { type: "words", words: ["rough"] } as const;
/** One of each kind; the compiler holds the list complete. */
const EACH: { readonly [Kind in Because["kind"]]: Extract<Because, { kind: Kind }> } = {
  reply: { kind: "reply", key, value, id: "1", supports: false },
  fact: { kind: "fact", name: "wheel_fixing", value: "centre-lock" },
  limit: {
    kind: "limit",
    limit: "lim.gone",
    place: "FR",
    of: "hub.float",
    field: "play",
    value: 0.3,
    uncertainty: 0.03,
    unit: "mm",
    edge: 0.25,
    grade: "major",
    basis: "practice",
    source: "common practice",
    isDefault: true,
  },
  derived: {
    kind: "derived",
    id: "hub.odd",
    place: "FR",
    value: 0.1,
    uncertainty: 0.02,
    unit: "mm",
    from: [],
    insteadOf: [],
  },
  earlier: { kind: "earlier", at: "2026-01-02", odometer: { value: 48000, unit: "km" }, key, value },
  found: { kind: "found", fault: "hub.gone-fault", place: "FR" },
  raised: { kind: "raised", rule: "hub.r99" },
  "own-words": { kind: "own-words", words: "wire round it", reason: "it holds the arm", by: "Anna", at: 0, id: "e1" },
};
const fault = (close: boolean): Fault => ({
  fault: "hub.play",
  place: "FR",
  grade: "dangerous",
  sure: "certain",
  close,
  provisional: false,
  rules: ["hub.r01"],
  jobs: [],
  cautions: [],
  consequence: 1,
  likelihood: "A",
  mustStand: false,
  position: 1,
  settle: [],
});
const finding = (because: Because): Finding => ({
  rule: "hub.r01",
  fault: "hub.play",
  place: "FR",
  grade: "dangerous",
  sure: "certain",
  provisional: false,
  close: false,
  atLeast: false,
  differ: [],
  because: [because],
  jobs: [],
  cautions: [],
  opens: [],
});
const telling = { known, who: "technician", visit: "v", car: "c", pictures: [] } as const;

test("every kind of because is told, also where the sheet has no words for it, and never by an id of a rule or fact", () => {
  for (const because of Object.values(EACH)) {
    const [step] = traceOf(telling, fault(false), [finding(because)]);
    expect(step?.id, because.kind).not.toBe("so");
    expect(step?.says, because.kind).toMatch(/\w/);
    expect(step?.says, because.kind).not.toMatch(/[{}_]|undefined|hub\.r|gone-fault/);
  }
});

test("what stood last time is told with its day and the distance on the clock, and its place where that is another", () => {
  const [here] = traceOf(telling, fault(false), [finding(EACH.earlier)]);
  expect(here).toMatchObject({ kind: "Last time", aside: expect.stringMatching(/2026.*48.?000 km/) });
  const twin = { ...EACH.earlier, key: { ...key, place: "FL" } };
  const [there] = traceOf(telling, fault(false), [finding(twin)]);
  expect(there?.says).not.toBe(here?.says);
  const [undated] = traceOf(telling, fault(false), [finding({ kind: "earlier", at: "2026-01-02", key, value })]);
  expect(undated?.aside).not.toMatch(/km/);
});

test("too close to call is dangerous unless measured better, never certain", () => {
  const so = (close: boolean) => traceOf(telling, fault(close), [finding(EACH.reply)]).find(({ id }) => id === "so");
  expect(so(true)?.says).toBe("dangerous unless measured better");
  expect(so(false)?.says).toBe("dangerous, certain");
});

test("a fact that would settle something is named in words", () => {
  expect(settleText({ known }, { point: "car.wheel_fixing", place: "car" })).not.toMatch(/_|car\./);
});
