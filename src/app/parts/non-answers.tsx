/** The four non-answers, one below the other; those that need a reason open it and count only with one. */
import { useState } from "preact/hooks";
import { TickIcon } from "./icons.js";
import type { NonAnswersProps } from "./props-looking.js";
import { ReplyGrid } from "./reply-grid.js";

export function NonAnswers({ label, choices, reasonLabel, chosen, start, onChoose }: NonAnswersProps) {
  const [open, setOpen] = useState(chosen?.nonAnswer ?? start);
  return (
    <div role="group" aria-label={label}>
      {choices.map((choice) => {
        const { reasons } = choice;
        const stands = chosen?.nonAnswer === choice.id;
        const isOpen = reasons !== undefined && open === choice.id;
        return (
          <div class="replies one-column" key={choice.id}>
            <button
              class={stands ? "reply said" : "reply"}
              type="button"
              aria-pressed={reasons === undefined ? stands : undefined}
              aria-expanded={reasons === undefined ? undefined : isOpen}
              onClick={() => {
                setOpen(isOpen ? undefined : choice.id);
                if (reasons === undefined) onChoose(choice.id);
              }}
            >
              <span class="reply-words">
                {choice.words}
                {choice.says && <small>{choice.says}</small>}
              </span>
              {stands && <TickIcon />}
            </button>
            {isOpen && (
              <div class="reasons">
                <p>{reasonLabel}</p>
                <ReplyGrid
                  kind="one"
                  label={`${choice.words}. ${reasonLabel}`}
                  replies={reasons.map((r) => ({
                    id: r.id,
                    words: r.words,
                    chosen: stands && chosen?.reason === r.id,
                  }))}
                  onChoose={(id) => {
                    const reason = reasons.find((r) => r.id === id);
                    if (reason) onChoose(choice.id, reason.id);
                  }}
                />
              </div>
            )}
          </div>
        );
      })}
    </div>
  );
}
