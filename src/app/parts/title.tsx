/** Title of a screen or station, with a count and its graduations at the right. */
import { ticksDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import type { TicksProps, TitleProps } from "./props-frame.js";

export function Ticks({ ticks, label }: TicksProps) {
  const drawing = ticksDrawing(ticks);
  const rem = (units: number): string => `${(units / 17).toFixed(3)}rem`;
  return (
    <DrawingView
      drawing={drawing}
      label={label}
      class="ticks"
      width={rem(drawing.width)}
      height={rem(drawing.height)}
    />
  );
}

export function Title({ title, second, figure, ticks, id, size = "screen" }: TitleProps) {
  return (
    <div class={size === "point" ? "title point" : "title"}>
      <div>
        <h1 id={id} tabIndex={-1}>
          {title}
        </h1>
        {second && <p class="small">{second}</p>}
      </div>
      {figure && (
        <div class="count n">
          <b>{figure.count}</b>
          <span class="small">{figure.rest}</span>
          {ticks && <Ticks ticks={ticks} />}
        </div>
      )}
    </div>
  );
}
