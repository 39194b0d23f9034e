/** A sheet copied under another id: every id that carries the old one is renamed, wherever it is named. Pure. */
import type { Sheet } from "./schema-types.js";

type Loose = Readonly<Record<string, unknown>>;
/** Text for people; a word in it that looks like an id is none. */
const PROSE: ReadonlySet<string> = new Set(["source", "stricter", "answers-to", "label"]);
/** Words of a language; only the keys around them are ids. */
const KEYED_BY_ID = ["points", "faults", "rules", "jobs", "limits", "derived", "gates"] as const;

/** `sheet` as a new sheet `id` titled `title`. What it brings stays as it is: things brought are shared by their id. */
export function copiedSheet(sheet: Sheet, id: string, title: string): Sheet {
  const rename = renaming(sheet, id);
  const { texts, brings, ...data } = sheet;
  const copied = walked(data, rename) as Omit<Sheet, "texts" | "brings">;
  const words = Object.entries(texts).map(([language, own]) => {
    const renamed = Object.fromEntries(
      KEYED_BY_ID.flatMap((list) => (own[list] === undefined ? [] : [[list, keysRenamed(own[list], rename)]])),
    );
    return [language, { ...own, ...renamed, title }] as const;
  });
  return { ...copied, id, label: title, ...(brings ? { brings } : {}), texts: Object.fromEntries(words) };
}

type Rename = (text: string) => string;

/** Renames every id of the sheet in a text: an id by itself, a reply's key, or any number of them in a condition. */
function renaming(sheet: Sheet, id: string): Rename {
  const escaped = sheet.id.replaceAll("-", "[-_]");
  const named = new RegExp(`(?<![\\w-])${escaped}\\.(?=[A-Za-z])`, "g");
  const elsewhere = new Map(
    [...sheet.limits, ...sheet.gates].map((thing) => {
      const [kind = "", ...rest] = thing.id.split(".");
      return [thing.id, [kind, id, ...rest.filter((part) => part !== sheet.id)].join(".")];
    }),
  );
  return (text) =>
    text
      .replace(/(?<![\w.-])(?:lim|gate)\.[A-Za-z0-9._-]+/g, (found) => elsewhere.get(found) ?? found)
      .replace(named, `${id}.`);
}

function walked(value: unknown, rename: Rename): unknown {
  if (typeof value === "string") return rename(value);
  if (Array.isArray(value)) return value.map((one) => walked(one, rename));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => [rename(key), PROSE.has(key) ? one : walked(one, rename)]),
  );
}

const keysRenamed = (words: Loose, rename: Rename): Loose =>
  Object.fromEntries(Object.entries(words).map(([key, one]) => [rename(key), one]));
