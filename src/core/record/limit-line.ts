/**
 * Every figure the limits book ever held on one limit, oldest first, with what was told of each and who looked at it:
 * nothing of it is ever overwritten. Folded from the car's own log when someone opens the book. Judges nothing.
 */
import type { CarLimit } from "../sheet/car.js";
import type { CarState, FoldedState, IdText, Logged, Stamp, Stands } from "./contract.js";
import { fold, type Parts, setOrDrop } from "./fold.js";
import { isEntry, parseId } from "./identity.js";
import type { Known } from "./kinds.js";
import type { FigureTold, LimitBodies } from "./limit-bodies.js";
import { LIMIT_KINDS } from "./limit-kinds.js";
import { historyOf } from "./redo.js";
import { standsIn } from "./standing.js";

type Told = LimitBodies["limit.told"];
type Looked = LimitBodies["limit.looked"];

/** By key of the limit. Of `trouble` only `unknown` means anything: the car's other entries are left out. */
export interface LimitBookState extends FoldedState {
  readonly of: "car";
  readonly told: ReadonlyMap<string, readonly Stands<Told>[]>;
  readonly looked: ReadonlyMap<string, readonly Stands<Looked>[]>;
}

const BOOK: Parts<LimitBookState> = {
  of: "car",
  kinds: LIMIT_KINDS,
  begins: "name|",
  empty: () => ({ of: "car", told: new Map(), looked: new Map() }),
  copy: (state) => ({ ...state, told: new Map(state.told), looked: new Map(state.looked) }),
  fill: {
    told: (own, ledger, slot, key) =>
      setOrDrop(
        own.told,
        key,
        standsIn<Told>(ledger, slot, (e: Known) => (e.kind === "limit.told" ? e.body : null)),
      ),
    looked: (own, ledger, slot, key) =>
      setOrDrop(
        own.looked,
        key,
        standsIn<Looked>(ledger, slot, (e: Known) => (e.kind === "limit.looked" ? e.body : null)),
      ),
  },
  join: (own, folded) => ({ ...own, ...folded }),
};

/** What these entries tell of figures, in whatever order, however often. */
export function foldLimitBook(entries: Iterable<Logged>): LimitBookState {
  const own: Logged[] = [];
  for (const logged of entries) {
    const counts =
      !isEntry(logged) || logged.kind === "undo" || logged.kind === "erase" || logged.kind.startsWith("limit.");
    if (counts) own.push(logged);
  }
  return fold(BOOK, own);
}

/** One figure in the line of a limit; `limit` null: it was taken out, and the default stood from there on. */
export interface FigureSaid {
  readonly id: IdText;
  readonly limit: CarLimit | null;
  readonly at: Stamp;
  /** Id of the person who entered it. */
  readonly by: string;
  readonly is: "standing" | "replaced" | "undone";
  readonly told?: FigureTold;
  /** Why it replaced the one before, or was taken out. */
  readonly why?: string;
  /** Who compared it with its source, oldest first. */
  readonly looked: readonly Stands<Looked>[];
}

/** The line of a limit (`key` from `limitKey`), oldest first. What is told of a figure undone is undone with it. */
export function limitLine(
  car: Pick<CarState, "ledger"> & FoldedState,
  key: string,
  book: Pick<LimitBookState, "told" | "looked"> = foldLimitBook(car.ledger.log.values()),
): readonly FigureSaid[] {
  const told = new Map((book.told.get(key) ?? []).map(({ value }) => [value.of, value]));
  const looked = book.looked.get(key) ?? [];
  return historyOf(car, `limit|${key}`).flatMap(({ entry, id, is }): readonly FigureSaid[] => {
    if (entry.kind !== "car.limit") return [];
    const own = told.get(parseId(id)?.nonce ?? "");
    return [
      {
        id,
        limit: entry.body.limit,
        at: entry.at,
        by: entry.by,
        is,
        ...(own?.told === undefined ? {} : { told: own.told }),
        ...(own?.why === undefined ? {} : { why: own.why }),
        looked: looked.filter(({ value }) => value.of === id),
      },
    ];
  });
}

/** Keys under which the book ever held a figure on this limit, its places included, in the order of the log's slots. */
export const limitKeysOf = ({ ledger }: Pick<CarState, "ledger">, limit: string): readonly string[] =>
  [...ledger.slots.keys()].flatMap((slot) => {
    const key = slot.startsWith("limit|") ? slot.slice("limit|".length) : "";
    return key === limit || key.startsWith(`${limit}@`) ? [key] : [];
  });
