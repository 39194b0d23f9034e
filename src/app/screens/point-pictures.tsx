/** The small pictures of a point. Addresses of bytes are given back when a picture leaves the screen. */
import { useEffect, useState } from "preact/hooks";
import { Thumb } from "../parts/thumb.js";
import { useApp } from "../state/app.js";
import { to } from "../state/routes.js";
import { t } from "../texts/round.js";
import type { OnDesk } from "./on-visit.js";

/** The address of kept bytes; undefined while they are read or when they are missing. */
export function useKeptBytes(hash: string | undefined): string | undefined {
  const { store } = useApp();
  const [src, setSrc] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let gone = false;
    const read = async (): Promise<void> => {
      const kept = hash === undefined ? undefined : await store.blob(hash);
      if (gone || !kept?.ok || !kept.value) return;
      made = URL.createObjectURL(new Blob([kept.value.bytes], { type: kept.value.type }));
      setSrc(made);
    };
    void read();
    return () => {
      gone = true;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [hash, store]);
  return src;
}

interface ShownPicture {
  readonly id: string;
  readonly blob: string;
  readonly thumb?: string;
}

function OnePicture({
  on,
  picture,
  alt,
}: {
  readonly on: OnDesk;
  readonly picture: ShownPicture;
  readonly alt: string;
}) {
  const src = useKeptBytes(picture.thumb);
  const unreadable = picture.thumb === undefined;
  return (
    <Thumb
      alt={alt}
      state={unreadable ? "unreadable" : "kept"}
      href={to("picture", { visit: on.param, picture: picture.id.slice(picture.id.lastIndexOf("/") + 1) })}
      {...(src === undefined ? {} : { src })}
      {...(unreadable ? { words: t("photo.original") } : {})}
    />
  );
}

export function PointPictures({
  on,
  pictures,
  point,
  place,
}: {
  readonly on: OnDesk;
  readonly pictures: readonly ShownPicture[];
  readonly point: string;
  readonly place: string;
}) {
  if (pictures.length === 0) return null;
  return (
    <div class="pictures">
      {pictures.map((picture) => (
        <OnePicture key={picture.id} on={on} picture={picture} alt={t("photo.alt", { point, place })} />
      ))}
    </div>
  );
}
