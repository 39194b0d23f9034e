/** The ruler of an estimate with the lamp at the likely figure, and what is said about it. Refuses to reckon. */
import { rangeDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import type { RangeScaleProps } from "./props-planning.js";
import { useRoom } from "./use-room.js";

export function RangeScale({ range, label, verdict }: RangeScaleProps) {
  const { room, box } = useRoom();
  const drawing = rangeDrawing(range, box);
  return (
    <div class="range" ref={room}>
      <DrawingView drawing={drawing} label={label} width={String(drawing.width)} height={String(drawing.height)} />
      <div class="range-says n" role="status">
        {verdict && (
          <>
            <strong>
              <span>{verdict.title}</span>
              {verdict.aside && <span>{verdict.aside}</span>}
            </strong>
            {verdict.says && <p class="small">{verdict.says}</p>}
          </>
        )}
      </div>
    </div>
  );
}
