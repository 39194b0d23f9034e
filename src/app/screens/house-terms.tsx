/** What a house charges by: currency, hourly rates, tax. Opened over the settings. */
import { useState } from "preact/hooks";
import { type HouseTerms, ROUNDINGS, TAX_LEVELS } from "../../core/record/index.js";
import { isCurrencyCode, minorDigitsOf } from "../../core/units/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { keepTerms } from "../state/house-terms-acts.js";
import {
  type FigureRow,
  freeId,
  type TermsForm,
  termsForm,
  termsFrom,
  termsWant,
  withGroups,
} from "../state/house-terms-form.js";
import { t } from "../texts/house.js";

interface RowsProps {
  readonly prefix: string;
  readonly rows: readonly FigureRow[];
  readonly heading: string;
  readonly label: (n: number) => string;
  readonly figure: string;
  readonly unit: string;
  readonly add: string;
  readonly onRows: (rows: readonly FigureRow[]) => void;
}

function Rows({ prefix, rows, heading, label, figure, unit, add, onRows }: RowsProps) {
  const put = (id: string, part: Partial<FigureRow>): void =>
    onRows(rows.map((row) => (row.id === id ? { ...row, ...part } : row)));
  return (
    <div class="form">
      <p class="label">{heading}</p>
      {rows.map((row, index) => (
        <div key={row.id}>
          <Field
            id={`${prefix}-${row.id}-name`}
            kind="text"
            label={label(index + 1)}
            value={row.name}
            onInput={(name) => put(row.id, { name })}
          />
          <Field
            id={`${prefix}-${row.id}-figure`}
            kind="number"
            label={figure}
            unit={unit}
            value={row.figure}
            onInput={(text) => put(row.id, { figure: text })}
          />
          {rows.length > 1 && (
            <Tool
              words={t("house.away")}
              says={row.name}
              onPress={() => onRows(rows.filter(({ id }) => id !== row.id))}
            />
          )}
        </div>
      ))}
      <Tool words={add} onPress={() => onRows([...rows, { id: freeId(prefix, rows), name: "", figure: "" }])} />
    </div>
  );
}

interface FieldsProps {
  readonly form: TermsForm;
  readonly set: (part: Partial<TermsForm>) => void;
}

function TaxFields({ form, set }: FieldsProps) {
  const groups = form.groups.map(({ id, name }, index) => ({
    value: id,
    words: name === "" ? t("house.group", { n: index + 1 }) : name,
  }));
  const choose = (part: "labourGroup" | "partsGroup", label: string) => (
    <Field
      id={`house-${part}`}
      kind="select"
      label={label}
      value={form[part]}
      onInput={(id) => set({ [part]: id })}
      options={groups}
    />
  );
  return (
    <div class="form">
      <Field
        id="house-label"
        kind="text"
        label={t("house.country")}
        value={form.label}
        onInput={(label) => set({ label })}
      />
      {choose("labourGroup", t("house.labour-group"))}
      {choose("partsGroup", t("house.parts-group"))}
      <Field
        id="house-rounding"
        kind="select"
        label={t("house.rounding")}
        value={form.rounding}
        onInput={(word) => set({ rounding: ROUNDINGS.find((one) => one === word) ?? form.rounding })}
        options={ROUNDINGS.map((value) => ({ value, words: t(`house.rounding.${value}`) }))}
      />
      <Field
        id="house-level"
        kind="select"
        label={t("house.level")}
        value={form.level}
        onInput={(word) => set({ level: TAX_LEVELS.find((one) => one === word) ?? form.level })}
        options={TAX_LEVELS.map((value) => ({ value, words: t(`house.level.${value}`) }))}
      />
    </div>
  );
}

interface TermsProps {
  readonly terms: HouseTerms | undefined;
  readonly onClose: () => void;
}

export function HouseTermsSheet({ terms, onClose }: TermsProps) {
  const { journal } = useApp();
  const [form, setForm] = useState<TermsForm>(() => termsForm(terms));
  const set = (part: Partial<TermsForm>): void => setForm({ ...form, ...part });
  const made = termsFrom(form, terms);
  const wants = termsWant(form);
  const keep = (): void => {
    if (!made) return;
    void keepTerms(journal, made);
    onClose();
  };
  const asksDigits = isCurrencyCode(form.currency) && minorDigitsOf(form.currency) === undefined;
  return (
    <Sheet
      open
      form="full"
      title={t("house.terms")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={
        <NextAction
          words={t("house.keep")}
          says={wants && t(`house.wants.${wants}`)}
          disabled={made === undefined}
          onPress={keep}
        />
      }
    >
      <p class="remark">{t("house.terms.says")}</p>
      <div class="form">
        <Field
          id="house-currency"
          kind="text"
          label={t("house.currency")}
          help={t("house.currency.help")}
          maxLength={3}
          value={form.currency}
          onInput={(text) => set({ currency: text.trim().toUpperCase() })}
        />
        {asksDigits && (
          <Field
            id="house-digits"
            kind="number"
            label={t("house.digits")}
            value={form.digits}
            onInput={(digits) => set({ digits })}
          />
        )}
      </div>
      <Rows
        prefix="r"
        rows={form.rates}
        heading={t("house.rates")}
        label={(n) => t("house.rate", { n })}
        figure={t("house.per-hour")}
        unit={form.currency}
        add={t("house.rate.add")}
        onRows={(rates) => set({ rates })}
      />
      <Rows
        prefix="t"
        rows={form.groups}
        heading={t("house.tax")}
        label={(n) => t("house.group", { n })}
        figure={t("house.percent")}
        unit="%"
        add={t("house.group.add")}
        onRows={(groups) => setForm(withGroups(form, groups))}
      />
      <TaxFields form={form} set={set} />
    </Sheet>
  );
}
