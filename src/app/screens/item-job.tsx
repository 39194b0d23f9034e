/** A job: what is done and said, what must be open, its minutes, its parts, what comes before, with and after it. */
import { useApp } from "../state/app.js";
import {
  accessChoices,
  basisChoices,
  cautionChoices,
  jobChoices,
  kindChoices,
  pointChoices,
  relationChoices,
} from "../state/sheet-choices.js";
import { valueAt } from "../state/sheet-forms.js";
import { partsLeft, SECOND_LOOKS } from "../state/sheet-forms-job.js";
import { putItem } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-forms.js";
import { Boxes, FigureBox, ItemForm, SwitchBox, TextBox, useItem } from "./item-boxes.js";
import { ChoiceBox, NamesBox } from "./item-choice.js";
import type { ItemFormProps } from "./item-form.js";
import { JobParts } from "./item-job-parts.js";
import { Minutes } from "./item-minutes.js";

function Around() {
  const { item, work } = useItem();
  const jobs = jobChoices(work).filter(({ value }) => value !== item);
  const points = pointChoices(work);
  const jobsBox = (at: "follows" | "included-in" | "ends-in") => (
    <NamesBox at={[at]} label={t(`item-job.${at}`)} help={t(`item-job.${at}.help`)} choices={jobs} />
  );
  return (
    <>
      <Boxes heading={t("item-job.around")}>
        {jobsBox("follows")}
        {jobsBox("included-in")}
        {jobsBox("ends-in")}
        <ChoiceBox
          at={["look-too"]}
          label={t("item-job.look-too")}
          choices={relationChoices(work)}
          none={t("sheet-form.none")}
        />
        <NamesBox at={["after"]} label={t("item-job.after")} help={t("item-job.after.help")} choices={points} />
        <ChoiceBox
          at={["second-look"]}
          label={t("item-job.second-look")}
          help={t("item-job.second-look.help")}
          choices={SECOND_LOOKS.map((value) => ({ value, words: t(`item-job.second-look.${value}`) }))}
          none={t("item-job.second-look.none")}
        />
        <FigureBox at={["recheck-km"]} label={t("item-job.recheck")} unit="km" whole />
        <NamesBox at={["cautions"]} label={t("item-job.cautions")} choices={cautionChoices(work)} />
      </Boxes>
      <section class="band">
        <SwitchBox at={["last"]} label={t("item-job.last")} says={t("item-job.last.says")} />
      </section>
    </>
  );
}

function JobForm() {
  const { words, work } = useItem();
  return (
    <>
      <Boxes>
        <TextBox at={[...words, "name"]} label={t("item-job.name")} wanted />
        <TextBox at={[...words, "does"]} label={t("item-job.does")} help={t("item-job.does.help")} long wanted />
        <TextBox at={[...words, "owner"]} label={t("item-job.owner")} long />
        <ChoiceBox at={["place"]} label={t("item-job.place")} choices={kindChoices(work)} wanted />
      </Boxes>
      <Boxes heading={t("item-job.time")}>
        <NamesBox
          at={["access"]}
          label={t("item-job.access")}
          help={t("item-job.access.help")}
          choices={accessChoices(work)}
          kept
        />
        <Minutes at={["minutes"]} label={t("item-job.minutes")} help={t("item-job.minutes.help")} />
        <ChoiceBox at={["minutesBasis"]} label={t("sheet-form.basis")} choices={basisChoices()} wanted />
      </Boxes>
      <JobParts />
      <Around />
    </>
  );
}

/** A job that no longer names a part takes the part's words along, unless another job still shows them. */
export function ItemJob(props: ItemFormProps) {
  const { journal } = useApp();
  const { work, item, is, put } = props;
  const putWithWords: ItemFormProps["put"] = (to) => {
    put(to);
    const changed = (key: string): boolean => valueAt(is, [key]) !== valueAt(to, [key]);
    if (!changed("parts") && !changed("consumables")) return;
    for (const part of partsLeft(work.sheet, item, is, to)) void putItem(journal, work.draft, "parts", part, null);
  };
  return (
    <ItemForm {...props} put={putWithWords}>
      <JobForm />
    </ItemForm>
  );
}
