/** The first page in words: complaint and answer, may it be driven, what cannot wait, what next, in numbers. */
import { dayText, figureText, momentText, moneyRange, moneyText } from "./figures.js";
import type { CannotWait, ComplaintLine, HandoverModel, NextStep, VerdictReason } from "./model.js";
import type { Block } from "./page.js";
import { donePages } from "./pages-done.js";
import { dateText, unreadVisits } from "./pages-work.js";
import { beforeText, capital, ended, gradeWord, placed, unended } from "./sentence.js";
import { type HandoverWords, say } from "./words.js";

const heading = (text: string): Block => ({ is: "heading", level: 2, text });

export const firstPage = (model: HandoverModel, words: HandoverWords): readonly Block[] => [
  ...complaints(model, words),
  ...verdict(model, words),
  ...waiting(model, words),
  ...(model.for === "owner" ? donePages(model, words) : []),
  ...next(model, words),
  ...money(model, words),
  ...who(model, words),
  ...looked(model, words),
];

function complaints({ first }: HandoverModel, words: HandoverWords): readonly Block[] {
  const title = heading(say(words, "complaints.title"));
  if (first.complaints.length === 0) return [title, { is: "text", text: say(words, "complaints.none") }];
  return [title, { is: "list", items: first.complaints.map((one) => complaintText(words, one)) }];
}

function complaintText(words: HandoverWords, one: ComplaintLine): string {
  return `${say(words, "complaint.quote", { words: one.words })} ${answerText(words, one)}`;
}

/** What became of a complaint. */
export function answerText(words: HandoverWords, { answer, letters }: ComplaintLine): string {
  if (answer === undefined) return say(words, "complaint.open");
  if (answer.is === "not-read") return say(words, "complaint.not-read");
  if (answer.is === "needs") return say(words, "complaint.needs", { what: unended(answer.what) });
  const told =
    answer.is === "not-met"
      ? say(words, "complaint.not-met")
      : letters.length === 0
        ? say(words, answer.faults.length === 0 ? "complaint.found.words" : "complaint.found.none")
        : say(words, "complaint.found", { letters: letters.join(", ") });
  return answer.words ? say(words, "complaint.words", { answer: told, words: ended(answer.words) }) : told;
}

function verdict({ first, for: reader }: HandoverModel, words: HandoverWords): readonly Block[] {
  const { is, owner, reasons } = first.verdict;
  const told = say(words, `verdict.${is}`);
  return [
    heading(say(words, "verdict.title")),
    { is: "text", text: reader === "owner" ? `${say(words, `owner.${owner}`)} ${told}` : told, look: "strong" },
    ...(reasons.length === 0 ? [] : [{ is: "list", items: reasons.map((one) => reasonText(words, one)) } as const]),
  ];
}

/** One reason of the verdict. */
export function reasonText(words: HandoverWords, reason: VerdictReason): string {
  const joined = (all: readonly (string | number)[]): string => all.join(", ");
  switch (reason.is) {
    case "laid-up":
    case "nothing-looked-at":
    case "no-gate":
    case "answers-unread":
    case "progress-unread":
      return say(words, `reason.${reason.is}`);
    case "work-not-looked-at":
      return say(words, "reason.work-not-looked-at", { jobs: reason.jobs.join("; ") });
    case "gate-tripped":
    case "gate-not-cleared":
      return say(words, `reason.${reason.is}`, { gates: joined(reason.gates) });
    case "forbidden":
    case "workshop":
      return say(words, `reason.${reason.is}`, { cautions: reason.cautions.map(ended).join(" ") });
    case "not-released":
      return reason.words === ""
        ? say(words, "reason.not-released")
        : say(words, "reason.not-released.words", { words: ended(reason.words) });
    case "left-loose":
    case "not-seen":
    case "unread":
    case "complaints-open":
      return say(words, `reason.${reason.is}`, { n: reason.count });
    case "work-before-driving":
      return say(words, "reason.work-before-driving", { numbers: joined(reason.numbers) });
    case "not-enough-seen":
      return say(words, "reason.not-enough-seen", { sheets: joined(reason.sheets) });
    default:
      return say(words, `reason.${reason.is}`, { letters: joined(reason.letters) });
  }
}

function waiting({ first }: HandoverModel, words: HandoverWords): readonly Block[] {
  const title = heading(say(words, "wait.title"));
  if (first.cannotWait.length === 0) return [title, { is: "text", text: say(words, "wait.none") }];
  return [title, { is: "list", items: first.cannotWait.map((one) => waitText(words, one)) }];
}

/** A finding that cannot wait, with its work or without. */
export function waitText(words: HandoverWords, of: CannotWait): string {
  const grade = gradeWord(words, of.grade);
  const work =
    of.jobs.length > 0
      ? say(words, "wait.work", { numbers: of.jobs.join(", ") })
      : of.declined.length > 0
        ? say(words, "wait.declined", { numbers: of.declined.join(", ") })
        : say(words, "wait.no-work");
  return say(words, "wait.line", {
    letter: of.letter,
    title: placed(words, of.title, of.where),
    grade: of.close ? say(words, "wait.close", { grade }) : grade,
    work: [...beforeText(words, of), work].join(" "),
  });
}

function next({ first }: HandoverModel, words: HandoverWords): readonly Block[] {
  const title = heading(say(words, "next.title"));
  const steps = nextTexts(words, first.next);
  if (steps.length === 0) return [title, { is: "text", text: say(words, "next.none") }];
  return [title, { is: "list", items: steps, numbered: true }];
}

/** Steps of one kind that follow each other and name a finding or a job stand in one line: the page stays one page. */
export function nextTexts(words: HandoverWords, steps: readonly NextStep[]): readonly string[] {
  const lines: { readonly is: NextStep["is"]; readonly what: string[]; readonly text?: string }[] = [];
  for (const step of steps) {
    if (!("title" in step)) {
      lines.push({ is: step.is, what: [], text: stepText(words, step) });
      continue;
    }
    const sign = "letter" in step ? step.letter : String(step.number);
    const what = `${sign} (${placed(words, step.title, step.where)})`;
    const before = lines.at(-1);
    if (before?.is === step.is) before.what.push(what);
    else lines.push({ is: step.is, what: [what] });
  }
  return lines.map(({ is, what, text }) => text ?? say(words, `next.${is as NamedStep}`, { what: what.join("; ") }));
}
type NamedStep = Extract<NextStep, { readonly title: string }>["is"];

function stepText(words: HandoverWords, step: Exclude<NextStep, { readonly title: string }>): string {
  switch (step.is) {
    case "do-not-drive":
      return say(words, "next.do-not-drive");
    case "make-fast":
      return say(words, "next.make-fast", { what: step.what.map(unended).join("; ") });
    case "clear-gate": {
      const told = {
        n: step.gates.length,
        gates: step.gates.map((gate) => say(words, "next.gate", { gate })).join(", "),
      };
      return step.first.length === 0
        ? say(words, "next.clear-gate.none", told)
        : say(words, "next.clear-gate", { ...told, first: firstFew(words, step.first) });
    }
    case "look-second":
      return say(words, "next.look-second", { what: step.jobs.join("; ") });
    case "answer-complaint":
      return step.needs === undefined
        ? say(words, "next.answer-complaint", { words: step.words })
        : say(words, "next.answer-complaint.needs", { words: step.words, needs: unended(step.needs) });
    case "wake-up":
      return say(words, "next.wake-up");
    case "look-at-rest":
      return say(words, "next.look-at-rest", { n: step.count });
    case "date":
      return ended(dateText(words, step.date));
  }
}

/** The whole list stands with the checks themselves: the first page stays one page. */
const MOST_FIRST = 4;
function firstFew(words: HandoverWords, all: readonly string[]): string {
  const rest = all.length - MOST_FIRST;
  const shown = all.slice(0, MOST_FIRST).map(unended).join("; ");
  return rest > 0 ? say(words, "next.and-more", { shown, n: rest }) : shown;
}

function money({ first, money: given }: HandoverModel, words: HandoverWords): readonly Block[] {
  const line = first.money;
  if (line === undefined || given === undefined) return [];
  const { total, budget, overBy, left, withoutWork, missing } = line;
  const write = (minor: number): string => moneyText(words, minor, given, true);
  const told = [
    ...(overBy !== undefined && overBy > 0 ? [say(words, "money.over", { over: write(overBy) })] : []),
    ...(overBy === 0
      ? [left === undefined ? say(words, "money.within") : say(words, "money.left", { left: write(left) })]
      : []),
    ...(withoutWork > 0 ? [say(words, "money.without-work", { n: withoutWork })] : []),
    ...(missing > 0 ? [say(words, "money.missing", { n: missing })] : []),
  ];
  return [
    heading(say(words, "money.title")),
    {
      is: "pairs",
      pairs: [
        [say(words, "money.total"), moneyRange(words, total, given, given.most)],
        [say(words, "money.high"), write(total[2])],
        ...(budget === undefined ? [] : [[say(words, "money.budget"), write(budget)] as const]),
        ...(given.first
          ? [
              [
                say(words, "money.first", { day: dayText(words, given.first.on) }),
                moneyRange(words, given.first.total, given),
              ] as const,
            ]
          : []),
      ],
    },
    ...(told.length === 0 ? [] : [{ is: "text", text: told.join(" ") } as const]),
  ];
}

function who({ visit, car }: HandoverModel, words: HandoverWords): readonly Block[] {
  const lookers = visit.lookers ?? [];
  return [
    heading(say(words, "who.title")),
    {
      is: "pairs",
      pairs: [
        [say(words, "who.car"), car.name],
        ...car.facts.map(({ name, value }) => [capital(name), value] as const),
        [say(words, "who.day"), momentText(words, visit.at)],
        ...(visit.purpose === undefined
          ? []
          : [[say(words, "who.purpose"), say(words, `purpose.${visit.purpose}`)] as const]),
        [say(words, "who.as"), say(words, `audience.${visit.who}`)],
        ...(lookers.length === 0 ? [] : [[say(words, "who.name"), lookers.join(", ")] as const]),
        [
          say(words, "who.odometer"),
          visit.odometer === undefined ? say(words, "not-known") : figureText(words, visit.odometer),
        ],
        ...(visit.closed === undefined
          ? []
          : [[say(words, "who.closed"), say(words, visit.closed ? "who.closed.yes" : "who.closed.no")] as const]),
      ],
    },
  ];
}

function looked({ first: { looked: of }, visitsUnread }: HandoverModel, words: HandoverWords): readonly Block[] {
  return [
    heading(say(words, "looked.title")),
    {
      is: "pairs",
      pairs: [
        [say(words, "looked.answered"), say(words, "looked.answered.of", { answered: of.answered, of: of.of })],
        [say(words, "looked.sound"), String(of.sound)],
        [say(words, "looked.not-seen"), String(of.notSeen)],
        [say(words, "looked.cannot-reach"), String(of.cannotReach)],
        ...(of.notChecked > 0 ? [[say(words, "looked.not-checked"), String(of.notChecked)] as const] : []),
        ...(of.notForThisLook > 0
          ? [[say(words, "looked.not-for-this-look"), String(of.notForThisLook)] as const]
          : []),
        [say(words, "looked.findings"), say(words, "looked.findings.of", { ...of.grades })],
      ],
    },
    ...unreadVisits(visitsUnread, words).map((text) => ({ is: "text", text }) as const),
  ];
}
