import { describe, expect, it } from "vitest";
import { WORDS } from "../../../../tests/support/handover-visit.js";
import { wholeVisit } from "../../../../tests/support/handover-whole.js";
import { handover } from "./build.js";
import { chaptersOf } from "./chapters.js";
import { toHtml } from "./html.js";
import type { Block, FindingBlock } from "./page.js";
import { handoverPages } from "./pages.js";

const pagesFor = (reader: "technician" | "owner" | "buyer") =>
  handoverPages(handover(wholeVisit({ for: reader })), WORDS);
const heading = (text: string, more: { level?: 2 | 3; newPage?: boolean } = {}): Block => ({
  is: "heading",
  level: 2,
  text,
  ...more,
});
const FINDING: FindingBlock = {
  letter: "",
  mark: "minor",
  word: "Minor",
  title: "Play",
  where: "",
  says: [],
  steps: [],
  after: [],
  pictures: [],
};
const text = (words: string): Block => ({ is: "text", text: words });

describe("HO51 chapters", () => {
  it.each(["technician", "owner", "buyer"] as const)("hold every block of a %s's pages, in order", (reader) => {
    const pages = pagesFor(reader);
    const { lead, chapters } = chaptersOf(pages);
    expect([...lead, ...chapters.flatMap((one) => [one.heading, ...one.blocks])]).toEqual(pages.blocks);
    expect(new Set(chapters.map(({ id }) => id)).size).toBe(chapters.length);
    expect(chapters[0]?.onFirst).toBe(true);
    expect(chapters.at(-1)?.onFirst).toBe(false);
  });
  it("count findings; else rows with a name, items and pictures; words and lower headings count nothing", () => {
    const rows = [{ cells: ["Play"] }, { cells: [""] }, { cells: ["", "x"], mark: "minor" as const }];
    const items: Block = { is: "list", items: ["one", "two"] };
    const { lead, chapters } = chaptersOf({
      first: 4,
      blocks: [
        text("before"),
        heading("A"),
        text("words"),
        heading("B"),
        items,
        heading("lower", { level: 3 }),
        { is: "table", table: { caption: "C", head: [], rows } },
        heading("C", { newPage: true }),
        { is: "finding", finding: { ...FINDING, letter: "A" } },
        items,
        heading("D"),
      ],
    });
    expect(lead).toEqual([text("before")]);
    expect(chapters.map(({ heading: { text: title }, count, onFirst }) => [title, count, onFirst])).toEqual([
      ["A", 0, true],
      ["B", 4, true],
      ["C", 1, false],
      ["D", 0, false],
    ]);
  });
  it("of the page file: the first page names those after it and leads to each", () => {
    const pages = pagesFor("owner");
    const html = toHtml(pages, WORDS);
    const later = chaptersOf(pages).chapters.filter(({ onFirst }) => !onFirst);
    expect(later.length).toBeGreaterThan(5);
    const led = [...html.matchAll(/<a href="#([^"]+)">([^<]+)<\/a>/g)].map(([, to, words]) => [to, words]);
    expect(led).toEqual(later.map(({ id, heading: { text: words } }) => [id, words]));
    for (const { id } of later) expect(html.match(new RegExp(`<h2 id="${id}"`, "g"))).toHaveLength(1);
    // After the answers and the cautions, before the first of those it names.
    for (const said of ["May it be driven?", 'class="caution '])
      expect(html.indexOf("<nav")).toBeGreaterThan(html.lastIndexOf(said));
    expect(html.indexOf("<nav")).toBeLessThan(html.indexOf(`<h2 id="${later[0]?.id}"`));
    expect(html).toMatch(/@media print\{[^@]*nav\{display:none\}/);
  });
});
