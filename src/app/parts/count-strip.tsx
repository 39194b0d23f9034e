/** How many of each mark, as filters, with one plain sentence. The numbers come from outside. */
import { GradeMark } from "./grade-mark.js";
import type { CountStripProps } from "./props-telling.js";

export function CountStrip({ label, counts, onChoose, sentence }: CountStripProps) {
  return (
    <div>
      <div class="counts n" role="group" aria-label={label}>
        {counts.map(({ mark, words, count, chosen }) => (
          <button
            key={mark}
            type="button"
            aria-pressed={chosen}
            aria-label={`${words} ${count}`}
            onClick={() => onChoose(mark, !chosen)}
          >
            <GradeMark mark={mark} size={22} />
            {count}
          </button>
        ))}
      </div>
      {sentence && <p class="counts-sentence small">{sentence}</p>}
    </div>
  );
}
