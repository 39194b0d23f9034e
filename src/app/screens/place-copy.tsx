/** Taking over the places of another car of the type: only what this one says nothing about yet, in one act. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { NextAction } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { keepPlaces } from "../state/car-edits.js";
import { carTitle } from "../state/car-view.js";
import { carName } from "../state/cars-view.js";
import { copied } from "../state/places-view.js";
import { t } from "../texts/car.js";

interface CopyProps {
  readonly car: CarState;
  readonly onClose: () => void;
}

/** Once a car is chosen: what it would bring, before anything is kept. */
function From({ car, stream, onClose }: CopyProps & { readonly stream: string }) {
  const { journal } = useApp();
  const from = journal.car(stream).value;
  if (from.is !== "open") return null;
  const other = from.state;
  const brings = copied(other, car);
  const keep = (): void => {
    void keepPlaces(journal, car.stream, (_, now) => copied(other, now));
    onClose();
  };
  const count = (is: (change: NonNullable<(typeof brings)[number]["change"]>) => boolean): number =>
    brings.filter(({ change }) => change && is(change)).length;
  return (
    <Sheet
      open
      title={t("places.copy.from", { car: carTitle(other) })}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("places.copy.keep")} disabled={brings.length === 0} onPress={keep} />}
    >
      <p>
        {brings.length === 0
          ? t("places.copy.nothing")
          : t("places.copy.brings", {
              more: count((change) => "add" in change),
              less: count((change) => "remove" in change),
              names: brings.filter(({ name }) => name !== undefined).length,
            })}
      </p>
      <p class="small">{t("places.copy.says")}</p>
    </Sheet>
  );
}

export function CopyPlaces({ car, onClose }: CopyProps) {
  const { journal } = useApp();
  const [stream, setStream] = useState<string>();
  const others = (journal.summaries.value ?? []).flatMap((one) =>
    one.of === "car" && one.stream !== car.stream && one.demo === car.demo ? [one] : [],
  );
  if (stream !== undefined) return <From car={car} stream={stream} onClose={onClose} />;
  return (
    <Sheet open title={t("places.copy.which")} closeWords={t("app.cancel")} onClose={onClose}>
      {others.length === 0 && <p>{t("places.copy.no-other")}</p>}
      {others.map((one) => (
        <ListRow key={one.stream} title={carName(one)} onPress={() => setStream(one.stream)} />
      ))}
    </Sheet>
  );
}
