// Every form of the demo's hand-over carries every fact of it, the printed sheet read back by another reader among them.
import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { demoGround } from "../../../tests/support/demo-ground.js";
import { plainText, readPdf } from "../../../tests/support/read-pdf.js";
import type { PlanState } from "../../core/record/index.js";
import { factsOf, MARKS, missingFacts, toText } from "../../core/report/index.js";
import { AUDIENCES, type Audience } from "../../core/terms/index.js";
import { makeSheet } from "../../device/pdf/make-sheet.js";
import { fileName, picturesIn } from "./handover-files.js";
import type { HandoverGround } from "./handover-ground.js";
import { madeHandover, openLines } from "./handover-made.js";

const face = (style: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../device/pdf/face/leadlamp-sheet-${style}.ttf`, import.meta.url)));

let grounds: (reader: Audience) => HandoverGround;
beforeAll(async () => {
  grounds = await demoGround();
}, 120_000);

/** With two signatures, one drawn, and a part on its way to its limit. */
const signedAndWorn = (ground: HandoverGround): HandoverGround => {
  const stands = { at: { wall: 0, count: 0 }, by: "phone" };
  const on = "2026-11-19";
  const drawn = {
    width: 300,
    height: 100,
    strokes: [
      [10, 50, 60, 20, 120, 70],
      [200, 80],
    ],
  };
  const signed: PlanState["signed"] = [
    { ...stands, id: "s1", value: { decisions: ["d1", "d2"], who: "Ottilie (demo)", on, drawn } },
    { ...stands, id: "s2", value: { decisions: ["d3"], who: "Ottilie (demo)", on } },
  ];
  const reaches = { from: "2027-01-10", to: "2028-09-30" };
  const readings = [{ on, value: 6, uncertainty: 0.577 }];
  const trends = [{ id: "w", title: "Drift", where: "Rear", unit: "mm", readings, edge: 8, grade: "major", reaches }];
  return { ...ground, said: { ...ground.said, signed }, trends: trends as NonNullable<HandoverGround["trends"]> };
};

for (const reader of AUDIENCES)
  test(`${reader}: nothing of the hand-over is missing on paper or in its text`, async () => {
    const made = madeHandover(signedAndWorn(grounds(reader)));
    const facts = factsOf(made.model, made.words);
    const signatures = facts.filter(({ is }) => is === "signature");
    expect(signatures).toHaveLength(reader === "buyer" ? 0 : 2);
    expect(facts.some(({ is }) => is === "trend")).toBe(true);
    expect(facts.length).toBeGreaterThan(200);
    const sheet = await makeSheet(
      {
        pages: made.pages,
        pageOf: made.words.texts.page,
        madeAt: made.model.madeAt,
        marks: Object.fromEntries(MARKS.map((mark) => [mark, made.words.texts[`mark.${mark}`]])),
        noPicture: "This picture is not on this phone.",
        noSigns: "No form for {signs}.",
      },
      { regular: face("regular"), bold: face("bold") },
      async () => undefined,
      () => undefined,
    );
    const read = await readPdf(sheet.bytes);
    expect(sheet.missingSigns).toEqual([]);
    const wordsOf = (text: string): readonly string[] =>
      plainText(text)
        .toLowerCase()
        .split(" ")
        .map((word) => word.replace(/[,.;:]+$/, ""));
    // Words of one fact stand beside each other or below each other: each word of it is looked for by itself.
    const printed = plainText(read.texts.join(" ")).toLowerCase();
    const lost = facts.filter(({ texts }) =>
      texts.some((text) => wordsOf(text).some((word) => !printed.includes(word))),
    );
    expect(lost.map(({ is, id }) => `${is} ${id}`)).toEqual([]);
    const written = toText(made.pages, made.words);
    // Signal words stand in capitals there.
    const capitals = facts.map((one) => (one.is === "caution" ? { ...one, texts: one.texts.slice(1) } : one));
    expect(missingFacts(capitals, written).map(({ is, id }) => `${is} ${id}`)).toEqual([]);
  });

test("what is still open is said before anything is handed on", () => {
  const ground = grounds("owner");
  const open = openLines(ground, madeHandover(ground)).map(({ id }) => id);
  for (const id of ["visit", "complaints", "undecided", "missing", "unseen", "loose"]) expect(open).toContain(id);
  const comparing = { ...ground, trends: undefined };
  expect(open).not.toContain("wearing");
  expect(openLines(comparing, madeHandover(comparing)).map(({ id }) => id)).toContain("wearing");
  const buyer = grounds("buyer");
  expect(openLines(buyer, madeHandover(buyer)).map(({ id }) => id)).not.toContain("undecided");
});

test("a file is named by car, reader and day, with letters any file system takes", () => {
  const made = madeHandover(grounds("owner"));
  expect(fileName(made, "hand-over", "pdf")).toBe("Brindlow Tarn 1992, hand-over, 2026-11-19.pdf");
  const odd = { ...made, model: { ...made.model, car: { ...made.model.car, name: 'a/b:c*"d"' } } };
  expect(fileName(odd, "x", "csv")).toBe("a-b-c-d-, x, 2026-11-19.csv");
});

test("a picture that stands at several findings goes into the page file once", () => {
  const picture = { hash: "aa", caption: "", width: 1, height: 1 };
  expect(
    picturesIn([
      { is: "picture", picture },
      { is: "picture", picture },
    ]),
  ).toEqual(["aa"]);
});
