/** Reads a PDF back with a reader of other people's making (pdf.js): pages, text, title, language, faces. Knows nothing of ours. */
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

export interface ReadPdf {
  readonly pages: number;
  /** Text of each page, blanks as one. */
  readonly texts: readonly string[];
  readonly title: string | undefined;
  readonly language: string | undefined;
  /** Names of the faces used, and whether each lies in the file. */
  readonly faces: ReadonlyMap<string, boolean>;
  readonly pictures: number;
  /** Addresses anything in it leads to. */
  readonly links: readonly string[];
  /** Lines of its outline, each with the number of the page it leads to. */
  readonly outline: readonly (readonly [title: string, page: number])[];
}

const textOf = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);
const fieldOf = (value: unknown, name: string): unknown =>
  typeof value === "object" && value !== null && name in value ? Reflect.get(value, name) : undefined;

/** Any run of blanks, thin or wide, as one. */
export const plainText = (text: string): string => text.replace(/[\s\u2009\u202f\u00a0]+/g, " ").trim();

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  // It takes its bytes away with it.
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, isEvalSupported: false });
  const document = await task.promise;
  const { info } = await document.getMetadata();
  const texts: string[] = [];
  const faces = new Map<string, boolean>();
  const links: string[] = [];
  let pictures = 0;
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent({ disableNormalization: true });
    texts.push(plainText(items.map((item) => ("str" in item ? item.str : "")).join(" ")));
    const { fnArray, argsArray } = await page.getOperatorList();
    for (const [at, operator] of fnArray.entries()) {
      if (operator === OPS.paintImageXObject) pictures += 1;
      if (operator !== OPS.setFont) continue;
      const id: unknown = fieldOf(argsArray[at], "0");
      const face: unknown = page.commonObjs.get(String(id));
      faces.set(textOf(fieldOf(face, "name")) ?? "", fieldOf(face, "missingFile") !== true);
    }
    for (const note of await page.getAnnotations()) links.push(String(fieldOf(note, "url") ?? "inside"));
    page.cleanup();
  }
  const outline: (readonly [string, number])[] = [];
  for (const { title, dest } of (await document.getOutline()) ?? []) {
    const page: unknown = Array.isArray(dest) ? dest[0] : undefined;
    outline.push([
      title,
      typeof page === "object"
        ? (await document.getPageIndex(page as { readonly num: number; readonly gen: number })) + 1
        : Number.NaN,
    ]);
  }
  const read = {
    pages: document.numPages,
    texts,
    title: textOf(fieldOf(info, "Title")),
    language: textOf(fieldOf(info, "Language")),
    faces,
    pictures,
    links,
    outline,
  };
  await task.destroy();
  return read;
}
