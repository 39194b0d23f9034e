/** The dates: when the car is there, when it is ready, what holds it up, until when to order, how long the lift is held. */
import { DayEntry } from "../parts/day-entry.js";
import { Fold } from "../parts/fold.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { SpanStrip } from "../parts/span-strip.js";
import { HoldLine } from "../parts/step-line.js";
import { useApp } from "../state/app.js";
import { weeksToCome } from "../state/day-sums.js";
import { planBegins } from "../state/plan-acts.js";
import {
  assumedIn,
  type DateLine,
  finishTold,
  gainsTold,
  holdsTold,
  isHeldByMany,
  liftsTold,
  ordersTold,
  undatedTold,
} from "../state/plan-dates-view.js";
import { spanTold } from "../state/plan-span-view.js";
import { to } from "../state/routes.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/plan-dates.js";
import { t as planning } from "../texts/plan-work.js";
import { Plain } from "./frame.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { Sentences } from "./sentences.js";
import { UndoRow } from "./undo.js";

function CarThere({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const { today, begins } = on.input;
  return (
    <DayEntry
      id="car-there"
      label={t("dates.there")}
      value={begins ?? ""}
      onDay={(day) => void planBegins(journal, on.stream, day === "" ? null : day)}
      quick={[{ id: "today", words: t("plan-day.today"), day: today }, ...weeksToCome(today)]}
      quickLabel={t("plan-day.quick")}
      says={begins === undefined ? t("dates.there.none") : dayWords(begins)}
    />
  );
}

function Finish({ on }: { readonly on: OnPlan }) {
  const told = finishTold(on.plan?.schedule, assumedIn(on.plan));
  const span = spanTold(on, on.plan?.schedule);
  if (!told) return on.plan ? <EmptyState title={t("dates.none")} says={t("dates.no-jobs")} /> : null;
  return (
    <>
      <Band heading={told.title}>
        <p class="remark">{told.says}</p>
      </Band>
      {span && <SpanStrip span={span.span} label={t("dates.strip")} lines={span.lines} signs={t("dates.signs")} />}
    </>
  );
}

function Holds({ on }: { readonly on: OnPlan }) {
  const holds = holdsTold(on, on.plan?.schedule);
  if (holds.length === 0) return null;
  return (
    <Band heading={t("dates.holds")}>
      {holds.map((hold) =>
        "inside" in hold ? (
          <Fold key={hold.id} title={hold.title} count={hold.count} open={false}>
            {hold.inside.map(({ id, ...line }) => (
              <HoldLine key={id} {...line} />
            ))}
          </Fold>
        ) : (
          <HoldLine key={hold.id} title={hold.title} days={hold.days} says={hold.says} href={hold.href} />
        ),
      )}
    </Band>
  );
}

function Lines({ heading, lines }: { readonly heading: string; readonly lines: readonly DateLine[] }) {
  if (lines.length === 0) return null;
  return (
    <Band heading={heading}>
      {lines.map(({ id, title, says, aside, href }) => (
        <ListRow key={id} title={title} second={says} href={href} {...(aside === undefined ? {} : { aside })} />
      ))}
    </Band>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const { plan, input } = on;
  const schedule = plan?.schedule;
  return (
    <>
      <CarThere on={on} />
      {input.calendar ? (
        <Finish on={on} />
      ) : (
        <Notice
          kind="plain"
          title={t("dates.no-calendar")}
          action={{ words: t("dates.to-calendar"), href: to("settings") }}
        />
      )}
      {on.isPlanning && (
        <p class="remark small" role="status">
          {planning("plan.planning")}
        </p>
      )}
      <Holds on={on} />
      <Lines heading={t("dates.gains")} lines={gainsTold(on, schedule)} />
      {isHeldByMany(schedule) && <Sentences heading={t("dates.gains")} lines={[t("dates.gain.many")]} />}
      {on.who !== "buyer" && <Lines heading={t("dates.orders")} lines={ordersTold(on, schedule)} />}
      <Sentences heading={t("dates.lift")} lines={liftsTold(on, schedule).map(({ says }) => says.join(" "))} />
      <Sentences heading={t("dates.left-out")} lines={undatedTold(on, plan)} />
      <Band>
        <ListRow title={t("dates.suppliers")} href={to("settings")} />
        <UndoRow on={on} />
      </Band>
    </>
  );
}

export const PlanDates = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain back={t("work.title")} href={to("work", { visit })} title={t("dates.title")} second={t("dates.second")}>
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
