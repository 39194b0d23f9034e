import { afterEach, expect, test } from "vitest";
import { UNIT_MESSAGES } from "../../core/units/index.js";
import { en } from "./en.js";
import { enCar } from "./en-car.js";
import { enDecisions } from "./en-decisions.js";
import { enFiles } from "./en-files.js";
import { enFirst } from "./en-first.js";
import { enHandOver } from "./en-hand-over.js";
import { enHouse } from "./en-house.js";
import { enKinds } from "./en-kinds.js";
import { enLimits } from "./en-limits.js";
import { enLooks } from "./en-looks.js";
import { enMedia } from "./en-media.js";
import { enOwnersWord } from "./en-owners-word.js";
import { enPlanDates } from "./en-plan-dates.js";
import { enPlanEstimate } from "./en-plan-estimate.js";
import { enPlanIntake } from "./en-plan-intake.js";
import { enPlanLoose } from "./en-plan-loose.js";
import { enPlanParts } from "./en-plan-parts.js";
import { enPlanScope } from "./en-plan-scope.js";
import { enPlanUse } from "./en-plan-use.js";
import { enPlanWork } from "./en-plan-work.js";
import { enReading } from "./en-reading.js";
import { enRound } from "./en-round.js";
import { enSeason } from "./en-season.js";
import { enSheetForms } from "./en-sheet-forms.js";
import { enSheetWork } from "./en-sheet-work.js";
import { enViewing } from "./en-viewing.js";
import { enWorking } from "./en-working.js";
import { decimalComma, figure, rounded } from "./figures.js";
import { fill } from "./fill.js";
import { enHandOverTo } from "./hand-over-to.js";
import { t } from "./index.js";
import { problemText, problemTexts } from "./problems.js";

afterEach(() => {
  decimalComma.value = false;
});

test("a text is filled with its names, figures in the person's writing, plurals by the language", () => {
  expect(t("findings.sentence.dangerous", { n: 1 })).toBe("1 thing is dangerous.");
  expect(t("findings.sentence.dangerous", { n: 2 })).toBe("2 things are dangerous.");
  decimalComma.value = true;
  expect(fill("{value} mm", { value: 0.25 })).toBe("0,25 mm");
  // A missing figure is a mistake of ours; it stops no screen.
  expect(fill("{value} mm", {})).toBe(" mm");
});

test("figures: thousands from five digits on, the decimal sign of the person, other text as it stands", () => {
  expect([figure("1234"), figure("61240"), figure("-0.50"), figure("3/32"), figure("1 1/2")]).toEqual([
    "1234",
    "61\u202f240",
    "-0.50",
    "3/32",
    "1 1/2",
  ]);
  expect([rounded(0.1 + 0.2, 3), rounded(10, 1), rounded(0.04, 1)]).toEqual(["0.3", "10", "0"]);
  decimalComma.value = true;
  expect(figure("61240.5")).toBe("61\u202f240,5");
});

test("the parts of the catalogue share no key, and no text is empty or carries a stray brace", () => {
  const parts = [
    Object.keys(enFirst),
    Object.keys(enFiles),
    Object.keys(enRound),
    Object.keys(enReading),
    Object.keys(enMedia),
    Object.keys(enCar),
    Object.keys(enKinds),
    Object.keys(enHouse),
    Object.keys(enSheetWork),
    Object.keys(enPlanWork),
    Object.keys(enPlanEstimate),
    Object.keys(enPlanScope),
    Object.keys(enPlanUse),
    Object.keys(enPlanIntake),
    Object.keys(enSeason),
    Object.keys(enViewing),
    Object.keys(enWorking),
    Object.keys(enPlanDates),
    Object.keys(enPlanLoose),
    Object.keys(enPlanParts),
    Object.keys(enOwnersWord),
    Object.keys(enDecisions),
    Object.keys(enHandOver),
    Object.keys(enHandOverTo),
    Object.keys(enSheetForms),
    Object.keys(enLimits),
    Object.keys(enLooks),
  ].flat();
  expect(new Set(parts).size).toBe(parts.length);
  for (const key of Object.keys(enCar)) expect(Object.hasOwn(en, key), key).toBe(false);
  const money = { ...enPlanWork, ...enPlanEstimate, ...enPlanScope, ...enPlanUse, ...enPlanIntake };
  const planned = { ...money, ...enPlanDates, ...enPlanLoose, ...enPlanParts, ...enOwnersWord, ...enDecisions };
  for (const key of Object.keys(planned)) expect(Object.hasOwn(en, key), key).toBe(false);
  const all = {
    ...en,
    ...enMedia,
    ...enCar,
    ...enKinds,
    ...enHouse,
    ...planned,
    ...enWorking,
    ...enSeason,
    ...enViewing,
    ...enHandOver,
    ...enHandOverTo,
    ...enSheetForms,
    ...enLimits,
    ...enLooks,
  };
  for (const [key, text] of Object.entries(all)) {
    expect(text.trim(), key).not.toBe("");
    expect(text.replace(/\{[a-z]+\d*(\|[a-z]+=[^|}]*)*\}/g, ""), key).not.toMatch(/[{}]/);
  }
});

test("every problem a person can meet while typing a reading or keeping one has words", () => {
  for (const code of Object.keys(UNIT_MESSAGES)) expect(problemTexts[code], code).toBeDefined();
  for (const is of ["full", "refused", "lost", "closed-by-newer", "blocked"]) {
    expect(problemTexts[`record.store-${is}`], is).toBeDefined();
    expect(Object.hasOwn(en, `trouble.${is}`), is).toBe(true);
  }
});

test("a problem without words is told with its code, never left out", () => {
  expect(problemText({ code: "new.kind", where: {}, params: {} })).toBe("Unforeseen: new.kind.");
  expect(
    problemText({ code: "units.unknown-unit", where: {}, params: { unit: "furlong", expected: ["mm", "in"] } }),
  ).toBe("“furlong” is no unit known here. Known: mm, in.");
});
