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

export const StepDay = ({ id, label, day, onDay, today, ahead }: DayProps) => (
  <DayEntry
    id={id}
    label={label}
    value={day}
    onDay={onDay}
    quick={ahead ? daysToCome(today) : daysGone(today)}
    quickLabel={t("plan-day.quick")}
    {...(ahead ? {} : { latest: today })}
    says={day === "" ? undefined : dayWords(day)}
  />
);
