/** Opening a visit: what for, who looks, the odometer, the complaint as spoken, the sheets to freeze. */
import { useRef, useState } from "preact/hooks";
import { type CarState, figureOf } from "../../core/record/index.js";
import type { Problem } from "../../core/terms/index.js";
import { NextAction } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { useApp } from "../state/app.js";
import { openVisit } from "../state/car-acts.js";
import { carTitle } from "../state/car-view.js";
import { chosenSheets, isoNow, type Opening, openingFrom, sheetsOfPoints, type VisitForm } from "../state/new-visit.js";
import { type ParamsOf, paramOf, to } from "../state/routes.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { readSheets } from "../state/sheets-at-hand.js";
import { commonFile } from "../state/shelf.js";
import { t } from "../texts/round.js";
import { ComplaintField } from "./complaint-field.js";
import { Plain } from "./frame.js";
import { lazy, Nothing, OpeningScreen } from "./lazy.js";
import { OdometerField, WhatForAndWho } from "./new-visit-who.js";
import { OnCar } from "./on-car.js";
import { useLoaded } from "./use-loaded.js";
import { useSheetsAtHand } from "./use-sheets.js";

const NewVisitMore = lazy(() => import("./new-visit-more.js").then((file) => file.NewVisitMore), Nothing);
const SheetsUnread = lazy(() => import("./sheets-unread.js").then((file) => file.SheetsUnread), Nothing);

function NewVisitBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const { journal, phone, settings, shelf, router, remembered } = useApp();
  const sheets = useSheetsAtHand();
  const common = useLoaded(() => commonFile(shelf), "common");
  const [form, setForm] = useState<VisitForm>({
    purpose: "workshop",
    who: "technician",
    odometer: "",
    odometerUnit: settings.value.odometerUnit,
    complaint: typedBefore(remembered, car.stream),
    led: [],
    byHand: {},
  });
  const [name, setName] = useState(settings.value.name);
  const [tried, setTried] = useState(false);
  const [busy, setBusy] = useState(false);
  const opened = useRef<((visit: string) => void) | undefined>(undefined);
  const [unread, setUnread] = useState<readonly Problem[]>([]);
  if (!common) return <OpeningScreen />;
  const set = (part: Partial<VisitForm>): void => setForm({ ...form, ...part });
  const odd = form.odometer.trim() !== "" && figureOf({ value: form.odometer, unit: form.odometerUnit }) === undefined;
  const chosen = chosenSheets(sheets, form);
  // Those for this occasion come first; a choice by hand moves nothing under the finger.
  const fitting = chosenSheets(sheets, { ...form, byHand: {} });
  const listed = [...fitting, ...sheets.filter((sheet) => !fitting.includes(sheet))];
  const open = async (): Promise<void> => {
    setTried(true);
    if (odd || chosen.length === 0) return;
    setBusy(true);
    const hence = router.fromHere();
    const { files, problems } = await readSheets(chosen);
    setUnread(problems);
    if (problems.length > 0) return setBusy(false);
    settings.value = {
      ...settings.value,
      name: name.trim(),
      odometerUnit: form.odometerUnit === "[mi_i]" ? "[mi_i]" : "km",
    };
    const opening: Opening = openingFrom(form, car, common, files, isoNow(phone.now()));
    const replies = form.season ? (await import("../state/season.js")).seasonReplies(form, files) : [];
    const stream = await openVisit(journal, phone, { ...opening, replies }, car.demo);
    setBusy(false);
    if (stream === undefined) return;
    opened.current?.(stream);
    keepTyped(remembered, car.stream, "");
    await journal.refresh();
    // A viewing begins before the car is reached: what is claimed is written down first.
    hence.swap(to(form.purpose === "viewing" ? "viewing" : "round", { visit: paramOf(stream) }));
  };
  return (
    <Plain back={carTitle(car)} href={to("car", { car: param })} title={t("new-visit.title")}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void open();
        }}
      >
        <WhatForAndWho form={form} set={set} names={{ name, setName }} />
        {(form.purpose === "season" ||
          journal.summaries.value?.some((one) => "car" in one && one.car === car.stream)) && (
          <NewVisitMore car={car} form={form} sheets={chosen} set={set} opened={opened} />
        )}
        <Band>
          <OdometerField form={form} set={set} odd={tried && odd} />
          <ComplaintField
            id="complaint"
            text={form.complaint}
            chosen={form.known}
            onText={(complaint) => {
              keepTyped(remembered, car.stream, complaint);
              set({ complaint });
            }}
            onChoose={(known, points) => set({ known, led: sheetsOfPoints(points) })}
          />
        </Band>
        <Band heading={t("new-visit.sheets")}>
          <p class="remark">{t("new-visit.sheets.says")}</p>
          <div class="form">
            <ReplyGrid
              kind="several"
              columns={1}
              label={t("new-visit.sheets")}
              replies={listed.map((sheet) => ({
                id: sheet.id,
                words: sheet.title,
                chosen: chosen.includes(sheet),
              }))}
              onChoose={(id, isChosen) => set({ byHand: { ...form.byHand, [id]: isChosen } })}
            />
          </div>
          {unread.length > 0 && <SheetsUnread problems={unread} />}
          {tried && chosen.length === 0 && <Notice kind="plain" title={t("new-visit.no-sheet")} />}
        </Band>
        <div class="acts">
          <NextAction
            type="submit"
            words={busy ? t("new-visit.opening") : t("new-visit.open")}
            disabled={busy}
            onward
          />
        </div>
      </form>
    </Plain>
  );
}

export const NewVisit = ({ params }: { readonly params: ParamsOf<"new-visit"> }) => (
  <OnCar param={params.car}>{(car) => <NewVisitBody car={car} param={params.car} />}</OnCar>
);
