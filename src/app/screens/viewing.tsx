/**
 * On the round's top line at a viewing: minutes left in words and strokes; pressed, time, order and quiet screen. And what
 * few rounds have below the open point.
 */
import { useEffect, useState } from "preact/hooks";
import { ticksDrawing } from "../../core/report/index.js";
import { DrawingView } from "../parts/drawing-view.js";
import { coverAgain } from "../state/covers.js";
import type { RoundView } from "../state/round-view.js";
import { type ViewingClock, viewingClock } from "../state/viewing-clock.js";
import { isViewing } from "../state/way.js";
import { t } from "../texts/viewing.js";
import { useKeeping } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnDesk } from "./on-visit.js";
import { useNow } from "./use-now.js";

const ViewingSheet = lazy(() => import("./viewing-sheet.js").then((file) => file.ViewingSheet), Nothing);

/** Width of the ruler beside the words, of 17 to the rem. */
const RUN = 46;

function words(clock: ViewingClock | undefined): string {
  if (!clock) return t("viewing.none");
  if (clock.is === "over") return t("viewing.over");
  if (clock.is === "unsure") return t("viewing.unsure");
  return t(clock.is === "stopped" ? "viewing.stopped" : "viewing.left", { n: clock.left });
}

const StillWorth = lazy(() => import("./viewing-sheet.js").then((file) => file.StillWorth), Nothing);

const RoundDue = lazy(() => import("./due-band.js").then((file) => file.RoundDue), Nothing);

/** In the top line. */
export const Viewing = ({ on }: { readonly on: OnDesk }) => (on.visit.closed ? null : <ViewingLine on={on} />);

/** At a viewing what is left once the time is up, else what is due again. */
export function BelowPoint({ on, view }: { readonly on: OnDesk; readonly view: RoundView }) {
  if (!isViewing(on.visit)) return <RoundDue on={on} view={view} />;
  return on.visit.closed ? null : <StillWorth on={on} />;
}

function ViewingLine({ on }: { readonly on: OnDesk }) {
  const [open, setOpen] = useState(false);
  const clock = viewingClock(on.visit, useNow());
  // Back on the round, what was uncovered is covered again.
  useEffect(() => coverAgain(), []);
  // What could not be kept has the line to itself.
  const isFree = useKeeping().kind !== "error";
  const says = clock?.said === 0 ? t("viewing.said-over") : clock?.said && t("viewing.said", { n: clock.said });
  return (
    <>
      {isFree && (
        <button
          type="button"
          class="viewing"
          aria-haspopup="dialog"
          aria-label={`${words(clock)}. ${t("viewing.name")}`}
          onClick={() => setOpen(true)}
        >
          <span class="n">{words(clock)}</span>
          {clock && <Ruler clock={clock} />}
        </button>
      )}
      <span class="spoken" role="status">
        {says}
      </span>
      {open && <ViewingSheet on={on} onClose={() => setOpen(false)} />}
    </>
  );
}

function Ruler({ clock }: { readonly clock: ViewingClock }) {
  const drawing = ticksDrawing(clock.ticks, RUN);
  const rem = (units: number): string => `${(units / 17).toFixed(3)}rem`;
  return <DrawingView drawing={drawing} class="ticks" width={rem(drawing.width)} height={rem(drawing.height)} />;
}
