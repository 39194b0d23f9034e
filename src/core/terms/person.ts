/** Whether two names are one person's. The one place that says so; knows no record. */

/** A name as people write it twice: blanks and capitals tell nobody apart. Nobody is not the same as nobody. */
export function isSamePerson(a: string, b: string): boolean {
  const plain = (name: string): string => name.trim().replace(/\s+/g, " ").toLowerCase();
  return plain(a) !== "" && plain(a) === plain(b);
}
