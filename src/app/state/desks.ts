/** The visits laid out so far: the same one at every call, two cars may be open at once. Remembers a glance of each. */
import { effect } from "@preact/signals";
import type { App } from "./app.js";
import { type Desk, layOut } from "./desk.js";

const desks = new WeakMap<App, Map<string, Desk>>();

/** The visit laid out. */
export function deskOf(app: App, visit: string): Desk {
  const own = desks.get(app) ?? new Map<string, Desk>();
  desks.set(app, own);
  const there = own.get(visit);
  if (there) return there;
  const made = layOut(app, visit);
  own.set(visit, made);
  // Earlier visits of the car are found in the summaries.
  if (!app.journal.summaries.peek()) void app.journal.refresh();
  rememberOnceJudged(app, made);
  return made;
}

/** Before anything is judged there is no glance to remember: what follows it is fetched with the first judgement. */
function rememberOnceJudged({ remembered }: App, desk: Desk): void {
  let isFollowing = false;
  effect(() => {
    if (!desk.assessment.value || isFollowing) return;
    isFollowing = true;
    import("./glance-follow.js").then(
      ({ followGlance }) => followGlance(remembered, desk),
      // It did not come: the next judgement tries again.
      () => {
        isFollowing = false;
      },
    );
  });
}
