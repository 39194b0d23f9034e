/** One finding: a row, or open with its because below. The mark's word heads the second line. */
import { GradeMark } from "./grade-mark.js";
import { ListRow } from "./list-row.js";
import { MaybePressable } from "./pressable.js";
import type { FindingRowProps } from "./props-telling.js";

export function FindingRow(props: FindingRowProps) {
  const { mark, markWord, title, second, aside, open, href, onPress, children } = props;
  const line = second === undefined ? `${markWord}.` : `${markWord}. ${second}`;
  if (!open) {
    return (
      <ListRow
        lead={<GradeMark mark={mark} />}
        title={title}
        second={line}
        aside={aside}
        href={href}
        onPress={onPress}
      />
    );
  }
  return (
    <section class="finding-open">
      <MaybePressable class="finding-head" href={href} onPress={onPress}>
        <GradeMark mark={mark} size={34} />
        <div>
          <h2>{title}</h2>
          <p class="small n">{line}</p>
          {aside && <p class="small n">{aside}</p>}
        </div>
      </MaybePressable>
      {children}
    </section>
  );
}
