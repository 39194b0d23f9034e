/** Proves the contrast of every text and outline pair from the style sheet itself, and that the dark theme's two copies agree. */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const folder = fileURLToPath(new URL(".", import.meta.url));
const css = readFileSync(`${folder}tokens.css`, "utf8");
type Tokens = ReadonlyMap<string, string>;

/** Custom properties of the first block after `start`. */
function block(start: string): Tokens {
  const from = css.indexOf(start);
  if (from < 0) throw new Error(`tokens.css has no ${start}`);
  const body = css.slice(css.indexOf("{", from) + 1, css.indexOf("}", from));
  return new Map([...body.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map((m) => [m[1] ?? "", m[2] ?? ""]));
}
const signal = block(":root {");
const daylight = block('[data-theme="daylight"]');
const bySystem = block(':root:not([data-theme="daylight"])');
const byChoice = block('[data-theme="under-the-car"]');

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const channels = [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255);
  const [r = 0, g = 0, b = 0] = channels.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}
function between(tokens: Tokens, ink: string, ground: string): number {
  const [a, b] = [tokens.get(`--${ink}`), tokens.get(`--${ground}`)];
  if (a === undefined || b === undefined) throw new Error(`no --${ink} or --${ground}`);
  return contrast(a, b);
}

test("the ratio itself is right: black on white 21, a mid grey 4.5 as published by WCAG", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 5);
  expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
});

const TEXT = [
  ["ink", "ground"],
  ["ink2", "ground"],
  ["ink", "rise"],
  ["ink2", "rise"],
  ["ground", "ink"],
  ["lit-ink", "lit"],
  ["lit-ink2", "lit"],
  ["lit-ink", "face"],
  ["lit-ink2", "face"],
  ["on-lamp", "lamp"],
  ["on-act", "act"],
] as const;
const OUTLINES = [
  ["faint", "ground"],
  ["keyline", "lit"],
  ["lead", "ground"],
  ["lead", "lit"],
  ["act", "ground"],
  ["act", "lit"],
] as const;

for (const [name, tokens] of [
  ["daylight", daylight],
  ["under the car", byChoice],
] as const) {
  for (const [ink, ground] of TEXT) {
    test(`${name}: text in ${ink} on ${ground} has 7:1 or more`, () => {
      expect(between(tokens, ink, ground)).toBeGreaterThanOrEqual(7);
    });
  }
  for (const [line, ground] of OUTLINES) {
    test(`${name}: outline or focus ring in ${line} on ${ground} has 3:1 or more`, () => {
      expect(between(tokens, line, ground)).toBeGreaterThanOrEqual(3);
    });
  }
}

test("daylight: the frame of a chosen reply stands out from pool and lamp by 3:1 or more", () => {
  expect(between(daylight, "lamp-edge", "lit")).toBeGreaterThanOrEqual(3);
  expect(between(daylight, "lamp-edge", "lamp")).toBeGreaterThanOrEqual(3);
});

for (const colour of ["red", "orange", "yellow", "blue"]) {
  test(`signal word on ${colour} has 7:1 or more`, () => {
    expect(between(signal, `on-${colour}`, colour)).toBeGreaterThanOrEqual(7);
  });
}

test("the dark theme by system and by choice is the same", () => {
  expect([...bySystem]).toEqual([...byChoice]);
  expect([...daylight.keys()].sort()).toEqual([...byChoice.keys()].sort());
});

const sheets = readdirSync(folder).filter((name) => name.endsWith(".css"));
/** These two only name the others. */
const GATHERING = ["index.css", "later.css"];
const styles = sheets.filter((name) => !GATHERING.includes(name)).map((name) => readFileSync(folder + name, "utf8"));

test("every token used is defined, or set where it is used", () => {
  const all = styles.join("\n");
  const defined = new Set([...all.matchAll(/(--[\w-]+):/g)].map((m) => m[1]));
  // The plan sets these two on each place by script.
  for (const own of ["--x", "--y"]) defined.add(own);
  const missing = [...all.matchAll(/var\((--[\w-]+)\)/g)].map((m) => m[1]).filter((name) => !defined.has(name));
  expect([...new Set(missing)]).toEqual([]);
});

test("every sheet is brought in once, with the start or for later screens", () => {
  const [index, later] = ["index.css", "later.css"].map((name) => readFileSync(folder + name, "utf8"));
  const broughtIn = [...`${index}${later}`.matchAll(/@import "\.\/([\w-]+\.css)"/g)].map((m) => m[1]);
  expect(broughtIn.sort()).toEqual(sheets.filter((name) => !GATHERING.includes(name)).sort());
});

test("hue stands in the signal-word panels alone", () => {
  for (const name of sheets.filter((n) => n !== "tokens.css")) {
    const text = readFileSync(folder + name, "utf8");
    const rules = [...text.matchAll(/([^{}]+)\{([^{}]*var\(--(?:on-)?(?:red|orange|yellow|blue)\)[^{}]*)\}/g)];
    for (const rule of rules) expect(rule[1], name).toContain(".signal.");
  }
});

test("the whole style stays below 14 kB gzipped, even unminified", () => {
  expect(gzipSync(styles.join("\n"), { level: 9 }).length).toBeLessThan(14_000);
});
