/** A band with number, mark or small drawing in the gutter, words, figure right; pressed as a whole. */
import { MaybePressable } from "./pressable.js";
import type { ListRowProps } from "./props-frame.js";

export function ListRow({ lead, gutter = "narrow", title, second, aside, folded, here, href, onPress }: ListRowProps) {
  const look = `row${gutter === "wide" ? " wide" : ""}${lead === undefined ? " plain" : ""}${folded ? " folded" : ""}${here ? " here" : ""}`;
  return (
    <MaybePressable class={look} href={href} onPress={onPress} current={here}>
      {lead !== undefined && <span class="lead small n">{lead}</span>}
      <span>
        <span class="row-title">{title}</span>
        {second && <span class="small n">{second}</span>}
      </span>
      <span class="aside small n">{aside}</span>
    </MaybePressable>
  );
}
