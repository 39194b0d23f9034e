/** Findings with their because and the plan of the car with letters, in words. */

import { levelOf } from "../../terms/index.js";
import { planDrawing } from "../plan-drawing.js";
import { dayText, judgedText, limitText } from "./figures.js";
import type { PictureTold, StepTold } from "./input.js";
import type { HandoverModel, LetteredFinding } from "./model.js";
import type { Block, PictureBlock } from "./page.js";
import { beforeText, capital, ended, gradeWord, unended } from "./sentence.js";
import { isSettled } from "./standing.js";
import { type HandoverWords, say } from "./words.js";

export function findingPages(model: HandoverModel, words: HandoverWords): readonly Block[] {
  const { findings, notSeen, pictures, picturesLeft } = model;
  const others = pictures.filter(({ hash }) => !findings.some((of) => of.pictures.some((one) => one.hash === hash)));
  return [
    { is: "heading", level: 2, text: say(words, "findings.title"), newPage: true },
    ...planBlocks(model, words),
    ...(findings.length === 0
      ? [
          {
            is: "text",
            text: say(words, notSeen.length === 0 ? "findings.none" : "findings.none.unseen"),
          } as const,
        ]
      : findings.map((one) => findingBlock(model, one, words))),
    ...(others.length === 0
      ? []
      : [
          { is: "heading", level: 3, text: say(words, "pictures.title") } as const,
          ...others.map((one) => ({ is: "picture", picture: pictureBlock(one) }) as const),
        ]),
    ...(picturesLeft.length === 0 ? [] : [{ is: "text", text: leftText(words, picturesLeft), look: "small" } as const]),
  ];
}

/** Pictures no form can hold: that they are missing is told with what they show. */
export const leftText = (words: HandoverWords, left: readonly string[]): string =>
  say(words, "pictures.left", { n: left.length, names: left.join("; ") });

const pictureBlock = ({ hash, caption, width, height, marks }: PictureTold): PictureBlock => ({
  hash,
  caption,
  width,
  height,
  ...(marks === undefined ? {} : { marks }),
});

/** The plan with the letters of its findings; places that were looked at are inked. Their marks stand in the list. */
/** Letters beside each other at one place of the plan; more would run over the next. */
const MOST_LETTERS = 3;
/** What the plan has room to tell: what cannot wait. */
const isGrave = ({ grade, close }: LetteredFinding): boolean => close || levelOf(grade) >= levelOf("major");

function planBlocks({ plan, findings }: HandoverModel, words: HandoverWords): readonly Block[] {
  if (plan === undefined || plan.places.length === 0) return [];
  const standing = findings.filter((one) => !isSettled(one));
  const places = plan.places.map((place) => {
    const letters = standing.filter((one) => one.place === place.id && isGrave(one)).map(({ letter }) => letter);
    const more = letters.length > MOST_LETTERS ? ["…"] : [];
    return letters.length === 0 ? place : { ...place, letter: [...letters.slice(0, MOST_LETTERS), ...more].join(" ") };
  });
  const { drawing } = planDrawing({ plan: plan.kind, side: plan.side, places });
  return [{ is: "drawing", drawing, label: say(words, "plan.label") }];
}

function findingBlock(model: HandoverModel, of: LetteredFinding, words: HandoverWords): Block {
  const isTechnician = model.for === "technician";
  return {
    is: "finding",
    finding: {
      letter: of.letter,
      mark: of.grade,
      word: say(words, `mark.${of.grade}`),
      title: of.title,
      where: of.where,
      says: [
        ...beforeText(words, of),
        ...(of.close ? [say(words, "finding.close")] : []),
        ...(of.atLeast ? [say(words, "finding.at-least")] : []),
        ...(of.differ ? [say(words, "finding.differ")] : []),
        ...(of.provisional ? [say(words, "finding.provisional")] : []),
        ...byHand(of, words),
      ],
      steps: [
        ...of.because.map((step) => ({ kind: say(words, `step.${step.is}`), says: stepSays(step, words) })),
        {
          kind: say(words, "step.so"),
          says: say(words, "step.so.says", {
            grade: gradeWord(words, of.grade),
            sure: sureText(words, of),
          }),
        },
      ],
      after: [
        ...(of.cause ? [ended(say(words, "finding.cause", { cause: of.cause }))] : []),
        ...(of.settle && of.settle.length > 0
          ? [say(words, "finding.settle", { what: of.settle.map(unended).join("; ") })]
          : []),
        ...(of.numbers.length > 0
          ? [say(words, "finding.work", { numbers: of.numbers.join(", ") })]
          : isSettled(of)
            ? []
            : [say(words, "finding.no-work")]),
        ...mended(of, words),
        ...(isTechnician && of.answersTo.length > 0
          ? [say(words, "finding.item", { items: of.answersTo.join("; ") })]
          : []),
        ...(isTechnician ? [say(words, "finding.rules", { rules: of.rules.join(", "), place: of.place })] : []),
      ],
      pictures: of.pictures.map(pictureBlock),
    },
  };
}

/** How sure it is; a reading too close to call leaves no other word room. */
export const sureText = (words: HandoverWords, { close, sure }: Pick<LetteredFinding, "close" | "sure">): string =>
  say(words, close ? "sure.close" : `sure.${sure}`);

function byHand({ byHand: by }: LetteredFinding, words: HandoverWords): readonly string[] {
  if (by === undefined) return [];
  const was = say(words, `grade.${by.was}`);
  return by.reason === ""
    ? [say(words, "finding.by-hand.no-reason", { was })]
    : [ended(say(words, "finding.by-hand", { was, reason: by.reason }))];
}

function mended(of: LetteredFinding, words: HandoverWords): readonly string[] {
  if (of.mended === undefined) return [];
  return [say(words, of.mended.checked ? "finding.mended" : "finding.done", { day: dayText(words, of.mended.on) })];
}

/** What one step of the because says. */
export function stepSays(step: StepTold, words: HandoverWords): string {
  if (step.is === "limit")
    return say(words, "step.limit.says", {
      limit: capital(limitText(words, step)),
      value: judgedText(words, step.value, step.uncertainty, step.unit),
    });
  const said = step.supports ? say(words, "step.supports", { words: step.words }) : step.words;
  return step.on === undefined ? said : say(words, "step.on", { words: said, day: dayText(words, step.on) });
}
