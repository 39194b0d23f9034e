/** A part of a long list that opens: its name and how many are in it. */
import type { FoldProps } from "./props-frame.js";

export function Fold({ title, count, open, children }: FoldProps) {
  return (
    <details class="fold" open={open}>
      <summary>
        {title}
        <span class="aside small n">{count}</span>
      </summary>
      {children}
    </details>
  );
}
