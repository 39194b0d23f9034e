import { readFile } from "node:fs/promises";
import { expect, test } from "vitest";
import { publishedSchemas } from "./json-schema.js";

test.each(publishedSchemas().map((s) => [s.file, s.text] as const))(
  "%s is what the schema says today; else run `npx tsx src/build/json-schema.ts`",
  async (file, text) => {
    expect(await readFile(file, "utf8")).toBe(text);
  },
);
