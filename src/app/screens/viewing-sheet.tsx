/** Over the round at a viewing: the time for looking, the order of the points, the quiet screen; and what is still open. */
import type { LookingTime } from "../../core/record/index.js";
import { goneOn, lookingTimeOf, USUAL_MINUTES } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import { Switch, UnitSwitch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { isoNow } from "../state/new-visit.js";
import { byPoint, pointRow } from "../state/point-rows.js";
import { to } from "../state/routes.js";
import { setWay } from "../state/set-way.js";
import { stillWorth } from "../state/still-worth.js";
import { type ViewingClock, viewingClock } from "../state/viewing-clock.js";
import { lookingTime } from "../state/visit-acts.js";
import { isViewing, wayOf } from "../state/way.js";
import { clock as clockTime, t } from "../texts/viewing.js";
import type { OnDesk } from "./on-visit.js";
import { useNow } from "./use-now.js";

const ORDERS = ["value", "walk", "due"] as const;

/** Minutes one press gives or takes; own choice. */
const STEP = 10;

function says(clock: ViewingClock | undefined): string {
  if (!clock) return t("viewing.until-none");
  const { is, left, minutes } = clock;
  if (is === "stopped") return t("viewing.until-stopped", { left, minutes });
  if (is === "unsure") return t("viewing.until-unsure");
  const until = clockTime(clock.until);
  return is === "over" ? t("viewing.until-over", { until }) : t("viewing.until", { left, minutes, until });
}

function Time({ on, clock }: { readonly on: OnDesk; readonly clock: ViewingClock | undefined }) {
  const { journal, phone } = useApp();
  const stands = lookingTimeOf(on.visit);
  const set = (time: LookingTime | null): void => void lookingTime(journal, on.stream, time);
  const anew = (minutes: number): void => set({ from: isoNow(phone.now()), minutes });
  const longer = (by: number): void => {
    if (stands) set({ ...stands, minutes: Math.max(STEP, stands.minutes + by) });
  };
  const { open, beyond } = stillWorth(on, clock?.is === "over" ? 0 : clock?.seconds);
  const runs = stands && (clock?.is === "running" || clock?.is === "stopped" || clock?.is === "over");
  return (
    <section class="point-field">
      <h3>{t("viewing.time")}</h3>
      <p class="remark n">{says(clock)}</p>
      {clock && clock.is !== "over" && clock.is !== "unsure" && open > 0 && beyond !== undefined && (
        <p class="remark n">{beyond === 0 ? t("viewing.fits") : t("viewing.beyond", { n: beyond })}</p>
      )}
      <div class="acts">
        {stands && clock?.is === "running" && (
          <Tool words={t("viewing.pause")} onPress={() => set({ ...stands, stopped: isoNow(phone.now()) })} />
        )}
        {stands && clock?.is === "stopped" && (
          <Tool words={t("viewing.resume")} onPress={() => set(goneOn(stands, phone.now(), isoNow))} />
        )}
        {runs && <Tool words={t("viewing.more")} onPress={() => longer(STEP)} />}
        {runs && clock?.is !== "over" && <Tool words={t("viewing.less")} onPress={() => longer(-STEP)} />}
        <Tool
          words={t("viewing.anew", { n: stands?.minutes ?? USUAL_MINUTES })}
          onPress={() => anew(stands?.minutes ?? USUAL_MINUTES)}
        />
        {stands && <Tool words={t("viewing.away")} onPress={() => set(null)} />}
      </div>
    </section>
  );
}

export function ViewingSheet({ on, onClose }: { readonly on: OnDesk; readonly onClose: () => void }) {
  const { remembered } = useApp();
  const clock = viewingClock(on.visit, useNow());
  const way = wayOf(remembered, on.visit);
  const isDueAsked = !isViewing(on.visit) && on.desk.earlier.value.length > 0;
  return (
    <Sheet open title={t("viewing.title")} closeWords={t("app.close")} onClose={onClose}>
      {!on.visit.closed && <Time on={on} clock={clock} />}
      {on.visit.opened?.value.purpose === "viewing" && (
        <ListRow title={t("viewing.page")} second={t("viewing.page.says")} href={to("viewing", { visit: on.param })} />
      )}
      <section class="point-field">
        <h3>{t("viewing.order")}</h3>
        <div class="form">
          <UnitSwitch
            label={t("viewing.order")}
            choices={[
              { id: "value", words: t("viewing.by-value") },
              { id: "walk", words: t("viewing.by-walk") },
              ...(isDueAsked ? [{ id: "due", words: t("viewing.by-due") }] : []),
            ]}
            chosen={way.order}
            onChoose={(id) =>
              setWay(remembered, on.stream, { ...way, order: ORDERS.find((one) => one === id) ?? "walk" })
            }
          />
        </div>
        <p class="remark small">{t("viewing.order-says")}</p>
        {isDueAsked && <p class="remark small">{t("viewing.due-says")}</p>}
      </section>
      <section>
        <Switch
          id="quiet"
          label={t("viewing.quiet")}
          says={t("viewing.quiet-says")}
          on={way.quiet}
          onChange={(quiet) => setWay(remembered, on.stream, { ...way, quiet })}
          words={{ on: t("viewing.on"), off: t("viewing.off") }}
        />
      </section>
    </Sheet>
  );
}

/** Rows named when the time is up before the rest is counted. */
const MOST_STILL = 5;

/** Once the time is up: what decides most and was not looked at. Stands in the way of nothing. */
export function StillWorth({ on }: { readonly on: OnDesk }) {
  if (viewingClock(on.visit, useNow())?.is !== "over") return null;
  const rows = byPoint(stillWorth(on).gravest).map((waiting) => pointRow(on.telling, waiting));
  if (rows.length === 0) return null;
  return (
    <Band heading={t("viewing.still")}>
      {rows.slice(0, MOST_STILL).map((row) => (
        <ListRow key={row.id} title={row.title} second={row.places} href={row.href} />
      ))}
      {rows.length > MOST_STILL && (
        <p class="remark small n">{t("viewing.still-more", { n: rows.length - MOST_STILL })}</p>
      )}
    </Band>
  );
}
