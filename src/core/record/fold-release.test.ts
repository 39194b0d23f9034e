/** What stands of answers, second looks and a release in a plan. */
import { expect, test } from "vitest";
import { act } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { RELEASE_BODIES } from "../../../tests/store/sample-release.js";
import type { Entry } from "./contract.js";
import { draftPlanBegun } from "./draft-plan.js";
import {
  draftAnswer,
  draftProgressSent,
  draftRechecked,
  draftRelease,
  draftSecondLook,
  draftTakenBack,
} from "./draft-release.js";
import { foldPlan } from "./fold-plan.js";
import type { ComplaintAnswer, Release, ReleaseKind } from "./release-bodies.js";
import { draftUndo } from "./undo.js";

const HUM = "visit:v/w1/2/n";
const tried: ComplaintAnswer = {
  word: "not-heard",
  findings: [],
  words: "Driven twice round the town",
  who: "Anna",
  on: "2026-03-03",
};

function begun(): SampleLog {
  const log = new SampleLog("plan:v");
  log.add(draftPlanBegun(act(), log.plan, "visit:v"));
  return log;
}

test("[RC60] an answer replaces the one before, null leaves the complaint open again, undo brings the answer back", () => {
  const log = begun();
  const word = () => log.plan.answers.get(HUM)?.map(({ value }) => value.word) ?? [];
  log.add(draftAnswer(act(), log.plan, HUM, tried));
  const { answer } = RELEASE_BODIES["complaint.answered"];
  log.add(draftAnswer(act(), log.plan, HUM, answer));
  expect(word()).toEqual(["found"]);
  const opened = log.add(draftAnswer(act(), log.plan, HUM, null));
  expect(word()).toEqual([]);
  log.add(draftUndo(act(), log.plan, [opened]));
  expect(word()).toEqual(["found"]);
});

test("[RC60] two people who answered one complaint apart both stand", () => {
  const log = begun();
  const seen = log.plan;
  log.add(draftAnswer(act(), seen, HUM, tried), "w1");
  log.add(draftAnswer(act(), seen, HUM, { ...tried, word: "needs", needs: "road-test", words: "" }), "w2");
  expect(log.plan.answers.get(HUM)?.map(({ value }) => value.word)).toEqual(["not-heard", "needs"]);
});

test("[RC61] what was sent, looked at a second time and checked again stays in the list until it is undone", () => {
  const log = begun();
  const look = RELEASE_BODIES["second-look"];
  log.add(draftProgressSent(act(), log.plan, RELEASE_BODIES["progress.sent"]));
  log.add(draftSecondLook(act(), log.plan, look));
  const again = log.add(draftSecondLook(act(), log.plan, { ...look, who: "Mo" }));
  log.add(draftRechecked(act(), log.plan, RELEASE_BODIES["recheck.done"]));
  const names = () => log.plan.secondLooks.get("job.whl.bearing@RR")?.map(({ value }) => value.who);
  expect(names()).toEqual(["Jo", "Mo"]);
  log.add(draftUndo(act(), log.plan, [again]));
  expect(names()).toEqual(["Jo"]);
  expect(log.plan.progressSent.map(({ value }) => value.how)).toEqual(["share sheet"]);
  expect([...log.plan.rechecked.keys()]).toEqual(["wheel-nuts"]);
});

test("[RC62] a car released and taken back is not released, and both words stay in the record", () => {
  const log = begun();
  const release = RELEASE_BODIES["plan.release"].release as Release;
  log.add(draftRelease(act(), log.plan, release));
  expect(log.plan.release.map(({ value }) => value.how)).toEqual(["not-driven"]);
  log.add(draftTakenBack(act(), log.plan, "A leak at the front left"));
  expect(log.plan.release).toEqual([]);
  expect(log.plan.ledger.slots.get("release|")).toHaveLength(2);
});

const why = (kind: ReleaseKind, body: unknown): string | undefined => {
  const entry: Entry = {
    stream: "plan:v",
    writer: "w1",
    seq: 1,
    nonce: "n",
    at: { wall: 1, count: 0 },
    by: "anna",
    kind,
    v: 1,
    body,
  };
  return foldPlan([entry]).trouble.unknown[0]?.why;
};
const samples = Object.entries(RELEASE_BODIES) as (readonly [ReleaseKind, object])[];

test.each(samples)(
  "[RC4] %s: as it should be it stands, with one field more or a strange one it does not",
  (kind, body) => {
    expect(why(kind, body)).toBeUndefined();
    expect(why(kind, { ...body, more: 1 })).toBe("body");
    for (const field of Object.keys(body))
      expect(why(kind, { ...body, [field]: { strange: true } }), field).toBe("body");
  },
);

const answered = (answer: object): object => ({ complaint: HUM, answer: { ...tried, ...answer }, replaces: [] });
const handed = RELEASE_BODIES["plan.release"].release;
const { warned: _warned, ...unwarned } = handed as Release;
test.each<readonly [string, ReleaseKind, object]>([
  ["an answer that says nothing", "complaint.answered", answered({ words: "" })],
  ["found, and neither a finding nor a word", "complaint.answered", answered({ word: "found", words: "" })],
  ["a finding of something not heard", "complaint.answered", answered({ findings: [{ fault: "f", place: "FR" }] })],
  ["needs, and nobody says what", "complaint.answered", answered({ word: "needs" })],
  ["something needed where it was found", "complaint.answered", answered({ word: "found", needs: "part" })],
  ["a note without a word", "progress.sent", { ...RELEASE_BODIES["progress.sent"], text: "" }],
  [
    "a second look without a word of what was looked at",
    "second-look",
    { ...RELEASE_BODIES["second-look"], words: "" },
  ],
  ["not to be driven, and nobody was warned", "plan.release", { release: unwarned, replaces: [] }],
  ["a warning about a car that may be driven", "plan.release", { release: { ...handed, how: "driven" }, replaces: [] }],
  ["a car taken back without a reason", "plan.release", { release: null, replaces: [] }],
  ["a reason with a release", "plan.release", { release: handed, reason: "why", replaces: [] }],
])("[RC63] found out: %s", (_what, kind, body) => {
  expect(why(kind, body)).toBe("body");
});

test("[RC63] what is needed says enough by itself", () => {
  expect(why("complaint.answered", answered({ word: "needs", needs: "road-test", words: "" }))).toBeUndefined();
});
