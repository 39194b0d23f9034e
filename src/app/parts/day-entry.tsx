/** A day by the browser's own field, or by one press. Refuses to know a calendar: quick keys come with their days. */
import type { DayEntryProps } from "./props-planning.js";

export function DayEntry(props: DayEntryProps) {
  const { id, label, value, onDay, quick, quickLabel, earliest, latest, says, problem } = props;
  return (
    <div class="day-entry">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="date"
        autocomplete="off"
        value={value}
        min={earliest}
        max={latest}
        aria-invalid={problem ? "true" : undefined}
        aria-describedby={`${id}-says`}
        onChange={(event) => onDay(event.currentTarget.value)}
      />
      {quick.length > 0 && (
        <fieldset class="quick n" aria-label={quickLabel}>
          {quick.map(({ id: key, words, day }) => (
            <button key={key} class="tool plain" type="button" aria-pressed={day === value} onClick={() => onDay(day)}>
              {words}
            </button>
          ))}
        </fieldset>
      )}
      <p class={problem ? "problem" : "small n"} id={`${id}-says`} role="status">
        {problem ?? says}
      </p>
    </div>
  );
}
