/** What is wearing on this car, soonest first; then what can't be told yet, then what was read once only. */
import type { CarState } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { type ParamsOf, paramOf, to } from "../state/routes.js";
import { type Wearing, wearingList } from "../state/wearing-view.js";
import { isoDay, lineText, nameOf } from "../state/wearing-words.js";
import { t } from "../texts/wearing.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useWearingVisits } from "./use-wearing.js";

function WearingBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const now = useWearingVisits(car);
  if (now === undefined) return <OpeningScreen />;
  const { wearing, notYet, alone } = wearingList(now.all ?? []);
  const rows = (heading: string, list: readonly Wearing[]) =>
    list.length > 0 && (
      <Band heading={heading}>
        {list.map((one) => (
          <ListRow
            key={`${one.id}@${one.place}`}
            title={nameOf(one)}
            second={lineText(one)}
            href={to("wear", { car: param, series: one.id, place: one.place })}
          />
        ))}
      </Band>
    );
  return (
    <Plain back={t("car.back")} href={to("car", { car: param })} title={t("wearing.title")}>
      {now.covered ? (
        <EmptyState title={t("wearing.covered")} says="" />
      ) : (
        <>
          {wearing.length + notYet.length + alone.length === 0 && (
            <EmptyState
              title={t(now.worn ? "wearing.none" : "wearing.no-visit")}
              says={t(now.worn ? "wearing.none.says" : "wearing.no-visit.says")}
            />
          )}
          {rows(t("wearing.soonest"), wearing)}
          {rows(t("wearing.not-yet"), notYet)}
          {rows(t("wearing.alone"), alone)}
          {now.worn && now.untold.length > 0 && (
            <Band heading={t("wearing.untold")}>
              {now.untold.map((one) => (
                <ListRow
                  key={one.id}
                  folded
                  title={nameOf(one)}
                  second={t(`wearing.untold.${one.why}`, { on: one.on.map(isoDay).join(", ") })}
                />
              ))}
            </Band>
          )}
          {now.left.length > 0 && (
            <Band heading={t("wearing.left", { n: now.left.length })}>
              {now.left.map(({ stream, at, why }) => (
                <ListRow
                  key={stream}
                  title={at === undefined ? t("wearing.left.visit") : isoDay(at)}
                  second={t(`wearing.left.${why}`)}
                  href={to("visit", { visit: paramOf(stream) })}
                />
              ))}
            </Band>
          )}
          {wearing.length > 0 && <p class="remark small">{t("wearing.says")}</p>}
        </>
      )}
    </Plain>
  );
}

export const WearingScreen = ({ params }: { readonly params: ParamsOf<"wearing"> }) => (
  <OnCar param={params.car}>{(car) => <WearingBody car={car} param={params.car} />}</OnCar>
);
