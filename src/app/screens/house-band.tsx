/** The house's terms among the settings: three rows, each opening its form. Loaded with the first of them. */
import { useState } from "preact/hooks";
import type { HouseState, Stands } from "../../core/record/index.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { t } from "../texts/house.js";
import { HouseDaysSheet } from "./house-days.js";
import { HouseSuppliersSheet } from "./house-suppliers.js";
import { HouseTermsSheet } from "./house-terms.js";

const FORMS = ["terms", "days", "suppliers"] as const;
type Form = (typeof FORMS)[number];

/** Where people differ, what was said last is what one mends; keeping it settles the rest. */
const last = <T,>(standing: readonly Stands<T>[] | undefined): T | undefined => standing?.at(-1)?.value;

function OpenForm({
  form,
  house,
  onClose,
}: {
  readonly form: Form;
  readonly house: HouseState;
  readonly onClose: () => void;
}) {
  if (form === "terms") return <HouseTermsSheet terms={last(house.terms)} onClose={onClose} />;
  if (form === "days") return <HouseDaysSheet days={last(house.calendar)} onClose={onClose} />;
  const suppliers = [...house.suppliers.values()].flatMap((standing) => last(standing) ?? []);
  suppliers.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  return <HouseSuppliersSheet suppliers={suppliers} onClose={onClose} />;
}

export function HouseBand() {
  const { journal } = useApp();
  const [form, setForm] = useState<Form>();
  const house = journal.house().value;
  if (house.is !== "open") return null;
  return (
    <Band>
      {FORMS.map((one) => (
        <ListRow key={one} title={t(`house.${one}`)} second={t(`house.${one}.second`)} onPress={() => setForm(one)} />
      ))}
      {form && <OpenForm form={form} house={house.state} onClose={() => setForm(undefined)} />}
    </Band>
  );
}
