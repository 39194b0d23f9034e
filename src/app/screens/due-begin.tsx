/** On the form of a new visit: whether its round takes first what is due again. Works nothing out. */
import { useEffect, useMemo, useState } from "preact/hooks";
import type { DueAgain } from "../../core/plan/index.js";
import { Band } from "../parts/pool.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { type DueLooks, dueAhead, dueLooks } from "../state/due-points.js";
import { sheetsText, titleOf, unreadTexts } from "../state/looks-words.js";
import { kmOf } from "../state/rechecks-in.js";
import { setWay } from "../state/set-way.js";
import { t } from "../texts/looks.js";
import { t as viewing } from "../texts/viewing.js";
import type { NewVisitMoreProps } from "./new-visit-more.js";
import { useToday } from "./use-looks.js";
import { useWearingVisits } from "./use-wearing.js";

/** How many visits' work lists could not be read, of visits that could. */
function usePlansUnread(visits: readonly { readonly stream: string }[]): number {
  const { journal } = useApp();
  return visits.filter(({ stream }) => journal.keptPlan(stream).value.is === "trouble").length;
}

/** What is due by now, and in words what could not be read. */
function useDueNow(
  car: NewVisitMoreProps["car"],
  km: number | undefined,
): readonly [DueLooks | undefined, readonly string[]] {
  const now = useWearingVisits(car);
  const today = useToday();
  const plans = usePlansUnread(now?.worn ? now.visits : []);
  return useMemo(() => {
    if (!now || now.covered) return [undefined, []];
    if (!now.worn) return [undefined, unreadTexts({ visits: now.left.length, plans })];
    const due = dueLooks({ ...now, car, today }, km === undefined ? undefined : { on: today, km }, plans);
    return [due, unreadTexts(due.unread)];
  }, [now, car, today, km, plans]);
}

export function DueBegin({ car, form, sheets, opened }: NewVisitMoreProps) {
  const { remembered } = useApp();
  const [isOff, setOff] = useState(false);
  const [due, unread] = useDueNow(car, kmOf({ value: form.odometer, unit: form.odometerUnit }));
  const isNone = form.purpose === "viewing" || form.who === "buyer";
  const ahead = due && dueAhead(due, form.who, sheets);
  const isDue = !isNone && !isOff && ahead !== undefined && ahead.here.length > 0;
  useEffect(() => {
    opened.current = isDue ? (visit) => setWay(remembered, visit, { order: "due", quiet: false }) : undefined;
    return () => {
      opened.current = undefined;
    };
  }, [opened, isDue, remembered]);
  const says = (key: "due.form" | "due.no-sheet" | "due.workshop", of: readonly DueAgain[]): string | undefined => {
    const [first] = of;
    const about = first && due?.looks.about.get(first.look.id);
    return first && about && t(key, { n: of.length, first: titleOf(about, first.look, form.who) });
  };
  const begins = ahead && says("due.form", ahead.here);
  const remarks = [
    ahead && says("due.no-sheet", ahead.unasked),
    due &&
      ahead &&
      sheetsText(
        due.looks,
        [...ahead.here, ...ahead.unasked].map(({ look }) => look),
      ),
    ahead && says("due.workshop", ahead.workshop),
    ...unread,
  ].filter((text) => text !== undefined);
  if (isNone || (begins === undefined && remarks.length === 0)) return null;
  return (
    <Band heading={t("due.heading")}>
      {begins !== undefined && (
        <Switch
          id="due-first"
          label={t("due.begin")}
          says={begins}
          on={!isOff}
          onChange={(is) => setOff(!is)}
          words={{ on: viewing("viewing.on"), off: viewing("viewing.off") }}
        />
      )}
      {remarks.map((text) => (
        <p key={text} class="remark">
          {text}
        </p>
      ))}
    </Band>
  );
}
