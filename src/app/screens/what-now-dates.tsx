/** The days after a look as a calendar file: of a car laid up until when it is woken, and what is due anyway. */
import { useState } from "preact/hooks";
import type { Handed } from "../../core/record/files.js";
import { type DueDate, dateSays, toIcs } from "../../core/report/index.js";
import { NextAction } from "../parts/button.js";
import { DayEntry } from "../parts/day-entry.js";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { fileName } from "../state/handover-files.js";
import { laidUpDates, springDays } from "../state/season-dates.js";
import { dayWords, plainDay } from "../texts/days.js";
import { t as handOver } from "../texts/hand-over.js";
import { t } from "../texts/season.js";
import type { StepProps } from "./what-now-steps.js";

const SHOWN: Readonly<Record<Handed, string>> = {
  shared: t("message.shared"),
  downloaded: t("season-dates.downloaded"),
  stopped: t("message.stopped"),
  "tap-again": t("season-dates.hand.again"),
};

const whenOf = ({ on, monthlyUntil }: DueDate): string =>
  monthlyUntil === undefined || on === undefined
    ? dayWords(on ?? "")
    : t("season-dates.monthly.until", { from: plainDay(on), until: plainDay(monthlyUntil) });

export function DatesSheet({ on, made, season, steps, onClose }: StepProps) {
  const { files } = useApp();
  const [handed, setHanded] = useState<Handed>();
  const { model, words } = made;
  const { today } = on.input;
  const isLaidUp = season === "put-away";
  const spring = steps.done.spring ?? "";
  const isGone = spring !== "" && spring <= today;
  const isWorkOpen = model.work.some(({ doneOn, decision }) => doneOn === undefined && decision?.is !== "no");
  const laid =
    isLaidUp && spring !== "" && !isGone
      ? laidUpDates({ on: model.visit.at.slice(0, 10), spring, today, isWorkOpen })
      : [];
  const dates = [...laid, ...model.dates.filter((one) => one.on !== undefined)];
  const hand = (): void => {
    const bytes = new TextEncoder().encode(toIcs({ ...model, dates }, words));
    const name = fileName(made, handOver("hand-over.name.dates"), "ics");
    files
      .ready({ name, type: "text/calendar", bytes })
      .hand()
      .then((how) => {
        setHanded(how);
        if (how === "shared" || how === "downloaded") steps.did("dates");
      }, reportError);
  };
  return (
    <Sheet
      open
      title={t("what-now.dates")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("season-dates.hand")} onPress={hand} disabled={dates.length === 0} />}
    >
      {isLaidUp && (
        <DayEntry
          id="spring"
          label={t("season-dates.spring")}
          value={spring}
          onDay={(day) => steps.put({ spring: day })}
          quick={springDays(today)}
          quickLabel={t("season-dates.quick")}
          earliest={today}
          says={spring === "" ? t("season-dates.spring.none") : dayWords(spring)}
          problem={isGone ? t("season-dates.spring.gone") : undefined}
        />
      )}
      {dates.map((date) => (
        <ListRow key={date.id} title={dateSays(words, date)} second={whenOf(date)} />
      ))}
      <p class="remark" role="status">
        {handed && SHOWN[handed]}
      </p>
    </Sheet>
  );
}
