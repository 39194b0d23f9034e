/** What is opened once for several jobs, one inside another; and where the money ends. Refuses to group or to add. */
import type { ReachLineProps, WorkBundleProps } from "./props-planning.js";

const HEADINGS = { 1: "h2", 2: "h3", 3: "h4" } as const;

export function WorkBundle({ title, aside, shared, level = 1, children }: WorkBundleProps) {
  const Heading = HEADINGS[level];
  return (
    <section class="work-bundle" data-level={level}>
      <header>
        <Heading>{title}</Heading>
        {aside && <span class="small n">{aside}</span>}
        {shared && <p class="bundle-shared small n">{shared}</p>}
      </header>
      {children}
    </section>
  );
}

export function ReachLine({ words, aside, over, says }: ReachLineProps) {
  return (
    <div class={over ? "reach over n" : "reach n"} role="status">
      <p>
        <b>{words}</b>
        {aside && <span>{aside}</span>}
      </p>
      {says && <p class="small">{says}</p>}
    </div>
  );
}
