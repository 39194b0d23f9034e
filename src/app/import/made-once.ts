/** Something made once for each sheet, beside the page. Knows nothing of what is made. */

/** What came to nothing or broke is made anew when it is asked for again. */
export function madeOnce<Ground extends { readonly sheet: object }, Made>(
  make: (ground: Ground) => Promise<Made | undefined>,
): (ground: Ground) => Promise<Made | undefined> {
  const kept = new WeakMap<object, Promise<Made | undefined>>();
  return (ground) => {
    const { sheet } = ground;
    const there = kept.get(sheet);
    if (there) return there;
    const made = make(ground);
    kept.set(sheet, made);
    const forget = () => kept.delete(sheet);
    made.then((came) => came ?? forget(), forget);
    return made;
  };
}
