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
  /** Arrives later, and is told by `arrived`. */
  back(): void;
  /** In a task of its own. */
  soon(act: () => void): void;
  /** After longer than any step back takes. */
  late(act: () => void): void;
}

const KEY = "leadlamp-sheet";
let opened = 0;
const held = new Set<number>();
/** The sheet closed last, whose entry is about to be left. */
let closed: { readonly id: number; readonly from: string } | undefined;
/** A closed sheet's entry is about to be left. */
let isDue = false;
/** A step back is under way: an entry put now would be left by it. */
let isLeaving = false;
/** Of the steps back begun, which is under way. */
let step = 0;
let afterwards: (() => void)[] = [];

const fields = (state: unknown): Readonly<Record<string, unknown>> =>
  typeof state === "object" && state !== null ? { ...state } : {};
const marked = (state: unknown): unknown => fields(state)[KEY];

function settle(): void {
  isDue = false;
  isLeaving = false;
  const waiting = afterwards;
  afterwards = [];
  for (const act of waiting) act();
}

function leave(stack: BackStack): void {
  isLeaving = true;
  step += 1;
  const own = step;
  stack.back();
  // A step back the browser lost must not hold up what waits for it; a later one has a time of its own.
  stack.late(() => {
    if (isLeaving && own === step) settle();
  });
}

/** Does it once no step back of a closed sheet is due or under way, which would take it back again. */
export function whenStill(act: () => void): void {
  if (isDue || isLeaving) afterwards.push(act);
  else act();
}

/** Puts the entry of a sheet that stands open: in place of one that was just closed, after a step back under way. */
function put(stack: BackStack, id: number): void {
  if (!held.has(id)) return;
  if (isLeaving) {
    afterwards.push(() => put(stack, id));
    return;
  }
  const state = { ...fields(stack.state), [KEY]: id };
  if (closed?.id === marked(stack.state) && closed?.from === stack.here()) stack.replaceState(state);
  else stack.pushState(state);
}

/**
 * Puts an entry for one open sheet. `release` takes it away again, a task later, so that a sheet opened meanwhile may
 * have it; where the person has moved on to another address, nothing of that is touched.
 */
export function holdBack(stack: BackStack): { readonly id: number; readonly release: () => void } {
  opened += 1;
  const id = opened;
  const from = stack.here();
  held.add(id);
  put(stack, id);
  return {
    id,
    release: () => {
      held.delete(id);
      closed = { id, from };
      if (marked(stack.state) !== id) return;
      if (stack.here() !== from) {
        // Another screen was put into the entry: it is that screen's now.
        const { [KEY]: _mark, ...rest } = fields(stack.state);
        stack.replaceState(rest);
        return;
      }
      isDue = true;
      stack.soon(() => {
        isDue = false;
        if (marked(stack.state) === id) leave(stack);
        else if (!isLeaving) settle();
      });
    },
  };
}

/** Whether a step back has come to rest below the entry of this sheet (a later sheet's entry has a higher number). */
export function hasLeft(state: unknown, id: number): boolean {
  const now = marked(state);
  return !isLeaving && (typeof now !== "number" || now < id);
}

/**
 * A step back has arrived. An entry whose sheet is long closed (left by a link inside it) shows nothing of its own: back
 * goes past it. Then come the entries of what was opened meanwhile.
 */
export function arrived(stack: BackStack): void {
  const now = marked(stack.state);
  if (typeof now === "number" && !held.has(now)) {
    leave(stack);
    return;
  }
  settle();
}

const browser: BackStack = {
  get state() {
    return history.state;
  },
  here: () => location.href,
  pushState: (state) => history.pushState(state, ""),
  replaceState: (state) => history.replaceState(state, ""),
  back: () => history.back(),
  soon: (act) => void setTimeout(act),
  late: (act) => void setTimeout(act, 1_000),
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
      addEventListener("popstate", () => arrived(browser));
    }
    const { id, release } = holdBack(browser);
    // As it is now, not as the event found it: a sheet opened during a step back has its entry since.
    const onPop = (): void => {
      if (hasLeft(browser.state, id)) close.current();
    };
    addEventListener("popstate", onPop);
    return () => {
      removeEventListener("popstate", onPop);
      release();
    };
  }, [open]);
}
