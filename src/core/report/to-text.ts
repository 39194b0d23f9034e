/** Writes a drawing as SVG text for files and print. Refuses to know styles: the page around it has them. */
import { type Drawing, n, type Shape } from "./tree.js";

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

function shapeText(part: Shape | string): string {
  if (typeof part === "string") return escaped(part);
  const attrs = Object.entries(part.attrs)
    .map(([name, value]) => ` ${name}="${escaped(typeof value === "number" ? n(value) : value)}"`)
    .join("");
  const inner = part.children.map(shapeText).join("");
  return inner === "" ? `<${part.tag}${attrs}/>` : `<${part.tag}${attrs}>${inner}</${part.tag}>`;
}

/** How the drawing is named: with a label it is an image, without one it is hidden because words stand beside it. */
export interface SvgOptions {
  readonly label?: string | undefined;
  readonly className?: string | undefined;
}

/** The drawing as one `<svg>` element. Text and attribute values are escaped. */
export function drawingText(drawing: Drawing, options: SvgOptions = {}): string {
  const name =
    options.label === undefined ? ' aria-hidden="true"' : ` role="img" aria-label="${escaped(options.label)}"`;
  const look = options.className === undefined ? "" : ` class="${escaped(options.className)}"`;
  const box = `viewBox="0 0 ${n(drawing.width)} ${n(drawing.height)}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${box}${look}${name}>${drawing.shapes.map(shapeText).join("")}</svg>`;
}
