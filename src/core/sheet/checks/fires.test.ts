import { describe, expect, test } from "vitest";
import { sheetSays } from "../../../../tests/support/mini-sheet.js";

/** Whether rule hub.r1 with this condition is told never to fire; its case would not matter here. */
function never(when: string): boolean {
  const { problems, codes } = sheetSays({
    part: "rules.yaml",
    from: `'hub.spin == "rough"'`,
    to: JSON.stringify(when),
  });
  const others = codes.filter((code) => code !== "never-fires");
  if (others.length > 0) throw new Error(problems.join("\n"));
  return codes.length > 0;
}

describe("proven never to fire", () => {
  test.each([
    ["two words of one exclusive point", 'hub.spin == "rough" && hub.spin == "tight"'],
    ["a word and its opposite", 'hub.spin == "rough" && !(hub.spin in ["rough", "tight"])'],
    ["an exclusive word with another", '"none" in hub.noise && "hum" in hub.noise'],
    [
      "every corner rough while one is smooth",
      'places("corner").all(c, c.hub.spin == "rough") && places("corner").exists(c, c.hub.spin == "smooth")',
    ],
    ["a grade above and below", "band(hub.float) >= major && band(hub.float) < minor"],
    [
      "words that contradict beside a reading that may be anything",
      'clearly_more(hub.float, opposite.hub.float) && hub.spin == "rough" && hub.spin == "smooth"',
    ],
    ["a car fact against itself", 'car.brakes == "inboard" && car.brakes == "outboard"'],
    ["a yes and no of the car", "car.abs && !car.abs"],
    ["the twin's reply against itself", 'opposite.hub.spin == "rough" && opposite.hub.spin == "smooth"'],
    ["more ways than there are", 'at_least(3, hub.spin == "rough", hub.spin == "smooth", hub.spin == "tight")'],
  ])("%s", (_name, when) => {
    expect(never(when)).toBe(true);
  });
});

describe("not told, since it can fire or nobody can prove it cannot", () => {
  test.each([
    ["one word", 'hub.spin == "rough"'],
    ["two words at two places", 'hub.spin == "rough" && opposite.hub.spin == "smooth"'],
    ["several words together", '"hum" in hub.noise && "click" in hub.noise'],
    ["a grade only a maker's figure may give", "band(hub.float) >= advisory && band(hub.float) < minor"],
    [
      "readings against each other, whatever they may be",
      "clearly_more(hub.float, opposite.hub.float) && clearly_more(opposite.hub.float, hub.float)",
    ],
    ["a count that may be told", "hub.noise_age > 30.0 && hub.noise_age < 32.0"],
  ])("%s", (_name, when) => {
    expect(never(when)).toBe(false);
  });
  test("a provisional rule that rests on silence", () => {
    const { codes } = sheetSays(
      { part: "rules.yaml", from: `'hub.spin == "rough"'`, to: `'hub.spin == "rough" && unanswered(hub.float)'` },
      { part: "rules.yaml", from: "    sure: likely\n", to: "    sure: likely\n    provisional: true\n" },
    );
    expect(codes).toEqual([]);
  });
});
