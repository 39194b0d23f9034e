/** One limit: its default with its basis, and the maker's figure for this car. */
import { useEffect } from "preact/hooks";
import { type CarState, placesOf } from "../../core/record/index.js";
import { buildPlaces } from "../../core/sheet/run.js";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { noLimit } from "../state/car-edits.js";
import { capital } from "../state/knowledge.js";
import { bandsText, carLimitText, figuresOn, limitTitle } from "../state/limits-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { commonTextsOf, textsOf } from "../state/shelf.js";
import { t } from "../texts/index.js";
import { MissingScreen, Plain } from "./frame.js";
import { JudgeAgainOffer } from "./judge-again-offer.js";
import { OpeningScreen } from "./lazy.js";
import { LimitForm } from "./limit-form.js";
import { OnCar } from "./on-car.js";
import { useSheetFiles, useWholeCommon } from "./use-sheets.js";

function LimitBody({ car, params }: { readonly car: CarState; readonly params: ParamsOf<"limit"> }) {
  const { journal } = useApp();
  useEffect(() => void journal.refresh(), [journal]);
  const read = useSheetFiles();
  const common = useWholeCommon();
  if (!read || !common) return <OpeningScreen />;
  const file = read.files.find(({ sheet }) => sheet.limits.some((one) => one.id === params.limit));
  const limit = file?.sheet.limits.find((one) => one.id === params.limit);
  if (!file || !limit) return <MissingScreen />;
  const figures = figuresOn(car, limit.id);
  const own = figures[0];
  const words = commonTextsOf(common);
  const name = (place: string): string => capital(words.places[place] ?? place);
  const places = buildPlaces(common.common.places, placesOf(car))
    .tree.ofKind(limit.class)
    .map((value) => ({ value, words: name(value) }));
  return (
    <Plain back={t("limits.title")} href={to("limits", { car: params.car })} title={limitTitle(limit, textsOf(file))}>
      <Band heading={t("limit.default")} aside={t(`basis.${limit.basis}`)}>
        <p class="remark">{bandsText(limit, limit.bands)}</p>
        <p class="remark small">{limit.source}</p>
      </Band>
      <Band heading={t("limit.kept")}>
        {figures.map(({ key, value }) => (
          <ListRow
            key={key}
            title={carLimitText(limit, value)}
            second={[t(`basis.${value.basis}`), value.source].filter(Boolean).join(", ")}
            aside={value.place === undefined ? t("limit.everywhere") : name(value.place)}
          />
        ))}
        <LimitForm key={own?.key ?? ""} car={car} limit={limit} own={own?.value} places={places} />
        {own && (
          <div class="acts">
            {figures.map(({ key, value }) => (
              <Tool
                key={key}
                words={value.place === undefined ? t("limit.drop") : `${t("limit.drop")}: ${name(value.place)}`}
                onPress={() => void noLimit(journal, car.stream, key)}
              />
            ))}
          </div>
        )}
        <p class="remark small">{t("limit.open-visits")}</p>
        <JudgeAgainOffer car={car} limit={limit.id} />
      </Band>
    </Plain>
  );
}

export const LimitScreen = ({ params }: { readonly params: ParamsOf<"limit"> }) => (
  <OnCar param={params.car}>{(car) => <LimitBody car={car} params={params} />}</OnCar>
);
