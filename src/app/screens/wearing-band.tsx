/** On a car's page: the part that reaches its limit soonest, and the way to all of them. */
import type { CarState } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { WearChart } from "../parts/wear-chart.js";
import { to } from "../state/routes.js";
import { wearChartInput } from "../state/wearing-chart.js";
import { wearingList } from "../state/wearing-view.js";
import { chartText, nameOf, shortText } from "../state/wearing-words.js";
import { t } from "../texts/wearing.js";
import { useWearing } from "./use-wearing.js";

export function WearingBand({ car, param }: { readonly car: CarState; readonly param: string }) {
  const now = useWearing(car);
  if (!now || now.covered || now.all.length + now.untold.length + now.left.length === 0) return null;
  const { wearing } = wearingList(now.all);
  // What has passed a limit already comes before what only nears one.
  const [soonest] = wearing;
  return (
    <Band heading={t("wearing.title")}>
      {soonest && (
        <>
          <ListRow
            title={nameOf(soonest)}
            second={shortText(soonest)}
            href={to("wear", { car: param, series: soonest.id, place: soonest.place })}
          />
          <WearChart chart={wearChartInput(soonest, true)} label={chartText(soonest)} />
        </>
      )}
      {now.left.length > 0 && <p class="remark">{t("wearing.left", { n: now.left.length })}</p>}
      <ListRow title={t("wearing.all")} aside={String(wearing.length)} href={to("wearing", { car: param })} />
    </Band>
  );
}
