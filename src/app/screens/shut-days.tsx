/** Shut days from–to, typed row by row; an empty row is none. */
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import type { ShutRow } from "../state/house-figures.js";
import { t } from "../texts/house.js";

interface ShutDaysProps {
  readonly rows: readonly ShutRow[];
  readonly onRows: (rows: readonly ShutRow[]) => void;
}

export function ShutDaysFields({ rows, onRows }: ShutDaysProps) {
  const put = (at: number, part: Partial<ShutRow>): void =>
    onRows(rows.map((row, index) => (index === at ? { ...row, ...part } : row)));
  return (
    <div class="form">
      <p class="label">{t("house.shut")}</p>
      {rows.map((row, at) => {
        const isBackwards = row.from !== "" && row.to !== "" && row.to < row.from;
        return (
          <div key={`shut-${at}`}>
            <Field
              id={`shut-${at}-from`}
              kind="date"
              label={t("house.shut.from")}
              value={row.from}
              onInput={(from) => put(at, { from })}
            />
            <Field
              id={`shut-${at}-to`}
              kind="date"
              label={t("house.shut.to")}
              value={row.to}
              onInput={(to) => put(at, { to })}
              {...(isBackwards ? { problem: t("house.shut.wrong") } : {})}
            />
            <div class="acts">
              <Tool words={t("house.away")} onPress={() => onRows(rows.filter((_, index) => index !== at))} />
            </div>
          </div>
        );
      })}
      <Tool words={t("house.shut.add")} onPress={() => onRows([...rows, { from: "", to: "" }])} />
    </div>
  );
}
