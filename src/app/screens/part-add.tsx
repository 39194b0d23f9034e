/** A part added to a job by hand: what, how many, and what it runs against. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { typedCount } from "../state/part-figures.js";
import { planPart } from "../state/plan-acts.js";
import { partsOf } from "../state/plan-part-view.js";
import { idParts, jobTitle } from "../state/plan-words.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-parts.js";
import type { OnPlan } from "./on-plan.js";

interface AddPartProps {
  readonly on: OnPlan;
  /** `job@place`; asked for where it is absent. */
  readonly job?: string;
  readonly onClose: () => void;
}

export function AddPart({ on, job, onClose }: AddPartProps) {
  const { journal, phone, router } = useApp();
  const jobs = on.input.jobs.filter(({ isDone }) => !isDone);
  const [chosen, setChosen] = useState(job ?? jobs[0]?.id ?? "");
  const [name, setName] = useState("");
  const [count, setCount] = useState("1");
  const [pair, setPair] = useState("");
  const others = partsOf(on, chosen);
  const pieces = typedCount(count, 1);
  const isWhole = name.trim() !== "" && chosen !== "" && typeof pieces === "number";
  const press = (): void => {
    if (!isWhole) return;
    const { what, place } = idParts(chosen);
    const at = { job: what, place, part: `own.${phone.nonce()}` };
    const counterpart = others.some((one) => one.at.part === pair) ? { counterpart: pair } : {};
    const hence = router.fromHere();
    void planPart(journal, on.stream, at, { name: name.trim(), count: pieces, ...counterpart }).then(
      (kept) => kept && hence.go(to("part", { visit: on.param, ...at })),
    );
    onClose();
  };
  return (
    <Sheet
      open
      title={t("all-parts.add")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={press} disabled={!isWhole} />}
    >
      {job === undefined && (
        <Field
          id="add-part-job"
          kind="select"
          label={t("all-parts.add.job")}
          value={chosen}
          onInput={setChosen}
          options={jobs.map(({ id }) => ({ value: id, words: jobTitle(on.telling, id) }))}
        />
      )}
      <Field id="add-part-name" kind="text" label={t("one-part.name")} value={name} onInput={setName} required />
      <Field
        id="add-part-count"
        kind="number"
        label={t("one-part.count")}
        value={count}
        onInput={setCount}
        {...(pieces === null ? { problem: t("one-part.count.odd") } : {})}
      />
      {others.length > 0 && (
        <Field
          id="add-part-pair"
          kind="select"
          label={t("all-parts.add.pair")}
          value={pair}
          onInput={setPair}
          options={[
            { value: "", words: t("one-part.pair.none") },
            ...others.map((one) => ({ value: one.at.part, words: one.name })),
          ]}
        />
      )}
    </Sheet>
  );
}
