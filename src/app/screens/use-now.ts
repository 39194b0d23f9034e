/** The moment by this phone's clock, for what counts minutes. */
import { useEffect, useState } from "preact/hooks";
import { useApp } from "../state/app.js";

/** Minutes are shown: looking every few seconds is enough. */
const BEAT_MS = 5_000;

/** The moment, anew every few seconds and at once when the phone is taken out of the pocket. */
export function useNow(): number {
  const { phone } = useApp();
  const [now, setNow] = useState(phone.now);
  useEffect(() => {
    const look = (): void => setNow(phone.now());
    const beat = setInterval(look, BEAT_MS);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(beat);
      document.removeEventListener("visibilitychange", look);
    };
  }, [phone]);
  return now;
}
