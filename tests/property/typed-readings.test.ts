/** Laws of typed readings: whatever is typed is understood the same twice or refused with a reason. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { QUANTITIES, readTyped, UNIT_MESSAGES, unitsOf } from "../../src/core/units/index.js";

const SEED = 20_261_107;
const setting = fc.constantFrom(...QUANTITIES).chain((quantity) =>
  fc.record({
    quantity: fc.constant(quantity),
    unit: fc.constantFrom(...unitsOf(quantity).map(({ code }) => code)),
    decimalComma: fc.boolean(),
  }),
);
const scraps = fc
  .array(fc.constantFrom(..."0123456789.,/-+−½ ", " ", "mm", "in", '"', "'", "bar", "°C", "thou", "e", "%", "x"), {
    maxLength: 9,
  })
  .map((parts) => parts.join(""));

test("anything typed is a finite reading that reads back the same, or is refused with a text", () => {
  fc.assert(
    fc.property(fc.oneof(scraps, fc.string({ unit: "grapheme", maxLength: 45 })), setting, (typed, options) => {
      const first = readTyped(typed, options);
      if (!first.ok) {
        for (const { code } of first.problems) expect(UNIT_MESSAGES[code]).toBeTypeOf("string");
        expect(first.problems).toHaveLength(1);
        return;
      }
      expect(Number.isFinite(first.value.canonical)).toBe(true);
      // Kept texts have a decimal point, whatever the person's own mark is.
      expect(readTyped(first.value.text, { quantity: options.quantity, unit: first.value.unit })).toEqual(first);
    }),
    { seed: SEED, numRuns: 20_000 },
  );
}, 60_000);

test("a plain decimal means itself, with point, comma, sign and spaces", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 99999 }),
      fc.integer({ min: 1, max: 2 }),
      fc.constantFrom("", "-", "−", "+"),
      (digits, decimals, sign) => {
        const value = (sign === "-" || sign === "−" ? -digits : digits) / 10 ** decimals;
        const text = (digits / 10 ** decimals).toFixed(decimals);
        for (const typed of [text, text.replace(".", ","), ` ${text} bar`, `${text}bar`]) {
          const read = readTyped(`${sign}${typed.trim()}`, { quantity: "pressure", unit: "bar" });
          expect(read.ok && read.value.canonical).toBe(value === 0 ? 0 : value);
        }
      },
    ),
    { seed: SEED + 1, numRuns: 2000 },
  );
});
