/** Drafts of figures for the limits book with what is told of them, and of second looks. Refuses to judge a figure. */
import type { CarLimit } from "../sheet/car.js";
import type { Act, CarState, Draft, IdText } from "./contract.js";
import { draftLimit, draftNoLimit } from "./draft-car.js";
import { draftBy } from "./draft-later.js";
import { limitKey } from "./identity.js";
import type { FigureTold } from "./limit-bodies.js";
import { LIMIT_KINDS } from "./limit-kinds.js";

const why = (words: string | undefined): { readonly why?: string } =>
  words === undefined || words.trim() === "" ? {} : { why: words.trim() };

/** A figure and what is told of it, one act: undone together. */
export function draftFigure(
  act: Act,
  car: CarState,
  limit: CarLimit,
  told: FigureTold,
  because?: string,
): readonly Draft[] {
  const figure = draftLimit(act, car, limit);
  const body = { key: limitKey(limit), of: figure.nonce, told, ...why(because) };
  return [figure, draftBy(LIMIT_KINDS, act, car.stream, "limit.told", body)];
}

/** Takes a figure out of the book with the reason; the default stands from here on. */
export function draftOutOfBook(act: Act, car: CarState, key: string, because: string): readonly Draft[] {
  const out = draftNoLimit(act, car, key);
  return [out, draftBy(LIMIT_KINDS, act, car.stream, "limit.told", { key, of: out.nonce, ...why(because) })];
}

/** Says that a second person compared the figure of an entry with its source. */
export function draftFigureLooked(
  act: Act,
  car: CarState,
  of: { readonly key: string; readonly id: IdText },
  who: string,
  words = "",
): Draft {
  return draftBy(LIMIT_KINDS, act, car.stream, "limit.looked", {
    key: of.key,
    of: of.id,
    who: who.trim(),
    ...(words.trim() === "" ? {} : { words: words.trim() }),
  });
}
