/** The places of this car: what it has, what it lacks, what it has more, and what its people call them. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Fold } from "../parts/fold.js";
import { ListRow } from "../parts/list-row.js";
import type { FrozenCommonFile } from "../state/frozen.js";
import { byKind, kindWords, type PlaceLine, placesFound, placesOfCar } from "../state/places-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { commonTextsOf } from "../state/shelf.js";
import { t } from "../texts/car.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { AddPlace } from "./place-add.js";
import { CopyPlaces } from "./place-copy.js";
import { PlaceSheet } from "./place-sheet.js";
import { useWholeCommon } from "./use-sheets.js";

type Over = "add" | "copy";

const stateOf = (line: PlaceLine): string | undefined =>
  line.gone ? t("places.gone") : line.added ? t("places.own") : undefined;

function PlacesBody({ car, param, common }: PlacesProps) {
  const [chosen, setChosen] = useState<string>();
  const [over, setOver] = useState<Over>();
  const [typed, setTyped] = useState("");
  const places = placesOfCar(car, common.common, commonTextsOf(common));
  const line = places.lines.find(({ id }) => id === chosen);
  const found = placesFound(places.lines, typed);
  return (
    <Plain back={t("places.back")} href={to("car", { car: param })} title={t("places.title")}>
      <p class="remark">{t("places.says")}</p>
      <div class="acts">
        <Tool words={t("places.add")} onPress={() => setOver("add")} />
        <Tool words={t("places.copy")} onPress={() => setOver("copy")} />
      </div>
      <div class="form">
        <Field id="find-place" kind="search" label={t("places.find")} value={typed} onInput={setTyped} />
      </div>
      {byKind(found).map((group) => (
        <Fold key={group.kind} title={kindWords(group.kind)} count={group.lines.length} open={typed.trim() !== ""}>
          {group.lines.map((one) => (
            <ListRow
              key={one.id}
              folded
              title={one.name}
              second={one.was}
              aside={stateOf(one)}
              onPress={() => setChosen(one.id)}
            />
          ))}
        </Fold>
      ))}
      {found.length === 0 && <p class="remark">{t("places.none-found")}</p>}
      {over === "add" && (
        <AddPlace car={car} common={common.common} places={places} onClose={() => setOver(undefined)} />
      )}
      {over === "copy" && <CopyPlaces car={car} onClose={() => setOver(undefined)} />}
      {line && <PlaceSheet key={line.id} car={car} line={line} places={places} onClose={() => setChosen(undefined)} />}
    </Plain>
  );
}

interface PlacesProps {
  readonly car: CarState;
  readonly param: string;
  readonly common: FrozenCommonFile;
}

function WithCommon(props: Omit<PlacesProps, "common">) {
  const common = useWholeCommon();
  return common ? <PlacesBody {...props} common={common} /> : <OpeningScreen />;
}

export const Places = ({ params }: { readonly params: ParamsOf<"places"> }) => (
  <OnCar param={params.car}>{(car) => <WithCommon car={car} param={params.car} />}</OnCar>
);
