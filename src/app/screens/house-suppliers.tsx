/** A house's suppliers, and one of them: days it works, lead, carriage, shut weeks. Opened over the settings. */
import { useState } from "preact/hooks";
import type { Supplier } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { type SupplierForm, supplierForm, supplierFrom, supplierWants } from "../state/house-days-form.js";
import { dropSupplier, keepSupplier } from "../state/house-terms-acts.js";
import { t } from "../texts/house.js";
import { ShutDaysFields } from "./shut-days.js";

const WEEKDAYS = [1, 2, 3, 4, 5, 6, 7] as const;
const onOff = () => ({ on: t("app.yes"), off: t("app.no") });

interface FieldsProps {
  readonly form: SupplierForm;
  readonly set: (part: Partial<SupplierForm>) => void;
}

function SupplierFields({ form, set }: FieldsProps) {
  const field = (part: "name" | "lead" | "carriage", kind: "text" | "number") => (
    <Field
      id={`supplier-${part}`}
      kind={kind}
      label={t(`house.supplier.${part}`)}
      value={form[part]}
      onInput={(text) => set({ [part]: text })}
    />
  );
  return (
    <>
      <div class="form">
        {field("name", "text")}
        {field("lead", "number")}
        {field("carriage", "number")}
        <p class="label">{t("house.supplier.days")}</p>
      </div>
      {WEEKDAYS.map((weekday) => (
        <Switch
          key={weekday}
          id={`supplier-day-${weekday}`}
          label={t(`house.day.${weekday}`)}
          on={form.week.includes(weekday)}
          onChange={(on) => set({ week: on ? [...form.week, weekday] : form.week.filter((one) => one !== weekday) })}
          words={onOff()}
        />
      ))}
      <Switch
        id="supplier-outwork"
        label={t("house.supplier.outwork")}
        on={form.outwork}
        onChange={(outwork) => set({ outwork })}
        words={onOff()}
      />
      <ShutDaysFields rows={form.shut} onRows={(shut) => set({ shut })} />
    </>
  );
}

interface OneProps {
  readonly supplier: Supplier | undefined;
  readonly onClose: () => void;
}

function SupplierSheet({ supplier, onClose }: OneProps) {
  const { journal } = useApp();
  const [form, setForm] = useState<SupplierForm>(() => supplierForm(supplier));
  const made = supplierFrom(form);
  const wants = supplierWants(form);
  const act = (work: Promise<boolean>): void => {
    void work;
    onClose();
  };
  return (
    <Sheet
      open
      form="full"
      title={supplier?.name ?? t("house.supplier.add")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={
        <NextAction
          words={t("house.keep")}
          says={wants && t(`house.wants.${wants}`)}
          disabled={made === undefined}
          onPress={() => made && act(keepSupplier(journal, supplier?.id, made))}
        />
      }
    >
      <SupplierFields form={form} set={(part) => setForm({ ...form, ...part })} />
      {supplier && (
        <div class="acts">
          <Tool
            words={t("house.supplier.drop")}
            says={t("house.supplier.drop.says")}
            onPress={() => act(dropSupplier(journal, supplier.id))}
          />
        </div>
      )}
    </Sheet>
  );
}

/** `10 working days, 2 days on the road`. */
function lineOf({ leadDays, carriageDays = 0 }: Supplier): string {
  const lead = leadDays === undefined ? t("house.lead.unknown") : t("house.lead", { n: leadDays });
  return t("house.supplier.line", { lead, road: t("house.road", { n: carriageDays }) });
}

interface SuppliersProps {
  readonly suppliers: readonly Supplier[];
  readonly onClose: () => void;
}

export function HouseSuppliersSheet({ suppliers, onClose }: SuppliersProps) {
  const [open, setOpen] = useState<string>();
  return (
    <Sheet open form="full" title={t("house.suppliers")} closeWords={t("app.close")} onClose={onClose}>
      {suppliers.length === 0 && <p class="remark">{t("house.suppliers.none")}</p>}
      {suppliers.map((one) => (
        <ListRow key={one.id} title={one.name} second={lineOf(one)} onPress={() => setOpen(one.id)} />
      ))}
      <div class="acts">
        <Tool words={t("house.supplier.add")} onPress={() => setOpen("")} />
      </div>
      {open !== undefined && (
        <SupplierSheet
          key={open}
          supplier={suppliers.find(({ id }) => id === open)}
          onClose={() => setOpen(undefined)}
        />
      )}
    </Sheet>
  );
}
