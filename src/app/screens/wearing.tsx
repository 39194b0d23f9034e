/** What is wearing on this car, soonest first; then what can't be told yet, then what was read once only. */
import type { CarState } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { type ParamsOf, to } from "../state/routes.js";
import { type Wearing, wearingList } from "../state/wearing-view.js";
import { lineText, nameOf } from "../state/wearing-words.js";
import { t } from "../texts/wearing.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useWearing } from "./use-wearing.js";

function WearingBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const now = useWearing(car);
  if (now === undefined) return <OpeningScreen />;
  const { wearing, notYet, alone } = wearingList(now?.all ?? []);
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
      {now?.covered ? (
        <EmptyState title={t("wearing.covered")} says="" />
      ) : (
        <>
          {now && now.worn.left > 0 && <Notice kind="plain" title={t("wearing.left", { n: now.worn.left })} />}
          {wearing.length + notYet.length + alone.length === 0 && (
            <EmptyState title={t("wearing.none")} says={t("wearing.none.says")} />
          )}
          {rows(t("wearing.soonest"), wearing)}
          {rows(t("wearing.not-yet"), notYet)}
          {rows(t("wearing.alone"), alone)}
          {wearing.length > 0 && <p class="remark small">{t("wearing.says")}</p>}
        </>
      )}
    </Plain>
  );
}

export const WearingScreen = ({ params }: { readonly params: ParamsOf<"wearing"> }) => (
  <OnCar param={params.car}>{(car) => <WearingBody car={car} param={params.car} />}</OnCar>
);
