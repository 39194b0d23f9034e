/**
 * Where the app is, kept in the address bar and the browser's history. Knows no screen and no record; a sheet over
 * a screen keeps its own history step at the same address (parts/sheet-back).
 */
import { type ReadonlySignal, signal } from "@preact/signals";
import { type Address, above, hrefOf, readAddress } from "./routes.js";

/** What the router needs of a window; a test hands in its own. */
export interface RouterWindow {
  readonly location: { readonly hash: string };
  readonly history: {
    readonly state: unknown;
    pushState(state: unknown, unused: string, url: string): void;
    replaceState(state: unknown, unused: string, url: string): void;
    back(): void;
  };
  addEventListener(type: "popstate" | "hashchange", listener: () => void): void;
}

/** The three ways to another address. */
export interface Moves {
  /** Goes there, one step deeper. */
  go(href: string): void;
  /** Goes there instead of here: top-level switches and corrections leave no step behind. */
  swap(href: string): void;
  /** One level up: back in history when that is where we came from, else to `href` (default: {@link above}). */
  up(href?: string): void;
}

export interface Router extends Moves {
  /** The address shown; `undefined` when the address is none of ours. */
  readonly at: ReadonlySignal<Address | undefined>;
  /** Whether the last move was the browser's own Back or Forward. */
  readonly cameBack: () => boolean;
  /** For after a wait: its moves are left out once the person has gone elsewhere, or was called, since this was asked. */
  fromHere(): Moves;
}

/** Written into each history step: the address it was opened from. */
interface Step {
  readonly from: string;
}
const isStep = (state: unknown): state is Step =>
  typeof state === "object" && state !== null && "from" in state && typeof state.from === "string";

/** Starts following the address of `win`. A move is made `whenStill`: not while a step back of a closed sheet is due. */
export function startRouter(win: RouterWindow, whenStill: (move: () => void) => void = (move) => move()): Router {
  const at = signal<Address | undefined>(readAddress(win.location.hash));
  const follow = (): void => {
    const next = readAddress(win.location.hash);
    const same = next && at.peek() && hrefOf(next) === hrefOf(at.peek() as Address);
    if (!same) at.value = next;
  };
  let back = false;
  const moved = (): void => {
    back = true;
    follow();
  };
  win.addEventListener("popstate", moved);
  win.addEventListener("hashchange", moved);

  const cameFrom = (): string | undefined => (isStep(win.history.state) ? win.history.state.from : undefined);
  const go = (href: string): void => {
    if (href === win.location.hash) return;
    win.history.pushState({ from: win.location.hash || "#/" } satisfies Step, "", href);
    back = false;
    follow();
  };
  const swap = (href: string): void => {
    win.history.replaceState(win.history.state, "", href);
    back = false;
    follow();
  };
  const up = (href?: string): void => {
    const here = at.peek();
    const target = href ?? (here ? above(here) : "#/");
    if (cameFrom() === target) win.history.back();
    else {
      win.history.replaceState(null, "", target);
      back = false;
      follow();
    }
  };
  const movesIf = (may: () => boolean): Moves => {
    const move = (make: () => void): void => whenStill(() => may() && make());
    return {
      go: (href) => move(() => go(href)),
      swap: (href) => move(() => swap(href)),
      up: (href) => move(() => up(href)),
    };
  };
  return {
    ...movesIf(() => true),
    at,
    cameBack: () => back,
    fromHere: () => {
      const asked = at.peek();
      return movesIf(() => at.peek() === asked);
    },
  };
}

/** The link's own address when a plain tap on it is ours to follow: inside the app, no new tab asked for. */
export function linkTapped(event: MouseEvent): string | undefined {
  if (event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey)
    return undefined;
  const link = event.target instanceof Element ? event.target.closest("a[href^='#']") : null;
  return link?.getAttribute("href") ?? undefined;
}
