/** A budget by big steps for gloves, or typed. Refuses to read or reckon the figure: each step is an act of its own. */
import type { BudgetChooserProps, BudgetStep } from "./props-planning.js";

const StepKey = ({ words, name, disabled, onPress }: BudgetStep) => (
  <button class="key" type="button" aria-label={name} disabled={disabled} onClick={onPress}>
    {words}
  </button>
);

export function BudgetChooser(props: BudgetChooserProps) {
  const { id, label, value, onValue, onCommit, unit, down, up, stepsLabel, says, problem } = props;
  return (
    <div class="budget-chooser n">
      <label for={id}>{label}</label>
      <div class="budget-box">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={value}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby={`${id}-says`}
          onInput={(event) => onValue(event.currentTarget.value)}
          onChange={(event) => onCommit?.(event.currentTarget.value)}
        />
        <span>{unit}</span>
      </div>
      <fieldset class="budget-steps" aria-label={stepsLabel}>
        {/* The larger step outermost, so that the two small ones lie beside each other. */}
        {[...down].reverse().map((step) => (
          <StepKey key={step.id} {...step} />
        ))}
        {up.map((step) => (
          <StepKey key={step.id} {...step} />
        ))}
      </fieldset>
      <p class={problem ? "problem" : "small"} id={`${id}-says`} role="status">
        {problem ?? says}
      </p>
    </div>
  );
}
