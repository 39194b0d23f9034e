/** What was not looked at, in words: what is of weight by name, the rest counted; and what that means for a price. */
import type { NotSeen } from "./input.js";
import type { Buying, HandoverModel } from "./model.js";
import type { Block, TableRow } from "./page.js";
import { capital, ended } from "./sentence.js";
import { couldShowDanger, kindsOf, type UnseenGroup, type UnseenPoint, unseenOf } from "./unseen.js";
import { type HandoverWords, say } from "./words.js";

const heading = (text: string): Block => ({ is: "heading", level: 2, text });

/** Never counted as sound, and always there: the group says so when it is empty. */
export function unseenPages({ notSeen }: Pick<HandoverModel, "notSeen">, words: HandoverWords): readonly Block[] {
  const title = heading(say(words, "unseen.title"));
  if (notSeen.length === 0) return [title, { is: "text", text: say(words, "unseen.none") }];
  const { named, rest } = unseenOf(notSeen);
  return [
    title,
    { is: "text", text: say(words, "unseen.says") },
    { is: "text", text: say(words, "unseen.counts", { n: notSeen.length }), look: "small" },
    ...(named.length === 0
      ? []
      : [
          table(words, "unseen.named", ["unseen.what", "unseen.where", "unseen.state", "unseen.why"], (row) =>
            named.map((one) => row(one.one, pointCells(words, one))),
          ),
        ]),
    ...(rest.length === 0
      ? []
      : [
          table(words, "unseen.rest", ["unseen.sheet", "unseen.points", "unseen.where", "unseen.why"], (row) =>
            rest.map((one) => row(one.one, groupCells(words, one))),
          ),
        ]),
  ];
}

type Key = "unseen.what" | "unseen.where" | "unseen.state" | "unseen.why" | "unseen.sheet" | "unseen.points";

function table(
  words: HandoverWords,
  caption: "unseen.named" | "unseen.rest",
  head: readonly Key[],
  rowsBy: (row: (one: NotSeen, cells: readonly string[]) => TableRow) => readonly TableRow[],
): Block {
  return {
    is: "table",
    table: {
      caption: say(words, caption),
      head: head.map((key) => ({ text: say(words, key), ...(key === "unseen.points" ? { isFigure: true } : {}) })),
      rows: rowsBy(({ is }, cells) => ({ mark: is, cells })),
    },
  };
}

/** Title, where, car state, why of a point that is named. */
export const pointCells = (words: HandoverWords, { one, at }: UnseenPoint): readonly string[] => [
  one.title,
  placesText(words, at),
  [...new Set(at.map(({ state }) => state))].join("; "),
  withMark(words, one.is, whyUnseen(words, one)),
];

/** Sheet, how many, at what kinds of place, and why of what is only counted. */
export const groupCells = (words: HandoverWords, { sheet, one, all, worst }: UnseenGroup): readonly string[] => [
  sheet === "" ? say(words, "unseen.no-sheet") : sheet,
  String(all.length),
  kindsText(words, all),
  `${ended(withMark(words, one.is, whyUnseen(words, one)))} ${capital(couldText(words, worst))}.`,
];

/** More places than these are told by their kinds; where a danger may hide, it is said at which for longer. */
const MOST_PLACES = { dangerous: 12, other: 4 };

function placesText(words: HandoverWords, at: readonly NotSeen[]): string {
  const places = [...new Map(at.map((one) => [one.place, one])).values()];
  const most = at.some(couldShowDanger) ? MOST_PLACES.dangerous : MOST_PLACES.other;
  return places.length > most
    ? say(words, "unseen.places", { n: places.length, kinds: kindsText(words, places) })
    : places.map(({ where }) => (where === "" ? say(words, "unseen.car") : where)).join("; ");
}

const kindsText = (words: HandoverWords, all: readonly NotSeen[]): string =>
  kindsOf(all)
    .map(([kind, n]) => say(words, "unseen.kind", { kind: kind ?? capital(say(words, "unseen.car")), n }))
    .join("; ");

/** The mark's word stands with the reason, unless the reason begins with it. */
const withMark = (words: HandoverWords, is: NotSeen["is"], why: string): string => {
  const word = say(words, `mark.${is}`);
  return why.includes(word) ? why : `${word}. ${why}`;
};

/** Why a point was not looked at. */
export function whyUnseen(words: HandoverWords, { is, nonAnswer, reason, words: own }: NotSeen): string {
  const said = nonAnswer === undefined ? say(words, `mark.${is}`) : capital(say(words, `non-answer.${nonAnswer}`));
  const why = own || (reason === undefined ? say(words, "unseen.no-reason") : say(words, `reason.${reason}`));
  return `${said}: ${why}`;
}

/** The worst a look could have shown. */
function couldText(words: HandoverWords, could: NotSeen["couldDecide"]): string {
  if (could === undefined) return say(words, "risks.unknown");
  if (could === "nothing") return say(words, "risks.nothing");
  return say(words, "risks.could", { grade: say(words, `grade.${could}`) });
}

/** What could not be looked at, for who reckons with it in the price: how much of it at each grade, gravest first. */
export function riskLines(words: HandoverWords, { risks }: Pick<Buying, "risks">): readonly string[] {
  const byGrade = new Map<NotSeen["couldDecide"], NotSeen[]>();
  for (const one of risks) byGrade.set(one.couldDecide, [...(byGrade.get(one.couldDecide) ?? []), one]);
  return [...byGrade].map(([could, all]) => {
    const sheets = new Map<string, number>();
    for (const { sheet = say(words, "unseen.no-sheet") } of all) sheets.set(sheet, (sheets.get(sheet) ?? 0) + 1);
    return say(words, "risks.line", {
      n: all.length,
      could: capital(couldText(words, could)),
      sheets: [...sheets].map(([kind, n]) => say(words, "unseen.kind", { kind, n })).join("; "),
    });
  });
}
