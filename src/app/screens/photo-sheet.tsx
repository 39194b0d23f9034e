/**
 * A picture from camera or album. What the camera was opened for is written down first: phones end the app behind an
 * open camera.
 */
import { useEffect, useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { pointName } from "../state/knowledge.js";
import { type PointAt, pointText } from "../state/standing.js";
import { picture } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import type { OnDesk } from "./on-visit.js";

const keyOf = (visit: string): string => `leadlamp.camera.${visit}`;

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
  const { files, pictures, journal, remembered } = useApp();
  const [working, setWorking] = useState(0);
  const [lost, setLost] = useState(false);
  useEffect(() => {
    if (open) setLost(remembered.get(keyOf(on.stream)) === pointText(at));
  }, [open]);
  const letGo = (): void => {
    remembered.drop(keyOf(on.stream));
    setLost(false);
  };
  const take = async (camera: boolean): Promise<void> => {
    remembered.put(keyOf(on.stream), pointText(at));
    const picked = await files.pick({ accept: "image/*", camera, several: !camera });
    remembered.drop(keyOf(on.stream));
    setLost(false);
    setWorking(picked.length);
    for (const file of picked) {
      const made = await pictures.keep(file);
      await picture(journal, on.stream, made, at, file.name);
      setWorking((left) => left - 1);
    }
    if (picked.length > 0) onClose();
  };
  const start = (camera: boolean): void => {
    take(camera).catch((error: unknown) => {
      setWorking(0);
      reportError(error);
    });
  };
  return (
    <Sheet open={open} title={t("photo.title")} closeWords={t("app.close")} onClose={onClose}>
      {lost && (
        <Notice
          kind="plain"
          title={t("photo.waiting", { point: pointName(on.known, at.point) })}
          action={{ words: t("photo.let-go"), onPress: letGo }}
        />
      )}
      {working > 0 ? (
        <p role="status">{t("photo.working")}</p>
      ) : (
        <div class="acts">
          <NextAction words={t("photo.take")} onPress={() => start(true)} />
          <Tool words={t("photo.choose")} onPress={() => start(false)} />
        </div>
      )}
    </Sheet>
  );
}
