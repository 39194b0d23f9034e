/** A setting that is on or off, and two to four short words of which one is chosen. */
import type { SwitchProps, UnitSwitchProps } from "./props-frame.js";
import { rovingTab, useRoving } from "./roving.js";

export function Switch({ id, label, says, on, onChange, words }: SwitchProps) {
  return (
    <button
      id={id}
      class="switch"
      type="button"
      role="switch"
      aria-checked={on}
      aria-label={label}
      aria-describedby={says ? `${id}-says` : undefined}
      onClick={() => onChange(!on)}
    >
      <span>
        {label}
        {says && (
          <span id={`${id}-says`} class="small">
            {says}
          </span>
        )}
      </span>
      <span class="switch-state">
        {on ? words.on : words.off}
        <svg width="3.06rem" height="1.65rem" viewBox="0 0 52 28" aria-hidden="true">
          <rect x="1" y="1" width="50" height="26" rx="3" />
          <rect class={on ? "knob" : "knob-off"} x={on ? 28 : 5} y="5" width="19" height="18" />
        </svg>
      </span>
    </button>
  );
}

export function UnitSwitch({ label, choices, chosen, onChoose }: UnitSwitchProps) {
  const group = useRoving<HTMLDivElement>();
  const anyChosen = choices.some((choice) => choice.id === chosen);
  return (
    <div class="units" role="radiogroup" aria-label={label} ref={group}>
      {choices.map((choice, index) => (
        <button
          key={choice.id}
          type="button"
          role="radio"
          aria-checked={choice.id === chosen}
          aria-label={choice.name}
          tabIndex={rovingTab(choice.id === chosen, index, anyChosen)}
          onClick={() => choice.id !== chosen && onChoose(choice.id)}
        >
          {choice.words}
        </button>
      ))}
    </div>
  );
}
