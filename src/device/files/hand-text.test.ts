/** A text handed on: shared, copied where nothing shares, stopped by the person, or left to be copied by hand. */
import { expect, test } from "vitest";
import { copyText, shareText } from "./hand-text.js";

const refusing = (name: string) => async () => {
  throw Object.assign(new Error(name), { name });
};
const clipboard = (into: string[]) => ({
  writeText: async (text: string) => {
    into.push(text);
  },
});

test("a phone with a share sheet is given the text, and nothing is copied", async () => {
  const [shared, copied]: [string[], string[]] = [[], []];
  const share = async ({ text }: { text: string }) => {
    shared.push(text);
  };
  expect(await shareText("Ready", { share, clipboard: clipboard(copied) })).toBe("shared");
  expect([shared, copied]).toEqual([["Ready"], []]);
});

test("closed by the person it is stopped; a sheet that will not take it leaves the clipboard", async () => {
  const copied: string[] = [];
  expect(await shareText("Ready", { share: refusing("AbortError"), clipboard: clipboard(copied) })).toBe("stopped");
  expect(await shareText("Ready", { share: refusing("NotAllowedError"), clipboard: clipboard(copied) })).toBe("copied");
  expect(copied).toEqual(["Ready"]);
});

test("without either, and where copying is forbidden, it is left to be copied by hand", async () => {
  expect(await shareText("Ready", {})).toBe("failed");
  expect(await copyText("Ready", { clipboard: { writeText: refusing("NotAllowedError") } })).toBe("failed");
});
