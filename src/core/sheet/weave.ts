/**
 * Data and words of a sheet laid list beside list, and apart again. Packed as two whole sheets one after the other an id
 * stands further from its words than gzip looks back. Knows no field of a sheet.
 */

type Item = { readonly id?: unknown };
type Texts = Readonly<Record<string, unknown>>;

/** Lists of items beside their texts in the same order (`null` for none), where the texts have the name; what is left of both. */
export interface Woven {
  readonly lists: Readonly<Record<string, readonly [items: readonly unknown[], texts: readonly unknown[]]>>;
  readonly rest: Texts;
  readonly words: Texts;
}

const isTexts = (value: unknown): value is Texts =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Lays `texts` beside the items of `data` they belong to. `unweave` gives both back. */
export function weave(data: Readonly<Record<string, unknown>>, texts: Texts): Woven {
  const lists: Record<string, readonly [readonly unknown[], readonly unknown[]]> = {};
  const rest: Record<string, unknown> = { ...data };
  const words: Record<string, unknown> = { ...texts };
  for (const [name, items] of Object.entries(data)) {
    const own = texts[name];
    if (!Array.isArray(items) || !isTexts(own)) continue;
    const left: Record<string, unknown> = { ...own };
    const told = items.map(({ id }: Item) => {
      if (typeof id !== "string" || !Object.hasOwn(left, id)) return null;
      const text = left[id];
      delete left[id];
      return text;
    });
    lists[name] = [items, told];
    delete rest[name];
    words[name] = left;
  }
  return { lists, rest, words };
}

/** Data and texts as they were before `weave`; texts in the order of their items. */
export function unweave({ lists, rest, words }: Woven): readonly [data: Texts, texts: Texts] {
  const data: Record<string, unknown> = { ...rest };
  const texts: Record<string, unknown> = { ...words };
  for (const [name, [items, told]] of Object.entries(lists)) {
    data[name] = items;
    // Only items whose id is a text were given one.
    const own = items.map((item, i) => [(item as Item).id as string, told[i]] as const);
    texts[name] = { ...Object.fromEntries(own.filter(([, text]) => text !== null)), ...(words[name] as Texts) };
  }
  return [data, texts];
}

/** What lies in a piece of its own: source with words, the whole edition, and the way to the plans. */
interface WovenPiece {
  readonly woven: Woven;
  readonly edition: string;
  readonly plans: () => Promise<{ readonly plans: object }>;
}

type Loaders = Readonly<Record<string, () => Promise<unknown>>>;

/**
 * How a source is fetched when its words lie woven into it: the source alone, with its plans, and its texts by
 * language. `name` is what the data is called, `language` that of the woven words; `others` fetch the texts of the other
 * languages; `edition` is told as a list tells it. The piece with the words knows where the plans lie, so that a list of sheets need not.
 */
export function wovenSource(
  [name, edition, language]: readonly [name: string, edition: string, language: string],
  fetchWoven: () => Promise<WovenPiece>,
  others: Loaders,
) {
  const source = async () => {
    const piece = await fetchWoven();
    return { [name]: unweave(piece.woven)[0], edition: piece.edition };
  };
  const texts: Loaders = { [language]: async () => unweave((await fetchWoven()).woven)[1], ...others };
  const load = async () => {
    const [own, { plans }] = await Promise.all([source(), fetchWoven().then((piece) => piece.plans())]);
    return { ...own, ...plans };
  };
  return { edition, source, load, texts };
}
