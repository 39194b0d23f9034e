/** Pictures and sounds of a point, and pictures still on their way. Comes only where there are any. */
import { useApp } from "../state/app.js";
import { pictureLineOf } from "../state/picture-line.js";
import type { PointAt } from "../state/standing.js";
import { t } from "../texts/media.js";
import { pictureHref, type ShownPicture, Thumbs } from "./kept-picture.js";
import { LineProgress } from "./line-progress.js";
import type { OnDesk } from "./on-visit.js";
import { Sounds } from "./sounds.js";

export function PointMedia({
  on,
  at,
  pictures,
  point,
  place,
}: {
  readonly on: OnDesk;
  readonly at: PointAt;
  readonly pictures: readonly ShownPicture[];
  readonly point: string;
  readonly place: string;
}) {
  const line = pictureLineOf(useApp());
  const alt = t("photo.alt", { point, place });
  return (
    <>
      {line.now.value.waiting.length > 0 && <LineProgress line={line} />}
      {pictures.length > 0 && (
        <Thumbs pictures={pictures} one={({ id }) => ({ alt, href: pictureHref(on.param, id) })} />
      )}
      <Sounds on={on} at={at} />
    </>
  );
}
