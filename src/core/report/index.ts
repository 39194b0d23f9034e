/** Door of the drawings: what screens and files may use. */
export * from "./handover/index.js";
export { linesDrawing } from "./lines.js";
export type { LineFigure, LineMark, LinesInput, LineTrace } from "./lines-terms.js";
export { MARK_HEIGHT, MARK_WIDTH, MARKS, type MarkKind, markDrawing } from "./marks.js";
export {
  knownIn,
  lengthOf,
  type NoLength,
  type PictureLength,
  type PictureSize,
  toldIn,
} from "./picture-length.js";
export { type DrawnMark, markedPicture, marksDrawing, spotsDrawing } from "./picture-marks.js";
export { type PlanDrawing, type PlanInput, planDrawing, smallCarDrawing } from "./plan-drawing.js";
export type { PlaceLook, PlanKind, PlanPlace, PlanSide } from "./plan-terms.js";
export type * from "./printer.js";
export { rangeDrawing } from "./range.js";
export type { RangeFigure, RangeInput } from "./range-terms.js";
export { scaleDrawing } from "./scale.js";
export type { ScaleBox, ScaleEdge, ScaleInput } from "./scale-terms.js";
export { signatureDrawing } from "./signature.js";
export { spanDrawing } from "./span.js";
export type { SpanDay, SpanInput, SpanMark, SpanRow, SpanStroke } from "./span-terms.js";
export { type TickLook, ticksDrawing } from "./ticks.js";
export type { Attrs, Drawing, Shape } from "./tree.js";
export { wearChart } from "./wear-chart.js";
export type { WearChartInput, WearEdge, WearStroke } from "./wear-terms.js";
