/** One car: go on with the open visit, what is still open, its visits, what is known about it. */
import { useEffect, useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { ThumbZone } from "../parts/thumb-zone.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import { carTitle, factsKnown, limitsKnown, namesThatDiffer, visitLines } from "../state/car-view.js";
import { leftAt, recallGlance } from "../state/glance-kept.js";
import { type ParamsOf, paramOf, to } from "../state/routes.js";
import { t } from "../texts/round.js";
import { Top } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useLoaded } from "./use-loaded.js";

const RenameCar = lazy(() => import("./rename-car.js").then((file) => file.RenameCar), Nothing);
const WearingBand = lazy(() => import("./wearing-band.js").then((file) => file.WearingBand), Nothing);
const StillOpen = lazy(() => import("./still-open.js").then((file) => file.StillOpen), Nothing);

function CarBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const { journal, shelf, remembered } = useApp();
  const [renaming, setRenaming] = useState(false);
  useEffect(() => void journal.refresh(), [journal]);
  const common = useLoaded(() => shelf.common.source(), "common");
  const visits = visitLines(journal.summaries.value ?? [], car.stream);
  const open = visits.filter((visit) => !visit.closed);
  const last = visits[0];
  const differ = namesThatDiffer(car);
  return (
    <>
      <Top back={t("cars.title")} href="#/" />
      <main>
        <Title title={carTitle(car)} />
        {differ !== undefined && <Notice kind="plain" title={differ} />}
        {open.length > 0 && (
          <Pool>
            {open.map(({ stream, title }) => (
              <NextAction
                key={stream}
                words={t("cars.go-on")}
                says={[title, leftAt(recallGlance(remembered, stream))].filter(Boolean).join(". ")}
                href={to("round", { visit: paramOf(stream) })}
              />
            ))}
          </Pool>
        )}
        {last ? (
          <StillOpen visit={last.stream} />
        ) : (
          <EmptyState title={t("car.no-visits")} says={t("car.no-visits.says")} drawing="body" />
        )}
        {visits.length > 1 && <WearingBand car={car} param={param} />}
        {visits.length > 0 && (
          <Band heading={t("car.visits")}>
            {visits.map((visit) => (
              <ListRow
                key={visit.stream}
                title={visit.title}
                second={visit.second}
                href={to("visit", { visit: paramOf(visit.stream) })}
              />
            ))}
          </Band>
        )}
        <Band>
          <ListRow
            title={t("car.facts")}
            second={common && factsKnown(car, common.common)}
            href={to("facts", { car: param })}
          />
          <ListRow title={t("car.limits")} second={limitsKnown(car)} href={to("limits", { car: param })} />
          <ListRow title={t("car.places")} href={to("places", { car: param })} />
          <ListRow title={t("car.file")} href={to("car-file", { car: param })} />
        </Band>
        <div class="acts">
          <Tool words={t("car.rename")} onPress={() => setRenaming(true)} />
        </div>
      </main>
      <ThumbZone
        label={carTitle(car)}
        next={{ words: t("car.new-visit"), href: to("new-visit", { car: param }), onward: true }}
      />
      {renaming && <RenameCar car={car} onClose={() => setRenaming(false)} />}
    </>
  );
}

export const Car = ({ params }: { readonly params: ParamsOf<"car"> }) => (
  <OnCar param={params.car}>{(car) => <CarBody car={car} param={params.car} />}</OnCar>
);
