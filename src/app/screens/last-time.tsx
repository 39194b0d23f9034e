/** What was said last time, under one's own reply of today: never before it, so that nobody only nods. */
import { lastTime } from "../state/last-time.js";
import type { PointAt } from "../state/standing.js";
import type { OnDesk } from "./on-visit.js";

export function LastTime({ on, at }: { readonly on: OnDesk; readonly at: PointAt }) {
  const { known, who, desk } = on;
  const lines = lastTime({ known, who, earlier: desk.earlier.value }, at);
  return (
    <>
      {lines.map(({ point, says }) => (
        <p key={point} class="small last-time">
          {says}
        </p>
      ))}
    </>
  );
}
