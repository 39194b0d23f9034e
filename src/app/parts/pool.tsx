/** Surfaces: the one lit pool of a screen, and bands in shade. */
import type { BandProps, PoolProps } from "./props-frame.js";

export function Pool({ children, as: Element = "div", label, edge = "line", bare }: PoolProps) {
  const look = `pool${edge === "joined" ? " joined" : ""}${bare ? " bare" : ""}`;
  return (
    <Element class={look} aria-label={label}>
      {children}
    </Element>
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
