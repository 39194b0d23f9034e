/** One picture in small, with how it is kept. Shows an object URL; refuses to make or revoke one. */
import { MaybePressable } from "./pressable.js";
import type { ThumbProps } from "./props-frame.js";

export function Thumb({ src, alt, state, words, href, onPress }: ThumbProps) {
  return (
    <MaybePressable class={`thumb ${state}`} href={href} onPress={onPress}>
      {src === undefined ? <span class="spoken">{alt}</span> : <img src={src} alt={alt} decoding="async" />}
      {state !== "kept" && words && <span class={src === undefined ? undefined : "thumb-words"}>{words}</span>}
    </MaybePressable>
  );
}
