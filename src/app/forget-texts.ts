/** Drops what this browser remembers beside the record; fetched with what deletes for good. */

/** A name as a whole: one that is part of a longer one is another's. */
const wholeName = (name: string): RegExp =>
  new RegExp(`(^|[^A-Za-z0-9_-])${name.replace(/[^A-Za-z0-9_-]/g, "\\$&")}($|[^A-Za-z0-9_-])`);

/** Drops every remembered text that names one of these, in its key or as the address last shown. */
export function forgetTexts(names: readonly string[], texts: Storage = localStorage): void {
  const wanted = names.map(wholeName);
  try {
    for (const [key, text] of Object.entries(texts)) {
      const told = `${key} ${key === "leadlamp.address" ? text : ""}`;
      if (wanted.some((name) => name.test(told))) texts.removeItem(key);
    }
  } catch {
    // A browser that keeps no texts has none to forget.
  }
}
