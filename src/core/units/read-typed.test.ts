import { expect, test } from "vitest";
import { type ReadOptions, readTyped, UNIT_MESSAGES } from "./index.js";

const MM: ReadOptions = { quantity: "length", unit: "mm" };
const INCH: ReadOptions = { quantity: "length", unit: "[in_i]" };

const read = (typed: string, options: ReadOptions = MM) => {
  const result = readTyped(typed, options);
  if (!result.ok) throw new Error(`${typed}: ${result.problems.map(({ code }) => code).join(", ")}`);
  return result.value;
};
const code = (typed: string, options: ReadOptions = MM): string => {
  const result = readTyped(typed, options);
  return result.ok
    ? `read as ${result.value.text} ${result.value.unit}`
    : result.problems.map((problem) => problem.code).join(", ");
};

test.each<[string, ReadOptions, number, string, number]>([
  ["0.22", MM, 0.22, "mm", 0.22],
  ["0,22", MM, 0.22, "mm", 0.22],
  ["  0.2mm ", MM, 0.2, "mm", 0.2],
  ["4 thou", MM, 4, "[mil_i]", 0.1016],
  ['0.004"', MM, 0.004, "[in_i]", 0.1016],
  ["0.004″", MM, 0.004, "[in_i]", 0.1016],
  ["3/32", INCH, 0.09375, "[in_i]", 2.38125],
  ["3/32 in", MM, 0.09375, "[in_i]", 2.38125],
  ['3/32"', MM, 0.09375, "[in_i]", 2.38125],
  ["1 1/2", INCH, 1.5, "[in_i]", 38.1],
  ["1-1/2 in", MM, 1.5, "[in_i]", 38.1],
  ["1½ in", MM, 1.5, "[in_i]", 38.1],
  ["½", INCH, 0.5, "[in_i]", 12.7],
  ["1⁄4 in", MM, 0.25, "[in_i]", 6.35],
  ["-1 1/2 in", MM, -1.5, "[in_i]", -38.1],
  ["+2", MM, 2, "mm", 2],
  ["−5", MM, -5, "mm", -5],
  [".5", MM, 0.5, "mm", 0.5],
  ["5.", MM, 5, "mm", 5],
  ["1 234 mm".replace(" ", ""), MM, 1234, "mm", 1234],
  ["0,225", MM, 0.225, "mm", 0.225],
  ["1.234", MM, 1.234, "mm", 1.234],
  ["12,5", MM, 12.5, "mm", 12.5],
  ["-0", MM, 0, "mm", 0],
  ["32 psi", { quantity: "pressure", unit: "bar" }, 32, "[psi]", (32 * 4.4482216152605) / 64.516],
  ["212 °F", { quantity: "temperature", unit: "Cel" }, 212, "[degF]", 100],
  ["−5 °C", { quantity: "temperature", unit: "Cel" }, -5, "Cel", -5],
  ["10°", { quantity: "temperature_difference", unit: "K" }, 10, "K", 10],
  ["30%", { quantity: "percent", unit: "%" }, 30, "%", 30],
  ["60 mph", { quantity: "speed", unit: "km/h" }, 60, "[mi_i]/h", 96.56064],
  ["12.4V", { quantity: "voltage", unit: "V" }, 12.4, "V", 12.4],
  ["1.5", { quantity: "ratio", unit: "1" }, 1.5, "1", 1.5],
  ["1/2", { quantity: "volume", unit: "L" }, 0.5, "L", 0.5],
  ["50 cm3", { quantity: "volume", unit: "L" }, 50, "mL", 0.05],
  ["80 ft-lb", { quantity: "torque", unit: "N·m" }, 80, "[ft_i].[lbf_av]", 80 * 4.4482216152605 * 0.3048],
])("%s is understood", (typed, options, value, unit, canonical) => {
  expect(read(typed, options)).toMatchObject({ value, unit, canonical: expect.closeTo(canonical, 12) });
});

test.each([
  ["0,220", "0.220", 3],
  ["+2", "2", 0],
  ["−5", "-5", 0],
  [".5", "0.5", 1],
  ["5.", "5", 0],
  ["007", "7", 0],
  ["-0.0", "-0.0", 1],
])("%s is kept as %s with its decimals", (typed, text, decimals) => {
  expect(read(typed)).toMatchObject({ text, decimals });
});

test("a fraction is kept as a fraction", () => {
  expect(read("1-1/2 in")).toMatchObject({ text: "1 1/2", decimals: null });
  expect(read("3 / 32", INCH)).toMatchObject({ text: "3/32", decimals: null });
});

test("inch fractions to the 64th are exact (inch of 25.4 mm, NIST SP 811)", () => {
  for (let n = 1; n < 64; n++) expect(read(`${n}/64 in`).canonical).toBe((n * 396_875) / 1e6);
  expect(read("1/64 in").canonical).toBe(0.396875);
  expect(read("63/64 in").canonical).toBe(25.003125);
});

test("a kept text reads back as the same reading", () => {
  for (const typed of ["0,220", "−5", "1-1/2 in", "4 thou", "3/32 in", ".5", "12,5"]) {
    const first = read(typed);
    expect(read(first.text, { quantity: "length", unit: first.unit })).toEqual(first);
  }
});

test.each([
  ["", "units.empty"],
  ["   ", "units.empty"],
  ["abc", "units.not-a-number"],
  ["mm", "units.not-a-number"],
  ["--5", "units.not-a-number"],
  ["1..2", "units.not-a-number"],
  ["1.2.3", "units.not-a-number"],
  ["1e5", "units.not-a-number"],
  ["Infinity", "units.not-finite"],
  ["-inf", "units.not-finite"],
  ["NaN", "units.not-finite"],
  ["∞", "units.not-finite"],
  ["0.2 0.3", "units.two-numbers"],
  ["0.2 mm 0.3 mm", "units.two-numbers"],
  ["0.2-0.3", "units.two-numbers"],
  ["0.2/0.3", "units.two-numbers"],
  ["1/2/3 in", "units.two-numbers"],
  ["1 1/2.5", "units.two-numbers"],
  ["0x10", "units.two-numbers"],
  ["1,234", "units.ambiguous-mark"],
  ["12,345 mm", "units.ambiguous-mark"],
  ["1,234.5", "units.ambiguous-mark"],
  ["1.234,5", "units.ambiguous-mark"],
  ["1,234,567", "units.ambiguous-mark"],
  ["1/0", "units.zero-below"],
  ["1 1/0 in", "units.zero-below"],
  ["0/0 in", "units.zero-below"],
  ["3 furlongs", "units.unknown-unit"],
  ["3 bar", "units.other-quantity"],
  ["3 °C", "units.other-quantity"],
  ["3/32", "units.fraction-needs-unit"],
  ["1 1/2", "units.fraction-needs-unit"],
  ["9".repeat(41), "units.too-long"],
])("%s is refused: %s", (typed, reason) => {
  expect(code(typed)).toBe(reason);
});

test("a refusal says what was typed and what would do", () => {
  const result = readTyped("3 bar", MM);
  expect(result).toMatchObject({
    ok: false,
    problems: [{ params: { typed: "3 bar", unit: "bar", of: "pressure", quantity: "length" } }],
  });
  expect(result.ok ? [] : result.problems[0]?.params["expected"]).toContain("thou");
});

test("with a decimal comma of one's own, the point is the doubtful mark", () => {
  const comma: ReadOptions = { ...MM, decimalComma: true };
  expect(read("1,234", comma)).toMatchObject({ value: 1.234, text: "1.234", decimals: 3 });
  expect(read("0.22", comma)).toMatchObject({ value: 0.22 });
  expect(read("0.225", comma)).toMatchObject({ value: 0.225 });
  expect(code("1.234", comma)).toBe("units.ambiguous-mark");
});

test("the longest number that is taken is finite", () => {
  expect(read("9".repeat(40)).canonical).toBeLessThan(Number.MAX_VALUE);
});

test("every refusal has a text", () => {
  for (const typed of ["", "x", "inf", "1 2", "1,234", "1/0", "1 xx", "1 bar", "1/2", "9".repeat(99)]) {
    expect(UNIT_MESSAGES[code(typed)]).toBeTypeOf("string");
  }
});
