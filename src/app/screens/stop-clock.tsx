/** Counts down from the moment the car stopped, where heat is felt and measured. Stands in the way of nothing. */
import { useEffect, useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { useApp } from "../state/app.js";
import { markStopped, stopClock, stoppedAt } from "../state/stop-clock.js";
import { t } from "../texts/reading.js";

/** Felt when the time is up. */
const TICKS = [40, 80, 40];

export function StopClockBand({ visit, within }: { readonly visit: string; readonly within: number }) {
  const { remembered, phone, around } = useApp();
  const [now, setNow] = useState(phone.now);
  const clock = stopClock(stoppedAt(remembered, visit), now, within);
  const runs = clock.is !== "not started";
  useEffect(() => {
    if (!runs) return;
    const beat = setInterval(() => setNow(phone.now()), 500);
    return () => clearInterval(beat);
  }, [runs, phone]);
  const isOver = clock.is === "over";
  useEffect(() => {
    if (isOver) around.vibrate(TICKS);
  }, [isOver, around]);
  const start = (): void => {
    markStopped(remembered, visit, phone.now());
    setNow(phone.now());
  };
  return (
    <section class="stop-clock" aria-label={t("stop-clock.label")}>
      <p>
        {runs && (
          <span class="n" role="timer">
            {clock.figure}
          </span>
        )}
        <span role="status">{t(`stop-clock.${clock.is === "not started" ? "rest" : clock.is}`)}</span>
      </p>
      <Tool words={t(runs ? "stop-clock.again" : "stop-clock.start")} onPress={start} />
    </section>
  );
}
