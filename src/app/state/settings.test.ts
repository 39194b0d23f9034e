import { expect, test } from "vitest";
import { defaultSettings, keepSettings, keepTyped, readSettings, type TextShelf, typedBefore } from "./settings.js";

function shelf(): TextShelf {
  const kept = new Map<string, string>();
  return {
    get: (key) => kept.get(key) ?? null,
    put: (key, text) => void kept.set(key, text),
    drop: (key) => void kept.delete(key),
  };
}
const defaults = defaultSettings("p1", false);

test("a setting survives a restart", () => {
  const kept = shelf();
  keepSettings(kept, defaults).value = { ...defaults, theme: "daylight", name: "Ines" };
  expect(keepSettings(kept, defaults).value).toEqual({ ...defaults, theme: "daylight", name: "Ines" });
});

test("a spoilt or foreign setting falls back by itself and leaves the others", () => {
  expect(readSettings("{broken", defaults)).toEqual(defaults);
  expect(readSettings("null", defaults)).toEqual(defaults);
  expect(readSettings(JSON.stringify({ theme: "purple", larger: "yes", leftHand: true, other: 1 }), defaults)).toEqual({
    ...defaults,
    leftHand: true,
  });
});

test("typed words wait until they are kept or emptied", () => {
  const kept = shelf();
  keepTyped(kept, "#/a", "oil on");
  expect(typedBefore(kept, "#/a")).toBe("oil on");
  keepTyped(kept, "#/a", "");
  expect(typedBefore(kept, "#/a")).toBe("");
});
