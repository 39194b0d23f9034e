/**
 * The ruler with the lamp over the reading, and what is said about it. Measures its own room so that text keeps its
 * size; refuses to judge.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { type ScaleBox, scaleDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import { Pressable } from "./pressable.js";
import type { ReadingScaleProps } from "./props-looking.js";

/** Small text as a share of the page's own size, as in tokens.css. */
const SMALL = 0.8824;

/** Room of the element in px and the size its small text has there. */
function boxOf(element: HTMLElement): ScaleBox {
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return { width: Math.round(element.clientWidth), text: rem * SMALL };
}

export function ReadingScale({ scale, label, verdict, source }: ReadingScaleProps) {
  const room = useRef<HTMLDivElement>(null);
  const [box, setBox] = useState<ScaleBox>({ width: 390, text: 15 });
  useEffect(() => {
    const element = room.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => setBox(boxOf(element)));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
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
