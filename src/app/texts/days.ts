/** Calendar days in words. They have no time and no zone, so the phone's own zone never moves one. */
const LANGUAGE = "en-GB";
const ZONE = { timeZone: "UTC" } as const;
const WEEKDAY = new Intl.DateTimeFormat(LANGUAGE, { ...ZONE, weekday: "short" });
const DAY = new Intl.DateTimeFormat(LANGUAGE, { ...ZONE, day: "numeric", month: "short", year: "numeric" });
const SHORT = new Intl.DateTimeFormat(LANGUAGE, { ...ZONE, day: "numeric", month: "short" });

/** `Wed 14 Jul 2027`. */
export const dayWords = (date: string): string => `${WEEKDAY.format(Date.parse(date))} ${DAY.format(Date.parse(date))}`;

/** `14 Jul`. */
export const shortDay = (date: string): string => SHORT.format(Date.parse(date));

/** `14 Jul 2027`. */
export const plainDay = (date: string): string => DAY.format(Date.parse(date));

/** `1 Aug – 31 Aug 2027`; one day is said once. */
export const daysWords = (from: string, to: string): string =>
  from === to ? plainDay(from) : `${shortDay(from)} – ${plainDay(to)}`;
