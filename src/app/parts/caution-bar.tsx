/** The worst caution in one line that opens the rest: the car list carries it, so it is apart from the other panels. */
import { AlertIcon, OnwardIcon } from "./icons.js";
import { MaybePressable } from "./pressable.js";
import type { CautionPanelProps, Signal } from "./props-telling.js";

/** How each signal word is coloured. */
export const LOOK: Readonly<Record<Signal, string>> = {
  danger: "signal danger",
  warning: "signal warning",
  caution: "signal caution",
  notice: "signal notice-word",
};

export function CautionBar({
  signal,
  word,
  not,
  href,
  onPress,
}: Pick<CautionPanelProps, "signal" | "word" | "not" | "href" | "onPress">) {
  return (
    <MaybePressable class={`caution-bar ${LOOK[signal]}`} href={href} onPress={onPress}>
      {signal !== "notice" && <AlertIcon />}
      <span>{word}</span>
      <span class="not">{not}</span>
      {(href !== undefined || onPress !== undefined) && <OnwardIcon />}
    </MaybePressable>
  );
}
