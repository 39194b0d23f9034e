/** The work list, what was declined, what was left loose, days to think of, and what a buyer takes along, in words. */
import { sumOf } from "./buying.js";
import { byWhenText, dayText, hoursText, momentText, moneyRange, moneyText, untilText } from "./figures.js";
import type { ClaimTold, MoneyTold, OpeningTold, PartTold } from "./input.js";
import type { DueDate, HandoverModel, NumberedJob } from "./model.js";
import type { Block, TableRow } from "./page.js";
import { gateText } from "./pages-rest.js";
import { riskLines } from "./pages-unseen.js";
import { capital, decisionText, decisionTold, ended, placed, unended } from "./sentence.js";
import { type HandoverKey, type HandoverWords, say } from "./words.js";

const heading = (text: string, newPage = false): Block => ({
  is: "heading",
  level: 2,
  text,
  ...(newPage ? { newPage } : {}),
});
const list = (items: readonly string[]): Block => ({ is: "list", items });

export function workPages(model: HandoverModel, words: HandoverWords): readonly Block[] {
  const title = heading(say(words, "work.title"), true);
  if (model.work.length === 0) return [title, { is: "text", text: say(words, "work.none") }];
  const isBuyer = model.for === "buyer";
  const columns: readonly (readonly [HandoverKey, boolean])[] = [
    ["work.number", false],
    ["work.what", false],
    ["work.when", false],
    ["work.hours", true],
    ["work.cost", true],
    ...(isBuyer ? [] : [["work.says", false] as const]),
  ];
  return [
    title,
    ...(model.money === undefined ? [] : [{ is: "text", text: say(words, "work.cost.says"), look: "small" } as const]),
    ...firstUntold(model, words),
    {
      is: "table",
      table: {
        caption: say(words, "work.title"),
        head: columns.map(([key, isFigure]) => ({ text: words.texts[key], ...(isFigure ? { isFigure } : {}) })),
        rows: [...model.work.map((job) => workRow(model, job, words)), ...sumRows(model, words, columns.length)],
      },
    },
  ];
}

const costText = (words: HandoverWords, { cost, most }: NumberedJob, money: MoneyTold | undefined): string =>
  cost === undefined || money === undefined ? say(words, "not-known") : moneyRange(words, cost, money, most);

function workRow({ money, for: reader }: HandoverModel, job: NumberedJob, words: HandoverWords): TableRow {
  const { number, title, where, minutes, letters, first, parts, does, doneOn, chosen, why } = job;
  return {
    mark: job.grade,
    cells: [
      String(number),
      placed(words, title, where),
      byWhenText(words, job.byWhen),
      minutes === undefined ? say(words, "not-known") : hoursText(words, minutes),
      costText(words, job, money),
      ...(reader === "buyer" ? [] : [decisionText(words, job.decision)]),
    ],
    notes: [
      ...(letters.length > 0 ? [say(words, "work.for", { letters: letters.join(", ") })] : []),
      ...(does === "" ? [] : [ended(does)]),
      ...(reader === "owner" || why.length === 0 ? [] : [say(words, "work.why", { why: why.map(ended).join(" ") })]),
      ...(parts.length > 0
        ? [say(words, "work.parts", { parts: parts.map((one) => partText(words, one, money)).join("; ") })]
        : []),
      ...(first && money
        ? [
            say(words, first.isNet ? "work.first.net" : "work.first", {
              day: dayText(words, first.on),
              cost: moneyRange(words, first.cost, money),
            }),
          ]
        : []),
      ...(doneOn === undefined ? [] : [say(words, "work.done", { day: dayText(words, doneOn) })]),
      ...(chosen === false ? [say(words, "work.left-out")] : []),
      ...(reader === "buyer" ? [] : decisionTold(words, job.decision)),
      ...(reader === "technician" ? [say(words, "work.id", { id: job.id })] : []),
    ],
  };
}

/** Why the first estimate does not stand beside what is now. */
const firstUntold = ({ firstUntold: of }: HandoverModel, words: HandoverWords): readonly Block[] =>
  of === undefined
    ? []
    : [{ is: "text", text: say(words, `work.first.${of.why}`, { day: dayText(words, of.on) }), look: "small" }];

/** An opening with the numbers of the jobs that need it. */
export function openingText(words: HandoverWords, { title, jobs }: OpeningTold, work: readonly NumberedJob[]): string {
  const numbers = work.filter(({ id }) => jobs.includes(id)).map(({ number }) => number);
  return numbers.length === 0
    ? say(words, "work.opening", { what: title })
    : say(words, "work.opening.for", { what: title, numbers: numbers.join(", ") });
}

/** What is opened, what belongs to no line, and the sum, so that the lines add up to what the estimate says. */
function sumRows({ work, money }: HandoverModel, words: HandoverWords, columns: number): readonly TableRow[] {
  if (money?.total === undefined) return [];
  const { total, most, openings = [] } = money;
  const row = (what: string, hours: string, cost: string): TableRow => ({
    cells: ["", what, "", hours, cost, ""].slice(0, columns),
  });
  const lines = [...work.flatMap(({ cost }) => cost ?? []), ...openings.flatMap(({ cost }) => cost)];
  const listed = sumOf([...work.flatMap(({ cost }) => (cost ? [cost] : [])), ...openings.map(({ cost }) => cost)]);
  const rest = total[1] - listed[1];
  if (lines.length === 0) return [];
  return [
    ...openings.map((one) =>
      row(
        openingText(words, one, work),
        one.minutes === undefined ? "" : hoursText(words, one.minutes),
        moneyRange(words, one.cost, money),
      ),
    ),
    ...(Math.abs(rest) * 2 < 10 ** money.minorDigits
      ? []
      : [row(say(words, "work.rest"), "", moneyText(words, rest, money, true))]),
    row(say(words, "work.total"), "", moneyRange(words, total, money, most)),
  ];
}

function partText(words: HandoverWords, part: PartTold, money: MoneyTold | undefined): string {
  const more = [
    ...(part.set === undefined ? [] : [say(words, "part.set", { set: part.set })]),
    ...(part.price && money ? [say(words, "part.price", { price: moneyRange(words, part.price, money) })] : []),
    ...(part.leadDays === undefined ? [] : [say(words, "part.lead", { days: part.leadDays })]),
    ...(part.stands === undefined ? [] : [say(words, "part.stands", { stands: part.stands })]),
  ].join("");
  return say(words, "part.line", { count: part.count, title: part.title, more });
}

/** What was declined, what stays as it is because of it, and whether a warning was shown. */
export function declinedPages({ declined, findings }: HandoverModel, words: HandoverWords): readonly Block[] {
  if (declined.length === 0) return [];
  return [
    heading(say(words, "declined.title")),
    list(
      declined.map((job) => {
        const { number, title, where, decision, letters } = job;
        const named = findings
          .filter(({ letter }) => letters.includes(letter))
          .map((one) => `${one.letter} (${say(words, `grade.${one.grade}`)})`);
        return [
          ended(
            say(words, "declined.line", {
              number,
              title: placed(words, title, where),
              reason: decision?.reason || say(words, "declined.no-reason"),
            }),
          ),
          ...(named.length > 0 ? [say(words, "declined.findings", { findings: named.join(", ") })] : []),
          decision?.warned
            ? ended(
                say(words, "declined.warned", {
                  when: momentText(words, decision.warned.at),
                  words: decision.warned.words,
                }),
              )
            : say(words, "declined.not-warned"),
          ...decisionTold(words, decision),
        ].join(" ");
      }),
    ),
  ];
}

/** What was left loose, and what somebody said after a last look. */
export const afterPages = (
  { loose, isProgressUnread, release }: HandoverModel,
  words: HandoverWords,
): readonly Block[] => [
  ...(isProgressUnread
    ? [heading(say(words, "loose.title")), { is: "text", text: say(words, "loose.unread") } as const]
    : []),
  ...(loose.length === 0
    ? []
    : [
        heading(say(words, "loose.title")),
        list(
          loose.map((one) =>
            say(words, "loose.line", {
              words: placed(words, one.words, one.where ?? ""),
              state: say(words, `loose.${one.is}`),
              day: dayText(words, one.on),
            }),
          ),
        ),
      ]),
  ...(release === undefined
    ? []
    : [
        heading(say(words, "release.title")),
        {
          is: "text",
          text: [
            ended(
              [
                say(words, `release.${release.is}`),
                ...(release.who === undefined ? [] : [say(words, "release.who", { who: release.who })]),
                ...(release.on === undefined ? [] : [say(words, "release.on", { day: dayText(words, release.on) })]),
              ].join(", "),
            ),
            ...(release.words ? [ended(release.words)] : []),
          ].join(" "),
        } as const,
      ]),
];

export const datePages = ({ dates }: HandoverModel, words: HandoverWords): readonly Block[] =>
  dates.length === 0 ? [] : [heading(say(words, "dates.title")), list(dates.map((one) => dateText(words, one)))];

/** What earlier visits found and ask for is not in it where they could not be read. */
export const unreadVisits = (n: number, words: HandoverWords): readonly string[] =>
  n === 0 ? [] : [say(words, "dates.unread", { n })];

/** What a day is for. */
export function dateSays(words: HandoverWords, { is, number = 0, words: said, where, isOverdue }: DueDate): string {
  const what = unended(placed(words, said, where));
  if (isOverdue) return say(words, "dates.overdue", { what });
  if (is === "next-visit") return say(words, "dates.next-visit");
  if (is === "job" || is === "decided") return say(words, `dates.${is}`, { number, what });
  return say(words, `dates.${is}`, { what: is === "other" ? capital(what) : what });
}

/** A day with what it is for. */
export function dateText(words: HandoverWords, date: DueDate): string {
  const until = untilText(words, date).join(", ");
  const what = dateSays(words, date);
  return until === "" ? what : say(words, "dates.line", { what, until });
}

/** For a buyer: what is due with its figures, reasons to walk away, what could not be looked at. */
export function buyingPages({ buying, money, notSeen }: HandoverModel, words: HandoverWords): readonly Block[] {
  if (buying === undefined) return [];
  const { due, openings, total, withoutFigure, walkAway, held, claims, risks } = buying;
  const shut = held.filter(({ state }) => state === "tripped");
  return [
    ...(held.length === 0
      ? []
      : [
          heading(say(words, "held.title"), true),
          list(held.map((one) => gateText(words, one))),
          ...(shut.length > 0 ? [{ is: "text", text: say(words, "held.no-sum") } as const] : []),
        ]),
    heading(say(words, "away.title"), held.length === 0),
    shut.length + walkAway.length === 0
      ? { is: "text", text: say(words, "away.none") }
      : list([
          ...shut.map(({ title }) => say(words, "away.shut", { title })),
          ...walkAway.map(({ letter, title, where, basis, item }) =>
            say(words, "away.line", {
              letter,
              title: placed(words, title, where),
              basis:
                basis === "structure"
                  ? say(words, "away.structure", { item: item ?? "" })
                  : say(words, `away.${basis}`),
            }),
          ),
        ]),
    heading(say(words, "due.title")),
    { is: "text", text: say(words, due.length === 0 ? "due.none" : "due.says") },
    ...(due.length === 0 ? [] : [dueTable(due, openings, total, money, words)]),
    ...(withoutFigure > 0 ? [{ is: "text", text: say(words, "due.without", { n: withoutFigure }) } as const] : []),
    ...(claims.length === 0
      ? []
      : [heading(say(words, "claims.title")), list(claims.map((one) => claimText(words, one)))]),
    heading(say(words, "risks.title")),
    {
      is: "text",
      text: say(words, notSeen.length === 0 ? "risks.none" : risks.length === 0 ? "risks.none-grave" : "risks.says"),
    },
    ...(risks.length === 0 ? [] : [list(riskLines(words, { risks }))]),
  ];
}

/** What was claimed, who claimed it, and what was seen of it. */
export function claimText(words: HandoverWords, { words: text, from, seen }: ClaimTold): string {
  const what = say(words, `claim.${seen?.word ?? "not-asked"}`);
  const shown = seen && seen.words !== "" ? ended(`${unended(what)}: ${seen.words}`) : what;
  return say(words, "claim.line", { text: unended(text), from: say(words, `claim.from.${from}`), what: shown });
}

function dueTable(
  due: readonly NumberedJob[],
  openings: readonly OpeningTold[],
  total: readonly number[] | undefined,
  money: MoneyTold | undefined,
  words: HandoverWords,
): Block {
  const figures = (three: readonly number[] | undefined): readonly string[] =>
    three === undefined || money === undefined
      ? [say(words, "due.no-figure"), "", ""]
      : three.map((minor) => moneyText(words, minor, money, true));
  return {
    is: "table",
    table: {
      caption: say(words, "due.title"),
      head: [
        { text: say(words, "work.number") },
        { text: say(words, "work.what") },
        ...(["due.low", "due.likely", "due.high"] as const).map((key) => ({ text: say(words, key), isFigure: true })),
      ],
      rows: [
        ...due.map(({ number, title, where, grade, cost }) => ({
          mark: grade,
          cells: [String(number), placed(words, title, where), ...figures(cost)],
        })),
        ...openings.map((one) => ({ cells: ["", openingText(words, one, due), ...figures(one.cost)] })),
        ...(total === undefined ? [] : [{ cells: ["", say(words, "due.total"), ...figures(total)] }]),
      ],
    },
  };
}
