/** A kept picture with its marks over it, never in it. Refuses to change either. */
import type { ComponentChildren } from "preact";
import type { Bodies } from "../../core/record/index.js";
import { type DrawnMark, marksDrawing } from "../../core/report/index.js";
import { DrawingView } from "../parts/drawing-view.js";
import { useKeptBytes } from "./kept-picture.js";

interface MarkedPictureProps {
  readonly picture: Bodies["picture"];
  readonly alt: string;
  readonly marks: readonly DrawnMark[];
  /** The marks in words. */
  readonly label?: string | undefined;
  /** How many times larger it is looked at: lines stay as thin as they were. */
  readonly nearer?: number;
  readonly children?: ComponentChildren;
}

export function MarkedPicture({ picture, alt, marks, label, nearer = 1, children }: MarkedPictureProps) {
  const { src, drawn } = useKeptBytes(picture.unreadable ? undefined : picture.blob);
  const { width, height } = picture;
  return (
    <span class="marked">
      {src !== undefined && <img src={src} alt={alt} width={width} height={height} onLoad={drawn} draggable={false} />}
      {marks.length > 0 && <DrawingView drawing={marksDrawing({ width, height }, marks, nearer)} label={label} />}
      {children}
    </span>
  );
}
