/**
 * Big replies to one question, all drawn alike in plain order. Chosen ones carry a tick and a frame, never a fill
 * alone. Refuses to know what a reply means.
 */
import { useId } from "preact/hooks";
import { TickIcon } from "./icons.js";
import type { ReplyGridProps, ReplyItem } from "./props-looking.js";
import { rovingTab, useRoving } from "./roving.js";

/** Letters that fit into two lines of a two-column reply, and into one line, at normal text on a 390 px phone. */
const FITS = { plain: { all: 28, word: 13 }, sketched: { all: 18, word: 9 } };

/** One column as soon as any reply would need a third line or would break inside a word. */
export function columnsFor(replies: readonly Pick<ReplyItem, "words" | "sketch">[]): 1 | 2 {
  const long = replies.some(({ words, sketch }) => {
    const fits = sketch === undefined ? FITS.plain : FITS.sketched;
    return words.length > fits.all || words.split(/\s+/).some((word) => word.length > fits.word);
  });
  return long ? 1 : 2;
}

/** What is drawn in a reply: its sketch, its words, and the tick of a chosen one. */
const Inside = ({ of }: { readonly of: Pick<ReplyItem, "sketch" | "words" | "says" | "chosen"> }) => (
  <>
    {of.sketch}
    <span class="reply-words">
      {of.words}
      {of.says && <small>{of.says}</small>}
    </span>
    {of.chosen && <TickIcon />}
  </>
);

export function ReplyGrid({ kind, label, says, replies, onChoose, columns, last, disabled }: ReplyGridProps) {
  const element = useRoving<HTMLDivElement>();
  const id = useId();
  const anyChosen = replies.some((reply) => reply.chosen);
  const inOne = (columns ?? columnsFor(last ? [...replies, last] : replies)) === 1;
  const sketched = replies.some((reply) => reply.sketch !== undefined);
  const look = `replies${inOne ? " one-column" : ""}${sketched ? " sketched" : ""}`;
  const isRadio = kind === "choice";
  const group = {
    role: isRadio ? "radiogroup" : "group",
    "aria-label": label,
    "aria-describedby": says && id,
  } as const;
  const stateOf = (chosen: boolean) =>
    kind === "one"
      ? ({ "aria-pressed": chosen } as const)
      : ({ role: isRadio ? "radio" : "checkbox", "aria-checked": chosen } as const);
  return (
    <>
      {says && (
        <p class="small replies-say" id={id}>
          {says}
        </p>
      )}
      <div class={look} {...group} ref={element}>
        {replies.map((reply, index) => (
          <button
            key={reply.id}
            class="reply"
            type="button"
            {...stateOf(reply.chosen)}
            tabIndex={isRadio ? rovingTab(reply.chosen, index, anyChosen) : 0}
            disabled={disabled}
            onClick={() => (kind === "several" || !reply.chosen) && onChoose(reply.id, !reply.chosen)}
          >
            <Inside of={reply} />
          </button>
        ))}
        {last && (
          <button
            class="reply"
            type="button"
            aria-haspopup="dialog"
            aria-pressed={last.chosen}
            disabled={disabled}
            onClick={last.onPress}
          >
            <Inside of={last} />
          </button>
        )}
      </div>
    </>
  );
}
