// Other people's papers: pictures and notes kept with the questions on papers, and nothing else.
import { expect, test } from "vitest";
import { act, opening } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { draftNote, draftPicture, draftVisit } from "../../core/record/index.js";
import { personalPapers } from "./personal-papers.js";

const blob = (letter: string): string => letter.repeat(64);

test("what was kept with the questions on papers is found, what was kept elsewhere is not", () => {
  const log = new SampleLog("visit:v");
  log.add(draftVisit(act(), "visit:v", { ...opening("car:c"), purpose: "viewing" }));
  const picture = (hash: string, state: string) => ({
    ...{ blob: hash, type: "image/jpeg", width: 4, height: 3 },
    ...{ point: "buy.id-paper", place: "car", state },
  });
  log.add(draftPicture(act(), log.visit, picture(blob("a"), "p1-papers")));
  log.add(draftPicture(act(), log.visit, picture(blob("b"), "w1-cold")));
  log.add(
    draftNote(act(), log.visit, {
      text: "A. Person, Far Lane",
      point: "buy.id-paper",
      place: "car",
      state: "p1-papers",
    }),
  );
  log.add(draftNote(act(), log.visit, { text: "It hums" }));
  expect(personalPapers(log.visit).map(({ is, words }) => [is, words])).toEqual([
    ["picture", ""],
    ["note", "A. Person, Far Lane"],
  ]);
});
