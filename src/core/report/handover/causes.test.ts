import { expect, test } from "vitest";
import type { Finding, GateState } from "../../assess/contract.js";
import { causesOfCaution, causesOfGate } from "./causes.js";

const PLAY = { fault: "whl.play", place: "RR" };
const SILL = { fault: "corr.holed", place: "sill-L" };

const finding = (rule: string, of: { readonly fault: string | null; readonly place: string }): Finding => ({
  rule,
  ...of,
  grade: "dangerous",
  sure: "certain",
  provisional: false,
  close: false,
  atLeast: false,
  differ: [],
  because: [],
  jobs: [],
  cautions: ["cau.dont-drive"],
  opens: [],
});
const gate = (trippedBy: GateState["trippedBy"]): GateState => ({
  gate: "gate.no-road",
  guards: "w4-road",
  drives: true,
  state: "tripped",
  first: [],
  trippedBy,
  otherwise: "not cleared",
  missingSheets: [],
  cautions: ["cau.dont-drive"],
  signals: ["danger"],
});
const findings = [
  finding("whl.r01", PLAY),
  finding("corr.r09", SILL),
  finding("fuel.r02", { fault: null, place: "car" }),
];
const judged = (gates: readonly GateState[] = []) => ({ findings, gates });

test("HO2 a gate hangs on the finding a dangerous fault is, and on the one behind a rule that forbids driving", () => {
  const tripped = gate([
    { kind: "dangerous", ...PLAY },
    { kind: "caution", rule: "corr.r09", place: "sill-L" },
    { kind: "caution", rule: "whl.r01", place: "RR" },
  ]);
  expect(causesOfGate(tripped, judged())).toEqual({ faults: [PLAY, SILL], onlyThose: true });
});

test.each([
  ["a condition of its own", { kind: "condition", path: "trips[0]", places: [] }],
  ["a rule that left no finding", { kind: "caution", rule: "fuel.r02", place: "car" }],
  ["a rule that left nothing here", { kind: "caution", rule: "corr.r09", place: "sill-R" }],
] as const)("HO2 with %s it hangs on something else too", (_, cause) => {
  expect(causesOfGate(gate([{ kind: "dangerous", ...PLAY }, cause]), judged())).toEqual({
    faults: [PLAY],
    onlyThose: false,
  });
});

test("HO2 a caution hangs on the findings of every rule and every tripped gate behind it", () => {
  const because = ["whl.r01", "gate.no-road"];
  const by = (trippedBy: GateState["trippedBy"]) =>
    causesOfCaution({ caution: "cau.dont-drive", because }, judged([gate(trippedBy)]));
  expect(by([{ kind: "dangerous", ...SILL }])).toEqual({ faults: [PLAY, SILL], onlyThose: true });
  expect(by([{ kind: "condition", path: "trips[0]", places: [] }])).toMatchObject({ onlyThose: false });
});

test("HO2 a rule without a finding, or that no longer carries the caution, keeps it standing", () => {
  const of = (caution: string, because: readonly string[]) => causesOfCaution({ caution, because }, judged());
  expect(of("cau.dont-drive", ["whl.r01", "fuel.r02"]).onlyThose).toBe(false);
  expect(of("cau.dont-drive", ["whl.r01", "unknown.r01"]).onlyThose).toBe(false);
  expect(of("cau.spark", ["whl.r01"])).toEqual({ faults: [], onlyThose: false });
  expect(of("cau.dont-drive", [])).toEqual({ faults: [], onlyThose: false });
});
