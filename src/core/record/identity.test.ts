import { expect, test } from "vitest";
import { compareShown, idText, isDemo, isStreamName, parseId } from "./identity.js";

const id = { stream: "visit:v-1", writer: "w.2", seq: 12, nonce: "n_3" };

test("[RC1] an id as text gives its parts back", () => {
  expect(idText(id)).toBe("visit:v-1/w.2/12/n_3");
  expect(parseId(idText(id))).toEqual(id);
  expect(parseId("house/w/9007199254740991/n")).toEqual({
    stream: "house",
    writer: "w",
    seq: 9_007_199_254_740_991,
    nonce: "n",
  });
});

test.each([
  "",
  "visit:v/w/1",
  "visit:v/w/0/n",
  "visit:v/w/01/n",
  "visit:v/w/1.5/n",
  "visit:v/w/-1/n",
  "visit:v/w/9007199254740993/n",
  "boat:v/w/1/n",
  "visit:/w/1/n",
  "visit:v/w w/1/n",
  "visit:v/w/1/n n",
  `visit:v/w/1/${"n".repeat(81)}`,
  "visit:v/w/1/n/x",
])("[RC1] no id: %j", (text) => {
  expect(parseId(text)).toBeUndefined();
});

test("[RC1] streams are a car's, a visit's or the house's", () => {
  expect(["house", "car:a", "visit:a", "car:demo-a"].map(isStreamName)).toEqual([true, true, true, true]);
  expect(["house:a", "cars:a", "visit:", "visit:a b", "xhouse", "visit:a/b"].some(isStreamName)).toBe(false);
});

test("[RC5] the demo's streams are told by their names", () => {
  expect(["car:demo-a", "visit:demo-b"].map(isDemo)).toEqual([true, true]);
  expect(["car:a", "car:ademo-", "house", "xcar:demo-a"].some(isDemo)).toBe(false);
});

test("[RC8] shown in order of time, then of stream, writer, number and nonce", () => {
  const at = (wall: number, count: number, seq: number, writer = "w") => ({ ...id, writer, seq, at: { wall, count } });
  const list = [at(2, 0, 1), at(1, 2, 1), at(1, 1, 10), at(1, 1, 9), at(1, 1, 99, "v")];
  expect(
    list.toSorted(compareShown).map(({ at: { wall, count }, writer, seq }) => `${wall}.${count} ${writer} ${seq}`),
  ).toEqual(["1.1 v 99", "1.1 w 9", "1.1 w 10", "1.2 w 1", "2.0 w 1"]);
});
