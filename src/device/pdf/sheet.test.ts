// The printed sheet read back by another reader: pages, words, faces, nothing lost without being told.
import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { plainText, type ReadPdf, readPdf } from "../../../tests/support/read-pdf.js";
import type { PrintedSheet } from "../../core/report/index.js";
import { makeSheet } from "./make-sheet.js";
import { samplePages } from "./sample-pages.js";

const face = (style: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`./face/leadlamp-sheet-${style}.ttf`, import.meta.url)));
const FACES = { regular: face("regular"), bold: face("bold") };
/** One grey pixel as JPEG, made by hand. */
const PIXEL = new Uint8Array(
  Buffer.from(
    "/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAAMCAgMCAgMDAwMEAwMEBQgFBQQEBQoHBwYIDAoMDAsKCwsNDhIQDQ4RDgsLEBYQERMUFRUVDA8XGBYUGBIUFRT/wAALCAABAAEBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAACf/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AKp//2Q==",
    "base64",
  ),
);

const wish = (rows?: number) => ({
  pages: samplePages(rows),
  pageOf: "Page {page} of {pages}",
  madeAt: "2027-05-04T10:00:00+02:00",
  marks: { dangerous: "Dangerous", major: "Major", minor: "Minor", advisory: "Advisory" },
  noPicture: "This picture is not on this phone.",
  noSigns: "Signs that have no form here: {signs}.",
});

let sheet: PrintedSheet;
let read: ReadPdf;
let all: string;
const progress: string[] = [];
const asked: string[] = [];

beforeAll(async () => {
  sheet = await makeSheet(
    wish(),
    FACES,
    async (hash, most) => {
      asked.push(`${hash} ${most}`);
      return hash === "gone" ? undefined : { type: "image/jpeg", bytes: PIXEL };
    },
    (done, of) => progress.push(`${done} of ${of}`),
  );
  read = await readPdf(sheet.bytes);
  all = read.texts.join(" ");
});

test("title and language are set, every face lies in the file, nothing leads out of it", () => {
  expect(read.title).toBe("Hand-over: Tarn Two, blue");
  expect(read.language).toBe("en");
  expect([...read.faces].sort()).toEqual([
    ["LeadlampSheet-Bold", true],
    ["LeadlampSheet-Regular", true],
  ]);
  expect(read.links).toEqual([]);
});

test("HO51 the outline names every chapter, in order, and leads to the page its heading stands on", () => {
  const chapters = samplePages().blocks.flatMap((one) => (one.is === "heading" && one.level === 2 ? [one.text] : []));
  expect(chapters.length).toBeGreaterThan(3);
  expect(read.outline.map(([title]) => title)).toEqual(chapters);
  for (const [title, page] of read.outline) expect(read.texts[page - 1]).toContain(title);
});

test("every page says which it is of how many, and its progress was told", () => {
  expect(read.pages).toBe(sheet.pages);
  expect(read.texts.map((text, at) => text.includes(`Page ${at + 1} of ${read.pages}`))).not.toContain(false);
  expect(progress).toEqual(read.texts.map((_, at) => `${at + 1} of ${read.pages}`));
});

test("signs of figures and letters of Europe are read back as they were written", () => {
  for (const words of [
    "Play ≥ 0.15 mm at the lower joint",
    "Width ≤ 3 µm → measure again, 20 ± 2 °C",
    "“It pulls left – since autumn”",
    "Łódź, Ősz, Şile",
    "61 204 km",
  ])
    expect(all).toContain(words);
});

test("a sign without a form stands as a crossed box and is told by its code", () => {
  expect(sheet.missingSigns.join("")).toBe("Григой");
  expect(all).toContain("looked on");
  expect(all).toContain("Signs that have no form here: U+0413");
});

test("a table's head stands on every page the table goes on", () => {
  const pages = read.texts.filter((text) => text.includes("Renew bearing"));
  expect(pages.length).toBeGreaterThan(1);
  for (const text of pages) expect(text).toContain("By when");
});

test("a row keeps its notes on its page, with the word of its mark", () => {
  for (let row = 1; row <= 40; row += 1) {
    const page = read.texts.find((text) => text.includes(`Renew bearing ${row},`));
    expect(page).toContain(`For finding ${row}. Hub off`);
  }
  expect(all).toContain("Dangerous 1 Renew bearing 1, rear right");
});

test("cautions, findings and their pictures are not broken across pages", () => {
  const danger = read.texts.find((text) => text.includes("DANGER"));
  expect(danger).toContain("Have it moved on a trailer.");
  const finding = read.texts.find((text) => text.includes("Play in the lower ball joint"));
  for (const words of ["Major. Front left", "Over 0.15 mm", "Work that puts it right: 1.", "Dust cover, split"])
    expect(finding).toContain(words);
});

test("pictures are asked for no larger than they are printed; one that is gone is told where it would be", () => {
  expect(asked.map((one) => one.split(" ")[0])).toEqual(["aa", "gone", "bb"]);
  for (const one of asked) expect(Number(one.split(" ")[1])).toBeLessThan(800);
  expect(read.pictures).toBe(2);
  expect(sheet.missingPictures).toEqual(["gone"]);
  expect(all).toContain("This picture is not on this phone.");
  expect(all).toContain("1 crack");
});

test("nothing of where or with what a picture was taken lies in the file", () => {
  const text = Buffer.from(sheet.bytes).toString("latin1");
  expect(text).not.toMatch(/Exif|GPS|MM\0\*|II\*\0/);
});

test("a sheet without a block is one page, with its title", async () => {
  const empty = { ...wish(), pages: { ...samplePages(), blocks: [] } };
  const one = await readPdf(
    (
      await makeSheet(
        empty,
        FACES,
        async () => undefined,
        () => undefined,
      )
    ).bytes,
  );
  expect(one.pages).toBe(1);
  expect(plainText(one.texts.join(" "))).toContain("Hand-over: Tarn Two, blue");
});
