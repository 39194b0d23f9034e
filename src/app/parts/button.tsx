/** The one next action of a screen, and outlined tools. */
import { OnwardIcon } from "./icons.js";
import { Pressable } from "./pressable.js";
import type { ButtonProps } from "./props-frame.js";

export function NextAction({ words, says, onward, disabled, type, href, onPress }: ButtonProps) {
  return (
    <Pressable class="action" href={href} onPress={onPress} disabled={disabled} type={type}>
      <span>
        {words}
        {says && <small class="n">{says}</small>}
      </span>
      {onward && <OnwardIcon />}
    </Pressable>
  );
}

export function Tool({ words, says, disabled, type, href, onPress }: ButtonProps) {
  return (
    <Pressable class="tool plain" href={href} onPress={onPress} disabled={disabled} type={type}>
      <span>
        {words}
        {says && <small class="small"> {says}</small>}
      </span>
    </Pressable>
  );
}
