/** Build data: what the rules ask about this car. Each change is kept when the field is left. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import { Field } from "../parts/field.js";
import { useApp } from "../state/app.js";
import { fact } from "../state/car-edits.js";
import { type FactLine, factLines, factValue } from "../state/facts-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { commonTextsOf } from "../state/shelf.js";
import { t } from "../texts/index.js";
import { unitShown } from "../texts/units.js";
import { Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useWholeCommon } from "./use-sheets.js";

function FactField({ car, line }: { readonly car: CarState; readonly line: FactLine }) {
  const { journal } = useApp();
  const [typed, setTyped] = useState<string>();
  const [odd, setOdd] = useState(false);
  const isChoice = line.options.length > 0;
  const keep = (text: string): void => {
    const value = factValue(line.kind, text);
    setOdd(value === undefined);
    if (value === undefined || text === line.value) return;
    void fact(journal, car.stream, line.id, value).then(() => setTyped(undefined));
  };
  return (
    <Field
      id={`fact-${line.id}`}
      kind={isChoice ? "select" : "text"}
      label={line.name}
      value={typed ?? line.value}
      onInput={(text) => (isChoice ? keep(text) : setTyped(text))}
      {...(isChoice ? { options: line.options } : { onCommit: keep })}
      {...(line.unit === undefined ? {} : { unit: unitShown(line.unit) })}
      {...(odd ? { problem: line.kind === "year" ? t("facts.year-odd") : t("facts.number-odd") } : {})}
    />
  );
}

function FactsBody({ car, param }: { readonly car: CarState; readonly param: string }) {
  const common = useWholeCommon();
  if (!common) return <OpeningScreen />;
  const lines = factLines(car, common.common, commonTextsOf(common));
  return (
    <Plain back={t("car.back")} href={to("car", { car: param })} title={t("facts.title")}>
      <p class="remark">{t("facts.says")}</p>
      <div class="form">
        {lines.map((line) => (
          <FactField key={line.id} car={car} line={line} />
        ))}
      </div>
    </Plain>
  );
}

export const Facts = ({ params }: { readonly params: ParamsOf<"facts"> }) => (
  <OnCar param={params.car}>{(car) => <FactsBody car={car} param={params.car} />}</OnCar>
);
