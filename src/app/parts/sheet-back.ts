/**
 * The phone's back key closes the topmost sheet before it leaves the screen. Adds one history entry per open sheet,
 * at the same address; refuses to know addresses.
 */
import { useEffect, useRef } from "preact/hooks";

/** What of the browser's history is used, so that tests can stand in for it. */
export interface BackStack {
  readonly state: unknown;
  pushState(state: unknown, unused: string): void;
  back(): void;
}

const KEY = "leadlamp-sheet";
let opened = 0;

const marked = (state: unknown): unknown =>
  typeof state === "object" && state !== null && KEY in state ? (state as Record<string, unknown>)[KEY] : undefined;

/** Puts an entry for one open sheet; the returned function takes it away unless the person has moved on already. */
export function holdBack(stack: BackStack): { readonly id: number; readonly release: () => void } {
  opened += 1;
  const id = opened;
  const before = typeof stack.state === "object" && stack.state !== null ? stack.state : {};
  stack.pushState({ ...before, [KEY]: id }, "");
  return {
    id,
    release: () => {
      if (marked(stack.state) === id) stack.back();
    },
  };
}

/** Whether a step back has left the entry of this sheet (a later sheet's entry has a higher number). */
export function hasLeft(state: unknown, id: number): boolean {
  const now = marked(state);
  return typeof now !== "number" || now < id;
}

/** While `open`: back calls `onClose`. */
export function useBack(open: boolean, onClose: () => void): void {
  const close = useRef(onClose);
  close.current = onClose;
  useEffect(() => {
    if (!open) return;
    const held = holdBack(history);
    const onPop = (event: PopStateEvent): void => {
      if (hasLeft(event.state, held.id)) close.current();
    };
    addEventListener("popstate", onPop);
    return () => {
      removeEventListener("popstate", onPop);
      held.release();
    };
  }, [open]);
}
