/** The car's limits book: defaults shown as defaults, makers' figures beside them. */
import type { CarState } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { limitLines } from "../state/limits-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useSheetFiles } from "./use-sheets.js";

function LimitsBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const read = useSheetFiles();
  if (!read) return <OpeningScreen />;
  const lines = limitLines(car, read.files);
  const sheets = [...new Set(lines.map((line) => line.sheet))];
  return (
    <Plain back={t("car.back")} href={to("car", { car: param })} title={t("limits.title")}>
      <p class="remark">{t("limits.says")}</p>
      {read.problems.map((problem) => (
        <Notice key={problem.code} kind="error" title={problemText(problem)} />
      ))}
      {sheets.map((sheet) => (
        <Band key={sheet} heading={sheet}>
          {lines
            .filter((line) => line.sheet === sheet)
            .map((line) => (
              <ListRow
                key={line.id}
                title={line.title}
                second={line.second}
                aside={line.mine ? t("limits.yours") : undefined}
                href={to("limit", { car: param, limit: line.id })}
              />
            ))}
        </Band>
      ))}
    </Plain>
  );
}

export const Limits = ({ params }: { readonly params: ParamsOf<"limits"> }) => (
  <OnCar param={params.car}>{(car) => <LimitsBody car={car} param={params.car} />}</OnCar>
);
