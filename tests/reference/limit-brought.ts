/** The ways a wanted value is typed, for what brings a limit's reading about. Knows no limit. */
import type { FactValue } from "../../src/core/assess/contract.js";

/** Replies as `point.field@place` → words, `0.22 mm`, shots, a count. */
export type Said = Readonly<Record<string, string | readonly string[] | number>>;
export interface Brought {
  readonly at: string;
  readonly says: (value: number) => Said;
  /** What was said at the last visit, 1000 km ago. */
  readonly before?: Said;
}

/** Twelve figures: beyond any gauge, short of the noise of binary fractions. */
const figure = (value: number): string => Number(value.toPrecision(12)).toString();
export const of = (value: number, unit: string): string => `${figure(value)} ${unit}`;
export const mm = (value: number): string => of(value, "mm");
export const plain = (key: string, unit: string): Brought => ({
  at: key.split("@")[1] ?? "car",
  says: (value) => ({ [key]: of(value, unit) }),
});

/** What makes a limit apply that asks for more than its reading. */
export type Applies = Readonly<
  Record<string, { readonly says?: Said; readonly facts?: Readonly<Record<string, FactValue>> }>
>;
