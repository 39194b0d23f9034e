/** A new car: all it needs is a name. What is known about its build can follow. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { useApp } from "../state/app.js";
import { newCar } from "../state/car-acts.js";
import { paramOf, to } from "../state/routes.js";
import { t } from "../texts/round.js";
import { Plain } from "./frame.js";

const LONGEST_NAME = 80;

export function NewCar() {
  const { journal, router } = useApp();
  const [name, setName] = useState("");
  const [missing, setMissing] = useState(false);
  const [busy, setBusy] = useState(false);
  const keep = async (): Promise<void> => {
    setMissing(name.trim() === "");
    if (name.trim() === "") return;
    setBusy(true);
    const hence = router.fromHere();
    const stream = await newCar(journal, name.trim());
    setBusy(false);
    if (stream !== undefined) hence.swap(to("car", { car: paramOf(stream) }));
  };
  return (
    <Plain back={t("cars.title")} href="#/" title={t("new-car.title")}>
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <Field
          id="car-name"
          kind="text"
          label={t("new-car.name")}
          help={t("new-car.name.help")}
          value={name}
          onInput={setName}
          required
          maxLength={LONGEST_NAME}
          autocomplete="off"
          {...(missing ? { problem: t("new-car.name.needed") } : {})}
        />
        <NextAction type="submit" words={t("new-car.create")} disabled={busy} />
      </form>
    </Plain>
  );
}
