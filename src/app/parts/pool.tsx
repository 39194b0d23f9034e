/** Surfaces: the one lit pool of a screen with its question, and bands in shade. */
import type { BandProps, PoolProps, QuestionProps } from "./props-frame.js";

export function Pool({ children, as: Element = "div", label, edge = "line", bare }: PoolProps) {
  const look = `pool${edge === "joined" ? " joined" : ""}${bare ? " bare" : ""}`;
  return (
    <Element class={look} aria-label={label}>
      {children}
    </Element>
  );
}

/** The question of a point with one line on how to look. */
export function Question({ question, how, id }: QuestionProps) {
  return (
    <div class="question">
      <h2 id={id} tabIndex={-1}>
        {question}
      </h2>
      {how && <p class="small">{how}</p>}
    </div>
  );
}

export function Band({ heading, aside, children }: BandProps) {
  return (
    <section class="band">
      {heading && (
        <header>
          <h2>{heading}</h2>
          {aside && <span class="small n">{aside}</span>}
        </header>
      )}
      {children}
    </section>
  );
}
