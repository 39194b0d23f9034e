/**
 * The ruler with the lamp over the reading, and what is said about it. Measures its own room so that text keeps its
 * size; refuses to judge.
 */
import { scaleDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import { Pressable } from "./pressable.js";
import type { ReadingScaleProps } from "./props-looking.js";
import { useRoom } from "./use-room.js";

export function ReadingScale({ scale, label, verdict, source }: ReadingScaleProps) {
  const { room, box } = useRoom();
  const drawing = scaleDrawing(scale, box);
  return (
    <div class="scale" ref={room}>
      <DrawingView drawing={drawing} label={label} width={String(drawing.width)} height={String(drawing.height)} />
      <div class="verdict" role="status">
        {verdict && (
          <>
            <strong>
              <span>{verdict.title}</span>
              {verdict.aside && <span class="n">{verdict.aside}</span>}
            </strong>
            {verdict.says && <p class="n">{verdict.says}</p>}
          </>
        )}
      </div>
      {source && (
        <Pressable class="source" href={source.href} onPress={source.onPress}>
          {source.words}
        </Pressable>
      )}
    </div>
  );
}
