/** Drops what this browser remembers beside the record; fetched with what deletes for good. */

/** Drops every remembered text that names one of these, in its key or as the address last shown. */
export function forgetTexts(names: readonly string[]): void {
  try {
    for (const [key, text] of Object.entries(localStorage))
      if (names.some((name) => `${key} ${key === "leadlamp.address" ? text : ""}`.includes(name)))
        localStorage.removeItem(key);
  } catch {
    // A browser that keeps no texts has none to forget.
  }
}
