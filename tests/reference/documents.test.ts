// The list of outside documents is whole: whatever says that it is published stands in it, and every row is leaned on.
import { expect, test } from "vitest";
import { documents, unlisted } from "./documents.js";

test("every published source of a function or limit is a document of the list", () => {
  expect(unlisted()).toEqual([]);
});

test("every document is named by a function, a limit or a test", async () => {
  const idle = (await documents()).filter(({ functions, limits, tests }) => functions + limits + tests === 0);
  expect(idle).toEqual([]);
});

test("25 documents and more that anyone can fetch, most of them seen in whole or in part", async () => {
  const fetched = (await documents()).filter(({ canBeFetched }) => canBeFetched);
  expect(fetched.filter(({ seen }) => seen !== "memory").length).toBeGreaterThanOrEqual(25);
});
