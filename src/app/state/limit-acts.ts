/** What a person does with a car's limits book: each one act of the journal. Judges nothing. */
import { draftFigure, draftFigureLooked, draftOutOfBook, type FigureTold } from "../../core/record/index.js";
import type { CarLimit } from "../../core/sheet/run.js";
import { carAct } from "./car-edits.js";
import type { Journal } from "./journal.js";

/** Puts a figure into the book with all that is told of it. */
export const keepFigure = (
  journal: Journal,
  stream: string,
  limit: CarLimit,
  told: FigureTold,
  why?: string,
): Promise<boolean> => carAct(journal, stream, (act, car) => draftFigure(act, car, limit, told, why));

/** Takes a figure out of the book; the default stands again. */
export const takeOut = (journal: Journal, stream: string, key: string, why: string): Promise<boolean> =>
  carAct(journal, stream, (act, car) => draftOutOfBook(act, car, key, why));

/** Says that a second person compared the figure of an entry with its source. */
export const keepSecondLook = (
  journal: Journal,
  stream: string,
  of: { readonly key: string; readonly id: string },
  who: string,
  words: string,
): Promise<boolean> => carAct(journal, stream, (act, car) => [draftFigureLooked(act, car, of, who, words)]);
