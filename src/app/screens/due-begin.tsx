/** On the form of a new visit: whether its round takes first what is due again. Works nothing out. */
import { effect, untracked } from "@preact/signals";
import { useEffect, useMemo, useState } from "preact/hooks";
import { Band } from "../parts/pool.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { dueLooks } from "../state/due-points.js";
import { sheetsText, titleOf } from "../state/looks-words.js";
import { kmOf } from "../state/rechecks-in.js";
import { setWay } from "../state/set-way.js";
import { t } from "../texts/looks.js";
import { t as viewing } from "../texts/viewing.js";
import type { NewVisitMoreProps } from "./new-visit-more.js";
import { useToday } from "./use-looks.js";
import { useWearing } from "./use-wearing.js";

/** Calls with the visit that this form opens: the one of the car that was not there before. */
function useOpened(car: string, then: ((visit: string) => void) | undefined): void {
  const { summaries } = useApp().journal;
  const streams: readonly string[] = (summaries.value ?? []).flatMap((one) =>
    one.of === "visit" && one.car === car ? [one.stream] : [],
  );
  useEffect(() => {
    if (!then || !summaries.peek()) return;
    const before = new Set(streams);
    return effect(() => {
      const opened = (summaries.value ?? []).find(
        (one) => one.of === "visit" && one.car === car && !before.has(one.stream),
      );
      if (opened) untracked(() => then(opened.stream));
    });
  }, [then !== undefined]);
}

export function DueBegin({ car, form, sheets }: NewVisitMoreProps) {
  const { remembered } = useApp();
  const now = useWearing(car);
  const today = useToday();
  const [isOff, setOff] = useState(false);
  const km = kmOf({ value: form.odometer, unit: form.odometerUnit });
  const due = useMemo(
    () =>
      !now || now.covered
        ? undefined
        : dueLooks({ ...now, car, today }, km === undefined ? undefined : { on: today, km }),
    [now, car, today, km],
  );
  const isNone = form.purpose === "viewing" || form.who === "buyer";
  const asked = new Set(sheets.map(({ id }) => id));
  const here = (due?.due ?? []).filter(({ look }) =>
    look.points.some(({ point }) => {
      const sheet = due?.looks.about.get(look.id)?.known.points.get(point)?.sheet;
      return sheet !== undefined && asked.has(sheet);
    }),
  );
  const isDue = !isNone && !isOff && here.length > 0;
  useOpened(car.stream, isDue ? (visit) => setWay(remembered, visit, { order: "due", quiet: false }) : undefined);
  const [first] = here.length > 0 ? here : (due?.due ?? []);
  const about = first && due?.looks.about.get(first.look.id);
  if (isNone || !due || !first || !about) return null;
  const named = titleOf(about, first.look, form.who);
  const inSheets = sheetsText(
    due.looks,
    due.due.map(({ look }) => look),
  );
  return (
    <Band heading={t("due.heading")}>
      {here.length === 0 ? (
        <p class="remark">{t("due.no-sheet", { n: due.due.length, first: named })}</p>
      ) : (
        <Switch
          id="due-first"
          label={t("due.begin")}
          says={t("due.form", { n: here.length, first: named })}
          on={!isOff}
          onChange={(is) => setOff(!is)}
          words={{ on: viewing("viewing.on"), off: viewing("viewing.off") }}
        />
      )}
      {inSheets !== undefined && <p class="remark">{inSheets}</p>}
    </Band>
  );
}
