/** A time taken on the screen. Fetched when a point asks for one. */
import { NextAction, Tool } from "../parts/button.js";
import { Stopwatch } from "../parts/stopwatch.js";
import { useApp } from "../state/app.js";
import type { ReadingField } from "../state/reading-view.js";
import { rounded, t } from "../texts/reading.js";
import type { ReadingState } from "./use-reading.js";

/** Felt when the time of a stopwatch is up. */
const UP_TICKS = [200, 80, 200];

interface WatchProps {
  readonly name: string;
  readonly state: ReadingState;
  readonly field: ReadingField;
  readonly resultWords: (id: string) => string;
  readonly onType: () => void;
  readonly onDone: () => void;
}

/** The stopwatch, what may be said instead of a time, and typing one taken with another clock. */
export function Watch({ name, state, field, resultWords, onType, onDone }: WatchProps) {
  const { around } = useApp();
  const until = typeof field.stopwatch === "number" ? field.stopwatch : undefined;
  return (
    <>
      <Stopwatch
        label={name}
        clock={around.steadyMs}
        write={(seconds) => rounded(seconds, 1)}
        words={{
          start: t("reading.start"),
          stop: t("reading.stop"),
          again: t("reading.again"),
          keep: (written) => t("reading.keep-time", { value: written }),
          reached: until === undefined ? undefined : t("reading.time-up", { n: until }),
        }}
        until={until}
        onReached={() => around.vibrate(UP_TICKS)}
        disabled={state.closed}
        onKeep={(seconds) => state.keepText(seconds.toFixed(1), "s")}
      />
      <div class="acts">
        {(field.results ?? []).map((id) => (
          <Tool key={id} words={resultWords(id)} onPress={() => state.keepText(id, state.entering.unit)} />
        ))}
        <Tool words={t("reading.type-time")} onPress={onType} />
        {state.value && <NextAction words={t("reading.done")} onPress={onDone} />}
      </div>
    </>
  );
}
