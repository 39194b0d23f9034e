/**
 * The plan of the car as way-finder: press a place to go there. Fingers press the drawing (the nearest place
 * answers); keyboard and screen readers have a button over each place; very large text gets the list instead.
 */
import { useEffect, useMemo, useRef } from "preact/hooks";
import { planDrawing, smallCarDrawing } from "../../core/report/index.js";
import { DrawingView } from "./drawing-view.js";
import { ListRow } from "./list-row.js";
import type { SmallCarProps } from "./props-frame.js";
import type { CarPlanProps } from "./props-looking.js";

/** How far from a place a finger may land, CSS px. */
const REACH = 44;

interface Dot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** The place nearest to a point, within reach; all in the same unit. */
export function nearestPlace(spots: readonly Dot[], x: number, y: number, reach: number): string | null {
  let best: { readonly id: string; readonly off: number } | null = null;
  for (const spot of spots) {
    const off = Math.hypot(spot.x - x, spot.y - y);
    if (off <= reach && (best === null || off < best.off)) best = { id: spot.id, off };
  }
  return best?.id ?? null;
}

/** Drawn anew only when something on it changed: most replies leave the plan as it is. */
export function CarPlan({ onPlace, ...shown }: CarPlanProps) {
  const go = useRef(onPlace);
  go.current = onPlace;
  const goTo = useMemo(() => onPlace && ((place: string) => go.current?.(place)), [onPlace === undefined]);
  return useMemo(() => <DrawnPlan {...shown} onPlace={goTo} />, [JSON.stringify(shown), goTo]);
}

function DrawnPlan({ plan, side, places, label, front, listWords, onPlace, rest, cone = true }: CarPlanProps) {
  const { drawing, spots } = planDrawing({ plan, side, places, rest, cone });
  const box = useRef<HTMLDivElement>(null);
  const press = useRef<(event: MouseEvent) => void>(() => undefined);
  press.current = (event) => {
    const rect = box.current?.getBoundingClientRect();
    if (rect === undefined || rect.width === 0) return;
    const scale = drawing.width / rect.width;
    const found = nearestPlace(
      spots,
      (event.clientX - rect.left) * scale,
      (event.clientY - rect.top) * scale,
      REACH * scale,
    );
    if (found !== null) onPlace?.(found);
  };
  useEffect(() => {
    const element = box.current;
    const onPress = (event: MouseEvent): void => {
      // A press by keyboard or screen reader lands on its own button.
      if (!(event.target instanceof Element && event.target.closest("button"))) press.current(event);
    };
    element?.addEventListener("click", onPress);
    return () => element?.removeEventListener("click", onPress);
  }, []);
  const at = new Map(spots.map((spot) => [spot.id, spot]));
  const put = (element: HTMLElement | null, id: string): void => {
    const spot = at.get(id);
    element?.style.setProperty("--x", `${((spot?.x ?? 0) / drawing.width) * 100}%`);
    element?.style.setProperty("--y", `${((spot?.y ?? 0) / drawing.height) * 100}%`);
  };
  return (
    <>
      <div class="plan" ref={box}>
        <DrawingView drawing={drawing} label={label} class="car" />
        {front && (
          <span class={`nose ${side}`} aria-hidden="true">
            {front}
          </span>
        )}
        {onPlace && (
          <ul aria-label={listWords}>
            {places.map((place) => (
              <li key={place.id}>
                <button
                  class="place"
                  type="button"
                  aria-current={place.look === "here" ? "location" : undefined}
                  ref={(element) => put(element, place.id)}
                  onClick={() => onPlace(place.id)}
                >
                  <span class="spoken">{`${place.words}, ${place.says}`}</span>
                </button>
              </li>
            ))}
          </ul>
        )}
      </div>
      {onPlace && (
        <details class="place-fold">
          <summary>{listWords}</summary>
          <ul>
            {places.map((place) => (
              <li key={place.id}>
                <ListRow
                  title={place.words}
                  second={place.says}
                  here={place.look === "here"}
                  onPress={() => onPlace(place.id)}
                />
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

export function SmallCar({ looked, label }: SmallCarProps) {
  return <DrawingView drawing={smallCarDrawing(looked)} label={label} class="car little" />;
}
