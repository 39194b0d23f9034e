/** One car as a file for another phone, and deleting it for good. */
import { useEffect, useState } from "preact/hooks";
import { type CarState, planStream } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Band, Pool } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { carTitle } from "../state/car-view.js";
import { visitsOf } from "../state/cars-view.js";
import { to } from "../state/routes.js";
import { t } from "../texts/files.js";
import { CopyMaker } from "./copy-maker.js";
import { type ErasedNow, Erasing } from "./erasing.js";
import { Plain } from "./frame.js";
import { GoneScreen } from "./gone-screen.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import type { ScreenProps } from "./screens.js";

interface OfCar {
  readonly car: CarState;
  readonly visits: readonly string[];
}

function HandCar({ car, visits }: OfCar) {
  const what = { holds: "car", car: car.stream, visits } as const;
  return (
    <Pool>
      <h2 class="remark">{t("car-file.hand")}</h2>
      <p class="remark">{t("car-file.hand.says")}</p>
      <CopyMaker ways={[{ id: "car", words: t("car-file.make"), what }]} of={carTitle(car)} />
    </Pool>
  );
}

function EraseCar({ car, visits, onErased }: OfCar & { readonly onErased: (erased: ErasedNow) => void }) {
  const { journal } = useApp();
  const [asking, setAsking] = useState(false);
  const streams = [car.stream, ...visits, ...visits.map(planStream)];
  const there = (journal.summaries.value ?? []).filter(({ stream }) => streams.includes(stream));
  const entries = there.reduce((sum, one) => sum + one.entries, 0);
  const what = {
    title: t("erase.sure.car", { name: carTitle(car) }),
    says: t("erase.sure.car.counts", { visits: visits.length, entries }),
    streams,
  };
  return (
    <Band heading={t("erase.car")}>
      <p class="remark">{t("erase.car.says")}</p>
      <div class="acts">
        <Tool words={t("erase.car")} onPress={() => setAsking(true)} />
      </div>
      {asking && <Erasing what={what} onClose={() => setAsking(false)} onErased={onErased} />}
    </Band>
  );
}

export function CarFile({ params }: ScreenProps<"car-file">) {
  const { journal } = useApp();
  const [erased, setErased] = useState<ErasedNow>();
  useEffect(() => void journal.refresh(), [journal]);
  const summaries = journal.summaries.value;
  if (erased) return <GoneScreen erased={erased} />;
  if (!summaries) return <OpeningScreen />;
  return (
    <OnCar param={params.car}>
      {(car, stream) => {
        const visits = visitsOf(summaries, stream).map((visit) => visit.stream);
        return (
          <Plain back={carTitle(car)} href={to("car", params)} title={t("car-file.title")}>
            {car.demo ? (
              <p class="remark">{t("hand.demo")}</p>
            ) : (
              <>
                <HandCar car={car} visits={visits} />
                <EraseCar car={car} visits={visits} onErased={setErased} />
              </>
            )}
          </Plain>
        );
      }}
    </OnCar>
  );
}
