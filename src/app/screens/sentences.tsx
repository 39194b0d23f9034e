/** Sentences under a heading; nothing where there are none. */
import { Band } from "../parts/pool.js";

export function Sentences({ heading, lines }: { readonly heading: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <Band heading={heading}>
      {lines.map((line) => (
        <p key={line} class="remark">
          {line}
        </p>
      ))}
    </Band>
  );
}
