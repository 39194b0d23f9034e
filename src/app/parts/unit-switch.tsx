/** Two to four short words of which one is chosen. */
import type { UnitSwitchProps } from "./props-frame.js";
import { rovingTab, useRoving } from "./roving.js";

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
