/** The hand-over as plain text, for a message or a printer that knows nothing else. Adds no words of its own. */
import type { Block, CautionBlock, FindingBlock, HandoverPages, TableBlock } from "./page.js";
import { type HandoverWords, say } from "./words.js";

const RULE = 72;
const INDENT = "   ";

export function toText(pages: HandoverPages, words: HandoverWords): string {
  const blocks = pages.blocks.map((block) => blockLines(block, words).join("\n"));
  return `${[pages.title, pages.subtitle, "", ...blocks].join("\n")}\n`;
}

function blockLines(block: Block, words: HandoverWords): readonly string[] {
  switch (block.is) {
    case "heading":
      return block.level === 2
        ? ["", block.text, "-".repeat(Math.min(RULE, Math.max(1, block.text.length)))]
        : ["", block.text];
    case "text":
      return [block.text];
    case "list":
      return block.items.map((one, index) => `${block.numbered ? `${index + 1}.` : "-"} ${one}`);
    case "pairs":
      return block.pairs.map(([name, value]) => `${name}: ${value}`);
    case "table":
      return tableLines(block.table, words);
    case "caution":
      return cautionLines(block.caution);
    case "finding":
      return findingLines(block.finding, words);
    case "drawing":
      return [];
    case "picture":
      return [say(words, "picture.caption", { caption: block.picture.caption })];
    case "key":
      return [block.marks.map(({ word }) => word).join(", ")];
    case "signature":
      return [block.words];
    case "sign":
      return block.lines.flatMap((line) => ["", `${line}: ______________________________`]);
  }
}

/** Every row a paragraph: the first two cells name it, the others say which column they are. */
function tableLines({ head, rows }: TableBlock, words: HandoverWords): readonly string[] {
  return rows.flatMap(({ cells, mark, notes = [] }) => {
    const [first = "", second = "", ...rest] = cells;
    const name = [first, second].filter((one) => one !== "").join(", ");
    const word = mark === undefined ? "" : ` [${say(words, `mark.${mark}`)}]`;
    const said = rest.flatMap((cell, index) =>
      cell === "" ? [] : [`${INDENT}${head[index + 2]?.text ?? ""}: ${cell}`],
    );
    return [`- ${name}${word}`, ...said, ...notes.map((one) => `${INDENT}${one}`)];
  });
}

const cautionLines = ({ word, not, lines }: CautionBlock): readonly string[] => [
  "",
  `${word.toUpperCase()}: ${not}`,
  ...lines.map((line) => `${INDENT}${line}`),
];

function findingLines(of: FindingBlock, words: HandoverWords): readonly string[] {
  const place = of.where === "" ? "" : `, ${of.where}`;
  return [
    "",
    `${of.letter}. ${of.word}: ${of.title}${place}`,
    ...of.says.map((line) => `${INDENT}${line}`),
    ...of.steps.map(({ kind, says }) => `${INDENT}${kind}: ${says}`),
    ...of.after.map((line) => `${INDENT}${line}`),
    ...of.pictures.map(({ caption }) => `${INDENT}${say(words, "picture.caption", { caption })}`),
  ];
}
