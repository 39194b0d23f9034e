// What wears, who signed and how figures end, as a hand-over tells them to each reader.
import { expect, test } from "vitest";
import { soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { wholeVisit } from "../../../../tests/support/handover-whole.js";
import type { Audience } from "../../terms/index.js";
import { handover } from "./build.js";
import { factsOf } from "./facts.js";
import { judgedText } from "./figures.js";
import { toHtml } from "./html.js";
import type { HandoverInput } from "./input.js";
import { handoverPages } from "./pages.js";
import { trendText } from "./pages-rest.js";
import { toText } from "./text.js";

const [TREND] = wholeVisit().trends ?? [];
if (!TREND) throw new Error("Nothing wears on the whole visit");
const formsOf = (more: Partial<HandoverInput>) => {
  const model = handover(wholeVisit(more));
  const pages = handoverPages(model, WORDS);
  return { model, text: toText(pages, WORDS), html: toHtml(pages, WORDS) };
};

test.each([
  [6, 0.577, "wk", "6.00 ± 0.58 wk"],
  [0.17, 0.04, "mm", "0.17 ± 0.04 mm"],
  [3.25, 0.1, "mm", "3.25 ± 0.10 mm"],
  [12.3456, 0.996, "mm", "12.3 ± 1.0 mm"],
  [1.26, 0.0049999, "mm", "1.260 ± 0.005 mm"],
  [4567, 123.4, "km", "4570 ± 120 km"],
  [-0.004, 0.5, "mm", "0.0 ± 0.5 mm"],
  [5, 0, "mm", "5 mm"],
])("HO36 %f ± %f %s ends both at the same decimal", (value, uncertainty, unit, told) => {
  expect(judgedText(WORDS, value, uncertainty, unit)).toBe(told);
});

test("HO36 a reading no limit stands over says so, and that it was not judged", () => {
  const reading = { point: "p", place: "car", title: "Idle", where: "", typed: ["900"], value: 900, uncertainty: 0 };
  const readings = [{ ...reading, unit: "/min", limits: [] }];
  const text = toText(handoverPages(handover(soundVisit({ readings })), WORDS), WORDS);
  expect(text).toContain("Limits: no limit\n");
  expect(text).toContain("Stands: not judged\n");
});

test("HO34 what wears tells the edge passed, the days of the next, and by when to look again", () => {
  expect(trendText(WORDS, TREND)).toContain(
    "Reaches 0.15 mm (major) between 1 Aug 2030 and 1 Feb 2032. Look again by 1 Aug 2031.",
  );
  const passed = { edge: 0.1, grade: "minor" } as const;
  expect(trendText(WORDS, { ...TREND, passed })).toContain("Past 0.1 mm (minor). Reaches 0.15 mm (major) between");
  const { reaches: _, ...last } = { ...TREND, passed: { edge: TREND.edge, grade: TREND.grade } };
  const told = trendText(WORDS, last);
  expect(told).toContain("Past 0.15 mm (major). Look again");
  expect(told).not.toMatch(/reaches/i);
});

test.each(["owner", "technician"] as const)(
  "HO35 %s: strokes are drawn, and words say who signed for what",
  (reader) => {
    const { model, text, html } = formsOf({ for: reader });
    expect(html.match(/<svg[^>]*class="signature"/g)).toHaveLength(1);
    expect(html).toMatch(/class="signature"[^>]*><path class="stroke" d="M10 50Q60 20 /);
    for (const form of [text, html]) {
      expect(form).toContain("Signed by Otto Lindqvist on 4 May 2031 for 2 decisions.");
      expect(form).toContain(
        "Agreed in person by Otto Lindqvist on 5 May 2031 for 3 decisions, without a drawn signature. Of these, 1 stands as signed; what was changed later is not signed.",
      );
    }
    expect(factsOf(model, WORDS).filter(({ is }) => is === "signature")).toHaveLength(2);
  },
);

test("HO31 a buyer's version has no signature, drawn or in words, and not the name of who signed", () => {
  const reader: Audience = "buyer";
  const { model, text, html } = formsOf({ for: reader, complaints: [{ id: "c", words: "Nora Falk hears a hum" }] });
  expect(model.signatures).toEqual([]);
  expect(html).not.toContain('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 100"');
  for (const form of [text, html]) expect(form).not.toMatch(/Signed by|Agreed in person|Otto Lindqvist/);
  const signatures = [{ id: "s", who: "Nora Falk", on: "2031-05-04", of: 1, standing: 1 }];
  const struck = formsOf({ for: reader, signatures, complaints: [{ id: "c", words: "Nora Falk hears a hum" }] });
  expect(text).toContain("Nora Falk hears a hum");
  expect(struck.text).toContain("… hears a hum");
});
