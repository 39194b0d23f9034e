/** The figure being entered, the readings kept so far, and the gauge. Refuses to read or judge the figure. */
import { useId } from "preact/hooks";
import { isPressable, Pressable } from "./pressable.js";
import type { GaugeLineProps, ReadingEntryProps, ReadingListProps } from "./props-looking.js";

export function ReadingEntry({ label, value, onValue, onKeep, problem, says, children }: ReadingEntryProps) {
  const id = useId();
  return (
    <div class="entry">
      <label>
        <span class="spoken">{label}</span>
        <input
          type="text"
          inputMode="none"
          autocomplete="off"
          value={value}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby={id}
          onInput={(event) => onValue(event.currentTarget.value)}
          onKeyDown={(event) => event.key === "Enter" && onKeep?.()}
        />
      </label>
      {children}
      <p class={problem ? "problem" : "small"} id={id} role="status">
        {problem ?? says}
      </p>
    </div>
  );
}

export function ReadingList({ label, readings }: ReadingListProps) {
  return (
    <ul class="got n" aria-label={label}>
      {readings.map((reading) => {
        const shown = (
          <>
            {reading.value}
            <small>{reading.caption}</small>
          </>
        );
        return (
          <li key={reading.id} class={reading.kind}>
            {isPressable(reading) ? (
              <Pressable href={reading.href} onPress={reading.onPress} label={reading.name}>
                {shown}
              </Pressable>
            ) : (
              <div>{shown}</div>
            )}
          </li>
        );
      })}
    </ul>
  );
}

export function GaugeLine({ words, action }: GaugeLineProps) {
  return (
    <div class="gauge n">
      <span>{words}</span>
      {action && (
        <Pressable href={action.href} onPress={action.onPress}>
          {action.words}
        </Pressable>
      )}
    </div>
  );
}
