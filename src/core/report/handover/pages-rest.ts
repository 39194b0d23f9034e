/** Cautions, checks before a step, readings, what wears, sheets used, what all this is not, marks and signatures. */
import { MARKS } from "../marks.js";
import { dayText, figureText, judgedText, limitText, momentText, numberText, unitText } from "./figures.js";
import type { CautionTold, GateTold, ReadingTold, SignatureTold, TrendTold } from "./input.js";
import type { HandoverModel } from "./model.js";
import type { Block, TableRow } from "./page.js";
import { ended, placed, unended } from "./sentence.js";
import { type HandoverWords, say } from "./words.js";

const heading = (text: string): Block => ({ is: "heading", level: 2, text });

export const cautionPages = (model: HandoverModel, words: HandoverWords): readonly Block[] =>
  model.cautions.length === 0
    ? []
    : [
        heading(say(words, "cautions.title")),
        ...model.cautions.map((one) => ({ is: "caution", caution: cautionBlock(model, one, words) }) as const),
      ];

/** That nobody was told matters where somebody can be hurt badly. */
const GRAVE: readonly CautionTold["signal"][] = ["danger", "warning"];

function cautionBlock({ for: reader }: HandoverModel, one: CautionTold, words: HandoverWords) {
  return {
    signal: one.signal,
    word: say(words, `signal.${one.signal}`),
    not: ended(one.not),
    lines: [
      ...[one.why, one.can, one.todo].filter((line) => line !== "").map(ended),
      ...(one.places.length > 0 ? [ended(say(words, "caution.places", { places: one.places.join(", ") }))] : []),
      ...(reader === "buyer" || (one.toldAt === undefined && !GRAVE.includes(one.signal))
        ? []
        : [
            one.toldAt === undefined
              ? say(words, "caution.not-told")
              : say(words, "caution.told", { when: momentText(words, one.toldAt) }),
          ]),
    ],
  };
}

export const gatePages = ({ gates }: HandoverModel, words: HandoverWords): readonly Block[] =>
  gates.length === 0
    ? []
    : [heading(say(words, "gates.title")), { is: "list", items: gates.map((one) => gateText(words, one)) }];

/** How a check before a step stands. */
export function gateText(words: HandoverWords, gate: GateTold): string {
  const isShut = gate.state !== "cleared";
  return [
    say(words, "gate.line", {
      title: gate.title,
      state: say(words, `gate.${gate.state}`),
      says: isShut ? ended(gate.says) : "",
    }).trim(),
    ...(isShut && gate.first.length > 0
      ? [say(words, "gate.first", { what: gate.first.map(unended).join("; ") })]
      : []),
    ...(isShut && gate.missing.length > 0 ? [say(words, "gate.missing", { sheets: gate.missing.join(", ") })] : []),
    ...(gate.unproven ? [ended(say(words, "gate.unproven", { why: gate.unproven }))] : []),
  ].join(" ");
}

export function readingPages(model: HandoverModel, words: HandoverWords): readonly Block[] {
  const title = heading(say(words, "readings.title"));
  if (model.readings.length === 0) return [title, { is: "text", text: say(words, "readings.none") }];
  const head = [
    "readings.what",
    "readings.where",
    "readings.value",
    "readings.limit",
    "readings.state",
    "readings.last",
  ];
  return [
    title,
    {
      is: "table",
      table: {
        caption: say(words, "readings.title"),
        head: head.map((key) => ({
          text: words.texts[key as keyof typeof words.texts],
          ...(key === "readings.value" || key === "readings.last" ? { isFigure: true } : {}),
        })),
        rows: model.readings.map((one) => readingRow(model, one, words)),
      },
    },
  ];
}

function readingRow({ for: reader }: HandoverModel, of: ReadingTold, words: HandoverWords): TableRow {
  return {
    cells: [
      of.title,
      of.where === "" ? say(words, "unseen.car") : of.where,
      judgedText(words, of.value, of.uncertainty, of.unit),
      of.limits.length === 0
        ? say(words, "readings.no-limit")
        : of.limits.map((limit) => limitCell(words, limit)).join("; "),
      of.limits.length === 0
        ? say(words, "reading.unjudged")
        : of.limits.map(({ state }) => say(words, `reading.${state}`)).join("; "),
      of.last === undefined ? say(words, "none") : `${figureText(words, of.last)}, ${dayText(words, of.last.on)}`,
    ],
    ...(reader === "technician"
      ? {
          notes: [
            say(words, "readings.typed", {
              typed: [of.typed.join(" / "), unitText(of.typedUnit ?? of.unit)].filter((one) => one !== "").join(" "),
              gauge: of.gauge ?? say(words, "not-known"),
              point: of.point,
              place: of.place,
            }),
          ],
        }
      : {}),
  };
}

/** A limit over a reading; one that may not apply says so. */
export function limitCell(words: HandoverWords, limit: ReadingTold["limits"][number]): string {
  const text = limitText(words, limit);
  return limit.applies === "yes" ? text : say(words, "readings.maybe", { limit: text });
}

export const trendPages = ({ trends }: HandoverModel, words: HandoverWords): readonly Block[] =>
  trends.length === 0
    ? []
    : [heading(say(words, "trends.title")), { is: "list", items: trends.map((one) => trendText(words, one)) }];

/** What wears in one line: when it reaches its limit, when to look again, what was measured. */
export function trendText(words: HandoverWords, of: TrendTold): string {
  const edgeOf = ({ edge, grade }: Pick<TrendTold, "edge" | "grade">) => ({
    edge: figureText(words, { value: edge, unit: of.unit }),
    grade: say(words, `grade.${grade}`),
  });
  const limit = edgeOf(of);
  const { passed } = of;
  const isLast = passed?.edge === of.edge && passed.grade === of.grade;
  const from = of.reaches === undefined ? "" : dayText(words, of.reaches.from);
  const reaches =
    of.reaches === undefined
      ? say(words, "trend.unknown", limit)
      : of.reaches.to === undefined
        ? say(words, "trend.reaches.from", { ...limit, from })
        : say(words, "trend.reaches", { ...limit, from, to: dayText(words, of.reaches.to) });
  const readings = of.readings.map(({ value, uncertainty = 0, on }) =>
    say(words, "trend.reading", {
      value: judgedText(words, value, uncertainty, of.unit),
      day: dayText(words, on),
    }),
  );
  return [
    ended(placed(words, of.title, of.where)),
    ...(passed === undefined ? [] : [say(words, "trend.passed", edgeOf(passed))]),
    ...(isLast ? [] : [reaches]),
    ...(of.lookAgain === undefined ? [] : [say(words, "trend.look-again", { day: dayText(words, of.lookAgain) })]),
    ...(readings.length > 0 ? [say(words, "trend.readings", { readings: readings.join("; ") })] : []),
  ].join(" ");
}

const IS_NOT = ["is-not.test", "is-not.maker", "is-not.local", "is-not.licensed", "is-not.seen"] as const;
export const isNotPages = (words: HandoverWords): readonly Block[] => [
  heading(say(words, "is-not.title")),
  { is: "list", items: IS_NOT.map((key) => say(words, key)) },
];

export function editionPages({ sheets, engine }: HandoverModel, words: HandoverWords): readonly Block[] {
  const rows = sheets.map((sheet) => ({
    cells: [
      sheet.name,
      sheet.label === undefined ? sheet.edition : `${sheet.label} (${sheet.edition})`,
      say(words, "looked.answered.of", {
        answered: numberText(words, sheet.answered),
        of: numberText(words, sheet.of),
      }),
    ],
  }));
  return [
    heading(say(words, "editions.title")),
    ...(rows.length === 0
      ? []
      : [
          {
            is: "table",
            table: {
              caption: say(words, "editions.title"),
              head: [
                { text: say(words, "editions.sheet") },
                { text: say(words, "editions.edition") },
                { text: say(words, "editions.points") },
              ],
              rows,
            },
          } as const,
        ]),
    { is: "text", text: say(words, "editions.engine", { engine }), look: "small" },
  ];
}

export const keyPages = (words: HandoverWords): readonly Block[] => [
  heading(say(words, "key.title")),
  { is: "key", marks: MARKS.map((mark) => ({ mark, word: say(words, `mark.${mark}`) })) },
];

export const signPages = ({ signatures }: HandoverModel, words: HandoverWords): readonly Block[] => [
  heading(say(words, "sign.title")),
  ...signatures.map((one): Block => ({ is: "signature", words: signatureText(words, one), drawing: one.drawing })),
  { is: "sign", lines: [say(words, "sign.looked"), say(words, "sign.received")] },
];

/** Who signed, when, for how many decisions, and how many of them stand as they were. */
export function signatureText(words: HandoverWords, { who, on, of, standing, drawing }: SignatureTold): string {
  const told = { who, day: dayText(words, on), of };
  return [
    say(words, drawing === undefined ? "sign.agreed" : "sign.drawn", told),
    ...(standing < of ? [say(words, "sign.changed", { n: standing })] : []),
  ].join(" ");
}
