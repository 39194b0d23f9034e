/** The pictures pinned to a finding, and adding one. */
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { cameraHref } from "../state/picture-spot.js";
import { picturesOfFinding } from "../state/pictures-view.js";
import { t } from "../texts/media.js";
import { pictureHref, Thumbs } from "./kept-picture.js";
import type { OnDesk } from "./on-visit.js";

interface FindingPicturesProps {
  readonly on: OnDesk;
  readonly fault: string;
  readonly place: string;
}

export function FindingPictures({ on, fault, place }: FindingPicturesProps) {
  const pictures = picturesOfFinding(on.visit.pictures, fault, place);
  const closed = on.visit.closed !== undefined;
  if (pictures.length === 0 && closed) return null;
  return (
    <Band heading={t("finding.pictures")} aside={pictures.length > 0 ? String(pictures.length) : ""}>
      {pictures.length > 0 && (
        <div class="form">
          <Thumbs
            pictures={pictures}
            one={({ id }, index) => ({ alt: t("pictures.choose", { n: index + 1 }), href: pictureHref(on.param, id) })}
          />
        </div>
      )}
      {!closed && (
        <ListRow folded title={t("finding.add-picture")} href={cameraHref(on.param, { at: "fault", fault, place })} />
      )}
    </Band>
  );
}
