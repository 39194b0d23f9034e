/** The line at the head of a screen: the way back, and how keeping stands. Refuses to wait: the caller does. */
import { BackIcon, KeepingStroke } from "./icons.js";
import { isPressable, Pressable } from "./pressable.js";
import type { TopLineProps } from "./props-frame.js";

export function TopLine({ back, words, middle, keeping, aside }: TopLineProps) {
  const state = keeping && (
    <>
      <KeepingStroke kind={keeping.kind} />
      <span class="keeping-words">{keeping.words}</span>
    </>
  );
  return (
    <div class="top">
      {back ? (
        <Pressable class="back" href={back.href} onPress={back.onPress}>
          <BackIcon />
          <span class="back-words">{back.words}</span>
        </Pressable>
      ) : (
        <span>{words}</span>
      )}
      {middle}
      <div role="status">
        {keeping && isPressable(keeping) ? (
          <Pressable class="keeping" href={keeping.href} onPress={keeping.onPress}>
            {state}
          </Pressable>
        ) : (
          <span class="keeping">{keeping ? state : aside}</span>
        )}
      </div>
    </div>
  );
}
