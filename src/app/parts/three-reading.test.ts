/** Proves the entry of low, likely and high: hours pushed in from the right, money by the currency's digits, faults at once. */
import { expect, test } from "vitest";
import { typed } from "./keypad-typing.js";
import { figureOf, forKeys, settled, threeRead, written } from "./three-reading.js";

const time = { of: "minutes" } as const;
const euros = { of: "money", digits: 2, decimal: "," } as const;
const yen = { of: "money", digits: 0, decimal: "." } as const;

/** A box after these keys, as the keypad and the box make it together. */
const keyed = (...keys: readonly ("0" | "1" | "3" | "5" | "9" | "rub-out")[]): string =>
  keys.reduce((box, key) => written(typed(forKeys(box, time), key), time), "");

test("hours come in from the right: 1, 3, 0 is an hour and a half, no key for the colon", () => {
  expect(keyed("5")).toBe("0:05");
  expect(keyed("1", "3", "0")).toBe("1:30");
  expect(keyed("1", "3", "0", "rub-out")).toBe("0:13");
  expect(keyed("5", "rub-out")).toBe("");
});

test("no time at all is a figure too, and can be typed over", () => {
  expect(keyed("0")).toBe("0:00");
  expect(figureOf("0:00", time)).toBe(0);
  expect(keyed("0", "5")).toBe("0:05");
  expect(keyed("0", "rub-out")).toBe("");
});

test("a sixth digit is not taken", () => {
  expect(keyed("9", "9", "9", "5", "9", "1")).toBe("999:59");
});

test("ninety minutes typed as 0:90 are 1:30 once left", () => {
  expect(figureOf("0:90", time)).toBe(90);
  expect(settled("0:90", time)).toBe("1:30");
  expect(settled("", time)).toBe("");
  expect(settled("1140,50", euros)).toBe("1140,50");
});

test("what is pasted and is no time stays to be seen, and does not read", () => {
  expect(written("1.5", time)).toBe("1.5");
  expect(threeRead(["1.5", "", ""], time).fault).toEqual({ at: 0, what: "unreadable" });
});

test("money has the currency's digits: 12,5 is 1250 cents, 1200 is 1200 yen, a third place does not read", () => {
  expect(figureOf("12,5", euros)).toBe(1250);
  expect(figureOf("12.50", euros)).toBe(1250);
  expect(figureOf("1200", yen)).toBe(1200);
  expect(figureOf("12,505", euros)).toBeUndefined();
  expect(figureOf("1200.5", yen)).toBeUndefined();
  expect(figureOf("-5", euros)).toBeUndefined();
});

test("low over likely is told at once, before high is entered", () => {
  expect(threeRead(["2:00", "1:30", ""], time)).toEqual({ fault: { at: 0, what: "lowOverLikely" } });
  expect(threeRead(["1:00", "1:30", "1:20"], time)).toEqual({ fault: { at: 2, what: "likelyOverHigh" } });
  expect(threeRead(["1:00", "", "0:50"], time)).toEqual({ fault: { at: 0, what: "lowOverHigh" } });
});

test("an empty box is neither wrong nor nothing: there are no figures until all three stand", () => {
  expect(threeRead(["1:00", "", "2:00"], time)).toEqual({});
  expect(threeRead(["1:00", "1:00", "2:00"], time)).toEqual({ figures: [60, 60, 120] });
});
