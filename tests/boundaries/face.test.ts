/** Proves that the typeface shipped in public/ is the published file, untouched, with its licence beside it. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const published = createRequire(import.meta.url).resolve(
  "@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2",
);
const shipped = (name: string): string => fileURLToPath(new URL(`../../public/fonts/${name}`, import.meta.url));

test("the shipped face is the published one", () => {
  const ours = readFileSync(shipped("atkinson-hyperlegible-next-latin.woff2"));
  expect(ours.equals(readFileSync(published))).toBe(true);
});

test("its licence is shipped beside it", () => {
  expect(readFileSync(shipped("OFL.txt"), "utf8")).toContain("SIL OPEN FONT LICENSE Version 1.1");
});
