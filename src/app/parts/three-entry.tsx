/**
 * Low, likely and high in three boxes over one keypad. Shows at once what can't stand; hands over only figures that
 * read and rise. Refuses to know what they are for.
 */
import { useId, useRef, useState } from "preact/hooks";
import { Keypad } from "./keypad.js";
import type { ThreeEntryProps, ThreeTexts } from "./props-planning.js";
import { forKeys, settled, threeRead, written } from "./three-reading.js";

type Box = 0 | 1 | 2;
const BOXES: readonly Box[] = [0, 1, 2];
const NAMES = ["low", "likely", "high"] as const;

const withText = (values: ThreeTexts, at: Box, text: string): ThreeTexts => [
  at === 0 ? text : values[0],
  at === 1 ? text : values[1],
  at === 2 ? text : values[2],
];

export function ThreeEntry({ label, kind, values, onValues, onKeep, unit, says, words }: ThreeEntryProps) {
  const id = useId();
  const boxes = useRef<(HTMLInputElement | null)[]>([]);
  const [at, setAt] = useState<Box>(0);
  const { figures, fault } = threeRead(values, kind);
  const empty = BOXES.find((box) => values[box] === "");
  const put = (box: Box, text: string): void => onValues(withText(values, box, written(text, kind)));
  const settle = (box: Box): void => {
    const text = settled(values[box], kind);
    if (text !== values[box]) put(box, text);
  };
  const onward = (): void => {
    if (figures) onKeep(figures);
    else if (empty !== undefined) boxes.current[empty]?.focus();
  };
  return (
    <Keypad
      label={words.keys}
      value={forKeys(values[at], kind)}
      onValue={(text) => put(at, text)}
      decimal={kind.of === "money" && kind.digits > 0 ? kind.decimal : undefined}
      words={words}
      keep={{ words: figures ? words.keep(values) : words.next, disabled: fault !== undefined, onPress: onward }}
    >
      <fieldset class="three n">
        <legend>{label}</legend>
        {BOXES.map((box) => (
          <label key={box} data-here={box === at ? "" : undefined}>
            <span class="small">{unit === undefined ? words[NAMES[box]] : `${words[NAMES[box]]}, ${unit}`}</span>
            <input
              type="text"
              inputMode="none"
              autocomplete="off"
              ref={(input) => {
                boxes.current[box] = input;
              }}
              value={values[box]}
              aria-invalid={fault?.at === box ? "true" : undefined}
              aria-describedby={id}
              onFocus={() => setAt(box)}
              onBlur={() => settle(box)}
              onInput={(event) => put(box, event.currentTarget.value)}
              onKeyDown={(event) => event.key === "Enter" && onward()}
            />
          </label>
        ))}
        <p class={fault ? "problem" : "small"} id={id} role="status">
          {fault ? words[fault.what] : says}
        </p>
      </fieldset>
    </Keypad>
  );
}
