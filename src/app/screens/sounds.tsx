/** The sounds of a point to be heard again, and left against right from one press. */
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { to } from "../state/routes.js";
import type { SoundOfList } from "../state/sound-slices.js";
import { secondsOf, soundsView } from "../state/sound-view.js";
import type { PointAt } from "../state/standing.js";
import { t } from "../texts/media.js";
import type { OnDesk } from "./on-visit.js";
import { usePlayer } from "./use-player.js";

const lengthOf = (sound: SoundOfList): string =>
  [
    ...(sound.ms > 0 ? [t("sound.seconds", { n: secondsOf(sound.ms) })] : []),
    ...(sound.cut ? [t("sound.cut")] : []),
  ].join(", ");

export function Sounds({ on, at }: { readonly on: OnDesk; readonly at: PointAt }) {
  const { here, sides } = soundsView(on.tree, on.visit.sounds, at);
  const { playing, failed, play, stop } = usePlayer();
  const isSide = sides && (playing === sides.left.id || playing === sides.right.id);
  const side = sides && playing === sides.left.id ? t("sound.left") : t("sound.right");
  return (
    <>
      {here.map((sound, index) => {
        const isOn = playing === sound.id;
        return (
          <ListRow
            key={sound.id}
            folded
            title={t("sound.one", { n: index + 1 })}
            second={lengthOf(sound)}
            aside={isOn ? t("sound.stop") : t("sound.play")}
            onPress={() => (isOn ? stop() : play([sound]))}
          />
        );
      })}
      {sides && (
        <div class="acts">
          <Tool
            words={isSide ? t("sound.stop") : t("sound.sides")}
            {...(isSide ? { says: side } : {})}
            onPress={() => (isSide ? stop() : play([sides.left, sides.right]))}
          />
        </div>
      )}
      {here.length > 0 && (
        <div class="acts">
          <Tool words={t("sound.drawn")} href={to("sound", { visit: on.param, ...at })} />
        </div>
      )}
      {failed && <Notice kind="plain" title={t("sound.unplayed")} />}
    </>
  );
}
