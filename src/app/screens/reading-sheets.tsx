/** Over a reading: which gauge it is taken with, and where its limit comes from. */
import { useState } from "preact/hooks";
import type { JudgedLimit } from "../../core/assess/contract.js";
import type { GaugeUsed } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { positive } from "../state/gauge-form.js";
import { gaugeLine, gaugesOf } from "../state/gauges-view.js";
import type { Knowledge } from "../state/knowledge.js";
import { bandsText } from "../state/limits-view.js";
import { gaugeUsed, type ReadingField } from "../state/reading-view.js";
import { to } from "../state/routes.js";
import { day, figure, rounded, t } from "../texts/index.js";
import { unitShown } from "../texts/units.js";
import type { ReadingState } from "./use-reading.js";

interface GaugeSheetProps {
  readonly known: Knowledge;
  readonly field: ReadingField;
  readonly unit: string;
  readonly open: boolean;
  readonly onChoose: (gauge: GaugeUsed) => void;
  readonly onClose: () => void;
}

export function GaugeSheet({ known, field, unit, open, onChoose, onClose }: GaugeSheetProps) {
  const [resolution, setResolution] = useState("");
  const [error, setError] = useState("");
  const [odd, setOdd] = useState(false);
  const { journal, phone } = useApp();
  const house = journal.house().value;
  const ours = (house.is === "open" ? gaugesOf(house.state) : []).flatMap((gauge) => {
    const used = gaugeUsed(field, gauge, unit);
    return used ? [{ id: gauge.id, name: gauge.name, second: gaugeLine(gauge, phone.now(), day), used }] : [];
  });
  const usual = [...known.gauges.values()].flatMap((gauge) => {
    const used = gaugeUsed(field, gauge, unit);
    const figures = used && {
      resolution: rounded(used.resolution, 4),
      error: rounded(used.error, 4),
      unit: unitShown(unit),
    };
    return used && figures
      ? [{ id: gauge.id, name: known.words.gauges[gauge.id] ?? gauge.id, second: t("reading.gauge", figures), used }]
      : [];
  });
  const choose = (gauge: GaugeUsed): void => {
    onChoose(gauge);
    onClose();
  };
  const own = (): void => {
    const figures = { resolution: positive(resolution), error: positive(error) };
    setOdd(figures.resolution === undefined || figures.error === undefined);
    if (figures.resolution !== undefined && figures.error !== undefined)
      choose({ resolution: figures.resolution, error: figures.error });
  };
  return (
    <Sheet
      open={open}
      title={t("reading.gauge.title")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={<NextAction words={t("reading.gauge.use")} onPress={own} />}
    >
      {[...ours, ...usual].map(({ id, name, second, used }) => (
        <ListRow key={id} title={name} second={second} onPress={() => choose(used)} />
      ))}
      <ListRow folded title={t("gauges.title")} href={to("gauges")} />
      <h3>{t("reading.gauge.own")}</h3>
      <Field
        id="gauge-resolution"
        kind="number"
        label={t("reading.gauge.resolution")}
        unit={unitShown(unit)}
        value={resolution}
        onInput={setResolution}
      />
      <Field
        id="gauge-error"
        kind="number"
        label={t("reading.gauge.error")}
        unit={unitShown(unit)}
        value={error}
        onInput={setError}
        {...(odd ? { problem: t("reading.gauge.odd") } : {})}
      />
    </Sheet>
  );
}

/** Over one kept reading: nothing happens to it by a stray touch. */
export function ReadingSheet({
  state,
  index,
  onClose,
}: {
  readonly state: ReadingState;
  readonly index: number | undefined;
  readonly onClose: () => void;
}) {
  const text = index === undefined ? undefined : state.value?.values[index];
  if (index === undefined || text === undefined || state.value === undefined) return null;
  const act = (work: (index: number) => void) => (): void => {
    work(index);
    onClose();
  };
  return (
    <Sheet
      open
      title={t("reading.one", { n: index + 1, value: `${figure(text)} ${unitShown(state.value.unit)}` })}
      closeWords={t("app.cancel")}
      onClose={onClose}
    >
      <p>{t("reading.one.says")}</p>
      <div class="acts">
        <Tool words={t("reading.one.change")} onPress={act(state.changeKept)} />
        <Tool words={t("reading.one.rub-out")} onPress={act(state.takeBack)} />
      </div>
    </Sheet>
  );
}

export function SourceSheet({
  limit,
  open,
  onClose,
}: {
  readonly limit: JudgedLimit | undefined;
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  return (
    <Sheet open={open && limit !== undefined} title={t("reading.source")} closeWords={t("app.close")} onClose={onClose}>
      {limit && (
        <>
          <p>{bandsText(limit, limit.bands)}</p>
          <p>{[t(`basis.${limit.basis}`), ...(limit.isDefault ? [t("basis.default")] : [])].join(", ")}</p>
          <p>{limit.source}</p>
        </>
      )}
    </Sheet>
  );
}
