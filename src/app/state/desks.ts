/** The visits laid out so far: the same one at every call, two cars may be open at once. Remembers a glance of each. */
import type { App } from "./app.js";
import { type Desk, layOut } from "./desk.js";
import { followGlance } from "./glance.js";

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
  followGlance(app.remembered, made);
  return made;
}
