/** The gauges of this house: how finely each reads, how far off it may be, and when it was last checked. */
import { useState } from "preact/hooks";
import type { HouseGauge } from "../../core/record/index.js";
import type { BareCommonTexts, Gauge } from "../../core/sheet/run.js";
import { isQuantity } from "../../core/units/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { formOf, type GaugeForm, gaugeFrom, inUnit } from "../state/gauge-form.js";
import { gaugeLine, gaugesOf } from "../state/gauges-view.js";
import { dropGauge, keepGauge } from "../state/house-acts.js";
import { to } from "../state/routes.js";
import { commonTextsOf } from "../state/shelf.js";
import { tradeUnits } from "../state/trade-units.js";
import { t } from "../texts/car.js";
import { day, t as shared } from "../texts/index.js";
import { unitWords } from "../texts/units.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { useWholeCommon } from "./use-sheets.js";

interface KindsOfGauge {
  readonly kinds: readonly Gauge[];
  readonly words: BareCommonTexts;
}

const unitsOf = (quantity: string): readonly string[] => (isQuantity(quantity) ? tradeUnits(quantity) : []);

/** A new gauge begins with the usual figures of its kind. */
const usual = (kind: Gauge, name: string): GaugeForm => ({
  name,
  quantity: kind.quantity,
  unit: kind.unit,
  resolution: String(kind.resolution),
  error: String(kind.error),
  checked: "",
  tool: kind.id,
});

interface GaugeFormProps {
  readonly of: KindsOfGauge;
  readonly gauge: HouseGauge | undefined;
  readonly onClose: () => void;
}

function GaugeFields({ of, form, set }: Pick<GaugeFormProps, "of"> & FormState) {
  const kind = (id: string): void => {
    const chosen = of.kinds.find((one) => one.id === id);
    if (chosen) set(usual(chosen, form.name));
  };
  const units = [...new Set([form.unit, ...unitsOf(form.quantity)])];
  const figure = (part: "resolution" | "error") => (
    <Field
      id={`gauge-${part}`}
      kind="number"
      label={shared(`reading.gauge.${part}`)}
      unit={unitWords(form.unit)}
      value={form[part]}
      onInput={(text) => set({ ...form, [part]: text })}
    />
  );
  return (
    <div class="form">
      <Field
        id="gauge-name"
        kind="text"
        label={t("gauges.name")}
        value={form.name}
        onInput={(name) => set({ ...form, name })}
      />
      <Field
        id="gauge-kind"
        kind="select"
        label={t("gauges.as")}
        value={form.tool}
        onInput={kind}
        options={of.kinds.map(({ id }) => ({ value: id, words: of.words.gauges[id] ?? id }))}
      />
      {units.length > 1 && (
        <Field
          id="gauge-unit"
          kind="select"
          label={t("reading.unit")}
          value={form.unit}
          onInput={(unit) => set(inUnit(form, unit))}
          options={units.map((unit) => ({ value: unit, words: unitWords(unit) }))}
        />
      )}
      {figure("resolution")}
      {figure("error")}
      <Field
        id="gauge-checked"
        kind="date"
        label={t("gauges.checked")}
        value={form.checked}
        onInput={(checked) => set({ ...form, checked })}
      />
    </div>
  );
}

interface FormState {
  readonly form: GaugeForm;
  readonly set: (form: GaugeForm) => void;
}

function GaugeSheet({ of, gauge, onClose }: GaugeFormProps) {
  const { journal } = useApp();
  const [first] = of.kinds;
  const [form, set] = useState<GaugeForm | undefined>(gauge ? formOf(gauge) : first && usual(first, ""));
  if (!form) return null;
  const made = gaugeFrom(form, gauge?.id ?? "");
  const act = (work: Promise<boolean>): void => {
    void work;
    onClose();
  };
  const keep = (): void => {
    if (made) act(keepGauge(journal, (random) => ({ ...made, id: gauge?.id ?? random })));
  };
  return (
    <Sheet
      open
      title={gauge?.name ?? t("gauges.add")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("gauges.keep")} disabled={made === undefined} onPress={keep} />}
    >
      <GaugeFields of={of} form={form} set={set} />
      {gauge && (
        <div class="acts">
          <Tool
            words={t("gauges.drop")}
            says={t("gauges.drop.says")}
            onPress={() => act(dropGauge(journal, gauge.id))}
          />
        </div>
      )}
    </Sheet>
  );
}

export function Gauges() {
  const { journal, phone } = useApp();
  const [open, setOpen] = useState<string>();
  const house = journal.house().value;
  const common = useWholeCommon();
  if (!common || house.is === "opening") return <OpeningScreen />;
  const gauges = house.is === "open" ? gaugesOf(house.state) : [];
  const kinds = common.common.gauges;
  return (
    <Plain back={shared("settings.title")} href={to("settings")} title={shared("gauges.title")}>
      <p class="remark">{t("gauges.says")}</p>
      {gauges.length === 0 && <p class="remark">{t("gauges.none")}</p>}
      {gauges.map((gauge) => (
        <ListRow
          key={gauge.id}
          title={gauge.name}
          second={gaugeLine(gauge, phone.now(), day)}
          onPress={() => setOpen(gauge.id)}
        />
      ))}
      <div class="acts">
        <Tool words={t("gauges.add")} onPress={() => setOpen("")} />
      </div>
      {open !== undefined && (
        <GaugeSheet
          key={open}
          of={{ kinds, words: commonTextsOf(common) }}
          gauge={gauges.find(({ id }) => id === open)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Plain>
  );
}
