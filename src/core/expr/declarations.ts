/**
 * What a condition may name, as the sheet loader declares it: names, words, quantities, places, faults,
 * functions. Knows no sheet format; refuses to guess a name that is not declared.
 */
import type { FigureRange } from "../terms/author.js";
import type { Quantity } from "../units/index.js";
import type { Ref } from "./scope.js";

/** What a name gives. `ratio` and `percent` readings are readings too: compared through a limit. */
export type NameType =
  | { readonly is: "word"; readonly words: readonly string[] }
  /** Several words may stand together; tested with `"word" in name`. */
  | { readonly is: "words"; readonly words: readonly string[] }
  /** `results`: words that may stand instead of a number, e.g. `no-echo`. */
  | { readonly is: "reading"; readonly quantity: Quantity; readonly results?: readonly string[] }
  | { readonly is: "count" }
  | { readonly is: "yes" }
  /** Text only a trade function understands. */
  | { readonly is: "date-code" };

export interface Named {
  readonly ref: Ref;
  /** The kind of place the point or derived value belongs to. */
  readonly kind: string;
  readonly type: NameType;
}

/** A car fact. A number (`count`) and a year are plain numbers; one with a quantity is a reading. */
export type FactType =
  | { readonly is: "word"; readonly words: readonly string[] }
  | { readonly is: "count" }
  | { readonly is: "yes" }
  | { readonly is: "reading"; readonly quantity: Quantity };

/** A named relation of places.yaml. One line per pair of kinds; `many` makes it a list for `exists` and `all`. */
export interface Relation {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly many: boolean;
}

/** `number` is a plain number, without unit; `word` a word or date code. */
export type ArgumentKind = Quantity | "number" | "word";

/** What an argument takes: a figure within its range, several of them (`atLeast`), or one of some words. */
export interface ArgumentTaken extends FigureRange {
  readonly name: string;
  readonly kind: ArgumentKind;
  readonly whole?: true;
  readonly atLeast?: number;
  readonly words?: readonly string[];
}

/** A trade function as conditions know it: canonical units in and out (core/units). */
export interface Signature {
  readonly arguments: readonly ArgumentTaken[];
  readonly gives: ArgumentKind | "yes";
  /** The words a `word` may be. */
  readonly words?: readonly string[];
}

/** Everything the conditions of one set of sheets may name. Shared by all of them; build it once. */
export interface Declarations {
  /** By spelling in conditions: `whl.rock`, `whl.heat_reading`, `whl.heat_rise` (derived). */
  readonly names: Readonly<Record<string, Named>>;
  /** By the spelling after `car.` */
  readonly facts: Readonly<Record<string, FactType>>;
  /** Every kind of place with the wider kinds around it, nearest first, e.g. corner: [axle, car]. */
  readonly kinds: Readonly<Record<string, readonly string[]>>;
  readonly relations: readonly Relation[];
  readonly faults: readonly string[];
  readonly functions: Readonly<Record<string, Signature>>;
  /** Sheets loaded here. A name of another known sheet is `expr.sheet-not-loaded`: a note, not a fault. */
  readonly sheets: readonly string[];
  /** Sheets that exist but are not loaded; absent: any prefix that is not loaded may be one. */
  readonly otherSheets?: readonly string[];
}

/** Where and for what one condition is used. */
export interface Use {
  /** Kind of place where it is evaluated (`here`). */
  readonly scope: string;
  /** A condition (default), or a formula of this quantity. */
  readonly gives?: "condition" | Quantity | "number";
  /** The rule is marked provisional: `unanswered(x)` may be used. */
  readonly provisional?: boolean;
  /** Third pass: `found("fault")` may be used. */
  readonly findings?: boolean;
}
