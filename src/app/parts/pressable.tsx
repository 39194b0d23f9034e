/** A link or a button, whichever the press is. Refuses to style itself. */
import type { ComponentChildren } from "preact";
import type { Press } from "./props-frame.js";

export interface PressableProps extends Press {
  readonly class?: string | undefined;
  readonly label?: string | undefined;
  readonly disabled?: boolean | undefined;
  readonly type?: "button" | "submit" | undefined;
  readonly expanded?: boolean | undefined;
  readonly current?: boolean | undefined;
  readonly children: ComponentChildren;
}

/** Whether there is anything to press. */
export const isPressable = (press: Press): boolean => press.href !== undefined || press.onPress !== undefined;

export function Pressable({
  href,
  onPress,
  class: look,
  label,
  disabled,
  type,
  expanded,
  current,
  children,
}: PressableProps) {
  if (href !== undefined && !disabled) {
    return (
      <a class={look} href={href} aria-label={label} aria-current={current ? "true" : undefined}>
        {children}
      </a>
    );
  }
  return (
    <button
      class={look}
      type={type ?? "button"}
      disabled={disabled}
      aria-label={label}
      aria-expanded={expanded}
      aria-current={current ? "true" : undefined}
      onClick={onPress}
    >
      {children}
    </button>
  );
}

/** Pressed when there is something to press, else a plain box of the same look. */
export function MaybePressable(props: PressableProps) {
  return isPressable(props) ? <Pressable {...props} /> : <div class={props.class}>{props.children}</div>;
}
