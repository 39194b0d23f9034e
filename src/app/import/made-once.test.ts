// What is made once for a sheet: kept while it is sound, and made anew after it broke or came to nothing.
import { expect, test } from "vitest";
import { madeOnce } from "./made-once.js";

const ground = { sheet: {} };

test("it is made once for a sheet, and anew for another", async () => {
  let made = 0;
  const once = madeOnce(async () => ++made);
  expect([await once(ground), await once({ ...ground }), await once({ sheet: {} })]).toEqual([1, 1, 2]);
});

test("what broke, or came to nothing because a newer one took its place, is made anew", async () => {
  const makes = [async () => Promise.reject(new Error("gone")), async () => undefined, async () => "engine"];
  const once = madeOnce<typeof ground, string>(async () => makes.shift()?.());
  await expect(once(ground)).rejects.toThrow("gone");
  expect(await once(ground)).toBeUndefined();
  expect(await once(ground)).toBe("engine");
  expect(await once(ground)).toBe("engine");
});
