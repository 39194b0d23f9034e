/** Moments as a hand-over writes them: local time with its offset. Asks no clock. */

/** A moment with the local time of the phone and its offset: `2027-03-01T09:30:00+01:00`. */
export function momentOf(wall: number, offsetMin = -new Date(wall).getTimezoneOffset()): string {
  const two = (value: number): string => String(Math.floor(value)).padStart(2, "0");
  const local = new Date(wall + offsetMin * 60_000).toISOString().slice(0, 19);
  const [sign, off] = [offsetMin < 0 ? "-" : "+", Math.abs(offsetMin)];
  return `${local}${sign}${two(off / 60)}:${two(off % 60)}`;
}
