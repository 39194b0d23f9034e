/**
 * Arrow keys inside a group of radios of which one is in the tab order: they move the focus and choose, as radios do.
 * Not for what is kept at once by a press: that is no radio.
 */
import { useEffect, useRef } from "preact/hooks";

const STEP: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** The element among `count` the arrow leads to from `index`, going round; `null` for any other key. */
export function roved(key: string, index: number, count: number): number | null {
  if (key === "Home") return 0;
  if (key === "End") return count - 1;
  const step = STEP[key];
  return step === undefined || count === 0 ? null : (index + step + count) % count;
}

/** For the group element; its `[role=radio]` children are roved and chosen. */
export function useRoving<E extends HTMLElement>() {
  const group = useRef<E>(null);
  useEffect(() => {
    const element = group.current;
    if (element === null) return;
    const onKey = (event: KeyboardEvent): void => {
      const radios: readonly Element[] = [...element.querySelectorAll("[role=radio]")];
      const index = document.activeElement === null ? -1 : radios.indexOf(document.activeElement);
      const next = index < 0 ? null : roved(event.key, index, radios.length);
      if (next === null) return;
      event.preventDefault();
      const target = radios[next];
      if (!(target instanceof HTMLElement)) return;
      target.focus();
      target.click();
    };
    element.addEventListener("keydown", onKey);
    return () => element.removeEventListener("keydown", onKey);
  }, []);
  return group;
}

/** In the tab order: the chosen one, or the first when none is. */
export const rovingTab = (chosen: boolean, index: number, anyChosen: boolean): 0 | -1 =>
  chosen || (!anyChosen && index === 0) ? 0 : -1;
