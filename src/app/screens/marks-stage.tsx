/**
 * The picture large, for setting spots on it: by a press, by dragging, or with the arrow keys and Enter. Made nearer by
 * buttons. Keeps nothing.
 */
import { useEffect, useRef } from "preact/hooks";
import type { Bodies, Spot } from "../../core/record/index.js";
import { spotsDrawing } from "../../core/report/index.js";
import { DrawingView } from "../parts/drawing-view.js";
import { type Marking, moveBy, pressAt } from "../state/marking.js";
import type { MarksView } from "../state/marks-view.js";
import { t } from "../texts/marks.js";
import { MarkedPicture } from "./marked-picture.js";

/** A press that moves less than this, in CSS pixels, is no drag. */
const STILL = 12;
/** CSS pixels an arrow key moves the spot by; with Shift one. */
const STEP = 10;
const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

interface StageProps {
  readonly picture: Bodies["picture"];
  readonly alt: string;
  readonly view: MarksView;
  readonly label: string;
  readonly nearer: number;
  readonly marking: Marking | undefined;
  readonly onMarking: (marking: Marking) => void;
  readonly onEnter: () => void;
  /** Told how wide the picture is shown, in CSS pixels. */
  readonly onWide: (wide: number) => void;
}

export function MarksStage({ picture, alt, view, label, nearer, marking, onMarking, onEnter, onWide }: StageProps) {
  const stage = useRef<HTMLDivElement>(null);
  const inner = useRef<HTMLButtonElement>(null);
  const pressed = useRef<{ readonly x: number; readonly y: number; readonly marking: Marking } | undefined>(undefined);
  const [x, y] = marking?.here ?? [0.5, 0.5];
  useEffect(() => {
    inner.current?.style.setProperty("--nearer", String(nearer));
    const [box, whole] = [stage.current, inner.current];
    if (!box || !whole) return;
    onWide(whole.clientWidth);
    box.scrollTo(x * whole.clientWidth - box.clientWidth / 2, y * whole.clientHeight - box.clientHeight / 2);
  }, [nearer]);
  const spotOf = (event: PointerEvent): Spot | undefined => {
    const box = inner.current?.getBoundingClientRect();
    return box && [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height];
  };
  const down = (event: PointerEvent): void => {
    const spot = spotOf(event);
    if (!marking || !spot || event.button !== 0) return;
    const next = pressAt(marking, spot);
    pressed.current = { x: event.clientX, y: event.clientY, marking: next };
    onMarking(next);
  };
  const up = (event: PointerEvent): void => {
    const [from, spot] = [pressed.current, spotOf(event)];
    pressed.current = undefined;
    const isDrag = from !== undefined && Math.hypot(event.clientX - from.x, event.clientY - from.y) > STILL;
    if (isDrag && spot) onMarking(pressAt(from.marking, spot));
  };
  const key = (event: KeyboardEvent): void => {
    const step = STEPS[event.key];
    const box = inner.current;
    if (!marking || !box) return;
    if (event.key === "Enter") onEnter();
    else if (!step) return;
    else {
      const by = event.shiftKey ? 1 : STEP;
      onMarking(moveBy(marking, (step[0] * by) / box.clientWidth, (step[1] * by) / box.clientHeight));
    }
    event.preventDefault();
  };
  const { width, height } = picture;
  const isDrawn = marking !== undefined && nearer === 1;
  return (
    <div ref={stage} class={isDrawn ? "stage drawn" : "stage"}>
      <button
        ref={inner}
        type="button"
        class="stage-inner"
        aria-label={t("marks.picture")}
        onKeyDown={key}
        onPointerDown={down}
        onPointerUp={up}
      >
        <MarkedPicture picture={picture} alt={alt} marks={view.drawn} label={label} nearer={nearer}>
          {marking && <DrawingView drawing={spotsDrawing({ width, height }, marking.set, marking.here, nearer)} />}
        </MarkedPicture>
      </button>
    </div>
  );
}
