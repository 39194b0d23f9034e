/** Big keys for a reading, usable in gloves. Writes text; refuses to read it. Mirrored by data-hand="left". */
import { PhotoIcon } from "./icons.js";
import { type PadKey, typed } from "./keypad-typing.js";
import type { KeypadProps } from "./props-looking.js";

const DIGITS = ["7", "8", "9", "4", "5", "6", "1", "2", "3"] as const;

/** The minus sign proper, as wide as a figure. */
const MINUS = "\u2212";

interface KeyProps {
  readonly face: string;
  readonly name?: string | undefined;
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
  const { label, value, onValue, decimal, minus, fraction, words, extra = [], camera, keep, children } = props;
  const press = (key: PadKey) => () => onValue(typed(value, key, decimal));
  // Beside 0 there is room for one sign: the fraction; then minus moves into the tool column.
  const minusBeside = minus && fraction;
  const beside = 1 + extra.length + (camera ? 1 : 0) + (minusBeside ? 1 : 0);
  return (
    <div class="at-hand">
      {children}
      <div class="pad n" role="group" aria-label={label}>
        <div class="pad-keys">
          {DIGITS.map((digit) => (
            <Key key={digit} face={digit} onPress={press(digit)} />
          ))}
          {decimal ? <Key face={decimal} name={words.decimal} onPress={press("decimal")} /> : <span />}
          <Key face="0" onPress={press("0")} />
          {minus && !fraction && <Key face={MINUS} name={words.minus} onPress={press("minus")} />}
          {fraction && <Key face="/" name={words.fraction} onPress={press("fraction")} />}
        </div>
        <div class="pad-tools">
          <button class="key side" type="button" onMouseDown={stay} onClick={press("rub-out")}>
            {words.rubOut}
          </button>
          {minusBeside && (
            <button class="key side" type="button" aria-label={words.minus} onMouseDown={stay} onClick={press("minus")}>
              {MINUS}
            </button>
          )}
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
            data-rows={Math.max(1, 4 - beside)}
            disabled={keep.disabled}
            onClick={keep.onPress}
          >
            {keep.words}
          </button>
        </div>
      </div>
    </div>
  );
}
