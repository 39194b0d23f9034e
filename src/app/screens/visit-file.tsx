/** One visit as a file for another phone, and deleting for good: its papers, or all of it. Waits for no judgement. */
import { useEffect, useState } from "preact/hooks";
import { planStream, type VisitState } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Band, Pool } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { carName } from "../state/cars-view.js";
import { to, visitStreamOf } from "../state/routes.js";
import { t } from "../texts/files.js";
import { CopyMaker } from "./copy-maker.js";
import { type ErasedNow, Erasing } from "./erasing.js";
import { MissingScreen, Plain } from "./frame.js";
import { GoneScreen } from "./gone-screen.js";
import { OpeningScreen } from "./lazy.js";
import type { ScreenProps } from "./screens.js";
import { VisitPapers } from "./visit-papers.js";

function HandVisit({ visit, car }: { readonly visit: VisitState; readonly car: string }) {
  const { journal } = useApp();
  const named = (journal.summaries.value ?? []).find((one) => one.stream === car);
  const what = { holds: "visit", car, visit: visit.stream } as const;
  return (
    <Pool>
      <h2 class="remark">{t("visit-file.hand")}</h2>
      <p class="remark">{t("visit-file.hand.says")}</p>
      <CopyMaker
        ways={[{ id: "visit", words: t("car-file.make"), what }]}
        of={`visit ${named?.of === "car" ? carName(named) : ""}`}
      />
    </Pool>
  );
}

function EraseVisit({
  visit,
  onErased,
}: {
  readonly visit: VisitState;
  readonly onErased: (erased: ErasedNow) => void;
}) {
  const [asking, setAsking] = useState(false);
  const what = { title: t("erase.sure.visit"), streams: [visit.stream, planStream(visit.stream)] };
  return (
    <Band heading={t("erase.visit")}>
      <p class="remark">{t("erase.visit.says")}</p>
      <div class="acts">
        <Tool words={t("erase.visit")} onPress={() => setAsking(true)} />
      </div>
      {asking && <Erasing what={what} onClose={() => setAsking(false)} onErased={onErased} />}
    </Band>
  );
}

export function VisitFile({ params }: ScreenProps<"visit-file">) {
  const { journal } = useApp();
  const [erased, setErased] = useState<ErasedNow>();
  useEffect(() => void journal.refresh(), [journal]);
  const opened = journal.visit(visitStreamOf(params.visit)).value;
  if (erased) return <GoneScreen erased={erased} />;
  if (opened.is === "opening") return <OpeningScreen />;
  const car = opened.is === "open" ? opened.state.opened?.value.car : undefined;
  if (opened.is !== "open" || car === undefined) return <MissingScreen />;
  const visit = opened.state;
  return (
    <Plain back={t("visit-file.back")} href={to("visit", params)} title={t("visit-file.title")}>
      {visit.demo ? (
        <p class="remark">{t("hand.demo")}</p>
      ) : (
        <>
          <HandVisit visit={visit} car={car} />
          <VisitPapers visit={visit} />
          <EraseVisit visit={visit} onErased={setErased} />
        </>
      )}
    </Plain>
  );
}
