/**
 * A drawing as data: nested shapes with SVG names. Knows nothing of screens, colours or files; classes say what a
 * line means and the style sheet says how that looks.
 */

/** Attribute values; numbers are user units of the drawing's own view box. */
export type Attrs = Readonly<Record<string, string | number>>;

/** One SVG element. Children are elements or plain text (escaped when written out). */
export interface Shape {
  readonly tag: string;
  readonly attrs: Attrs;
  readonly children: readonly (Shape | string)[];
}

/** A whole drawing: view box in user units and what lies in it, back to front. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** A shape without children unless given. */
export function shape(tag: string, attrs: Attrs, children: readonly (Shape | string)[] = []): Shape {
  return { tag, attrs, children };
}

/** A number for a path or attribute: at most two decimals, never `-0`, no trailing zeros. */
export function n(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}
