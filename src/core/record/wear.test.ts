// [RC64] What is said of a reading when visits are compared.
import { expect, test } from "vitest";
import { act } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { WEAR_BODIES } from "../../../tests/store/sample-wear.js";
import type { Entry } from "./contract.js";
import { draftWear } from "./draft-wear.js";
import { foldPlan } from "./fold-plan.js";
import { draftUndo, undoable } from "./undo.js";
import { wearKey } from "./wear-kinds.js";

const AT = { of: "whl.float", field: "play", place: "FR" };
const planOf = (log: SampleLog) => ({ ...log.plan, stream: "plan:v" });
const said = (log: SampleLog) =>
  planOf(log)
    .wear.get(wearKey(AT))
    ?.map(({ value }) => value);

test("[RC64] a later word on a reading replaces the one before, and null takes it back", () => {
  const log = new SampleLog();
  log.add(draftWear(act(), planOf(log), AT, "renewed"));
  expect(said(log)).toEqual(["renewed"]);
  log.add(draftWear(act(), planOf(log), AT, "doubtful"));
  expect(said(log)).toEqual(["doubtful"]);
  log.add(draftWear(act(), planOf(log), { ...AT, place: "FL" }, "same"));
  expect(said(log)).toEqual(["doubtful"]);
  log.add(draftWear(act(), planOf(log), AT, null));
  expect(said(log)).toBeUndefined();
});

test("[RC64] undone, the word before stands again; two phones' words both stand", () => {
  const log = new SampleLog();
  const empty = planOf(log);
  log.add(draftWear(act(), empty, AT, "same"));
  log.add(draftWear(act(), planOf(log), AT, "renewed"));
  const [step] = undoable(planOf(log), "w1");
  log.add(draftUndo(act(), planOf(log), step?.ids ?? []));
  expect(said(log)).toEqual(["same"]);
  log.add(draftWear(act(), empty, AT, "doubtful"));
  expect(said(log)).toEqual(["same", "doubtful"]);
});

test("[RC4] a body with a field spoilt or more has no effect", () => {
  const why = (body: object) => {
    const log = new SampleLog();
    const entry = log.entry(log.add(draftWear(act(), planOf(log), AT, "same")));
    return foldPlan([{ ...(entry as Entry), body }]).trouble.unknown[0]?.why;
  };
  const body = WEAR_BODIES["wear.said"];
  expect(why(body)).toBeUndefined();
  for (const spoilt of [{ more: 1 }, { says: "worn" }, { of: "" }, { field: 1 }, { replaces: "x" }])
    expect(why({ ...body, ...spoilt })).toBe("body");
});
