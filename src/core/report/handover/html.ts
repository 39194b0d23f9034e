/**
 * The hand-over as one file of HTML that opens anywhere without asking for anything: style, pictures and, where given,
 * the typeface lie in it, and it runs no script. Rules: SPEC.md HO50–HO58. Adds no words of its own.
 */
import { type MarkKind, markDrawing } from "../marks.js";
import { drawingText } from "../to-text.js";
import { type Chapter, chaptersOf } from "./chapters.js";
import { cssText, handoverStyle } from "./html-style.js";
import { base64, element, escaped, isDataImage, words as said } from "./html-text.js";
import type { Block, CautionBlock, FindingBlock, HandoverPages, PictureBlock, TableBlock, TableRow } from "./page.js";
import { type HandoverWords, say } from "./words.js";

export interface HtmlGiven {
  /** By hash, as `data:image/…;base64,…`; one that is none is told as missing. */
  readonly pictures?: ReadonlyMap<string, string> | undefined;
  /** A typeface as WOFF2; the reader's own where none is given. */
  readonly font?: Uint8Array | undefined;
}

/** Nothing may be asked for, and nothing may run, whatever stands in it. */
const POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; base-uri 'none'; form-action 'none'";

export function toHtml(pages: HandoverPages, words: HandoverWords, given: HtmlGiven = {}): string {
  const [before = "", between = "", after = ""] = say(words, "page", { page: "\0", pages: "\0" }).split("\0");
  const style = handoverStyle(cssText(pages.foot), [cssText(before), cssText(between), cssText(after)]);
  const { lead, chapters } = chaptersOf(pages);
  const later = chapters.filter(({ onFirst }) => !onFirst);
  const written = (block: Block): string => blockText(block, words, given);
  const face =
    given.font === undefined
      ? ""
      : `@font-face{font-family:"Handover";font-weight:200 800;src:url(data:font/woff2;base64,${base64(given.font)}) format("woff2")}`;
  return [
    "<!doctype html>",
    `<html lang="${escaped(pages.lang)}">`,
    '<head><meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escaped(POLICY)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="referrer" content="no-referrer">',
    `<title>${escaped(pages.title)}</title>`,
    `<style>${face}${style}</style></head>`,
    "<body>",
    element("header", {}, said("h1", pages.title), said("p", pages.subtitle, "small")),
    "<main>",
    ...lead.map(written),
    ...chapters.flatMap((chapter) => [
      ...(chapter === later[0] ? [contentsText(later, words)] : []),
      headingText(chapter.heading, chapter.id),
      ...chapter.blocks.map(written),
    ]),
    "</main>",
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

/** Names the chapters after the first page and leads to each, within the file. */
const contentsText = (later: readonly Chapter[], words: HandoverWords): string =>
  element(
    "nav",
    { "aria-labelledby": "further-on" },
    element("h2", { id: "further-on", dir: "auto" }, escaped(say(words, "contents.title"))),
    element(
      "ul",
      {},
      ...later.map(({ id, heading }) =>
        element("li", { dir: "auto" }, element("a", { href: `#${id}` }, escaped(heading.text))),
      ),
    ),
  );

const headingText = ({ level, text, newPage }: Chapter["heading"], id?: string): string =>
  element(`h${level}`, { id, dir: "auto", class: newPage ? "new-page" : undefined }, escaped(text));

function blockText(block: Block, words: HandoverWords, given: HtmlGiven): string {
  switch (block.is) {
    case "heading":
      return headingText(block);
    case "text":
      return said("p", block.text, block.look);
    case "list":
      return element(block.numbered ? "ol" : "ul", {}, ...block.items.map((one) => said("li", one)));
    case "pairs":
      return element("dl", {}, ...block.pairs.map(([name, value]) => `${said("dt", name)}${said("dd", value)}`));
    case "table":
      return tableText(block.table, words);
    case "caution":
      return cautionText(block.caution);
    case "finding":
      return findingText(block.finding, words, given);
    case "drawing":
      return drawingText(block.drawing, { label: block.label, className: "car" });
    case "picture":
      return pictureText(block.picture, words, given);
    case "key":
      return element(
        "ul",
        { class: "key" },
        ...block.marks.map(({ mark, word }) => element("li", {}, markText(mark), escaped(word))),
      );
    case "signature":
      return element(
        "div",
        { class: "signed" },
        block.drawing === undefined ? "" : drawingText(block.drawing, { className: "signature" }),
        said("p", block.words),
      );
    case "sign":
      return element("div", { class: "sign" }, ...block.lines.map((line) => said("p", line)));
  }
}

const markText = (mark: MarkKind): string => drawingText(markDrawing(mark), { className: "mark" });

/** A cell with the head of its column, which a narrow screen shows before it; an empty one has nothing to head. */
const cellText = (cell: string, { text, isFigure }: Partial<TableBlock["head"][number]> = {}): string =>
  element(
    "td",
    { dir: "auto", class: isFigure ? "figure" : undefined, "data-head": cell === "" ? undefined : text },
    escaped(cell),
  );

/** The first cell names the row; a mark stands before it with its word, unless a cell says that word already. */
function tableText({ caption, head, rows }: TableBlock, words: HandoverWords): string {
  const rowText = ({ cells, mark, notes = [] }: TableRow): string => {
    const [name = "", ...rest] = cells;
    // A row that goes on under the name above it has no name of its own.
    const isNamed = name !== "" || mark !== undefined;
    const first = element(
      isNamed ? "th" : "td",
      { scope: isNamed ? "row" : undefined, class: "row-name", dir: "auto" },
      ...(mark === undefined ? [] : [markText(mark), wordBeside(words, mark, cells)]),
      escaped(name),
    );
    const line = element(
      "tr",
      { class: notes.length > 0 ? "has-notes" : undefined },
      first,
      ...rest.map((cell, index) => cellText(cell, head[index + 1])),
    );
    const under = notes.map((one) => said("p", one)).join("");
    return notes.length === 0
      ? line
      : line + element("tr", {}, element("td", { class: "note", colspan: String(head.length) }, under));
  };
  return element(
    "table",
    {},
    said("caption", caption),
    element(
      "thead",
      {},
      element(
        "tr",
        {},
        ...head.map(({ text, isFigure }) =>
          element("th", { scope: "col", class: isFigure ? "figure" : undefined }, escaped(text)),
        ),
      ),
    ),
    element("tbody", {}, ...rows.map(rowText)),
  );
}

function wordBeside(words: HandoverWords, mark: MarkKind, cells: readonly string[]): string {
  const word = say(words, `mark.${mark}`);
  return cells.some((cell) => cell.includes(word)) ? "" : `${element("span", { class: "word" }, escaped(word))} `;
}

/** The safety alert symbol: stands before every signal word but notice, which warns of damage only. */
const ALERT =
  '<svg viewBox="0 0 28 25" aria-hidden="true"><path fill="currentColor" fill-rule="evenodd" d="M14 .8L27.4 24.2H.6ZM12.4 8.6L13 16.2H15L15.6 8.6ZM12.5 17.8V20.8H15.5V17.8Z"/></svg>';

function cautionText({ signal, word, not, lines }: CautionBlock): string {
  const look = signal === "caution" ? "caution-word" : signal;
  return element(
    "section",
    { class: `caution ${look}` },
    element("p", { class: "signal" }, signal === "notice" ? "" : ALERT, escaped(word)),
    element("div", { class: "said" }, said("p", not, "not"), ...lines.map((line) => said("p", line))),
  );
}

function findingText(of: FindingBlock, words: HandoverWords, given: HtmlGiven): string {
  const place = of.where === "" ? "" : `, ${of.where}`;
  return element(
    "section",
    { class: "finding" },
    element(
      "h3",
      { dir: "auto" },
      element("span", { class: "letter" }, escaped(of.letter)),
      " ",
      markText(of.mark),
      escaped(`${of.word}: ${of.title}${place}`),
    ),
    ...of.says.map((line) => said("p", line)),
    element("dl", { class: "steps" }, ...of.steps.map(({ kind, says }) => `${said("dt", kind)}${said("dd", says)}`)),
    ...of.after.map((line) => said("p", line)),
    ...of.pictures.map((one) => pictureText(one, words, given)),
  );
}

function pictureText(picture: PictureBlock, words: HandoverWords, { pictures }: HtmlGiven): string {
  const { hash, caption, width, height, marks } = picture;
  const url = pictures?.get(hash);
  const told = say(words, "picture.caption", { caption });
  if (url === undefined || !isDataImage(url))
    return said("p", say(words, "picture.missing", { caption, hash: hash.slice(0, HASH_SHOWN) }), "small");
  const over = marks === undefined ? "" : drawingText(marks, { label: say(words, "picture.marks", { caption }) });
  const size = width > 0 && height > 0 ? { width: String(width), height: String(height) } : {};
  const image = `<img src="${escaped(url)}" alt="${escaped(told)}"${attrText(size)}>`;
  return element("figure", {}, element("div", { class: "shown" }, image, over), said("figcaption", told));
}

/** As much of a hash as a person compares. */
const HASH_SHOWN = 12;
const attrText = (attrs: Readonly<Record<string, string>>): string =>
  Object.entries(attrs)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join("");
