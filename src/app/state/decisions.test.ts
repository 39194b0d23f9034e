// Deciding: what is whole, what must be read first, what planning makes of it, and the facts others show.
import { expect, test } from "vitest";
import { DECISION_BODIES, FOUR, PRICE } from "../../../tests/store/sample-decisions.js";
import { bench, benchVisit, until } from "../../../tests/support/app-bench.js";
import { type Decision, isEntry, type PlanState } from "../../core/record/index.js";
import { signatureDrawing } from "../../core/report/index.js";
import { answerQuestion, decide, signDecisions } from "./decision-acts.js";
import { decidingNow, decisionForm, decisionSaid, ownWord, typedOdometer } from "./decision-form.js";
import { decisionTold, signatureOf } from "./decision-told.js";
import type { Warning } from "./decision-warning.js";
import { briefWord, decisionText, priceText, signedText, standingText } from "./decision-words.js";
import { decisionFacts, questionsOf, undecided, unsigned } from "./decisions-view.js";
import { momentOf } from "./handover-moment.js";
import { agreedWord, isDeclined, isWantedNow } from "./owners-word.js";
import { lastPlanStep, undoPlan } from "./plan-acts.js";
import { isName, strokesOf } from "./signature-strokes.js";

const AT = { job: "whl.bearing", place: "FR" };
const ID = "whl.bearing@FR";

async function planned() {
  const on = bench();
  const { visit } = await benchVisit(on);
  const plan = async (): Promise<PlanState> => {
    const opened = await until(on.journal.plan(visit), ({ is }) => is === "open");
    if (opened.is !== "open") throw new Error("no plan");
    return opened.state;
  };
  const say = (said: Decision | null, over?: "own" | "all") => decide(on.journal, visit, [{ at: AT, said }], over);
  return { on, visit, plan, say };
}

const BY = { who: "Anna", role: "owner", how: "in-person", on: "2026-03-02" } as const;
const NOTHING = { warning: undefined, price: undefined, estimate: undefined, unit: "km" } as const;
const WARNING: Warning = { cautions: [], lines: ["Broken up"], shown: FOUR.no.warning?.shown ?? [] };

test("a word is whole with what it asks for, and somebody who says it", () => {
  const form = (word: Decision["word"]) => decisionForm(word, undefined);
  expect(decisionSaid(form("yes-now"), BY, NOTHING)).toEqual({ ...BY, word: "yes-now" });
  expect(decisionSaid(form("yes-now"), { ...BY, who: " " }, NOTHING)).toBeUndefined();
  for (const word of ["yes-by", "no", "tell-me-more"] as const)
    expect(decisionSaid(form(word), BY, NOTHING)).toBeUndefined();
  expect(decisionSaid({ ...form("yes-by"), odometer: "66 000" }, BY, { ...NOTHING, price: PRICE })).toEqual({
    ...BY,
    word: "yes-by",
    odometer: { value: 66_000, unit: "km" },
    price: PRICE,
  });
  expect([typedOdometer(""), typedOdometer("6.5"), typedOdometer("66\u202f000")]).toEqual([undefined, null, 66_000]);
});

test("what is dangerous is refused or put off only once its warning was read, and carries it", () => {
  const refusal = { ...decisionForm("no", undefined), because: "Sold" };
  const shown = { ...NOTHING, warning: WARNING };
  expect(decisionSaid(refusal, BY, shown)).toBeUndefined();
  expect(decisionSaid({ ...decisionForm("yes-by", undefined), by: "2026-06-01" }, BY, shown)).toBeUndefined();
  const acknowledged = "2026-03-02T10:15:00.000Z";
  expect(decisionSaid({ ...refusal, acknowledged }, BY, shown)?.warning).toEqual({
    shown: WARNING.shown,
    acknowledged,
  });
  expect(decisionSaid(decisionForm("yes-now", undefined), BY, shown)).toEqual({ ...BY, word: "yes-now" });
});

test("one person's no leaves the plan, two that differ count for nothing until they agree, and one undo takes it back", async () => {
  const { on, visit, plan, say } = await planned();
  await say(FOUR["yes-now"]);
  expect([isWantedNow(await plan(), ID), isDeclined(await plan(), ID)]).toEqual([true, false]);
  await say({ ...FOUR.no, who: "Bruno" });
  const now = await plan();
  expect([isWantedNow(now, ID), isDeclined(now, ID), agreedWord(now, ID)]).toEqual([false, false, undefined]);
  expect(standingText(now.decisions.get(ID) ?? [])).toBe(
    "They differ. Anna: Yes, now; Bruno: No, because: The car is to be sold",
  );
  expect([briefWord(now, ID), briefWord(now, "other@FR")]).toEqual(["Owner's word: they differ", undefined]);
  await say({ ...FOUR.no, who: "Bruno" }, "all");
  expect(isDeclined(await plan(), ID)).toBe(true);
  const [writer] = [...(await plan()).ledger.log.values()].filter(isEntry).map((entry) => entry.writer);
  const step = lastPlanStep(await plan(), writer ?? "");
  if (step) await undoPlan(on.journal, visit, step);
  expect(isDeclined(await plan(), ID)).toBe(false);
});

test("facts of a job: its word, price, warning, question with answer, and that a signature was for the earlier word", async () => {
  const { on, visit, plan, say } = await planned();
  await say(FOUR["tell-me-more"]);
  const question = (await plan()).decisions.get(ID)?.[0]?.id ?? "";
  const before = decisionFacts({ said: await plan() }, ID);
  expect(questionsOf([before])).toEqual([before]);
  expect(undecided([before], { jobs: [] })).toEqual([]);
  await answerQuestion(on.journal, visit, { question, answer: { words: "It would not", on: "2026-03-03" } });
  expect(decisionFacts({ said: await plan() }, ID).answer).toEqual({ words: "It would not", on: "2026-03-03" });
  expect(unsigned([before], "anna ").map(({ id }) => id)).toEqual([question]);
  await signDecisions(on.journal, visit, { ...DECISION_BODIES["decision.signed"], decisions: [question] });
  const signed = decisionFacts({ said: await plan() }, ID);
  expect([unsigned([signed], "Anna"), signatureOf(signed)?.drawn]).toEqual([
    [],
    DECISION_BODIES["decision.signed"].drawn,
  ]);
  await say(FOUR.no);
  const facts = decisionFacts({ said: await plan() }, ID);
  expect(facts).toMatchObject({ job: "whl.bearing", place: "FR", word: "no", differ: false, price: PRICE });
  expect(facts.warning).toEqual(FOUR.no.warning);
  expect(facts.answer).toBeUndefined();
  expect(facts.signatures.map(signedText)).toEqual([
    "Signed by Anna, 2 Mar 2026, for the earlier word: Tell me more: Would a used one do?",
  ]);
  expect(signatureOf(facts)).toBeUndefined();
  expect(decisionTold(facts)).toMatchObject({
    is: "no",
    reason: "The car is to be sold",
    who: "Anna",
    how: "in person",
    on: "2026-03-02",
    warned: { at: momentOf(Date.parse("2026-03-02T10:15:00.000Z")) },
  });
});

test("whoever decided last goes on deciding; a word said before is where its mending begins", async () => {
  const { plan, say } = await planned();
  expect(decidingNow(await plan(), "2026-03-02")).toMatchObject({ who: "", role: "owner", how: "in-person" });
  await say({ ...FOUR["yes-by"], how: "by-phone" });
  expect(decidingNow(await plan(), "2026-03-02")).toMatchObject({ who: "Anna", how: "by-phone" });
  expect(decidingNow(await plan(), "2026-03-09")).toMatchObject({ how: "in-person", on: "2026-03-09" });
  const own = ownWord((await plan()).decisions.get(ID) ?? [], "ANNA");
  expect(decisionForm("yes-by", own)).toMatchObject({ by: "2026-06-01", odometer: "66000" });
});

test("a decision in words, with the figure it was taken at in the money of then", () => {
  expect(decisionText(FOUR["yes-by"])).toBe("Yes, by 1 Jun 2026 or 66\u202f000 km on the clock");
  expect(priceText(FOUR["yes-now"], { currency: "CHF", minorDigits: 2 })).toBe(
    "at likely €415, 4 times in 5 under €480, with tax",
  );
});

test("strokes keep what can be seen, inside the glass; a dot stays a dot, nothing is no signature", () => {
  const line = Array.from({ length: 50 }, (_, x) => ({ x: x + 0.4, y: 20 }));
  const drawn = strokesOf({ width: 100.4, height: 40, strokes: [line, [{ x: 120, y: -3 }]] });
  expect(drawn?.strokes.map(({ length }) => length)).toEqual([34, 2]);
  expect(drawn?.strokes[1]).toEqual([100, 0]);
  expect(strokesOf({ width: 10, height: 10, strokes: [[]] })).toBeUndefined();
  const { shapes, width } = signatureDrawing(drawn ?? { width: 0, height: 0, strokes: [] });
  expect([width, shapes.map(({ tag }) => tag)]).toEqual([100, ["path", "circle"]]);
  expect(signatureDrawing({ width: 9, height: 9, strokes: [[0, 0, 4, 4, 8, 0]] }).shapes[0]?.attrs["d"]).toBe(
    "M0 0Q4 4 6 2L8 0",
  );
});

test("a dot, several dots or a slip of the finger is no name; a stroke across the glass may be one", () => {
  const drawn = (...strokes: readonly (readonly number[])[]) => isName({ width: 300, height: 120, strokes });
  expect([drawn([10, 10]), drawn([10, 10], [40, 10], [90, 10]), drawn([10, 10, 40, 20])]).toEqual([
    false,
    false,
    false,
  ]);
  expect(drawn([10, 60, 40, 20, 70, 80, 110, 40])).toBe(true);
});
