// The owner's word: what stands, what people differ about, which word was signed, what was shown before a refusal.
import { expect, test } from "vitest";
import { act } from "../../../tests/store/sample.js";
import { DECISION_BODIES, FOUR } from "../../../tests/store/sample-decisions.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import type { Entry } from "./contract.js";
import { DECISION_WORDS, type Decision, type DecisionBodies } from "./decision-bodies.js";
import { decisionLine, signaturesFor } from "./decision-line.js";
import { draftDecision, draftOwnerAnswer, draftSigned, type InPlaceOf } from "./draft-decision.js";
import { draftPlanBegun } from "./draft-plan.js";
import { foldPlan } from "./fold-plan.js";
import { draftUndo, undoable } from "./undo.js";

const AT = { job: "whl.bearing", place: "FR" };
const KEY = "whl.bearing@FR";
const NO = FOUR.no;
const YES = FOUR["yes-now"];

function begun() {
  const log = new SampleLog("plan:v");
  log.add(draftPlanBegun(act(), log.plan, "visit:v"));
  const decide = (said: Decision | null, inPlaceOf?: InPlaceOf) =>
    log.add(draftDecision(act(), log.plan, AT, said, inPlaceOf));
  const stands = () => log.plan.decisions.get(KEY)?.map(({ value }) => `${value.who} ${value.word}`) ?? [];
  return { log, decide, stands };
}

test("[RW1] the four words stand with all that goes with them", () => {
  for (const word of DECISION_WORDS) {
    const { log, decide } = begun();
    decide(FOUR[word]);
    expect(log.plan.decisions.get(KEY)?.map(({ value }) => value)).toEqual([FOUR[word]]);
    expect(log.plan.trouble.unknown).toEqual([]);
  }
});

test("[RW2] a later word takes the place of the same person's, however the name is written", () => {
  const { decide, stands } = begun();
  decide(YES);
  decide({ ...NO, who: " anna" });
  expect(stands()).toEqual([" anna no"]);
});

test("[RW2] two people's words both stand until one is said in place of all", () => {
  const { decide, stands } = begun();
  decide(YES);
  decide({ ...NO, who: "Bruno" });
  expect(stands()).toEqual(["Anna yes-now", "Bruno no"]);
  decide({ ...YES, who: "Bruno" }, "all");
  expect(stands()).toEqual(["Bruno yes-now"]);
});

test("[RW2] null takes every word back, and the next one stands alone", () => {
  const { decide, stands } = begun();
  decide(YES);
  decide({ ...NO, who: "Bruno" });
  decide(null);
  expect(stands()).toEqual([]);
  decide(NO);
  expect(stands()).toEqual(["Anna no"]);
});

test("[RW3] the line of words stays readable: replaced, undone, and what stands", () => {
  const { log, decide, stands } = begun();
  decide(YES);
  const slip = decide(FOUR["yes-by"]);
  log.add(draftUndo(act(), log.plan, [slip]));
  decide(NO);
  expect(stands()).toEqual(["Anna no"]);
  expect(decisionLine(log.plan, KEY).map(({ said, is }) => `${said?.word} ${is}`)).toEqual([
    "yes-now replaced",
    "yes-by undone",
    "no stands",
  ]);
  expect(undoable(log.plan, "w1")[0]?.kinds).toEqual(["decision"]);
});

test("[RW4] what was shown before a refusal can be read later, and stays when the word is changed", () => {
  const { log, decide } = begun();
  decide(NO);
  decide(YES);
  const [first] = decisionLine(log.plan, KEY);
  expect(first?.said?.warning?.shown.map(({ words }) => words)).toEqual(NO.warning?.shown.map(({ words }) => words));
  expect(first?.said?.warning?.acknowledged).toBe("2026-03-02T10:15:00.000Z");
});

test("[RW5] a signature is for the words it names; once another word stands it is one for the earlier", () => {
  const { log, decide } = begun();
  const first = decide(YES);
  log.add(draftSigned(act(), log.plan, { ...DECISION_BODIES["decision.signed"], decisions: [first] }));
  const told = () => signaturesFor(log.plan, KEY).map(({ word, isForEarlier }) => [word.said?.word, isForEarlier]);
  expect(told()).toEqual([["yes-now", false]]);
  decide(NO);
  expect(told()).toEqual([["yes-now", true]]);
  const typed = { decisions: [log.plan.decisions.get(KEY)?.[0]?.id ?? ""], who: "Anna", on: "2026-03-04" };
  log.add(draftSigned(act(), log.plan, typed));
  expect(told()).toEqual([
    ["yes-now", true],
    ["no", false],
  ]);
  expect(signaturesFor(log.plan, "whl.bearing@FL")).toEqual([]);
});

test("[RW6] an answer names what asked; a later one replaces it, null takes it back", () => {
  const { log, decide } = begun();
  const question = decide(FOUR["tell-me-more"]);
  const answer = (words: string | null) =>
    log.add(
      draftOwnerAnswer(act(), log.plan, { question, answer: words === null ? null : { words, on: "2026-03-03" } }),
    );
  const stands = () => log.plan.ownerAnswers.get(question)?.map(({ value }) => value.answer.words);
  answer("No used one is to be had");
  answer("One is to be had, but worn");
  expect(stands()).toEqual(["One is to be had, but worn"]);
  answer(null);
  expect(stands()).toBeUndefined();
});

const why = (kind: keyof DecisionBodies, body: unknown): string | undefined => {
  const one: Entry = { ...act(), stream: "plan:v", writer: "w1", seq: 1, nonce: "n", by: "anna", kind, v: 1, body };
  return foldPlan([one]).trouble.unknown[0]?.why;
};
const samples = Object.entries(DECISION_BODIES) as (readonly [keyof DecisionBodies, object])[];

test.each(samples)(
  "[RC4] %s: as it should be it stands; one field more or of another kind, it does not",
  (kind, body) => {
    expect(why(kind, body)).toBeUndefined();
    expect(why(kind, { ...body, more: 1 })).toBe("body");
    for (const field of Object.keys(body))
      expect(why(kind, { ...body, [field]: { strange: true } }), field).toBe("body");
  },
);

const { because: _because, ...unreasoned } = NO;
const { by: _by, odometer: _odometer, ...endless } = FOUR["yes-by"];
const { what: _what, ...unasked } = FOUR["tell-me-more"];
test.each<readonly [string, object]>([
  ["a refusal without a reason", unreasoned],
  ["a yes by no day", endless],
  ["a question that asks nothing", unasked],
  ["a reason of a yes", { ...YES, because: "why not" }],
  ["a day of a yes now", { ...YES, by: "2026-04-01" }],
  ["a warning before a yes now", { ...YES, warning: NO.warning }],
  ["a warning that showed nothing", { ...NO, warning: { ...NO.warning, shown: [] } }],
  ["nobody's word", { ...YES, who: "" }],
  ["a fifth word", { ...YES, word: "perhaps" }],
  ["half a cent", { ...YES, price: { ...YES.price, high: 0.5 } }],
])("[RW1] found out: %s", (_case, said) => {
  expect(why("decision", { ...AT, said, replaces: [] })).toBe("body");
});

const signed = DECISION_BODIES["decision.signed"];
test.each<readonly [string, object]>([
  ["a point without its height", { ...signed, drawn: { ...signed.drawn, strokes: [[1, 2, 3]] } }],
  ["a point beside the glass", { ...signed, drawn: { ...signed.drawn, strokes: [[-1, 2]] } }],
  ["a stroke of nothing", { ...signed, drawn: { ...signed.drawn, strokes: [[]] } }],
  ["a scrawl without end", { ...signed, drawn: { ...signed.drawn, strokes: [Array.from({ length: 8002 }, () => 1)] } }],
  ["a signature for nothing", { ...signed, decisions: [] }],
])("[RW5] found out: %s", (_case, body) => {
  expect(why("decision.signed", body)).toBe("body");
});
