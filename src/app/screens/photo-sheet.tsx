/** A picture without leaving the screen: from the phone's own camera or the album. */
import { NextAction, Tool } from "../parts/button.js";
import { Sheet } from "../parts/sheet.js";
import { cameraHref } from "../state/picture-spot.js";
import type { PointAt } from "../state/standing.js";
import { t } from "../texts/media.js";
import type { OnDesk } from "./on-visit.js";
import { usePicking } from "./use-picking.js";

export function PhotoSheet({
  on,
  at,
  open,
  onClose,
}: {
  readonly on: OnDesk;
  readonly at: PointAt;
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  const pick = usePicking(on.stream, at, cameraHref(on.param, { at: "point", point: at }));
  const start = (camera: boolean): void => {
    pick(camera).then((came) => came > 0 && onClose(), reportError);
  };
  return (
    <Sheet open={open} title={t("photo.title")} closeWords={t("app.close")} onClose={onClose}>
      <div class="acts">
        <NextAction words={t("camera.phone")} onPress={() => start(true)} />
        <Tool words={t("camera.album")} onPress={() => start(false)} />
      </div>
    </Sheet>
  );
}
