/** The first screen: the car last worked on in the light, visits left open, the other cars, what to begin. */
import { useEffect, useMemo, useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { SmallCar } from "../parts/car-plan.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { ThumbZone } from "../parts/thumb-zone.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import { type CarLine, type CarsView, carsView } from "../state/cars-view.js";
import { leftAt, recallGlance } from "../state/glance-kept.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/first.js";
import { Top } from "./frame.js";
import { lazy, Nothing, OpeningScreen } from "./lazy.js";
import { LitCar } from "./lit-car.js";

function CarRow({ car }: { readonly car: CarLine }) {
  const { remembered } = useApp();
  const caution = car.last && recallGlance(remembered, car.last.stream)?.caution;
  const warned = caution && `${t(`signal.${caution.signal}`)}: ${caution.not}`;
  return (
    <ListRow
      gutter="wide"
      lead={<SmallCar looked={car.looked} />}
      title={car.name}
      second={warned === undefined ? car.second : `${car.second}. ${warned}`}
      href={to("car", { car: paramOf(car.stream) })}
    />
  );
}

function Others({ view }: { readonly view: CarsView }) {
  const { remembered } = useApp();
  const own = view.own.filter((car) => car !== view.lit);
  const demo = view.demo.filter((car) => car !== view.lit);
  return (
    <>
      {view.leftOpen.length > 0 && (
        <Band heading={t("cars.open-visits")}>
          {view.leftOpen.map(({ car, visit }) => (
            <ListRow
              key={visit.stream}
              title={car.name}
              second={leftAt(recallGlance(remembered, visit.stream)) ?? t("cars.go-on")}
              aside={car.second}
              href={to("round", { visit: paramOf(visit.stream) })}
            />
          ))}
        </Band>
      )}
      {own.map((car) => (
        <CarRow key={car.stream} car={car} />
      ))}
      {demo.length > 0 && (
        <Band heading={t("cars.demo")}>
          {demo.map((car) => (
            <CarRow key={car.stream} car={car} />
          ))}
        </Band>
      )}
    </>
  );
}

const CopyLine = lazy(() => import("./copy-line.js").then((file) => file.CopyLine), Nothing);
const WhichCar = lazy(() => import("./which-car.js").then((file) => file.WhichCar), Nothing);

export function Cars() {
  const { journal } = useApp();
  const [choosing, setChoosing] = useState(false);
  useEffect(() => void journal.refresh(), [journal]);
  const summaries = journal.summaries.value;
  const view = useMemo(() => summaries && carsView(summaries), [summaries]);
  if (!view || !summaries) return <OpeningScreen />;
  const all = [...view.own, ...view.demo];
  const newVisit =
    all.length === 1 && all[0]
      ? { href: to("new-visit", { car: paramOf(all[0].stream) }) }
      : { onPress: () => setChoosing(true) };
  return (
    <>
      <Top />
      <main>
        <Title title={t("cars.title")} />
        {view.lit ? (
          <LitCar car={view.lit} />
        ) : (
          <Pool>
            <EmptyState
              title={t("cars.none")}
              says={t("cars.none.says")}
              drawing="body"
              action={{ words: t("cars.new"), href: to("new-car") }}
            />
            <div class="acts">
              <Tool words={t("cars.open-demo")} href={to("demo")} />
            </div>
          </Pool>
        )}
        {view.lit && <Others view={view} />}
        {view.own.length > 0 && <CopyLine summaries={summaries} />}
        <Band>
          <ListRow folded title={t("cars.sheets")} href={to("sheets")} />
          <ListRow folded title={t("cars.settings")} href={to("settings")} />
        </Band>
      </main>
      {all.length > 0 && (
        <ThumbZone
          label={t("cars.title")}
          tools={[
            { id: "car", words: t("cars.new"), href: to("new-car") },
            { id: "visit", words: t("cars.new-visit"), ...newVisit },
          ]}
        />
      )}
      {choosing && <WhichCar view={view} onClose={() => setChoosing(false)} />}
    </>
  );
}
