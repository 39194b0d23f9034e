/**
 * The phone's back key closes the topmost sheet before it leaves the screen. Adds one history entry per open sheet,
 * at the same address; knows no addresses beyond whether they changed.
 */
import { useEffect, useRef } from "preact/hooks";

/** What of the browser is used, so that tests can stand in for it. */
export interface BackStack {
  readonly state: unknown;
  /** The address shown. */
  here(): string;
  pushState(state: unknown): void;
  replaceState(state: unknown): void;
  back(): void;
}

const KEY = "leadlamp-sheet";
let opened = 0;
const held = new Set<number>();

const fields = (state: unknown): Readonly<Record<string, unknown>> =>
  typeof state === "object" && state !== null ? { ...state } : {};
const marked = (state: unknown): unknown => fields(state)[KEY];

/**
 * Puts an entry for one open sheet. `release` takes it away again; where the person has moved on to another address
 * meanwhile, nothing of that is touched.
 */
export function holdBack(stack: BackStack): { readonly id: number; readonly release: () => void } {
  opened += 1;
  const id = opened;
  const from = stack.here();
  held.add(id);
  stack.pushState({ ...fields(stack.state), [KEY]: id });
  return {
    id,
    release: () => {
      held.delete(id);
      if (marked(stack.state) !== id) return;
      if (stack.here() === from) stack.back();
      else {
        const { [KEY]: _mark, ...rest } = fields(stack.state);
        stack.replaceState(rest);
      }
    },
  };
}

/** Whether a step back has left the entry of this sheet (a later sheet's entry has a higher number). */
export function hasLeft(state: unknown, id: number): boolean {
  const now = marked(state);
  return typeof now !== "number" || now < id;
}

/** An entry whose sheet is long closed (left by a link inside it) shows nothing of its own: back goes past it. */
export function passClosed(stack: BackStack): void {
  const now = marked(stack.state);
  if (typeof now === "number" && !held.has(now)) stack.back();
}

const browser: BackStack = {
  get state() {
    return history.state;
  },
  here: () => location.href,
  pushState: (state) => history.pushState(state, ""),
  replaceState: (state) => history.replaceState(state, ""),
  back: () => history.back(),
};
let isWatching = false;

/** While `open`: back calls `onClose`. */
export function useBack(open: boolean, onClose: () => void): void {
  const close = useRef(onClose);
  close.current = onClose;
  useEffect(() => {
    if (!open) return;
    if (!isWatching) {
      isWatching = true;
      addEventListener("popstate", () => passClosed(browser));
    }
    const { id, release } = holdBack(browser);
    const onPop = (event: PopStateEvent): void => {
      if (hasLeft(event.state, id)) close.current();
    };
    addEventListener("popstate", onPop);
    return () => {
      removeEventListener("popstate", onPop);
      release();
    };
  }, [open]);
}
