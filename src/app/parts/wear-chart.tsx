/** Readings of one part over the years as a drawing, with all of it in words for who can't see it. Refuses to reckon. */
import { type WearChartInput, wearChart } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import { useRoom } from "./use-room.js";

export interface WearChartProps {
  readonly chart: WearChartInput;
  /** Every reading, every new series, and when the limit is reached. */
  readonly label: string;
}

export function WearChart({ chart, label }: WearChartProps) {
  const { room, box } = useRoom();
  const drawing = wearChart(chart, box);
  return (
    <div class={chart.small ? "wear small" : "wear"} ref={room}>
      <DrawingView drawing={drawing} label={label} width={String(drawing.width)} height={String(drawing.height)} />
    </div>
  );
}
