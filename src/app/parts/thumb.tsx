/** One picture in small, with how it is kept; pressed to choose it. Shows an object URL; refuses to make or revoke one. */
import type { ComponentChildren } from "preact";
import { TickIcon } from "./icons.js";
import { MaybePressable } from "./pressable.js";
import type { ThumbProps } from "./props-frame.js";

function Face({ look, chosen, children, ...press }: FaceProps) {
  if (chosen === undefined)
    return (
      <MaybePressable class={look} {...press}>
        {children}
      </MaybePressable>
    );
  return (
    <button type="button" class={look} aria-pressed={chosen} onClick={press.onPress}>
      {children}
      {chosen && (
        <span class="thumb-words">
          <TickIcon />
        </span>
      )}
    </button>
  );
}
interface FaceProps extends Pick<ThumbProps, "href" | "onPress" | "chosen"> {
  readonly look: string;
  readonly children: ComponentChildren;
}

export function Thumb({ src, alt, state, words, onShown, ...press }: ThumbProps) {
  return (
    <Face look={`thumb ${state}`} {...press}>
      {src === undefined ? (
        <span class="spoken">{alt}</span>
      ) : (
        <img src={src} alt={alt} decoding="async" onLoad={onShown} />
      )}
      {state !== "kept" && words && <span class={src === undefined ? undefined : "thumb-words"}>{words}</span>}
    </Face>
  );
}
