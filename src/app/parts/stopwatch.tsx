/** A stopwatch reply on the screen. Shows whole seconds while it runs; the clock is handed in. */
import { useEffect, useState } from "preact/hooks";
import { NextAction, Tool } from "./button.js";
import type { StopwatchProps } from "./props-looking.js";

type Watch =
  | { readonly at: "rest" }
  | { readonly at: "running"; readonly since: number }
  | { readonly at: "stopped"; readonly seconds: number };

/** Tenths: a thumb is no better than that. */
const tenths = (ms: number): number => Math.round(ms / 100) / 10;

export function Stopwatch(props: StopwatchProps) {
  const { label, clock, write, words, until, onReached, disabled, onKeep } = props;
  const [watch, setWatch] = useState<Watch>({ at: "rest" });
  const [now, setNow] = useState(0);
  useEffect(() => {
    if (watch.at !== "running") return;
    const beat = setInterval(() => setNow(clock()), 200);
    return () => clearInterval(beat);
  }, [watch, clock]);
  const isReached = until !== undefined && watch.at === "running" && now - watch.since >= until * 1000;
  useEffect(() => {
    if (isReached) onReached?.();
  }, [isReached]);
  const start = (): void => {
    const since = clock();
    setNow(since);
    setWatch({ at: "running", since });
  };
  const seconds = watch.at === "running" ? tenths(now - watch.since) : watch.at === "stopped" ? watch.seconds : 0;
  return (
    <div class="watch" role="group" aria-label={label}>
      <output class="n" aria-live="off">
        {write(watch.at === "running" ? Math.floor(seconds) : seconds)}
      </output>
      <p class="small" role="status">
        {isReached ? words.reached : ""}
      </p>
      <div class="watch-keys">
        {watch.at === "rest" && <NextAction words={words.start} disabled={disabled} onPress={start} />}
        {watch.at === "running" && (
          <NextAction
            words={words.stop}
            onPress={() => setWatch({ at: "stopped", seconds: tenths(clock() - watch.since) })}
          />
        )}
        {watch.at === "stopped" && (
          <>
            <Tool words={words.again} onPress={start} />
            <NextAction words={words.keep(write(watch.seconds))} onPress={() => onKeep(watch.seconds)} />
          </>
        )}
      </div>
    </div>
  );
}
