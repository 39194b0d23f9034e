/** The day of a step: one that has been, or one to come. */
import { DayEntry } from "../parts/day-entry.js";
import { daysGone, daysToCome } from "../state/day-sums.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/plan-dates.js";

interface DayProps {
  readonly id: string;
  readonly label: string;
  readonly day: string;
  readonly onDay: (day: string) => void;
  readonly today: string;
  /** A day to come; one that has been where this is absent. */
  readonly ahead?: boolean;
}

/** Typed past what the field offers: a step that is still to come, or a promise for a day that is gone. */
export const isOdd = (day: string, today: string, ahead: boolean | undefined): boolean =>
  day !== "" && (ahead ? day < today : day > today);

export const StepDay = ({ id, label, day, onDay, today, ahead }: DayProps) => (
  <DayEntry
    id={id}
    label={label}
    value={day}
    onDay={onDay}
    quick={ahead ? daysToCome(today) : daysGone(today)}
    quickLabel={t("plan-day.quick")}
    {...(ahead ? { earliest: today } : { latest: today })}
    says={day === "" ? undefined : dayWords(day)}
    problem={isOdd(day, today, ahead) ? t(ahead ? "plan-day.gone" : "plan-day.ahead") : undefined}
  />
);
