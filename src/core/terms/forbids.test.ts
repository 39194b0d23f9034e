import { expect, test } from "vitest";
import { forbidsOf, isForbidden, standFor, toTell } from "./forbids.js";

const due = (...cautions: readonly string[]) => cautions.map((caution) => ({ caution }));

test("no farther than to a workshop gives way to not at all, wherever that stands; nothing else gives way", () => {
  const both = due("cau.to-workshop", "cau.battery", "cau.dont-drive");
  expect(toTell(both)).toEqual(due("cau.battery", "cau.dont-drive"));
  expect(standFor(both, ["cau.to-workshop", "cau.dont-drive", "cau.battery"])).toEqual([
    "cau.dont-drive",
    "cau.battery",
  ]);
});

test("where driving is not forbidden the milder one stands", () => {
  const mild = due("cau.to-workshop");
  expect([isForbidden(mild), toTell(mild), standFor(mild, ["cau.to-workshop"])]).toEqual([
    false,
    mild,
    ["cau.to-workshop"],
  ]);
  expect(["cau.dont-drive", "cau.to-workshop", "cau.battery"].map(forbidsOf)).toEqual([
    "driving",
    "beyond-workshop",
    undefined,
  ]);
});
