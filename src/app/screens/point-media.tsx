/** What was said last time, pictures and sounds of a point, values worked out from it. Comes only where it is looked at. */
import { useApp } from "../state/app.js";
import { pictureLineOf } from "../state/picture-line.js";
import type { PointAt } from "../state/standing.js";
import { t } from "../texts/media.js";
import { pictureHref, type ShownPicture, Thumbs } from "./kept-picture.js";
import { LastTime } from "./last-time.js";
import { lazy, Nothing } from "./lazy.js";
import { LineProgress } from "./line-progress.js";
import type { OnDesk } from "./on-visit.js";
import { Sounds } from "./sounds.js";

const WorkedValues = lazy(() => import("./worked.js").then((file) => file.WorkedValues), Nothing);

export function PointMedia({
  on,
  at,
  done,
  pictures,
  point,
  place,
}: {
  readonly on: OnDesk;
  readonly at: PointAt;
  /** Whether it is answered: what was said last time stands only then. */
  readonly done: boolean;
  readonly pictures: readonly ShownPicture[];
  readonly point: string;
  readonly place: string;
}) {
  const line = pictureLineOf(useApp());
  const alt = t("photo.alt", { point, place });
  return (
    <>
      {done && <LastTime on={on} at={at} />}
      {line.now.value.waiting.length > 0 && <LineProgress line={line} />}
      {pictures.length > 0 && (
        <Thumbs pictures={pictures} one={({ id }) => ({ alt, href: pictureHref(on.param, id) })} />
      )}
      <Sounds on={on} at={at} />
      <WorkedValues on={on} point={at.point} place={at.place} lit />
    </>
  );
}
