/** A hand-over of an invented car with every kind of block, for tests of the sheet. */
import { type HandoverPages, MARKS, planDrawing } from "../../core/report/index.js";

const { drawing } = planDrawing({
  plan: "chassis",
  side: "left",
  places: [
    { id: "FL", look: "done", mark: "major", letter: "a" },
    { id: "RR", look: "done", mark: "dangerous", letter: "b c" },
    { id: "main-rail-L-mid", look: "not-looked" },
    { id: "own", look: "done", at: [40, 60] },
  ],
});

const marks = {
  width: 1600,
  height: 1200,
  shapes: [
    {
      tag: "circle",
      attrs: { cx: 800, cy: 600, r: 200, fill: "none", stroke: "#fffdf7", "stroke-width": 8 },
      children: [],
    },
    {
      tag: "text",
      attrs: { x: 900, y: 500, "font-size": 73, fill: "#fffdf7", stroke: "#101413", "stroke-width": 15 },
      children: ["1 crack"],
    },
  ],
};
const picture = (hash: string, caption: string) => ({ hash, caption, width: 1600, height: 1200, marks });

/** `rows`: how long the work list is. */
export const samplePages = (rows = 40): HandoverPages => ({
  lang: "en",
  title: "Hand-over: Tarn Two, blue",
  subtitle: "Tarn Two, blue, looked at 3 May 2027, 10:20, made 4 May 2027",
  foot: "Tarn Two, blue, looked at 3 May 2027, 10:20",
  first: 0,
  blocks: [
    { is: "heading", level: 2, text: "May it be driven" },
    { is: "text", text: "It must not be driven.", look: "strong" },
    {
      is: "list",
      items: ["Play ≥ 0.15 mm at the lower joint", "Width ≤ 3 µm → measure again, 20 ± 2 °C"],
      numbered: true,
    },
    { is: "list", items: ["“It pulls left – since autumn”", "Łódź, Ősz, Şile; Григорий looked on"] },
    {
      is: "pairs",
      pairs: [
        ["Odometer", "61\u202f204 km"],
        ["Looked at by", "a technician"],
      ],
    },
    {
      is: "caution",
      caution: {
        signal: "danger",
        word: "DANGER",
        not: "Do not drive the car, not even a short way.",
        lines: ["The ball joint can part.", "The wheel folds under and nothing steers.", "Have it moved on a trailer."],
      },
    },
    {
      is: "caution",
      caution: { signal: "notice", word: "NOTICE", not: "Do not wash the engine bay.", lines: ["The coil sits low."] },
    },
    { is: "heading", level: 2, text: "Findings", newPage: true },
    { is: "drawing", drawing, label: "The car from below; letters stand for findings." },
    {
      is: "finding",
      finding: {
        letter: "a",
        mark: "major",
        word: "Major",
        title: "Play in the lower ball joint",
        where: "Front left",
        says: ["Too close to call: the worse grade counts until it is measured again."],
        steps: [
          {
            kind: "Measured",
            says: "Ball joint play: 0.16 mm, with the wheel hanging and a lever under the tyre, three times",
          },
          { kind: "Limit", says: "Over 0.15 mm: major (common practice, no source)" },
          { kind: "So", says: "Major, certain." },
        ],
        after: ["Work that puts it right: 1."],
        pictures: [picture("aa", "Lower joint from behind"), picture("gone", "Dust cover, split")],
      },
    },
    { is: "heading", level: 3, text: "Other pictures" },
    { is: "picture", picture: picture("bb", "Sill, driver’s side") },
    { is: "heading", level: 2, text: "Work list", newPage: true },
    {
      is: "table",
      table: {
        caption: "Work list",
        head: [{ text: "No." }, { text: "What" }, { text: "By when" }, { text: "Cost", isFigure: true }],
        rows: Array.from({ length: rows }, (_, at) => ({
          mark: MARKS[at % 4],
          cells: [String(at + 1), `Renew bearing ${at + 1}, rear right`, "before the next drive", `EUR ${1000 + at}`],
          notes: [`For finding ${at + 1}. Hub off, races out and in with the press.`],
        })),
      },
    },
    { is: "heading", level: 2, text: "Marks" },
    { is: "key", marks: MARKS.map((mark) => ({ mark, word: mark })) },
    { is: "heading", level: 2, text: "Signed" },
    { is: "sign", lines: ["Who looked", "Who received it"] },
    { is: "text", text: "Judged by rules of version 1.", look: "small" },
  ],
});
