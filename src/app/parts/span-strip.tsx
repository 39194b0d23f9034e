/** Dates as a strip to look at and a list to hear; the list is shown where text is too large for the strip. */
import { spanDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import type { SpanStripProps } from "./props-planning.js";
import { useRoom } from "./use-room.js";

export function SpanStrip({ span, label, lines, signs }: SpanStripProps) {
  const { room, box } = useRoom();
  const drawing = spanDrawing(span, box);
  return (
    <div class="span" ref={room}>
      <DrawingView drawing={drawing} width={String(drawing.width)} height={String(drawing.height)} />
      {signs && <p class="small span-signs">{signs}</p>}
      <ul class="span-list n" aria-label={label}>
        {lines.map((line) => (
          <li key={line.id}>{line.words}</li>
        ))}
      </ul>
    </div>
  );
}
