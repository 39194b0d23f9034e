/**
 * What sheets bring along (places, car states, gauges, cautions, access, facts) laid on the shared files, so that nothing
 * further on asks where a thing came from. Knows no sheet's points or rules.
 */
import type { BareCommon, BareCommonTexts } from "./built.js";
import type { Sheet, SheetTexts } from "./schema-types.js";

type Things = readonly (string | { readonly id: string })[];
export const idOf = (thing: Things[number]): string => (typeof thing === "string" ? thing : thing.id);

/**
 * The shared files with what these sheets bring. Of two things with one id the first stands: the shared files' own, then
 * the first sheet's. Laying the same sheets on again changes nothing.
 */
export function withBrought<C extends BareCommon>(common: C, sheets: readonly Pick<Sheet, "brings">[]): C {
  const whole: Record<string, unknown> = { ...common };
  for (const { brings } of sheets)
    for (const [list, things = []] of Object.entries<Things | undefined>(brings ?? {})) {
      const there = (whole[list] ?? []) as Things;
      const taken = there.map(idOf);
      whole[list] = [...there, ...things.filter((thing) => !taken.includes(idOf(thing)))];
    }
  // The same keys with longer lists of the same things.
  return whole as C;
}

/** The words of the shared files with those of what these sheets bring and of their gates, in the same order of precedence. */
export function withBroughtTexts<T extends BareCommonTexts>(
  words: T,
  sheets: readonly Pick<SheetTexts, "brings" | "gates">[],
): T {
  const whole: Record<string, unknown> = { ...words };
  for (const { brings, gates } of sheets)
    for (const [list, texts] of Object.entries({ ...brings, gates }))
      whole[list] = { ...texts, ...(whole[list] as typeof texts) };
  return whole as T;
}
