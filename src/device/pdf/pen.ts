/**
 * What the sheet is drawn with: text in the two printing faces, lines and areas, pictures, in points from the upper left
 * corner of a page. The one file that knows jspdf; refuses to know what is drawn.
 */
import { jsPDF } from "jspdf";
import { binary } from "./binary.js";
import { printable } from "./signs.js";
import type { PathStep } from "./svg-path.js";

const MM = 72 / 25.4;
/** A4 upright; margins of 15 mm. */
export const PAGE = { width: 210 * MM, height: 297 * MM, margin: 15 * MM } as const;

const REGULAR = "LeadlampSheet-Regular";
const BOLD = "LeadlampSheet-Bold";
export interface Faces {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export interface TextLook {
  /** Points. */
  readonly size: number;
  readonly bold?: boolean | undefined;
  readonly colour?: string | undefined;
}

export interface LineLook {
  readonly colour: string;
  readonly wide: number;
  readonly dash?: readonly number[] | undefined;
}

/** What an area or line is painted with. */
export interface Paint {
  readonly fill?: string | undefined;
  readonly line?: LineLook | undefined;
  /** Overlapping parts of the outline are holes. */
  readonly evenOdd?: boolean | undefined;
}

export interface Pen {
  /** One line, its base line at `y`; `end`: `x` is where it ends, `middle`: its middle. */
  text(text: string, x: number, y: number, look: TextLook, anchor?: "start" | "middle" | "end"): void;
  width(text: string, look: TextLook): number;
  path(steps: readonly PathStep[], paint: Paint): void;
  rect(x: number, y: number, width: number, height: number, paint: Paint): void;
  /** A JPEG or PNG, laid into the box as it is. */
  picture(name: string, type: string, bytes: Uint8Array, x: number, y: number, width: number, height: number): void;
  newPage(): void;
  /** A line of the file's outline, leading to the page that is drawn now. */
  outline(title: string): void;
  /** Signs no face has, once each. */
  readonly missing: ReadonlySet<string>;
  bytes(): Uint8Array<ArrayBuffer>;
}

export interface PenNeeds {
  readonly faces: Faces;
  readonly title: string;
  readonly subject: string;
  readonly lang: string;
  readonly madeAt: string;
}

/** Whether a face has a sign, as its own table says. */
function signsOf(doc: jsPDF): (code: number) => boolean {
  const metadata: unknown = doc.getFont().metadata;
  const codes = (
    metadata as { readonly cmap: { readonly unicode: { readonly codeMap: Readonly<Record<number, number>> } } }
  ).cmap.unicode.codeMap;
  return (code) => (codes[code] ?? 0) !== 0;
}

export function startPen({ faces, title, subject, lang, madeAt }: PenNeeds): Pen {
  const doc = new jsPDF({ unit: "pt", format: "a4", compress: true, putOnlyUsedFonts: true });
  for (const [name, bytes] of [
    [REGULAR, faces.regular],
    [BOLD, faces.bold],
  ] as const) {
    doc.addFileToVFS(`${name}.ttf`, binary(bytes));
    doc.addFont(`${name}.ttf`, name, "normal", undefined, "Identity-H");
  }
  doc.setFont(REGULAR);
  const has = signsOf(doc);
  doc.setDocumentProperties({ title, subject, creator: "Leadlamp" });
  // jspdf's own list of languages is short, and the language stands in the file as given.
  doc.setLanguage(lang as "en");
  doc.viewerPreferences({ DisplayDocTitle: true });
  const made = new Date(madeAt);
  if (!Number.isNaN(made.getTime())) doc.setCreationDate(made);

  const missing = new Set<string>();
  const widths = new Map<string, number>();
  const printed = (text: string): string => {
    const { text: able, missing: lacks } = printable(text, has);
    for (const sign of lacks) missing.add(sign);
    return able;
  };
  const setFace = ({ bold, size }: TextLook): void => {
    doc.setFont(bold ? BOLD : REGULAR);
    doc.setFontSize(size);
  };
  const width = (text: string, look: TextLook): number => {
    const key = `${look.bold ? "b" : "r"}${text}`;
    const known = widths.get(key);
    if (known !== undefined) return known * look.size;
    setFace({ ...look, size: 100 });
    const one = doc.getTextWidth(printed(text)) / 100;
    widths.set(key, one);
    return one * look.size;
  };
  const painted = ({ fill, line, evenOdd }: Paint): void => {
    if (fill !== undefined && line) {
      if (evenOdd) doc.fillStrokeEvenOdd();
      else doc.fillStroke();
    } else if (fill !== undefined) {
      if (evenOdd) doc.fillEvenOdd();
      else doc.fill();
    } else doc.stroke();
  };
  const set = ({ fill, line }: Paint): void => {
    if (fill !== undefined) doc.setFillColor(fill);
    if (!line) return;
    doc.setDrawColor(line.colour);
    doc.setLineWidth(line.wide);
    doc.setLineDashPattern([...(line.dash ?? [])], 0);
    doc.setLineCap("round");
    doc.setLineJoin("round");
  };
  const isSeen = ({ fill, line }: Paint): boolean => fill !== undefined || line !== undefined;

  return {
    width,
    missing,
    text(text, x, y, look, anchor = "start") {
      const able = printed(text);
      if (able.trim() === "") return;
      const left = anchor === "start" ? 0 : width(text, look) / (anchor === "middle" ? 2 : 1);
      setFace(look);
      doc.setTextColor(look.colour ?? INK);
      doc.text(able, x - left, y);
    },
    path(steps, paint) {
      if (!isSeen(paint) || steps.length === 0) return;
      set(paint);
      doc.path(steps.map(({ op, c }) => ({ op, c: [...c] })));
      painted(paint);
    },
    rect(x, y, wide, high, paint) {
      if (!isSeen(paint)) return;
      set(paint);
      doc.rect(x, y, wide, high, null);
      painted(paint);
    },
    picture(name, type, bytes, x, y, wide, high) {
      doc.addImage(bytes, type === "image/png" ? "PNG" : "JPEG", x, y, wide, high, name, "NONE");
    },
    newPage: () => void doc.addPage(),
    outline: (title) => void doc.outline.add(null, title, { pageNumber: doc.getNumberOfPages() }),
    bytes: () => new Uint8Array(doc.output("arraybuffer")),
  };
}

/** Ink on white: nothing on the sheet is lighter than it must be to be told apart from ink. */
export const INK = "#111111";
export const INK2 = "#3a3f3c";
export const HAIR = "#999999";
