/** The hand-over as it will be read, drawn from the same blocks as every file of it: ink on white, whatever the theme. */
import { Fragment, type VNode } from "preact";
import { useMemo, useState } from "preact/hooks";
import {
  type Block,
  type CautionBlock,
  chaptersOf,
  type FindingBlock,
  type HandoverWords,
  type MarkKind,
  markDrawing,
  type PictureBlock,
  type TableBlock,
  type TableRow,
} from "../../core/report/index.js";
import { LOOK } from "../parts/caution-bar.js";
import { DrawingView } from "../parts/drawing-view.js";
import { AlertIcon } from "../parts/icons.js";
import type { MadeHandover } from "../state/handover-made.js";
import { t } from "../texts/hand-over.js";
import { FoldedChapter } from "./hand-over-chapter.js";
import { useKeptBytes, useNear } from "./kept-picture.js";

/** What stands around every block: words, and whether everything is drawn, near or not. */
interface Paper {
  readonly words: HandoverWords;
  readonly whole: boolean;
}

const Mark = ({ mark }: { readonly mark: MarkKind }) => <DrawingView drawing={markDrawing(mark)} class="paper-mark" />;

function Picture({ picture, paper }: { readonly picture: PictureBlock; readonly paper: Paper }) {
  const { element, near } = useNear<HTMLElement>();
  const { src, drawn, gone } = useKeptBytes(near || paper.whole ? picture.hash : undefined);
  return (
    <figure ref={element}>
      {gone ? (
        <p class="paper-gone">{t("hand-over.picture.gone")}</p>
      ) : (
        <div class="paper-picture">
          <img src={src} alt={picture.caption} width={picture.width} height={picture.height} onLoad={drawn} />
          {picture.marks && <DrawingView drawing={picture.marks} />}
        </div>
      )}
      <figcaption>{picture.caption}</figcaption>
    </figure>
  );
}

function Caution({ caution: { signal, word, not, lines } }: { readonly caution: CautionBlock }) {
  return (
    <section class="paper-caution">
      <p class={LOOK[signal]}>
        {signal !== "notice" && <AlertIcon />}
        {word}
      </p>
      <div>
        <p class="paper-not">{not}</p>
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </section>
  );
}

function Finding({ finding, paper }: { readonly finding: FindingBlock; readonly paper: Paper }) {
  const { letter, mark, word, title, where, says, steps, after, pictures } = finding;
  return (
    <section class="paper-finding">
      <h3>
        <Mark mark={mark} /> <span class="paper-letter">{letter}</span> {title}
      </h3>
      <p class="paper-where">{where === "" ? word : `${word}. ${where}`}</p>
      {says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <dl class="paper-steps">
        {steps.map((step, at) => (
          // Two steps may say the same: their place tells them apart.
          <div key={`${at} ${step.says}`}>
            <dt>{step.kind}</dt>
            <dd>{step.says}</dd>
          </div>
        ))}
      </dl>
      {after.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Pictures pictures={pictures} paper={paper} />
    </section>
  );
}

function Pictures({ pictures, paper }: { readonly pictures: readonly PictureBlock[]; readonly paper: Paper }) {
  if (pictures.length === 0) return null;
  return (
    <div class="paper-pictures">
      {pictures.map((one) => (
        <Picture key={one.hash} picture={one} paper={paper} />
      ))}
    </div>
  );
}

/** The word beside a mark, unless a cell of the row says it already. */
const wordBeside = ({ words }: Paper, { mark, cells }: TableRow): string => {
  const word = mark === undefined ? "" : words.texts[`mark.${mark}`];
  return cells.some((cell) => cell.includes(word)) ? "" : word;
};

/** On a narrow page the rows stand as blocks, each cell under its own name. */
function Table({ table: { caption, head, rows }, paper }: { readonly table: TableBlock; readonly paper: Paper }) {
  const look = (at: number): string | undefined => (head[at]?.isFigure ? "figure" : undefined);
  return (
    <table aria-label={caption}>
      <thead>
        <tr>
          {head.map(({ text }, at) => (
            <th key={text} scope="col" class={look(at)}>
              {text}
            </th>
          ))}
        </tr>
      </thead>
      {rows.map((row, at) => (
        // Rows may say the same: their place tells them apart.
        <tbody key={`${at} ${row.cells.join()}`}>
          <tr>
            {row.cells.map((cell, index) => {
              const words = index === 0 ? [wordBeside(paper, row), cell].filter(Boolean).join(" ") : cell;
              const named = { "data-name": head[index]?.text ?? "" };
              // A row that goes on under the name above it has no name of its own.
              return index === 0 && (words !== "" || row.mark) ? (
                <th key={head[index]?.text} scope="row">
                  {row.mark && <Mark mark={row.mark} />} {words}
                </th>
              ) : (
                <td key={head[index]?.text} class={look(index)} {...named}>
                  {words}
                </td>
              );
            })}
          </tr>
          {row.notes && row.notes.length > 0 && (
            <tr>
              <td class="paper-notes" colSpan={head.length}>
                {row.notes.map((note) => (
                  <p key={note}>{note}</p>
                ))}
              </td>
            </tr>
          )}
        </tbody>
      ))}
    </table>
  );
}

function BlockView({ block, paper }: { readonly block: Block; readonly paper: Paper }) {
  switch (block.is) {
    case "heading":
      return block.level === 2 ? <h2 class={block.newPage ? "new-page" : ""}>{block.text}</h2> : <h3>{block.text}</h3>;
    case "text":
      return <p class={block.look === undefined ? "" : `paper-${block.look}`}>{block.text}</p>;
    case "list": {
      const List = block.numbered ? "ol" : "ul";
      return (
        <List>
          {block.items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </List>
      );
    }
    case "pairs":
      return (
        <dl class="paper-pairs">
          {block.pairs.map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      );
    case "table":
      return <Table table={block.table} paper={paper} />;
    case "caution":
      return <Caution caution={block.caution} />;
    case "finding":
      return <Finding finding={block.finding} paper={paper} />;
    case "drawing":
      return <DrawingView drawing={block.drawing} label={block.label} class="car paper-car" />;
    case "picture":
      return <Pictures pictures={[block.picture]} paper={paper} />;
    case "key":
      return (
        <ul class="paper-key">
          {block.marks.map(({ mark, word }) => (
            <li key={mark}>
              <Mark mark={mark} /> {word}
            </li>
          ))}
        </ul>
      );
    case "signature":
      return (
        <figure>
          {block.drawing && <DrawingView drawing={block.drawing} class="signature" />}
          <figcaption>{block.words}</figcaption>
        </figure>
      );
    case "sign":
      return (
        <div class="paper-sign">
          {block.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      );
  }
}

/** The first page as it is; what comes after it folded, so that its headings are the list of what there is. */
export function HandOverPage({ made, whole }: { readonly made: MadeHandover; readonly whole: boolean }) {
  const { pages, words } = made;
  const { lead, chapters } = useMemo(() => chaptersOf(pages), [pages]);
  // By their headings: another reader's pages, or newer ones, leave open what was opened.
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const paper = { words, whole };
  const drawn = (blocks: readonly Block[]): readonly VNode[] =>
    blocks.map((block, at) => <BlockView key={at} block={block} paper={paper} />);
  const later = chapters.filter(({ onFirst }) => !onFirst).map(({ heading }) => heading.text);
  const isAllOpen = later.every((title) => opened.has(title));
  const open = (title: string, isOpen: boolean): void =>
    setOpened(new Set(isOpen ? [...opened, title] : [...opened].filter((one) => one !== title)));
  return (
    <article class="paper" lang={pages.lang} aria-label={t("hand-over.preview")}>
      <h2 class="paper-title">{pages.title}</h2>
      <p class="paper-small">{pages.subtitle}</p>
      {drawn(lead)}
      {chapters.map((chapter) => {
        const { heading, onFirst } = chapter;
        if (onFirst) return <Fragment key={heading.text}>{drawn([heading, ...chapter.blocks])}</Fragment>;
        return (
          <Fragment key={heading.text}>
            {heading.text === later[0] && (
              <button type="button" class="paper-all" onClick={() => setOpened(new Set(isAllOpen ? [] : later))}>
                {t(isAllOpen ? "hand-over.chapter.fold-all" : "hand-over.chapter.open-all", { n: later.length })}
              </button>
            )}
            <FoldedChapter
              chapter={chapter}
              open={opened.has(heading.text)}
              onOpen={(isOpen) => open(heading.text, isOpen)}
            >
              {drawn(chapter.blocks)}
            </FoldedChapter>
          </Fragment>
        );
      })}
    </article>
  );
}
