/** The room an element has, watched, so that a drawing's text keeps its size. Refuses to draw. */
import type { RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { ScaleBox } from "../../core/report/index.js";

/** Small text as a share of the page's own size, as in tokens.css. */
const SMALL = 0.8824;

/** Room of the element in px and the size its small text has there. */
function boxOf(element: HTMLElement): ScaleBox {
  const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return { width: Math.round(element.clientWidth), text: rem * SMALL };
}

/** Give `room` to the element; `box` follows its width. */
export function useRoom(): { readonly room: RefObject<HTMLDivElement | null>; readonly box: ScaleBox } {
  const room = useRef<HTMLDivElement>(null);
  const [box, setBox] = useState<ScaleBox>({ width: 390, text: 15 });
  useEffect(() => {
    const element = room.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => setBox(boxOf(element)));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { room, box };
}
