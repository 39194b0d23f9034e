/** Tools and the next action within reach of the thumb, at the foot of the screen. Mirrored by data-hand="left". */
import { NextAction } from "./button.js";
import { PhotoIcon, SoundIcon } from "./icons.js";
import { Pressable } from "./pressable.js";
import type { ThumbZoneProps } from "./props-frame.js";

export function ThumbZone({ label, tools = [], next }: ThumbZoneProps) {
  return (
    <section class={next ? "thumbs with-next" : "thumbs"} aria-label={label}>
      {tools.map((tool) => (
        <Pressable
          key={tool.id}
          class={tool.icon ? "tool drawn" : "tool"}
          href={tool.href}
          onPress={tool.onPress}
          disabled={tool.disabled}
        >
          {tool.icon === "photo" && <PhotoIcon />}
          {tool.icon === "sound" && <SoundIcon />}
          <span>{tool.words}</span>
        </Pressable>
      ))}
      {next && <NextAction {...next} />}
    </section>
  );
}
