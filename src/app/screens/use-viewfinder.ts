/**
 * The viewfinder of a screen: opened once what it is for is written down, closed while the screen is not seen, and every
 * reason why there is none. Keeps no picture.
 */
import type { RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { NoCamera, Viewfinder } from "../../core/record/camera.js";
import { useApp } from "../state/app.js";
import { type CameraOpen, holdAlive, isAliveElsewhere, isCameraOpen, readOpen, writeOpen } from "../state/left-open.js";

export type Looking =
  | { readonly is: "opening" }
  | { readonly is: "open"; readonly viewfinder: Viewfinder<Blob> }
  | { readonly is: "none"; readonly why: NoCamera | "lost" };

/** Written down before the camera opens; `left`: the phone's own camera was open here when the page was ended. */
export function useCameraDraft(href: string): { readonly isWritten: boolean; left: boolean; letGo: () => void } {
  const { store } = useApp();
  const [written, setWritten] = useState("");
  const [left, setLeft] = useState(false);
  useEffect(() => {
    let gone = false;
    let letGo: (() => void) | undefined;
    const begin = async (): Promise<void> => {
      const [found, elsewhere] = await Promise.all([readOpen(store, "camera"), isAliveElsewhere("camera")]);
      if (gone) return;
      setLeft(!elsewhere && isCameraOpen(found) && found.phone && found.href === href);
      letGo = holdAlive("camera");
      await writeOpen(store, "camera", { href, phone: false } satisfies CameraOpen);
      if (!gone) setWritten(href);
    };
    void begin();
    return () => {
      gone = true;
      letGo?.();
      void writeOpen(store, "camera", undefined);
    };
  }, [href, store]);
  return { isWritten: written !== "", left, letGo: () => setLeft(false) };
}

/** What is seen in `screen`; `again` opens the camera anew. */
export function useViewfinder(screen: RefObject<HTMLVideoElement | null>, mayOpen: boolean) {
  const { camera } = useApp();
  const [looking, setLooking] = useState<Looking>({ is: "opening" });
  const [tried, setTried] = useState(0);
  const [seen, setSeen] = useState(!document.hidden);
  useEffect(() => {
    const follow = (): void => setSeen(!document.hidden);
    document.addEventListener("visibilitychange", follow);
    return () => document.removeEventListener("visibilitychange", follow);
  }, []);
  const open = useRef<Viewfinder<Blob> | undefined>(undefined);
  useEffect(() => {
    if (!mayOpen || !seen) return;
    let gone = false;
    const begin = async (): Promise<void> => {
      const door = await camera();
      const video = screen.current;
      if (gone || !video) return;
      const looked = await door.open(video, () => !gone && setLooking({ is: "none", why: "lost" }));
      if (looked.is !== "open") {
        if (!gone) setLooking(looked);
        return;
      }
      if (gone) return looked.viewfinder.close();
      open.current = looked.viewfinder;
      setLooking(looked);
    };
    setLooking({ is: "opening" });
    void begin();
    return () => {
      gone = true;
      open.current?.close();
      open.current = undefined;
    };
  }, [mayOpen, seen, tried, camera, screen]);
  return { looking, again: () => setTried((before) => before + 1) };
}
