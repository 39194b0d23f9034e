/** Proves that back closes the topmost sheet and that closing by hand leaves the history as it was. */
import { expect, test } from "vitest";
import { type BackStack, hasLeft, holdBack } from "./sheet-back.js";

/** A history that goes back at once. */
function stack(first: unknown): BackStack & { readonly entries: unknown[] } {
  const entries: unknown[] = [first];
  return {
    entries,
    get state() {
      return entries.at(-1);
    },
    pushState: (state) => void entries.push(state),
    back: () => void entries.pop(),
  };
}

test("an open sheet holds one entry at the same address, with what was there before", () => {
  const history = stack({ scroll: 40 });
  holdBack(history);
  expect(history.entries.length).toBe(2);
  expect(history.state).toMatchObject({ scroll: 40 });
});

test("closing by hand takes the entry away again", () => {
  const history = stack(null);
  holdBack(history).release();
  expect(history.entries).toEqual([null]);
});

test("closing because the person moved on takes nothing of the new screen away", () => {
  const history = stack(null);
  const held = holdBack(history);
  history.pushState({ screen: "findings" }, "");
  held.release();
  expect(history.state).toEqual({ screen: "findings" });
});

test("back closes the topmost of two sheets only", () => {
  const history = stack(null);
  const lower = holdBack(history);
  const upper = holdBack(history);
  history.back();
  expect(hasLeft(history.state, upper.id)).toBe(true);
  expect(hasLeft(history.state, lower.id)).toBe(false);
  history.back();
  expect(hasLeft(history.state, lower.id)).toBe(true);
});
