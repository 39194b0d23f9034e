/**
 * Every fact a hand-over has to carry, whatever form it takes, and which of them a text lacks. Walks the model by itself
 * and not the pages, so that a section somebody forgot is noticed. Knows no form's inside.
 */
import { cleaned } from "./clean.js";
import { byWhenText, dayText, hoursText, judgedText, limitText, moneyRange, untilText } from "./figures.js";
import type { HandoverModel } from "./model.js";
import { lookTexts } from "./pages-done.js";
import { leftText, sureText } from "./pages-findings.js";
import { answerText, nextTexts, reasonText } from "./pages-first.js";
import { signatureText } from "./pages-rest.js";
import { groupCells, pointCells, riskLines } from "./pages-unseen.js";
import { claimText, dateSays, openingText, unreadVisits } from "./pages-work.js";
import { beforeText, decisionText, placed } from "./sentence.js";
import { unseenOf } from "./unseen.js";
import { type HandoverWords, say } from "./words.js";

export interface Fact {
  readonly is:
    | "verdict"
    | "complaint"
    | "finding"
    | "not-seen"
    | "caution"
    | "reading"
    | "job"
    | "declined"
    | "done"
    | "date"
    | "trend"
    | "signature"
    | "picture"
    | "claim"
    | "unread"
    | "sheet";
  /** Told where it is missing. */
  readonly id: string;
  /** All of these stand in a form that carries it. */
  readonly texts: readonly string[];
}

/** Everything that every form for reading (page, text, printed sheet) carries. */
export function factsOf(given: HandoverModel, words: HandoverWords): readonly Fact[] {
  const model = cleaned(given);
  return [
    ...firstFacts(model, words),
    ...findingFacts(model, words),
    ...unseenFacts(model, words),
    ...model.cautions.map(({ caution, signal, not, why, can, todo, places }): Fact => {
      const word = say(words, `signal.${signal}`);
      return { is: "caution", id: caution, texts: [word, not, why, can, todo, ...places] };
    }),
    ...readingFacts(model, words),
    ...workFacts(model, words),
    ...doneFacts(model, words),
    ...(model.picturesLeft.length === 0
      ? []
      : [{ is: "picture", id: "left", texts: [leftText(words, model.picturesLeft)] } as const]),
    ...(model.isProgressUnread && model.for !== "buyer"
      ? [{ is: "unread", id: "progress", texts: [say(words, "loose.unread")] } as const]
      : []),
    ...model.dates.map((one): Fact => {
      const texts = [dateSays(words, one), ...untilText(words, one)];
      return { is: "date", id: one.id, texts };
    }),
    ...unreadVisits(model.visitsUnread, words).map((one): Fact => ({ is: "unread", id: "visits", texts: [one] })),
    ...model.trends.map(({ id, title, where, reaches, lookAgain }): Fact => {
      const days = [reaches?.from, reaches?.to, lookAgain].flatMap((day) => (day === undefined ? [] : [day]));
      return { is: "trend", id, texts: [placed(words, title, where), ...days.map((day) => dayText(words, day))] };
    }),
    ...model.signatures.map((one): Fact => ({ is: "signature", id: one.id, texts: [signatureText(words, one)] })),
    ...model.sheets.map(({ id, name, edition }): Fact => ({ is: "sheet", id, texts: [name, edition] })),
  ];
}

const firstFacts = ({ first }: HandoverModel, words: HandoverWords): readonly Fact[] => [
  {
    is: "verdict",
    id: first.verdict.is,
    texts: [
      say(words, `verdict.${first.verdict.is}`),
      ...first.verdict.reasons.map((one) => reasonText(words, one)),
      ...nextTexts(words, first.next),
      ...first.cannotWait.map(({ letter, title, where }) => `${letter}: ${placed(words, title, where)}`),
    ],
  },
  ...first.complaints.map((one): Fact => ({ is: "complaint", id: one.id, texts: [one.words, answerText(words, one)] })),
];

const findingFacts = ({ findings }: HandoverModel, words: HandoverWords): readonly Fact[] =>
  findings.map((finding): Fact => {
    const { fault, place, title, where, grade, because, sure, close } = finding;
    const steps = because.flatMap((step) =>
      step.is === "limit"
        ? [limitText(words, step).slice(1), judgedText(words, step.value, step.uncertainty, step.unit)]
        : [step.words],
    );
    const texts = [
      placed(words, title, where),
      say(words, `mark.${grade}`),
      sureText(words, { sure, close }),
      ...beforeText(words, finding),
      ...steps,
    ];
    return { is: "finding", id: `${fault}@${place}`, texts };
  });

/** By name or counted, every point nobody looked at is in one of them (HO44); a buyer is told what that means for the price. */
function unseenFacts({ notSeen, buying }: HandoverModel, words: HandoverWords): readonly Fact[] {
  const { named, rest } = unseenOf(notSeen);
  return [
    ...(notSeen.length === 0
      ? []
      : [{ is: "not-seen", id: "all", texts: [say(words, "unseen.counts", { n: notSeen.length })] } as const]),
    ...named.map((one): Fact => ({ is: "not-seen", id: one.one.point, texts: pointCells(words, one) })),
    ...rest.map((one): Fact => ({ is: "not-seen", id: `${one.sheet} ${one.one.is}`, texts: groupCells(words, one) })),
    ...(buying === undefined ? [] : riskLines(words, buying)).map(
      (line): Fact => ({ is: "not-seen", id: "risk", texts: [line] }),
    ),
  ];
}

const readingFacts = ({ readings }: HandoverModel, words: HandoverWords): readonly Fact[] =>
  readings.map(({ point, place, title, where, value, uncertainty, unit, limits, last }): Fact => {
    const stands =
      limits.length === 0
        ? [say(words, "readings.no-limit")]
        : limits.flatMap((one) => [limitText(words, one), say(words, `reading.${one.state}`)]);
    const before = last === undefined ? [] : [dayText(words, last.on)];
    const texts = [title, where, judgedText(words, value, uncertainty, unit), ...stands, ...before];
    return { is: "reading", id: `${point}@${place}`, texts };
  });

/** Every reader is told what was done and whether anybody looked at it; who it was, whoever may know names. */
const doneFacts = ({ done, for: reader }: HandoverModel, words: HandoverWords): readonly Fact[] =>
  done.map((one): Fact => {
    const read = one.readings.flatMap(({ title, where, before, after }) => {
      if (reader !== "technician") return after === undefined ? [] : [placed(words, title, where), after.says];
      return [
        placed(words, title, where),
        ...[before, after].flatMap((of) => (of ? [of.says, dayText(words, of.on)] : [])),
      ];
    });
    const texts = [placed(words, one.title, one.where), dayText(words, one.on), ...lookTexts(words, one), ...read];
    return { is: "done", id: one.id, texts: [...texts, ...(one.by === undefined ? [] : [one.by]), ...one.look.who] };
  });

/** A buyer has the jobs that are due with their figures; who said what to them is nobody's business but the owner's. */
function workFacts(
  { for: reader, buying, work, declined, money }: HandoverModel,
  words: HandoverWords,
): readonly Fact[] {
  if (reader === "buyer")
    return [
      ...(buying?.due ?? []).map(
        ({ id, title, where }): Fact => ({ is: "job", id, texts: [placed(words, title, where)] }),
      ),
      ...(buying?.claims ?? []).map((one): Fact => ({ is: "claim", id: one.id, texts: [claimText(words, one)] })),
    ];
  return [
    ...work.map((job): Fact => {
      const { id, title, where, byWhen, minutes, cost, most } = job;
      const hours = minutes === undefined ? [] : [hoursText(words, minutes)];
      const figures = cost === undefined || money === undefined ? [] : [moneyRange(words, cost, money, most)];
      const said = [byWhenText(words, byWhen), decisionText(words, job.decision)];
      return { is: "job", id, texts: [placed(words, title, where), ...hours, ...figures, ...said] };
    }),
    ...(money?.total === undefined || work.every(({ cost }) => cost === undefined) ? [] : (money.openings ?? [])).map(
      (one): Fact => ({
        is: "job",
        id: one.id,
        texts: [openingText(words, one, work), ...(money ? [moneyRange(words, one.cost, money)] : [])],
      }),
    ),
    ...declined.map(
      ({ id, decision }): Fact => ({
        is: "declined",
        id,
        texts: [
          decision?.reason || say(words, "declined.no-reason"),
          decision?.warned?.words ?? say(words, "declined.not-warned"),
        ],
      }),
    ),
  ];
}

/** Spaces, signs of direction and hyphens at ends of lines differ from form to form; words and figures do not. */
const bare = (text: string): string => text.replace(/[\s\u00ad\u200b-\u200f\u2066-\u2069]+/g, "");

/** Facts of which some text does not stand in a form's own text (tags taken off, signs turned back). */
export function missingFacts(facts: readonly Fact[], text: string): readonly Fact[] {
  const held = bare(text);
  return facts.filter(({ texts }) => texts.some((one) => !held.includes(bare(one.replace(/\.$/, "")))));
}
