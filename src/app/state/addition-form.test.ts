import { expect, test } from "vitest";
import { additionForm, additionSaid, openStep } from "./addition-form.js";

const EMPTY = additionForm(undefined, "2026-11-27");

test("words first, then hours, then a price; who agreed may stay open", () => {
  expect(openStep(EMPTY)).toBe("words");
  expect(openStep({ ...EMPTY, words: "Hub" })).toBe("hours");
  expect(openStep({ ...EMPTY, words: "Hub", minutes: [0, 10, 20] })).toBe("price");
  expect(openStep({ ...EMPTY, words: "Hub", minutes: [0, 10, 20], price: [0, 0, 0] })).toBe("agreed");
});

test("nothing is kept while hours or a price are missing", () => {
  expect(additionSaid({ ...EMPTY, words: "Hub", price: [0, 0, 0] }, "a1")).toBeUndefined();
  expect(additionSaid({ ...EMPTY, words: "Hub", minutes: [0, 0, 0] }, "a1")).toBeUndefined();
  expect(additionSaid({ ...EMPTY, words: " ", minutes: [0, 0, 0], price: [0, 0, 0] }, "a1")).toBeUndefined();
});

test("without a name nobody has agreed; with one it is kept who, how and when", () => {
  const form = { ...EMPTY, words: " Hub ", minutes: [0, 10, 20], price: [1, 2, 3] } as const;
  expect(additionSaid(form, "a1")).toMatchObject({ addition: "a1", words: "Hub", agreed: null });
  const agreed = additionSaid({ ...form, who: " The owner ", how: "by telephone" }, "a1");
  expect(agreed?.agreed).toEqual({ who: "The owner", how: "by telephone", on: "2026-11-27" });
  expect(agreed && additionSaid(additionForm(agreed, "2027-01-01"), "a1")).toEqual(agreed);
});
