/** The way of a part as graduations with words, and the row that says what holds the car up. Refuses to know days. */
import { MaybePressable } from "./pressable.js";
import type { HoldLineProps, StepLineProps } from "./props-planning.js";

export function StepLine({ label, steps }: StepLineProps) {
  return (
    <ol class="step-line n" aria-label={label}>
      {steps.map((step) => (
        <li key={step.id} class={step.look} aria-current={step.look === "here" ? "step" : undefined}>
          <span>{step.words}</span>
          {step.aside && <span class="small">{step.aside}</span>}
          <span class="spoken">{step.spoken}</span>
        </li>
      ))}
    </ol>
  );
}

export function HoldLine({ title, days, says, href, onPress }: HoldLineProps) {
  return (
    <MaybePressable class="hold n" href={href} onPress={onPress}>
      <span>
        <b>{title}</b>
        {says && <span class="small">{says}</span>}
      </span>
      <b class="hold-days">{days}</b>
    </MaybePressable>
  );
}
