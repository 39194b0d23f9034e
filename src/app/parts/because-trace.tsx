/** Why a finding stands: one step a line on the lamp's lead. Each step may open its photo, reading or source. */
import { Disclosure } from "./disclosure.js";
import { isPressable, Pressable } from "./pressable.js";
import type { BecauseStep, BecauseTraceProps } from "./props-telling.js";

function Says({ step }: { readonly step: BecauseStep }) {
  const words = (
    <>
      {step.says}
      {step.aside && <em class="n"> {step.aside}</em>}
    </>
  );
  if (step.inside)
    return (
      <div class="trace-says">
        <Disclosure inside={step.inside}>{words}</Disclosure>
      </div>
    );
  return isPressable(step) ? (
    <Pressable class="trace-says pressed" href={step.href} onPress={step.onPress}>
      {words}
    </Pressable>
  ) : (
    <span class="trace-says">{words}</span>
  );
}

export function BecauseTrace({ label, steps }: BecauseTraceProps) {
  return (
    <ol class="trace" aria-label={label}>
      {steps.map((step) => (
        <li key={step.id} class={step.concludes ? "concludes" : undefined}>
          <span class="trace-kind">{step.kind}</span>
          <Says step={step} />
        </li>
      ))}
    </ol>
  );
}
