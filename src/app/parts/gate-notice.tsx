/** A gate before a step: stopped, not cleared yet (do this first), or cleared. Refuses to decide which. */
import { CautionPanel } from "./caution-panel.js";
import { TickIcon } from "./icons.js";
import { ListRow } from "./list-row.js";
import type { GateNoticeProps } from "./props-telling.js";

export function GateNotice({ state, title, href, stateWords, says, first = [], cautions = [] }: GateNoticeProps) {
  return (
    <section class={`gate ${state}`}>
      <h2>
        {href === undefined ? (
          title
        ) : (
          <a class="plain-link" href={href}>
            {title}
          </a>
        )}
        <span>
          {state === "cleared" && <TickIcon />}
          {stateWords}
        </span>
      </h2>
      {says && <p>{says}</p>}
      {cautions.map((caution) => (
        <CautionPanel key={caution.not} {...caution} form="small" />
      ))}
      {first.length > 0 && (
        <ol>
          {first.map((step, index) => (
            <li key={step.id}>
              <ListRow
                folded
                lead={step.done ? <TickIcon /> : String(index + 1)}
                title={step.words}
                href={step.href}
                onPress={step.onPress}
              />
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
