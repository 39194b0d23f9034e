import { expect, test } from "vitest";
import { foreign, replyDraft, words } from "../../../tests/store/sample.js";
import { idText, stubOf } from "./identity.js";
import { canonicalText, forksIn, gapsIn, merge } from "./merge.js";

const one = foreign(replyDraft("visit:v", "whl.spin", words("rough")), "w1", 1);
const two = foreign(replyDraft("visit:v", "whl.rock", words("none")), "w1", 2);
const twin = foreign(replyDraft("visit:v", "whl.spin", words("smooth")), "w1", 1);

test("[RC9] a copy is one entry, whatever the order of its keys", () => {
  const copy = JSON.parse(JSON.stringify(Object.fromEntries(Object.entries(one).reverse())));
  expect(merge([two, one], [copy])).toEqual({ entries: [one, two], altered: [] });
});

test("[RC10] entries of one identity with other nonces are both kept and are a fork", () => {
  const { entries, altered } = merge([one], [twin, two]);
  expect([entries.length, altered]).toEqual([3, []]);
  expect([...forksIn(entries)]).toEqual([["visit:v/w1/1", [idText(one), idText(twin)].sort()]]);
});

test("[RC11] a stub wins over the body on either side, and is neither fork nor alteration", () => {
  for (const logs of [
    [[one], [stubOf(one)]],
    [[stubOf(one)], [one]],
  ]) {
    const merged = merge(...logs);
    expect(merged).toEqual({ entries: [stubOf(one)], altered: [] });
    expect(forksIn(merged.entries).size).toBe(0);
  }
});

test("[RC12] one id with two texts: the same one is kept from either side, and it is told", () => {
  const other = { ...one, by: "bert" };
  const first = canonicalText(one) < canonicalText(other) ? one : other;
  expect(merge([one], [other])).toEqual({ entries: [first], altered: [idText(one)] });
  expect(merge([other], [one])).toEqual({ entries: [first], altered: [idText(one)] });
});

test("entries come in order of stream, writer, number and nonce; numbers count as numbers", () => {
  const ten = { ...two, seq: 10 };
  const { entries } = merge([ten, two, one, { ...one, stream: "car:c" }, { ...one, writer: "w0" }]);
  expect(entries.map(({ stream, writer, seq }) => `${stream} ${writer} ${seq}`)).toEqual([
    "car:c w1 1",
    "visit:v w0 1",
    "visit:v w1 1",
    "visit:v w1 2",
    "visit:v w1 10",
  ]);
});

test("[RC13] gaps run from the first number missing to the last, and nothing is missing above", () => {
  expect(gapsIn([])).toEqual([]);
  expect(gapsIn([3, 1, 2, 2])).toEqual([]);
  expect(gapsIn([2, 5, 9, 6])).toEqual([
    { from: 1, to: 1 },
    { from: 3, to: 4 },
    { from: 7, to: 8 },
  ]);
  expect(gapsIn([9_007_199_254_740_991])).toEqual([{ from: 1, to: 9_007_199_254_740_990 }]);
});
