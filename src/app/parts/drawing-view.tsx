/** A drawing of core/report as SVG elements. Knows how to name or hide it; refuses to know what it shows. */
import { h, type VNode } from "preact";
import type { Drawing, Shape } from "../../core/report/index.js";

function element(part: Shape | string, key: number): VNode | string {
  if (typeof part === "string") return part;
  return h(part.tag, { ...part.attrs, key }, ...part.children.map(element));
}

export interface DrawingViewProps {
  readonly drawing: Drawing;
  /** Accessible name; absent: hidden from screen readers. */
  readonly label?: string | undefined;
  readonly class?: string;
  /** CSS lengths as SVG attributes; absent: the style sheet says. */
  readonly width?: string;
  readonly height?: string;
}

export function DrawingView({ drawing, label, class: look, width, height }: DrawingViewProps) {
  const size = { ...(width === undefined ? {} : { width }), ...(height === undefined ? {} : { height }) };
  const shapes = drawing.shapes.map(element);
  const viewBox = `0 0 ${drawing.width} ${drawing.height}`;
  return label === undefined ? (
    <svg viewBox={viewBox} class={look} {...size} aria-hidden="true">
      {shapes}
    </svg>
  ) : (
    <svg viewBox={viewBox} class={look} {...size} role="img" aria-label={label}>
      {shapes}
    </svg>
  );
}
