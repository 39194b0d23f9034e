/** Proves that whatever the library of printed pages would fetch by itself is answered by ours, so that none of it is built in. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const read = (path: string): string => readFileSync(fileURLToPath(new URL(`../../${path}`, import.meta.url)), "utf8");

test("every package jspdf fetches when it is asked for mark-up has our answer in its place", () => {
  const library = read("node_modules/jspdf/dist/jspdf.es.min.js");
  const fetched = [...library.matchAll(/import\(["']([^"']+)["']\)/g)].map(([, name]) => name);
  expect([...new Set(fetched)].sort()).toEqual(["canvg", "dompurify", "html2canvas"]);
  const config = read("vite.config.ts");
  for (const name of fetched) expect(config).toContain(`"${name}"`);
  expect(config).toContain("src/device/pdf/none.ts");
});
