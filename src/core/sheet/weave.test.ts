import { expect, test } from "vitest";
import { loadChecklists } from "../../build/load-checklists.js";
import { unweave, weave } from "./weave.js";

test("data and texts come apart as they were, whatever has no text or no item", () => {
  const data = { id: "hub", points: [{ id: "a" }, { id: "b", n: 1 }, { n: 2 }], rules: [], notes: "kept" };
  const texts = { title: "Hub", points: { b: "B", c: "of no item" }, rules: { r: "R" }, faults: { f: "F" } };
  const [back, words] = unweave(JSON.parse(JSON.stringify(weave(data, texts))));
  expect(back).toEqual(data);
  expect(words).toEqual(texts);
});

test("every shipped sheet and what they share come apart as they were", async () => {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error("the shipped sheets load");
  const { common, commonWithTexts, sheets } = result.value;
  const pairs = [
    [common.common, commonWithTexts.texts["en"]],
    ...sheets.map(({ built, sheet }) => [built.sheet, sheet.texts["en"]]),
  ];
  expect(pairs.length).toBeGreaterThan(1);
  for (const [data, texts] of pairs) {
    const [back, words] = unweave(JSON.parse(JSON.stringify(weave({ ...data }, { ...texts }))));
    expect(back).toEqual(JSON.parse(JSON.stringify(data)));
    expect(words).toEqual(JSON.parse(JSON.stringify(texts)));
  }
});
