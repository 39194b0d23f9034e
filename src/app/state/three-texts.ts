/** Kept figures as a person types them: minutes as `3:30`, money with the person's decimal sign. Pure. */

const MINUTES_AN_HOUR = 60;

/** `3:30` */
export const clockText = (minutes: number): string =>
  `${Math.floor(minutes / MINUTES_AN_HOUR)}:${String(minutes % MINUTES_AN_HOUR).padStart(2, "0")}`;

/** `1250`, or `1250.50` where there are coins. */
export function figureText(minor: number, digits: number, decimal: "." | ","): string {
  const unit = 10 ** digits;
  return (minor / unit).toFixed(minor % unit === 0 ? 0 : digits).replace(".", decimal);
}
