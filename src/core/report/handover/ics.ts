/**
 * Days to think of as a calendar (RFC 5545). All-day events and no to-dos: the calendars of phones take in events and
 * mostly pass over to-dos without a word. Knows no time of day but that of the alarm.
 */
import { oneLine } from "./clean.js";
import { dayText, untilText } from "./figures.js";
import type { DueDate, HandoverModel } from "./model.js";
import { dateSays } from "./pages-work.js";
import { type HandoverWords, say } from "./words.js";

/** Octets a line may have, without its end (RFC 5545, 3.1). */
const LONGEST = 75;
/** At nine in the morning of the day before: an all-day event begins at midnight. */
const ALARM = "-PT15H";

/** Every date that has a day; what has a distance only stands in the other forms. */
export function toIcs(model: HandoverModel, words: HandoverWords): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Leadlamp//Hand-over//EN",
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    ...model.dates.flatMap((date) => eventLines(model, date, words)),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

function eventLines(model: HandoverModel, date: DueDate, words: HandoverWords): readonly string[] {
  const { monthlyUntil } = date;
  const on = dayIn(date, model.madeAt);
  const next = on === undefined ? undefined : dayAfter(on);
  if (on === undefined || next === undefined) return [];
  const what = dateSays(words, date);
  const title = say(words, "ics.title", { what, car: model.car.name });
  const until = untilText(words, date).join(", ");
  const says = say(words, "ics.says", { day: dayText(words, model.visit.at), until });
  return [
    "BEGIN:VEVENT",
    `UID:${uidOf(model.visit.id, date.id)}`,
    `DTSTAMP:${stampOf(model.madeAt)}`,
    `DTSTART;VALUE=DATE:${digits(on)}`,
    `DTEND;VALUE=DATE:${next}`,
    // Until is a day like the start (RFC 5545, 3.3.10).
    ...(monthlyUntil === undefined ? [] : [`RRULE:FREQ=MONTHLY;UNTIL=${digits(monthlyUntil)}`]),
    `SUMMARY:${icsText(title)}`,
    `DESCRIPTION:${icsText(says)}`,
    "TRANSP:TRANSPARENT",
    "CLASS:PRIVATE",
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `DESCRIPTION:${icsText(title)}`,
    `TRIGGER:${ALARM}`,
    "END:VALARM",
    "END:VEVENT",
  ];
}

/** What is overdue stands at the day the calendar was made: nobody looks at days gone by. */
function dayIn({ on, isOverdue }: DueDate, madeAt: string): string | undefined {
  const made = madeAt.slice(0, 10);
  return isOverdue && dayAfter(made) !== undefined ? made : on;
}

/** The same for the same date of the same visit, whatever its words and day become: a calendar then replaces it. */
const uidOf = (visit: string, date: string): string => `${plain(visit)}-${plain(date)}@leadlamp`;
const plain = (text: string): string =>
  [...text].map((sign) => (/[A-Za-z0-9.]/.test(sign) ? sign : `_${(sign.codePointAt(0) ?? 0).toString(16)}_`)).join("");

const two = (value: number): string => String(value).padStart(2, "0");
/** `20310504T142000Z`; a moment nobody can read is the beginning of time, so that the file still opens. */
function stampOf(madeAt: string): string {
  const ms = Date.parse(madeAt);
  const at = new Date(Number.isNaN(ms) ? 0 : ms);
  const day = `${at.getUTCFullYear()}${two(at.getUTCMonth() + 1)}${two(at.getUTCDate())}`;
  return `${day}T${two(at.getUTCHours())}${two(at.getUTCMinutes())}${two(at.getUTCSeconds())}Z`;
}

const digits = (day: string): string => day.slice(0, 10).replaceAll("-", "");

/** The day after as eight digits; undefined where it is no day of the calendar. */
function dayAfter(on: string): string | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})/.exec(on) ?? [];
  const given = Date.UTC(Number(year), Number(month) - 1, Number(day));
  if (year === undefined || Number.isNaN(given)) return undefined;
  if (new Date(given).getUTCDate() !== Number(day)) return undefined;
  const at = new Date(given + DAY);
  return `${at.getUTCFullYear()}${two(at.getUTCMonth() + 1)}${two(at.getUTCDate())}`;
}
const DAY = 86_400_000;

/** Text of a property (RFC 5545, 3.3.11). */
const icsText = (text: string): string => oneLine(text).replace(/[\\;,]/g, (sign) => `\\${sign}`);

/** Broken at 75 octets of UTF-8, never inside a character. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = "";
  let size = 0;
  for (const sign of line) {
    const octets = octetsOf(sign);
    if (size + octets > LONGEST) {
      parts.push(part);
      // the space that marks a continued line counts too
      [part, size] = ["", 1];
    }
    part += sign;
    size += octets;
  }
  return [...parts, part].join("\r\n ");
}

function octetsOf(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
