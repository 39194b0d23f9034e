/** A place this car has beside the usual ones: what it is, where it lies, what it does, and its twin. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import type { BareCommon } from "../../core/sheet/run.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { keepPlaces } from "../state/car-edits.js";
import { doesOf, kindsToAdd, type NewPlace, newPlaces, otherSide, whereOf } from "../state/new-place.js";
import { kindWords, type PlacesOfCar } from "../state/places-view.js";
import { t } from "../texts/car.js";

interface AddProps {
  readonly car: CarState;
  readonly common: BareCommon;
  readonly places: PlacesOfCar;
  readonly onClose: () => void;
}
interface Option {
  readonly value: string;
  readonly words: string;
}

const optionsOf = ({ lines }: PlacesOfCar, kind: string): readonly Option[] =>
  lines.flatMap((line) => (line.kind === kind && !line.gone ? [{ value: line.id, words: line.name }] : []));

/** Where a place of this kind may lie. */
function whereOptions(places: PlacesOfCar, kind: string): readonly Option[] {
  const where = whereOf(kind);
  return where === "side"
    ? [...optionsOf(places, "side"), { value: "car", words: t("places.middle") }]
    : optionsOf(places, where);
}

const NOTHING: Option = { value: "", words: t("places.none") };

export function AddPlace({ car, common, places, onClose }: AddProps) {
  const { journal } = useApp();
  const kinds = kindsToAdd(common);
  const [kind, setKind] = useState(kinds[0] ?? "");
  const [name, setName] = useState("");
  const [chosenAt, setAt] = useState("");
  const [chosenSide, setSide] = useState("");
  const [does, setDoes] = useState("");
  const [below, setBelow] = useState("");
  const [both, setBoth] = useState(true);
  const wheres = whereOptions(places, kind);
  const at = wheres.some(({ value }) => value === chosenAt) ? chosenAt : (wheres[0]?.value ?? "car");
  const sides = optionsOf(places, "side");
  const side = whereOf(kind) === "axle" ? chosenSide || sides[0]?.value : undefined;
  const roles = doesOf(common, kind);
  const asked: NewPlace = {
    kind,
    name: name.trim(),
    at,
    both,
    ...(side === undefined ? {} : { side }),
    ...(roles.includes(does) ? { does } : {}),
    ...(kind === "drain" && below !== "" ? { below } : {}),
  };
  const nameOf = (id: string): string => lower(places.lines.find((line) => line.id === id)?.name ?? id);
  const made = newPlaces(places.tree, nameOf, asked, () => "");
  const isTaken = made.some((one) => places.lines.some((line) => lower(line.name) === lower(one.name ?? "")));
  const keep = (): void => {
    void keepPlaces(journal, car.stream, (random) => newPlaces(places.tree, nameOf, asked, random));
    onClose();
  };
  const twin = otherSide(places.tree, asked);
  return (
    <Sheet
      open
      title={t("places.add")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("places.add-keep")} disabled={asked.name === "" || isTaken} onPress={keep} />}
    >
      <div class="form">
        <Field
          id="place-kind"
          kind="select"
          label={t("places.add-kind")}
          value={kind}
          onInput={setKind}
          options={kinds.map((value) => ({ value, words: kindWords(value) }))}
        />
        <Field
          id="place-name"
          kind="text"
          label={t("places.name")}
          help={t("places.add-name.help")}
          value={name}
          onInput={setName}
          {...(isTaken ? { problem: t("places.name-taken") } : {})}
        />
        <Field
          id="place-at"
          kind="select"
          label={t(`places.at.${whereOf(kind)}`)}
          value={at}
          onInput={setAt}
          options={wheres}
        />
        {side !== undefined && (
          <Field
            id="place-side"
            kind="select"
            label={t("places.at.side")}
            value={side}
            onInput={setSide}
            options={sides}
          />
        )}
        {roles.length > 0 && (
          <Field
            id="place-does"
            kind="select"
            label={t("places.does")}
            value={does}
            onInput={setDoes}
            options={[
              NOTHING,
              ...roles.map((value) => ({ value, words: t(`places.does.${value}` as "places.does.main") })),
            ]}
          />
        )}
        {kind === "drain" && (
          <Field
            id="place-below"
            kind="select"
            label={t("places.below")}
            value={below}
            onInput={setBelow}
            options={[NOTHING, ...optionsOf(places, "tube")]}
          />
        )}
        {twin !== undefined && (
          <Switch
            id="place-both"
            label={t("places.both", { place: nameOf(twin) })}
            on={both}
            onChange={setBoth}
            words={{ on: t("places.on"), off: t("places.off") }}
          />
        )}
      </div>
    </Sheet>
  );
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
