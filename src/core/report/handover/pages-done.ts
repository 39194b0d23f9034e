/** Work that is done in words: by whom, when, what was read before and after, and whether somebody else has looked. */
import { dayText } from "./figures.js";
import type { DoneTold, SaidOn } from "./input.js";
import type { HandoverModel } from "./model.js";
import type { Block } from "./page.js";
import { placed, unended } from "./sentence.js";
import { type HandoverWords, say } from "./words.js";

const DAY = 10;

/** A technician has the readings in a table, before beside after; everybody else the newest in a sentence. */
export function donePages({ done, madeAt, for: reader }: HandoverModel, words: HandoverWords): readonly Block[] {
  if (done.length === 0) return [];
  const isToday = done.every(({ on }) => on === madeAt.slice(0, DAY));
  const isTechnician = reader === "technician";
  const read = done.filter(({ readings }) => readings.length > 0);
  return [
    { is: "heading", level: 2, text: say(words, isToday ? "done.title.today" : "done.title") },
    { is: "list", items: done.map((one) => doneText(words, one, isTechnician)) },
    ...(isTechnician && read.length > 0 ? [readTable(words, read)] : []),
  ];
}

function doneText(words: HandoverWords, one: DoneTold, isTechnician: boolean): string {
  const { title, where, on, by, readings } = one;
  const told = { what: placed(words, title, where), day: dayText(words, on) };
  return [
    by === undefined ? say(words, "done.line", told) : say(words, "done.line.by", { ...told, by }),
    // What nobody has looked at again is told with the looks.
    ...(isTechnician
      ? []
      : readings.flatMap(({ title: point, where: at, after }) =>
          after === undefined
            ? []
            : [say(words, "done.read", { what: placed(words, point, at), says: unended(after.says) })],
        )),
    ...lookTexts(words, one),
  ].join(" ");
}

/** Who looked afterwards, or that nobody has yet: the absence of a second look is told, never left to be guessed. */
export function lookTexts(words: HandoverWords, { look, unseen }: DoneTold): readonly string[] {
  return [
    lookText(words, look),
    ...(unseen.length > 0 ? [say(words, "done.unseen", { points: unseen.join("; ") })] : []),
  ];
}

function lookText(words: HandoverWords, { needed, is, who }: DoneTold["look"]): string {
  if (is === "none") return say(words, needed ? "done.look.needed" : "done.look.none");
  if (who.length === 0) return say(words, is === "other" ? "done.look.other.nameless" : "done.look.same.nameless");
  return say(words, `done.look.${is}`, { who: who.join(", ") });
}

function readTable(words: HandoverWords, done: readonly DoneTold[]): Block {
  const said = (one: SaidOn | undefined): string =>
    one === undefined
      ? say(words, "done.not-read")
      : say(words, "done.said", { says: unended(one.says), day: dayText(words, one.on) });
  return {
    is: "table",
    table: {
      caption: say(words, "done.table"),
      head: (["done.work", "done.point", "done.before", "done.after"] as const).map((key) => ({
        text: say(words, key),
      })),
      rows: done.flatMap((one) =>
        one.readings.map(({ title, where, before, after }) => ({
          cells: [placed(words, one.title, one.where), placed(words, title, where), said(before), said(after)],
        })),
      ),
    },
  };
}
