/** Holds the record and assessing together, which may not know each other: what one hands over the other takes. */
import { expect, test } from "vitest";
import type { AssessInput } from "../../src/core/assess/contract.js";
import { foldCar, foldVisit, type ToAssess, toAssessInput } from "../../src/core/record/index.js";
import { carAndVisit, foreign } from "../store/sample.js";

test("[RC36] what the record hands over is what assessing takes, type and value", () => {
  const { drafts } = carAndVisit();
  const entries = drafts.map((draft) => foreign(draft, "w1", 1));
  const handed = toAssessInput(foldCar(entries), foldVisit(entries), []);
  if (!handed.ok) throw new Error("not opened");
  const given: ToAssess = handed.value;
  const taken: AssessInput = given;
  expect(taken.sheets).toEqual(["whl"]);
});
