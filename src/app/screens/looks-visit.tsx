/** On the page of an open visit: what earlier visits asked to be looked at again, each leading to its point here. */
import type { LookWanted } from "../../core/plan/index.js";
import { barePoint } from "../state/complaint-lines.js";
import { unreadTexts, whereFrom } from "../state/looks-words.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/looks.js";
import { DueFirst } from "./due-band.js";
import { LooksBand } from "./looks-band.js";
import type { OnDesk } from "./on-visit.js";
import { useLooks } from "./use-looks.js";

/** The first of its points that this visit asks. */
function pointIn({ assessment, param }: OnDesk, { points }: LookWanted): string | undefined {
  const asked = assessment.asked.find(({ point, place, with: also }) =>
    points.some(
      (one) => one.place === place && [point, ...also].some((name) => barePoint(name) === barePoint(one.point)),
    ),
  );
  return asked && to("point", { visit: param, state: asked.state, place: asked.place, point: asked.point });
}

export function VisitLooks({ on }: { readonly on: OnDesk }) {
  const looks = useLooks(on.car, on.stream);
  // Where nothing could be read, that is told.
  if (!looks) return looks === null && <DueFirst on={on} told={[]} />;
  // Nuts are told as tightened where the car was handed back.
  const hrefOf = (look: LookWanted): string | undefined =>
    look.points.length === 0 && look.is === "recheck"
      ? whereFrom(looks, paramOf(on.car.stream), look)
      : pointIn(on, look);
  return (
    <>
      <LooksBand looks={looks} who={on.who} heading={t("looks.due")} hrefOf={hrefOf} />
      <DueFirst on={on} told={unreadTexts({ visits: looks.left, plans: 0 })} />
    </>
  );
}
