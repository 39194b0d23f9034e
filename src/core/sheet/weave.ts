/**
 * Data and words of a sheet laid item beside text, and apart again. Packed as two lists one after the other an id stands
 * further from its words than gzip looks back. Knows no field of a sheet.
 */

type Item = { readonly id?: unknown };
type Texts = Readonly<Record<string, unknown>>;

/** Lists of items as pairs with their text where the texts of the same name have one; what is left of the texts. */
export interface Woven {
  readonly lists: Readonly<Record<string, readonly (readonly [item: unknown, text?: unknown])[]>>;
  readonly rest: Texts;
  readonly words: Texts;
}

const isTexts = (value: unknown): value is Texts =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Lays `texts` beside the items of `data` they belong to. `unweave` gives both back. */
export function weave(data: Readonly<Record<string, unknown>>, texts: Texts): Woven {
  const lists: Record<string, (readonly [unknown, unknown?])[]> = {};
  const rest: Record<string, unknown> = { ...data };
  const words: Record<string, unknown> = { ...texts };
  for (const [name, items] of Object.entries(data)) {
    const own = texts[name];
    if (!Array.isArray(items) || !isTexts(own)) continue;
    const left: Record<string, unknown> = { ...own };
    lists[name] = items.map((item: Item) => {
      const id = item.id;
      if (typeof id !== "string" || !Object.hasOwn(left, id)) return [item];
      const text = left[id];
      delete left[id];
      return [item, text];
    });
    delete rest[name];
    words[name] = left;
  }
  return { lists, rest, words };
}

/** Data and texts as they were before `weave`; texts in the order of their items. */
export function unweave({ lists, rest, words }: Woven): readonly [data: Texts, texts: Texts] {
  const data: Record<string, unknown> = { ...rest };
  const texts: Record<string, unknown> = { ...words };
  for (const [name, pairs] of Object.entries(lists)) {
    data[name] = pairs.map(([item]) => item);
    const told = pairs.flatMap(([item, ...text]) => (text.length > 0 ? [[(item as Item).id, text[0]] as const] : []));
    // Only items whose id is a text were given one.
    texts[name] = { ...Object.fromEntries(told as readonly (readonly [string, unknown])[]), ...(words[name] as Texts) };
  }
  return [data, texts];
}

type Loaders = Readonly<Record<string, () => Promise<unknown>>>;

/**
 * How a source is fetched when its words lie woven into it: the source alone, with its plans, and its texts by
 * language. `name` is what the data is called, `language` that of the woven words; `others` fetch the texts of the other
 * languages.
 */
export function wovenSource(
  [name, edition, language]: readonly [name: string, edition: string, language: string],
  fetchWoven: () => Promise<{ readonly woven: Woven }>,
  fetchPlans: () => Promise<{ readonly plans: object }>,
  others: Loaders,
) {
  const apart = async () => unweave((await fetchWoven()).woven);
  const source = async () => ({ [name]: (await apart())[0], edition });
  const texts: Loaders = { [language]: async () => (await apart())[1], ...others };
  const load = async () => {
    const [own, { plans }] = await Promise.all([source(), fetchPlans()]);
    return { ...own, ...plans };
  };
  return { edition, source, load, texts };
}
