/**
 * Proves the house rules a linter does not know: length of files, first lines, nothing left open or switched
 * off, no rooms without a name. Says which file breaks which rule.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const LONGEST = 400;

const listed = (folder: string, endings: RegExp): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => endings.test(name))
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`);

const sources = [...listed("src", /\.(tsx?|mjs|css)$/), ...listed("tests", /\.tsx?$/)];
const read = (file: string): string => readFileSync(join(root, file), "utf8");
const breaking = (rule: (text: string, file: string) => boolean): string[] =>
  sources.filter((file) => rule(read(file), file));

test("there are sources to judge", () => {
  expect(sources.length).toBeGreaterThan(80);
});

test("every file of the product opens by saying what it is for", () => {
  expect(breaking((text, file) => /^src\/.*(?<!\.test)\.\w+$/.test(file) && !text.startsWith("/**"))).toEqual([]);
});

test("no file is longer than four hundred lines; a catalogue of words may be, it is one list", () => {
  const isCatalogue = (file: string): boolean => /^src\/app\/texts\/[a-z]{2}\.ts$/.test(file);
  expect(breaking((text, file) => !isCatalogue(file) && text.split("\n").length > LONGEST + 1)).toEqual([]);
});

test("nothing is left open, switched off or looked away from", () => {
  const self = "tests/boundaries/house-rules.test.ts";
  const words =
    /\b(TODO|FIXME|XXX|HACK)\b|@ts-ignore|@ts-nocheck|biome-ignore|eslint-disable|\.(skip|only|todo|fails)\(/;
  expect(breaking((text, file) => file !== self && words.test(text))).toEqual([]);
});

test("@ts-expect-error stands only in tests of types", () => {
  const self = "tests/boundaries/house-rules.test.ts";
  expect(
    breaking((text, file) => file !== self && /@ts-expect-error/.test(text) && !/\.(types|test)\.ts$/.test(file)),
  ).toEqual([]);
});

test("no room without a name of its own", () => {
  const named = sources.filter((file) => /\/(utils?|helpers?|common|misc|manager)(\/|\.tsx?$)/.test(file));
  expect(named).toEqual([]);
});

test("an index is a door only: sixty lines at most", () => {
  const doors = sources.filter(
    (file) => /^src\/core\/[^/]+\/(index|run|author)\.ts$/.test(file) && !file.includes("/terms/"),
  );
  expect(doors.length).toBeGreaterThan(5);
  expect(doors.filter((file) => read(file).split("\n").length > 60)).toEqual([]);
});
