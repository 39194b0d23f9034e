/** The last picture of the same spot over the viewfinder, so that one stands where one stood then. Keeps nothing. */
import { UnitSwitch } from "../parts/switch.js";
import type { ComparedPicture } from "../state/earlier-pictures.js";
import { day, t } from "../texts/marks.js";
import { useKeptBytes } from "./kept-picture.js";

const LOOKS = ["off", "faint", "half"] as const;
export type GhostLook = (typeof LOOKS)[number];

interface GhostProps {
  readonly before: ComparedPicture;
  readonly look: GhostLook;
}

export function Ghost({ before, look }: GhostProps) {
  const { src, drawn } = useKeptBytes(look === "off" ? undefined : before.picture.blob);
  if (look === "off" || src === undefined) return null;
  return <img class={`ghost ${look}`} src={src} alt={t("ghost.alt", { day: day(before.taken) })} onLoad={drawn} />;
}

export function GhostChoice({ before, look, onLook }: GhostProps & { readonly onLook: (look: GhostLook) => void }) {
  return (
    <div class="form">
      <p class="label">{t("ghost.label", { day: day(before.taken) })}</p>
      <UnitSwitch
        label={t("ghost.label", { day: day(before.taken) })}
        choices={LOOKS.map((id) => ({ id, words: t(`ghost.${id}`) }))}
        chosen={look}
        onChoose={(id) => {
          const chosen = LOOKS.find((one) => one === id);
          if (chosen) onLook(chosen);
        }}
      />
    </div>
  );
}
