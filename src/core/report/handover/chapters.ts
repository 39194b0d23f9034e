/**
 * The pages of a hand-over as chapters, each below one heading of the second level: what a contents list, the marks of
 * a printed sheet and headings that fold are made from. Rules: SPEC.md HO51. Adds nothing and leaves nothing out.
 */
import type { Block, HandoverPages } from "./page.js";

export interface Chapter {
  /** Its own within the document. */
  readonly id: string;
  readonly heading: Extract<Block, { readonly is: "heading" }>;
  /** What stands below the heading, without it. */
  readonly blocks: readonly Block[];
  /** Findings in it; where there are none, rows, items, cautions and pictures; 0 for mere words. */
  readonly count: number;
  /** Whether it stands on the first page. */
  readonly onFirst: boolean;
}

export interface Chapters {
  /** What stands before the first heading. */
  readonly lead: readonly Block[];
  readonly chapters: readonly Chapter[];
}

/** How many things a block tells. A row without a name goes on with the one above it. */
function countOf(block: Block): number {
  switch (block.is) {
    case "list":
      return block.items.length;
    case "table":
      return block.table.rows.filter(({ cells, mark }) => cells[0] !== "" || mark !== undefined).length;
    case "caution":
    case "picture":
      return 1;
    default:
      return 0;
  }
}

function countIn(blocks: readonly Block[]): number {
  const findings = blocks.filter(({ is }) => is === "finding").length;
  return findings > 0 ? findings : blocks.reduce((sum, one) => sum + countOf(one), 0);
}

/** `pages` cut at its headings of the second level, in the same order. */
export function chaptersOf({ blocks, first }: Pick<HandoverPages, "blocks" | "first">): Chapters {
  const starts = blocks.flatMap((block, at) => (block.is === "heading" && block.level === 2 ? [{ at, block }] : []));
  return {
    lead: blocks.slice(0, starts[0]?.at ?? blocks.length),
    chapters: starts.map(({ at, block }, index) => {
      const inside = blocks.slice(at + 1, starts[index + 1]?.at);
      return {
        id: `chapter-${index + 1}`,
        heading: block,
        blocks: inside,
        count: countIn(inside),
        onFirst: at < first,
      };
    }),
  };
}
