/** Big keys for a reading, usable in gloves. Writes text; refuses to read it. Mirrored by data-hand="left". */
import { PhotoIcon } from "./icons.js";
import { type PadKey, typed } from "./keypad-typing.js";
import type { KeypadProps } from "./props-looking.js";

const DIGITS = ["7", "8", "9", "4", "5", "6", "1", "2", "3"] as const;

interface KeyProps {
  readonly face: string;
  readonly name?: string;
  readonly onPress: () => void;
}
function Key({ face, name, onPress }: KeyProps) {
  return (
    <button class="key" type="button" aria-label={name} onMouseDown={stay} onClick={onPress}>
      {face}
    </button>
  );
}

/** The figure keeps the focus while keys are pressed, so that its caret stays and a hardware keyboard goes on. */
const stay = (event: Event): void => event.preventDefault();

export function Keypad(props: KeypadProps) {
  const { label, value, onValue, decimal, minus, fraction, words, extra = [], camera, keep } = props;
  const press = (key: PadKey) => () => onValue(typed(value, key, decimal));
  const beside = 1 + extra.length + (camera ? 1 : 0);
  const lastRow = 1 + (decimal ? 1 : 0) + (minus ? 1 : 0) + (fraction ? 1 : 0);
  const rows = lastRow > 3 ? 5 : 4;
  return (
    <div class="pad n" role="group" aria-label={label}>
      <div class="pad-keys">
        {DIGITS.map((digit) => (
          <Key key={digit} face={digit} onPress={press(digit)} />
        ))}
        {decimal ? <Key face={decimal} name={words.decimal} onPress={press("decimal")} /> : <span />}
        <Key face="0" onPress={press("0")} />
        {minus && <Key face={"\u2212"} name={words.minus} onPress={press("minus")} />}
        {fraction && <Key face="/" name={words.fraction} onPress={press("fraction")} />}
      </div>
      <div class="pad-tools">
        <button class="key side" type="button" onMouseDown={stay} onClick={press("rub-out")}>
          {words.rubOut}
        </button>
        {extra.map((result) => (
          <button key={result.id} class="key side" type="button" onClick={result.onPress}>
            {result.words}
          </button>
        ))}
        {camera && (
          <button class="key side" type="button" aria-label={camera.words} onClick={camera.onPress}>
            <PhotoIcon />
          </button>
        )}
        <button
          class="key keep"
          type="button"
          data-rows={Math.max(1, rows - beside)}
          disabled={keep.disabled}
          onClick={keep.onPress}
        >
          {keep.words}
        </button>
      </div>
    </div>
  );
}
