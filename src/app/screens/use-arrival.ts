/**
 * Arriving at a screen: the focus goes to its title, the window is named after it, and the page stands at its head, or
 * where it was left when one came back. Knows no screen.
 */
import { useEffect, useRef } from "preact/hooks";
import { t } from "../texts/first.js";

/** A screen whose code is still being read has this many frames to show its title. */
const FRAMES = 60;

/** Where each address was scrolled to. */
const left = new Map<string, number>();

/** Follows the page's scrolling for as long as the app runs. */
function followScrolling(): void {
  history.scrollRestoration = "manual";
  addEventListener("scroll", () => left.set(location.hash, scrollY), { passive: true });
}

/** Calls `arrive` with the title once there is one that was not there before. */
function onTitle(before: Element | null, arrive: (title: HTMLElement) => void): () => void {
  let frame = 0;
  let request = 0;
  const look = (): void => {
    const title = document.querySelector<HTMLElement>("h1");
    if (title && (title !== before || frame > 1)) arrive(title);
    else if (frame++ < FRAMES) request = requestAnimationFrame(look);
  };
  request = requestAnimationFrame(look);
  return () => cancelAnimationFrame(request);
}

/** `href`: the address; `name`: its screen; one screen with another address (the next point) only goes to its head. */
export function useArrival(href: string, name: string, cameBack: () => boolean): void {
  const last = useRef({ name: "", title: null as Element | null });
  useEffect(followScrolling, []);
  useEffect(() => {
    const isFirst = last.current.name === "";
    const isNew = last.current.name !== name;
    const target = cameBack() ? (left.get(href) ?? 0) : 0;
    const before = last.current.title;
    last.current.name = name;
    return onTitle(isNew ? before : null, (title) => {
      last.current.title = title;
      document.title = title.textContent ? `${title.textContent} · ${t("app.name")}` : t("app.name");
      // On the very first screen the browser's own focus and place are right.
      if (isFirst) return;
      // The reply just pressed is gone with its point: the focus must not fall to the page.
      const question = document.activeElement === document.body && document.querySelector<HTMLElement>(".question h2");
      if (isNew) title.focus({ preventScroll: true });
      else if (question) question.focus({ preventScroll: true });
      scrollTo(0, target);
    });
  }, [href, name]);
}
