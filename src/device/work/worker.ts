/** The planning worker: takes one work list, answers with its plan. Holds nothing between two. */
import { planWork } from "../../core/plan/index.js";
import type { PlanAnswer, PlanRequest } from "./messages.js";

self.addEventListener("message", ({ data: { id, input } }: MessageEvent<PlanRequest>) => {
  let answer: PlanAnswer;
  try {
    answer = { id, plan: planWork(input) };
  } catch (error) {
    answer = { id, broke: String(error) };
  }
  self.postMessage(answer);
});
