/**
 * A check sheet under work: the edition it was begun from, and every item changed since. Types only; refuses to know what
 * a sheet holds.
 */
import type { FrozenSheet } from "./contract.js";

type Replaces = { readonly replaces: readonly string[] };

/** One item of a sheet as a person wants it: its data and its words by language. */
export interface DraftedItem {
  readonly value?: unknown;
  readonly texts: Readonly<Record<string, unknown>>;
}

export interface SheetDraftBodies {
  /** `draft`: a name nobody used before. `base` is kept whole in its blob; null throws the work away. */
  "house.draft": Replaces & { readonly draft: string; readonly base: FrozenSheet | null };
  /** An item as it is from now on; null takes it out of the sheet. */
  "house.draft-item": Replaces & {
    readonly draft: string;
    readonly list: string;
    readonly item: string;
    readonly to: DraftedItem | null;
  };
  /** The order the items of a list are wanted in. */
  "house.draft-order": Replaces & {
    readonly draft: string;
    readonly list: string;
    readonly order: readonly string[];
  };
}
