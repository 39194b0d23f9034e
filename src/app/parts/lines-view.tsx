/** Lines over an axis to look at, with the axis in words below. What they say stands beside it as text, elsewhere. */
import { type LinesInput, linesDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import { useRoom } from "./use-room.js";

export interface LinesViewProps {
  readonly lines: LinesInput;
  readonly axis: string;
}

export function LinesView({ lines, axis }: LinesViewProps) {
  const { room, box } = useRoom();
  const drawing = linesDrawing(lines, box);
  return (
    <div class="lines" ref={room}>
      <DrawingView drawing={drawing} width={String(drawing.width)} height={String(drawing.height)} />
      <p class="small lines-axis" aria-hidden="true">
        {axis}
      </p>
    </div>
  );
}
