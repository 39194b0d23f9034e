/** Which caution is shown wherever a car is judged. */

import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import type { CautionDue } from "../../core/assess/contract.js";
import { toTell } from "../../core/terms/index.js";
import { worstCaution } from "./cautions-view.js";

const listed = [
  ["cau.stop", "danger"],
  ["cau.to-workshop", "warning"],
  ["cau.stands", "warning"],
  ["cau.hot", "caution"],
] as const;
const known = {
  ...miniKnowledge(),
  cautions: new Map(listed.map(([id, signal]) => [id, { id, signal }])),
};
const due = (...ids: readonly string[]): readonly CautionDue[] =>
  listed.flatMap(([caution, signal]) =>
    ids.includes(caution) ? [{ caution, signal, places: ["car"], because: [] }] : [],
  );
const worst = (all: readonly CautionDue[]) => worstCaution(known, [...all].reverse(), [])?.id;

test("the worst danger is shown, without one the first warning of the list, and none for less", () => {
  expect(worst(due("cau.stop", "cau.to-workshop", "cau.hot"))).toBe("cau.stop");
  expect(worst(due("cau.to-workshop", "cau.stands", "cau.hot"))).toBe("cau.to-workshop");
  expect(worst(due("cau.hot"))).toBeUndefined();
});

test("the caution that lets the car go to the workshop gives way to the one that forbids driving it", () => {
  const all = (...ids: readonly string[]): readonly CautionDue[] =>
    ids.map((caution) => ({ caution, signal: "warning", places: ["RR"], because: [] }));
  const told = (due: readonly CautionDue[]) => toTell(due).map(({ caution }) => caution);
  expect(told(all("cau.dont-drive", "cau.to-workshop", "cau.hot"))).toEqual(["cau.dont-drive", "cau.hot"]);
  expect(told(all("cau.to-workshop", "cau.hot"))).toEqual(["cau.to-workshop", "cau.hot"]);
});
