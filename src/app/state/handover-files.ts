/**
 * The files of a hand-over, made before the tap that hands them on: pages, page file, tables, days. Fetched when the
 * first is wanted. Knows no share sheet; the printer and the store are handed in.
 */
import type { FileContent } from "../../core/record/files.js";
import type { Store } from "../../core/record/index.js";
import {
  type Block,
  MARKS,
  type PictureSource,
  type Progress,
  readingsCsv,
  type SheetPrinter,
  toIcs,
  toText,
  unseenCsv,
  workCsv,
} from "../../core/report/index.js";
import { t } from "../texts/hand-over.js";
import type { MadeHandover } from "./handover-made.js";

export const FILE_KINDS = ["pdf", "html", "readings", "work", "unseen", "dates"] as const;
export type FileKind = (typeof FILE_KINDS)[number];

export interface FileNeeds {
  readonly store: Pick<Store, "blob">;
  readonly printer: () => Promise<SheetPrinter>;
  /** The app's own typeface for the page file; nothing where it does not come. */
  readonly face: () => Promise<Uint8Array | undefined>;
}

/** What was made, and what it could not hold. */
export interface MadeFile {
  readonly content: FileContent;
  readonly pages?: number;
  readonly remarks: readonly string[];
}

export interface Making {
  /** Undefined when it was stopped; rejects with what broke it. */
  readonly done: Promise<MadeFile | undefined>;
  stop(): void;
}

/** Longest side of a picture in the page file: a crack is still seen, sixty still fit into a message. Own choice. */
const PAGE_PICTURE = 1280;

/** Letters any file system takes. */
const plain = (text: string): string =>
  text
    .normalize("NFC")
    .replace(/[^\p{L}\p{N} .,()-]+/gu, "-")
    .trim();

/** `Tarn 1992, hand-over, 2026-11-19.pdf`. */
export function fileName({ model }: MadeHandover, what: string, end: string): string {
  return `${plain([model.car.name, what, model.visit.at.slice(0, 10)].filter(Boolean).join(", "))}.${end}`;
}

const textFile = (name: string, type: string, text: string): MadeFile => ({
  content: { name, type, bytes: new TextEncoder().encode(text) },
  remarks: [],
});

export const asText = ({ pages, words }: MadeHandover): string => toText(pages, words);

/** Pictures of the pages, each once. */
export function picturesIn(blocks: readonly Block[]): readonly string[] {
  const all = blocks.flatMap((block) =>
    block.is === "picture"
      ? [block.picture.hash]
      : block.is === "finding"
        ? block.finding.pictures.map(({ hash }) => hash)
        : [],
  );
  return [...new Set(all)];
}

const sourceOf =
  ({ store }: FileNeeds): PictureSource =>
  async (hash) => {
    const kept = await store.blob(hash);
    // A copy: its bytes are given away to the worker.
    return kept.ok && kept.value ? { type: kept.value.type, bytes: new Uint8Array(kept.value.bytes) } : undefined;
  };

const TABLES = { readings: readingsCsv, work: workCsv, unseen: unseenCsv };
const at = (made: Promise<MadeFile>): Making => ({ done: made, stop: () => undefined });

export async function startMaking(
  kind: FileKind,
  made: MadeHandover,
  needs: FileNeeds,
  onProgress: Progress,
): Promise<Making> {
  const { model, words } = made;
  if (kind === "pdf" || kind === "html") {
    const printer = await needs.printer();
    return kind === "pdf" ? printed(made, printer, needs, onProgress) : paged(made, printer, needs, onProgress);
  }
  if (kind === "dates") {
    const name = fileName(made, t("hand-over.name.dates"), "ics");
    return at(Promise.resolve(textFile(name, "text/calendar", toIcs(model, words))));
  }
  const name = fileName(made, t(`hand-over.name.${kind}`), "csv");
  return at(Promise.resolve(textFile(name, "text/csv", TABLES[kind](model, words, { bom: true }))));
}

function printed(made: MadeHandover, printer: SheetPrinter, needs: FileNeeds, onProgress: Progress): Making {
  const { pages, words, model } = made;
  const printing = printer.print(
    {
      pages,
      pageOf: words.texts.page,
      madeAt: model.madeAt,
      noPicture: t("hand-over.picture.gone"),
      marks: Object.fromEntries(MARKS.map((mark) => [mark, words.texts[`mark.${mark}`]])),
      noSigns: t("hand-over.signs", { signs: "{signs}" }),
    },
    sourceOf(needs),
    onProgress,
  );
  const done = printing.done.then((sheet): MadeFile | undefined => {
    if (!sheet) return undefined;
    const [signs, pictures] = [sheet.missingSigns.length, sheet.missingPictures.length];
    return {
      content: {
        name: fileName(made, t(`hand-over.name.${model.for}`), "pdf"),
        type: "application/pdf",
        bytes: sheet.bytes,
      },
      pages: sheet.pages,
      remarks: [
        ...(signs > 0 ? [t("hand-over.no-signs", { n: signs })] : []),
        ...(pictures > 0 ? [t("hand-over.no-pictures", { n: pictures })] : []),
      ],
    };
  });
  return { done, stop: printing.stop };
}

function paged(made: MadeHandover, printer: SheetPrinter, needs: FileNeeds, onProgress: Progress): Making {
  const { pages, words, model } = made;
  const hashes = picturesIn(pages.blocks);
  const name = fileName(made, t(`hand-over.name.${model.for}`), "html");
  let isStopped = false;
  let stop = (): void => undefined;
  const write = async (): Promise<MadeFile | undefined> => {
    const font = await needs.face();
    if (isStopped) return undefined;
    const wish = { pages, words, hashes, most: PAGE_PICTURE, ...(font ? { font } : {}) };
    const writing = printer.page(wish, sourceOf(needs), onProgress);
    stop = writing.stop;
    const page = await writing.done;
    if (!page) return undefined;
    const remarks = page.missing > 0 ? [t("hand-over.no-pictures", { n: page.missing })] : [];
    return { content: { name, type: "text/html", bytes: page.bytes }, remarks };
  };
  return {
    done: write(),
    stop: () => {
      isStopped = true;
      stop();
    },
  };
}

/** `230 kB`, `4.1 MB`. */
export function sizeText(bytes: number): string {
  const kb = bytes / 1000;
  return kb < 1000
    ? t("hand-over.kb", { n: Math.max(1, Math.round(kb)) })
    : t("hand-over.mb", { n: (kb / 1000).toFixed(1) });
}
