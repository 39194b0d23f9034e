/** What a sheet brings (places, car states, gauges, aids, cautions, access, car facts) as its forms change it. Pure. */
import type { DraftItem } from "../../core/sheet/draft.js";
import { canonicalUnit, isQuantity } from "../../core/units/index.js";
import {
  entriesAt,
  freshSlug,
  type Inside,
  listAt,
  moved,
  namesAt,
  slug,
  textAt,
  valueAt,
  withAt,
  withoutAt,
} from "./sheet-forms.js";
import { stepInUnit } from "./sheet-forms-units.js";

export const SIGNALS = ["danger", "warning", "caution", "notice"] as const;
export const PLANS = ["body", "chassis", "none"] as const;
export const ENGINES = ["running", "driving", "hot"] as const;
export const FACT_KINDS = ["word", "number", "year", "yes"] as const;

/** A gauge of another quantity begins in its usual unit, step and error as they stand. */
export const gaugeOf = (is: DraftItem, quantity: string): DraftItem =>
  isQuantity(quantity) ? withAt(withAt(is, ["quantity"], quantity), ["unit"], canonicalUnit(quantity)) : is;

/** A gauge that shows another unit: step and error go with it. */
export function gaugeInUnit(is: DraftItem, unit: string): DraftItem {
  const move = { quantity: textAt(is, ["quantity"]), from: textAt(is, ["unit"]), to: unit };
  return ["resolution", "error"].reduce(
    (item, key) => withAt(item, [key], stepInUnit(valueAt(is, [key]), move)),
    withAt(is, ["unit"], unit),
  );
}

/** A kind of place by its name: one that is there under its id, else a new one. */
export const kindCalled = (
  name: string,
  known: readonly { readonly value: string; readonly words: string }[],
): string => known.find(({ words }) => words.toLowerCase() === name.trim().toLowerCase())?.value ?? slug(name, "place");

/** Where on the plan it lies: both figures, or neither. */
export function withSpot(is: DraftItem, end: 0 | 1, figure: number | undefined): DraftItem {
  if (figure === undefined) return withAt(is, ["at"], undefined);
  const [along = MIDDLE, across = MIDDLE] = listAt(is, ["at"]);
  return withAt(is, ["at"], end === 0 ? [figure, across] : [along, figure]);
}
const MIDDLE = 50;

/** The places a relation leads to: one as a name, several as a list, none takes the relation away. */
export function withRelation(is: DraftItem, relation: string, places: readonly string[]): DraftItem {
  const path: Inside = ["relations", relation];
  if (places.length === 0) return withoutAt(is, path);
  return withAt(is, path, places.length === 1 && !Array.isArray(valueAt(is, path)) ? places[0] : places);
}
export function relationsOf(is: DraftItem): readonly (readonly [string, readonly string[]])[] {
  return entriesAt(is, ["relations"]).map(([relation, to]) => [
    relation,
    typeof to === "string" ? [to] : namesAt(is, ["relations", relation]),
  ]);
}

/** A car fact of another kind: only words have words, only numbers a unit. */
export function factOf(is: DraftItem, kind: string, language: string): DraftItem {
  const bare = ["words", "quantity", "unit"].reduce((item, key) => withAt(item, [key], undefined), is);
  const changed = withAt(bare, ["kind"], kind);
  return kind === "word"
    ? withAt(changed, ["words"], namesAt(is, ["words"]))
    : withAt(changed, ["texts", language, "words"], undefined);
}

interface FactForm {
  readonly is: DraftItem;
  readonly language: string;
  readonly base: DraftItem | undefined;
}
export function withFactWord({ is, language, base }: FactForm, spoken: string): DraftItem {
  const there = namesAt(is, ["words"]);
  const word = freshSlug(spoken, "word", [...there, ...(base ? namesAt(base, ["words"]) : [])]);
  return withAt(withAt(is, ["words"], [...there, word]), ["texts", language, "words", word], spoken);
}
export const withoutFactWord = (is: DraftItem, language: string, word: string): DraftItem =>
  withoutAt(
    withAt(
      is,
      ["words"],
      namesAt(is, ["words"]).filter((one) => one !== word),
    ),
    ["texts", language, "words", word],
  );
export const factWordMoved = (is: DraftItem, from: number, to: number): DraftItem =>
  withAt(is, ["words"], moved(namesAt(is, ["words"]), from, to));
