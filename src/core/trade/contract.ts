/**
 * What a trade function is: its name, its arguments with their range, its unit, formula and source, and the work
 * itself. Knows no subject; refuses to let a figure out of its range reach the work.
 */

import type { FigureRange } from "../terms/author.js";
import type { Problem, Result } from "../terms/index.js";
import type { Quantity } from "../units/index.js";

/** Where a formula or table comes from. `clause` names the place in the document. */
export interface Source {
  readonly basis: "published" | "practice" | "memory" | "arithmetic";
  readonly document?: string;
  readonly clause?: string;
  /** How far it was seen, or what it leaves out. */
  readonly note?: string;
}

/** What an argument or a result is: a quantity in its canonical unit, a plain number, a word, a yes or no. */
export type ArgumentKind = Quantity | "number" | "word";
export type ResultKind = Quantity | "number" | "word" | "yes";

interface Named {
  /** As in conditions and on the command line: `wall_left`. */
  readonly name: string;
  /** As a technician would say it. */
  readonly says: string;
}

/** A number with the range the formula holds in. */
export interface FigureArgument extends Named, FigureRange {
  readonly kind: Quantity | "number";
  readonly whole?: true;
}
/** Several figures of one kind, at least `atLeast` of them; each within the range. */
export interface ListArgument extends FigureArgument {
  readonly atLeast: number;
}
/** One of these words, or any text where none are listed. */
export interface WordArgument extends Named {
  readonly kind: "word";
  readonly words?: readonly string[];
}
export type Argument = FigureArgument | ListArgument | WordArgument;

/** A value handed to a function. */
export type Given = number | string | readonly number[];
/** What a function gives. */
export type Gives = number | string | boolean;

/** The value an argument's work receives. */
type ValueOf<A extends Argument> = A extends { readonly kind: "word" }
  ? A extends { readonly words: readonly (infer W)[] }
    ? W
    : string
  : A extends { readonly atLeast: number }
    ? readonly number[]
    : number;
type ValuesOf<List extends readonly Argument[]> = { readonly [I in keyof List]: ValueOf<List[I]> };

/** One row of the table. Every argument is within its range when `work` is called. */
export interface TradeFunction {
  readonly name: string;
  readonly says: string;
  readonly arguments: readonly Argument[];
  readonly gives: ResultKind;
  /** The words a `word` result may be. */
  readonly words?: readonly string[];
  /** In the signs of the trade: `η = 100 · ΣF / (m · g)`. */
  readonly formula: string;
  readonly source: Source;
  readonly work: (...given: readonly Given[]) => Gives | Problem;
}

/** A row whose work is typed by its arguments. */
interface Row<List extends readonly Argument[]> extends Omit<TradeFunction, "arguments" | "work"> {
  readonly arguments: List;
  readonly work: (...given: ValuesOf<List>) => Gives | Problem;
}

/** Makes a row of the table; the types of `work` follow from the arguments. */
export function row<const List extends readonly Argument[]>(made: Row<List>): TradeFunction {
  // `calculate` hands over exactly what the arguments say, so the narrower work is safe behind the wider type.
  return made as unknown as TradeFunction;
}

export const isList = (argument: Argument): argument is ListArgument => "atLeast" in argument;
export const isWordArgument = (argument: Argument): argument is WordArgument => argument.kind === "word";

export type Calculated = Result<Gives>;
