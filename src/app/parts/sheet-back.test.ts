/** Proves that back closes the topmost sheet and that closing by hand leaves the history as it was. */
import { expect, test } from "vitest";
import { type BackStack, hasLeft, holdBack, passClosed } from "./sheet-back.js";

interface Entry {
  readonly address: string;
  readonly state: unknown;
}
interface Stack extends BackStack {
  readonly entries: Entry[];
  go(address: string, state: unknown): void;
}
/** A history that goes back at once. */
function stack(state: unknown): Stack {
  const entries: Entry[] = [{ address: "#/round", state }];
  const here = (): string => entries.at(-1)?.address ?? "";
  return {
    entries,
    get state() {
      return entries.at(-1)?.state;
    },
    here,
    pushState: (next) => void entries.push({ address: here(), state: next }),
    replaceState: (next) => void entries.splice(-1, 1, { address: here(), state: next }),
    back: () => void entries.pop(),
    go: (address, next) => void entries.push({ address, state: next }),
  };
}

test("an open sheet holds one entry at the same address, with what was there before", () => {
  const history = stack({ from: "#/" });
  holdBack(history);
  expect(history.entries.length).toBe(2);
  expect(history.here()).toBe("#/round");
  expect(history.state).toMatchObject({ from: "#/" });
});

test("closing by hand takes the entry away again", () => {
  const history = stack(null);
  holdBack(history).release();
  expect(history.entries).toEqual([{ address: "#/round", state: null }]);
});

test("closing because a link inside led on takes nothing of the new screen away, and back passes the closed entry", () => {
  const history = stack(null);
  const sheet = holdBack(history);
  history.go("#/new-visit", { from: "#/round" });
  sheet.release();
  expect(history.here()).toBe("#/new-visit");
  history.back();
  passClosed(history);
  expect(history.entries).toEqual([{ address: "#/round", state: null }]);
});

test("a screen put in place of the one below keeps its entry, without the mark of the sheet", () => {
  const history = stack({ from: "#/" });
  const sheet = holdBack(history);
  history.entries.splice(-1, 1, { address: "#/point", state: history.state });
  sheet.release();
  expect(history.entries.at(-1)).toEqual({ address: "#/point", state: { from: "#/" } });
  passClosed(history);
  expect(history.here()).toBe("#/point");
});

test("back closes the topmost of two sheets only", () => {
  const history = stack(null);
  const lower = holdBack(history);
  const upper = holdBack(history);
  history.back();
  expect(hasLeft(history.state, upper.id)).toBe(true);
  expect(hasLeft(history.state, lower.id)).toBe(false);
  passClosed(history);
  expect(history.entries.length).toBe(2);
  history.back();
  expect(hasLeft(history.state, lower.id)).toBe(true);
});
