/**
 * A mark in the making: which tool, which spots are set, where the last one is. A press sets it, arrows move it, a second
 * press or Enter goes on. Pure; knows neither screen nor record.
 */
import type { MarkTool, Spot } from "../../core/record/index.js";

export interface Marking {
  readonly tool: MarkTool;
  /** Set and left. */
  readonly set: readonly Spot[];
  /** The spot that is moved about. */
  readonly here?: Spot;
  /** Whether it was put where it is; a spot that only waits where the one before was set is not. */
  readonly placed: boolean;
}

export const spotsOf = (tool: MarkTool): number => (tool === "words" ? 1 : 2);
export const begin = (tool: MarkTool): Marking => ({ tool, set: [], placed: false });

const within = (part: number): number => Math.round(Math.min(1, Math.max(0, part)) * 1e5) / 1e5;
const isLast = ({ tool, set }: Marking): boolean => set.length + 1 === spotsOf(tool);

/** All spots are there: it can be kept. */
export const isWhole = (marking: Marking): boolean => marking.placed && isLast(marking);

/** Every spot there is, in order. */
export const allSpots = ({ set, here }: Marking): readonly Spot[] => (here ? [...set, here] : set);

/** A press on the picture: sets the next spot; once all are there it moves the last one. */
export function pressAt(marking: Marking, [x, y]: Spot): Marking {
  const here: Spot = [within(x), within(y)];
  const goesOn = marking.here !== undefined && marking.placed && !isLast(marking);
  const set = goesOn && marking.here ? [...marking.set, marking.here] : marking.set;
  return { ...marking, set, here, placed: true };
}

/** Enter, or the button: sets the spot where it is. The next one waits in the same place until it is moved. */
export function setHere(marking: Marking): Marking {
  const { here, set } = marking;
  if (!here) return { ...marking, here: [0.5, 0.5], placed: true };
  if (isLast(marking) || !marking.placed) return marking;
  return { ...marking, set: [...set, here], placed: false };
}

/** Moves the last spot by so much of the picture. */
export function moveBy(marking: Marking, dx: number, dy: number): Marking {
  const [x, y] = marking.here ?? [0.5, 0.5];
  return { ...marking, here: [within(x + dx), within(y + dy)], placed: true };
}
