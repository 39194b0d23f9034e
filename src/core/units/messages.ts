/** Texts for what units refuse, by code; {name} is filled from the problem's params. English; the app may have its own. */
export const UNIT_MESSAGES: Readonly<Record<string, string>> = {
  "units.empty": "Nothing is typed.",
  "units.too-long": "Too long for a reading: at most {longest} signs.",
  "units.not-a-number": "'{typed}' is no number. Type for example 0.22, 3/32 or 1 1/2.",
  "units.not-finite": "'{typed}' is no reading: a reading has an end.",
  "units.two-numbers": "'{typed}' holds more than one number. Type one reading at a time.",
  "units.ambiguous-mark":
    "'{typed}' can be read two ways: thousands or decimals. Leave thousands marks out, or add a decimal.",
  "units.zero-below": "'{typed}' has zero below the line.",
  "units.unknown-unit": "'{unit}' is no unit known here. Expected: {expected}.",
  "units.other-quantity": "'{unit}' measures {of}, not {quantity}. Expected: {expected}.",
  "units.fraction-needs-unit": "'{typed}' in {unit}, or in inches? Add the unit: {typed} in, or {typed} {unit}.",
};
