/** One limit: its default with its basis, and the figures of this car's book. */
import { useEffect, useMemo, useState } from "preact/hooks";
import { type CarState, placesOf } from "../../core/record/index.js";
import { buildPlaces } from "../../core/sheet/run.js";
import { Tool } from "../parts/button.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { capital } from "../state/knowledge.js";
import { isSafetyFigure, placeLines } from "../state/limit-book.js";
import { bandsText, limitTitle } from "../state/limits-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { commonTextsOf, textsOf } from "../state/shelf.js";
import { t } from "../texts/limits.js";
import { MissingScreen, Plain } from "./frame.js";
import { JudgeAgainOffer } from "./judge-again-offer.js";
import { lazy, Nothing, OpeningScreen } from "./lazy.js";
import { Figures } from "./limit-figures.js";
import { OnCar } from "./on-car.js";
import { useSheetFiles, useWholeCommon } from "./use-sheets.js";

const LimitForm = lazy(() => import("./limit-form.js").then((file) => file.LimitForm), Nothing);

function LimitBody({ car, params }: { readonly car: CarState; readonly params: ParamsOf<"limit"> }) {
  const { journal } = useApp();
  useEffect(() => void journal.refresh(), [journal]);
  const read = useSheetFiles();
  const common = useWholeCommon();
  const [entering, setEntering] = useState<"asked" | "kept">();
  const file = read?.files.find(({ sheet }) => sheet.limits.some((one) => one.id === params.limit));
  const limit = file?.sheet.limits.find((one) => one.id === params.limit);
  const lines = useMemo(
    () => (file && limit ? placeLines(car, limit, isSafetyFigure(file.sheet, limit)) : []),
    [car, file, limit],
  );
  if (!read || !common) return <OpeningScreen />;
  if (!file || !limit) return <MissingScreen />;
  const words = commonTextsOf(common);
  const name = (place: string): string => capital(words.places[place] ?? place);
  const places = buildPlaces(common.common.places, placesOf(car))
    .tree.ofKind(limit.class)
    // A figure for the car holds everywhere it could.
    .filter((place) => place !== "car")
    .map((value) => ({ value, words: name(value) }));
  const stands = lines.some(({ standing }) => standing.length > 0);
  return (
    <Plain back={t("limits.title")} href={to("limits", { car: params.car })} title={limitTitle(limit, textsOf(file))}>
      <Band heading={t("limit.default")} aside={t(`basis.${limit.basis}`)}>
        <p class="remark">{bandsText(limit, limit.bands)}</p>
        <p class="remark small">{limit.source}</p>
        {limit.wants === "maker" && !stands && <p class="remark">{t("book.wanted.says")}</p>}
      </Band>
      <Band heading={t("limit.kept")}>
        <Figures car={car} lines={lines} nameOf={name} />
        <p class="remark" role="status">
          {entering === "kept" && t("figure.kept")}
        </p>
        {entering === "asked" || (!stands && entering !== "kept") ? (
          <LimitForm
            car={car}
            limit={limit}
            points={file.sheet.points}
            lines={lines}
            places={places}
            onKept={() => setEntering("kept")}
          />
        ) : (
          <div class="acts">
            <Tool words={t(stands ? "figure.another" : "figure.enter")} onPress={() => setEntering("asked")} />
          </div>
        )}
        <p class="remark small">{t("limit.open-visits")}</p>
        <JudgeAgainOffer car={car} limit={limit.id} />
      </Band>
    </Plain>
  );
}

export const LimitScreen = ({ params }: { readonly params: ParamsOf<"limit"> }) => (
  <OnCar param={params.car}>{(car) => <LimitBody key={params.limit} car={car} params={params} />}</OnCar>
);
