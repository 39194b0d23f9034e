/**
 * Kept pictures on a screen: an address of bytes is made when its picture comes near the window and given back as soon
 * as the picture is drawn, so that however many there are, few addresses live. Knows no point and no place.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { Thumb } from "../parts/thumb.js";
import { useApp } from "../state/app.js";
import { to } from "../state/routes.js";
import { t } from "../texts/media.js";

/** Drawn at once; as many more come with each scroll to the end. */
const AT_ONCE = 60;
/** Read a little before they come into the window. */
const NEAR = "240px";

/** The address of kept bytes; undefined while they are read or when they are missing. */
export function useKeptBytes(hash: string | undefined): {
  readonly src: string | undefined;
  /** They are not there, or cannot be read. */
  readonly gone: boolean;
  /** Gives the address back; what is drawn stays drawn. */
  readonly drawn: () => void;
} {
  const { store } = useApp();
  const [src, setSrc] = useState<string>();
  const [gone, setGone] = useState(false);
  const made = useRef<string | undefined>(undefined);
  const giveBack = (): void => {
    if (made.current !== undefined) URL.revokeObjectURL(made.current);
    made.current = undefined;
  };
  useEffect(() => {
    let isOver = false;
    const read = async (): Promise<void> => {
      const kept = hash === undefined ? undefined : await store.blob(hash);
      if (isOver || kept === undefined) return;
      setGone(!kept.ok || !kept.value);
      if (!kept.ok || !kept.value) return;
      made.current = URL.createObjectURL(new Blob([kept.value.bytes], { type: kept.value.type }));
      setSrc(made.current);
    };
    void read();
    return () => {
      isOver = true;
      giveBack();
      setSrc(undefined);
    };
  }, [hash, store]);
  return { src, gone, drawn: giveBack };
}

const arrivals = new WeakMap<Element, (near: boolean) => void>();
let watching: IntersectionObserver | undefined;

/** Calls back whenever the element comes near the window or leaves it. */
function watchNear(element: Element, tell: (near: boolean) => void): () => void {
  watching ??= new IntersectionObserver(
    (seen) => {
      for (const { target, isIntersecting } of seen) arrivals.get(target)?.(isIntersecting);
    },
    { rootMargin: NEAR },
  );
  arrivals.set(element, tell);
  watching.observe(element);
  return () => {
    watching?.unobserve(element);
    arrivals.delete(element);
  };
}

/** Whether the element it is given to is near the window. */
export function useNear<Of extends Element>() {
  const element = useRef<Of>(null);
  const [near, setNear] = useState(false);
  useEffect(() => (element.current ? watchNear(element.current, setNear) : undefined), []);
  return { element, near };
}

/** A picture as lists need it. */
export interface ShownPicture {
  readonly id: string;
  readonly thumb?: string;
}

interface KeptThumbProps {
  readonly picture: ShownPicture;
  readonly alt: string;
  readonly href?: string;
  readonly onPress?: () => void;
  readonly chosen?: boolean;
}

/** One small picture, read when it comes near the window. */
export function KeptThumb({ picture, alt, ...press }: KeptThumbProps) {
  const { element, near } = useNear<HTMLSpanElement>();
  const { src, drawn } = useKeptBytes(near ? picture.thumb : undefined);
  const unreadable = picture.thumb === undefined;
  return (
    <span ref={element}>
      <Thumb
        alt={alt}
        state={unreadable ? "unreadable" : "kept"}
        onShown={drawn}
        {...press}
        {...(src === undefined ? {} : { src })}
        {...(unreadable ? { words: t("photo.original") } : {})}
      />
    </span>
  );
}

/** Where one kept picture is shown whole. */
export const pictureHref = (visit: string, id: string): string =>
  to("picture", { visit, picture: id.slice(id.lastIndexOf("/") + 1) });

/** Small pictures in rows; of many only the first are drawn, more with each scroll to the end. */
export function Thumbs({
  pictures,
  one,
}: {
  readonly pictures: readonly ShownPicture[];
  readonly one: (picture: ShownPicture, index: number) => Omit<KeptThumbProps, "picture">;
}) {
  const [drawn, setDrawn] = useState(AT_ONCE);
  const { element, near } = useNear<HTMLSpanElement>();
  const more = drawn < pictures.length;
  useEffect(() => {
    if (near && more) setDrawn((before) => before + AT_ONCE);
  }, [near, more, drawn]);
  return (
    <div class="pictures">
      {pictures.slice(0, drawn).map((picture, index) => (
        <KeptThumb key={picture.id} picture={picture} {...one(picture, index)} />
      ))}
      <span ref={element} />
    </div>
  );
}
