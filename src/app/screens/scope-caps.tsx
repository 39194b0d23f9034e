/** How far taking apart may go: hours and money at most, each kept when its box is left. */
import { useState } from "preact/hooks";
import type { PlanScope } from "../../core/record/index.js";
import { Field } from "../parts/field.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { typedMoney } from "../state/money-words.js";
import { planScope } from "../state/plan-acts.js";
import { scopeOf, typedHours } from "../state/plan-scope-view.js";
import { clockText, figureText } from "../state/three-texts.js";
import { decimalComma } from "../texts/index.js";
import { t } from "../texts/plan-scope.js";
import type { OnPlan } from "./on-plan.js";

interface CapFieldProps {
  readonly id: string;
  readonly label: string;
  readonly help: string;
  readonly odd: string;
  readonly unit: string;
  readonly stands: string;
  readonly read: (typed: string) => number | undefined;
  /** Undefined: no limit. */
  readonly onCap: (figure: number | undefined) => void;
}

function CapField({ id, label, help, odd, unit, stands, read, onCap }: CapFieldProps) {
  const [typed, setTyped] = useState<string>();
  const isOdd = typed !== undefined && typed.trim() !== "" && read(typed) === undefined;
  const keep = (text: string): void => {
    if (text.trim() === "") onCap(undefined);
    else if (read(text) === undefined) return;
    else onCap(read(text));
    setTyped(undefined);
  };
  return (
    <Field
      id={id}
      kind="text"
      label={label}
      value={typed ?? stands}
      onInput={setTyped}
      onCommit={keep}
      help={help}
      unit={unit}
      {...(isOdd ? { problem: odd } : {})}
    />
  );
}

export function ScopeCaps({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const { currency } = on;
  const scope = scopeOf(on.said);
  const { capMinutes, capMinor, ...rest } = scope;
  const keep = (minutes: number | undefined, minor: number | undefined): void => {
    if (minutes === capMinutes && minor === capMinor) return;
    const now: PlanScope = {
      ...rest,
      ...(minutes === undefined ? {} : { capMinutes: minutes }),
      ...(minor === undefined ? {} : { capMinor: minor }),
    };
    void planScope(journal, on.stream, now);
  };
  const money = (minor: number): string =>
    currency ? figureText(minor, currency.minorDigits, decimalComma.value ? "," : ".") : "";
  return (
    <Band heading={t("scope.cap")}>
      <div class="form">
        <CapField
          id="scope-hours"
          label={t("scope.cap.hours")}
          help={t("scope.cap.hours.help")}
          odd={t("scope.cap.hours.odd")}
          unit="h"
          stands={capMinutes === undefined ? "" : clockText(capMinutes)}
          read={typedHours}
          onCap={(minutes) => keep(minutes, capMinor)}
        />
        {currency ? (
          <CapField
            id="scope-money"
            label={t("scope.cap.money")}
            help={t("scope.cap.money.help")}
            odd={t("scope.cap.money.odd", { example: money(125_050) })}
            unit={currency.currency}
            stands={capMinor === undefined ? "" : money(capMinor)}
            read={(typed) => typedMoney(typed, currency.minorDigits)}
            onCap={(minor) => keep(capMinutes, minor)}
          />
        ) : (
          <p class="small">{t("scope.cap.money.no-terms")}</p>
        )}
      </div>
    </Band>
  );
}
