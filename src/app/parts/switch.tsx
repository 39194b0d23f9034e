/** A setting that is on or off. */
import type { SwitchProps } from "./props-frame.js";

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
