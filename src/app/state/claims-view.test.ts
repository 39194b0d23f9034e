// Claims of a viewing: typed or pasted, in the order written down, and never taken for shown where two people differ.
import { expect, test } from "vitest";
import { act } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { draftClaim, draftClaimSeen, draftPapersUntil } from "../../core/record/index.js";
import { claimLines, claimsTold } from "./claims-view.js";
import { dayPapersGo, isDue } from "./personal-papers.js";
import { claimTexts } from "./viewing-acts.js";

const planOf = (log: SampleLog) => ({ ...log.plan, stream: "plan:v" });
const SEEN = { words: "", on: "2026-03-14" } as const;

test("a claim a line, without the marks of a list and without empty lines", () => {
  expect(claimTexts("• New belts\r\n\n  - never wet \n–\n2-litre engine")).toEqual([
    "New belts",
    "never wet",
    "2-litre engine",
  ]);
  expect(claimTexts("  \n ")).toEqual([]);
});

test("what two people say differently of a claim is told as not known, and both stand", () => {
  const log = new SampleLog();
  log.add(draftClaim(act(), planOf(log), "b", { text: "Never wet", from: "seller" }));
  log.add(draftClaim(act(), planOf(log), "a", { text: "New belts", from: "advert" }));
  const before = planOf(log);
  log.add(draftClaimSeen(act(), before, "a", { word: "shown", ...SEEN }));
  expect(claimLines(planOf(log))).toMatchObject([{ id: "b" }, { id: "a", seen: { word: "shown" }, differ: false }]);
  log.add(draftClaimSeen(act(), before, "a", { word: "not-shown", ...SEEN }));
  expect(claimLines(planOf(log))[1]).toMatchObject({ id: "a", differ: true });
  expect(claimLines(planOf(log))[1]).not.toHaveProperty("seen");
  expect(claimsTold(planOf(log))).toEqual([
    { id: "b", words: "Never wet", from: "seller" },
    { id: "a", words: "New belts", from: "advert" },
  ]);
});

test("papers are due on their day and not before; of two days the later counts, and without one they are kept", () => {
  const log = new SampleLog();
  const before = planOf(log);
  expect(isDue(before, "2099-01-01")).toBe(false);
  log.add(draftPapersUntil(act(), before, "2026-04-13"));
  expect([isDue(planOf(log), "2026-04-12"), isDue(planOf(log), "2026-04-13")]).toEqual([false, true]);
  log.add(draftPapersUntil(act(), before, "2026-05-13"));
  expect([dayPapersGo(planOf(log)), isDue(planOf(log), "2026-05-01")]).toEqual(["2026-05-13", false]);
});
