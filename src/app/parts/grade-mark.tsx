/** One of the seven marks, in the colour of the text. Its word stands beside it or is its accessible name. */
import { markDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import type { GradeMarkProps } from "./props-frame.js";

export function GradeMark({ mark, size = 24, label }: GradeMarkProps) {
  const rem = (px: number): string => `${(px / 17).toFixed(3)}rem`;
  return (
    <DrawingView class="grade" drawing={markDrawing(mark)} label={label} width={rem(size * 0.8)} height={rem(size)} />
  );
}
