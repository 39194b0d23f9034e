/** The places of this car: the common tree with what this car has more or less. */
import { useState } from "preact/hooks";
import { type CarState, placesOf } from "../../core/record/index.js";
import { buildPlaces } from "../../core/sheet/run.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { place as keepPlace } from "../state/car-acts.js";
import { type PlaceLine, placeLines } from "../state/places-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { commonFile, commonTextsOf } from "../state/shelf.js";
import { t } from "../texts/index.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useLoaded } from "./use-loaded.js";

const PLACE_ID = /^[A-Za-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/;

function AddPlace({ car, lines }: { readonly car: CarState; readonly lines: readonly PlaceLine[] }) {
  const { journal } = useApp();
  const kinds = [...new Set(lines.map((line) => line.kind))].filter((kind) => kind !== "car");
  const [id, setId] = useState("");
  const [kind, setKind] = useState(kinds[0] ?? "");
  const [inside, setInside] = useState("car");
  const [odd, setOdd] = useState(false);
  const add = (): void => {
    const isOdd = !PLACE_ID.test(id) || lines.some((line) => line.id === id);
    setOdd(isOdd);
    if (isOdd) return;
    void keepPlace(journal, car.stream, id, { add: { id, kind, in: inside } }).then((kept) => kept && setId(""));
  };
  return (
    <Band heading={t("places.add")}>
      <div class="form">
        <Field
          id="place-id"
          kind="text"
          label={t("places.add-name")}
          value={id}
          onInput={setId}
          autocomplete="off"
          {...(odd ? { problem: t("places.name-odd") } : {})}
        />
        <Field
          id="place-kind"
          kind="select"
          label={t("places.add-kind")}
          value={kind}
          onInput={setKind}
          options={kinds.map((value) => ({ value, words: value }))}
        />
        <Field
          id="place-in"
          kind="select"
          label={t("places.add-in")}
          value={inside}
          onInput={setInside}
          options={lines.filter((line) => !line.gone).map((line) => ({ value: line.id, words: line.name }))}
        />
        <NextAction words={t("places.add-keep")} onPress={add} />
      </div>
    </Band>
  );
}

function PlacesBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const { shelf, journal } = useApp();
  const [chosen, setChosen] = useState<PlaceLine>();
  const common = useLoaded(() => commonFile(shelf), "common");
  if (!common) return <OpeningScreen />;
  const changes = placesOf(car);
  const lines = placeLines(
    common.common.places,
    buildPlaces(common.common.places, changes).tree,
    changes,
    commonTextsOf(common),
  );
  const change = (line: PlaceLine): void => {
    void keepPlace(journal, car.stream, line.id, line.gone || line.added ? null : { remove: line.id });
    setChosen(undefined);
  };
  return (
    <Plain back={t("car.back")} href={to("car", { car: param })} title={t("places.title")}>
      <p class="remark">{t("places.says")}</p>
      {lines.map((line) => (
        <ListRow
          key={line.id}
          folded
          title={line.name}
          second={line.inside}
          aside={line.gone ? t("places.gone") : undefined}
          {...(line.id === "car" ? {} : { onPress: () => setChosen(line) })}
        />
      ))}
      <AddPlace car={car} lines={lines} />
      <Sheet
        open={chosen !== undefined}
        title={chosen?.name ?? ""}
        closeWords={t("app.close")}
        onClose={() => setChosen(undefined)}
      >
        {chosen && (
          <NextAction
            words={t(chosen.gone ? "places.bring-back" : "places.take-away", { place: chosen.name })}
            onPress={() => change(chosen)}
          />
        )}
      </Sheet>
    </Plain>
  );
}

export const Places = ({ params }: { readonly params: ParamsOf<"places"> }) => (
  <OnCar param={params.car}>{(car) => <PlacesBody car={car} param={params.car} />}</OnCar>
);
