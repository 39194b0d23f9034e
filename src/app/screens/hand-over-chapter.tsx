/** A chapter of the hand-over folded behind its heading, with how many things are in it. Printed, it is open all the same. */
import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";
import type { Chapter } from "../../core/report/index.js";
import { t } from "../texts/hand-over.js";

interface FoldedChapterProps {
  readonly chapter: Chapter;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly children: ComponentChildren;
}

export function FoldedChapter({ chapter: { heading, count }, open, onOpen, children }: FoldedChapterProps) {
  const id = useId();
  const body = useRef<HTMLDivElement>(null);
  const opener = useRef(onOpen);
  opener.current = onOpen;
  useEffect(() => {
    const inside = body.current;
    // Looked for with the browser's own search: what is found there is shown.
    const found = (): void => opener.current(true);
    inside?.addEventListener("beforematch", found);
    return () => inside?.removeEventListener("beforematch", found);
  }, []);
  return (
    <section class="paper-chapter">
      <div class="paper-fold">
        <h2 class={heading.newPage ? "new-page" : ""}>
          <button
            type="button"
            aria-expanded={open}
            aria-controls={id}
            aria-describedby={count > 0 ? `${id}-count` : undefined}
            onClick={() => onOpen(!open)}
          >
            {heading.text}
          </button>
        </h2>
        {count > 0 && (
          <span class="small n" aria-hidden="true">
            {count}
          </span>
        )}
        {count > 0 && (
          <span id={`${id}-count`} hidden>
            {t("hand-over.chapter.count", { n: count })}
          </span>
        )}
      </div>
      <div id={id} ref={body} hidden={open ? false : "until-found"}>
        {children}
      </div>
    </section>
  );
}
