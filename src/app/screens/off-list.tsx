/** Something seen that no point asks for: where, in one's own words, how serious and why, and what it needs. */
import { useState } from "preact/hooks";
import { GRADES, offListId } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Switch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { capital, placeName } from "../state/knowledge.js";
import {
  emptyForm,
  findingIn,
  formOf,
  formTyped,
  missingIn,
  NEW,
  type OffListForm,
  type OffListMissing,
} from "../state/off-list-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { offList } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import { FindingPictures } from "./finding-pictures.js";
import { MissingScreen, Plain } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { PickPlace } from "./pick-place.js";

/** Where on the page each part that can be wrong stands. */
const idOf = (part: OffListMissing): string => `off-list-${part}`;

/** The first part that is wrong, brought to the hand: the box itself, or the first reply of a choice. */
function goTo(part: OffListMissing | undefined): void {
  const place = part && document.getElementById(idOf(part));
  (place?.querySelector<HTMLElement>("[role=radio]") ?? place)?.focus();
}

interface FieldsProps {
  readonly form: OffListForm;
  readonly set: (part: Partial<OffListForm>) => void;
  readonly wrong: readonly OffListMissing[];
}

function Seen({ on, form, set, wrong }: FieldsProps & { readonly on: OnDesk }) {
  const [asking, setAsking] = useState(false);
  return (
    <>
      <div class="form">
        <Field
          id={idOf("words")}
          kind="area"
          label={t("off-list.words")}
          value={form.words}
          onInput={(words) => set({ words })}
          required
          maxLength={500}
          {...(wrong.includes("words") ? { problem: t("off-list.words.needed") } : {})}
        />
      </div>
      <ListRow
        title={t("off-list.place")}
        second={capital(placeName(on.known, form.place))}
        aside={t("off-list.place.change")}
        onPress={() => setAsking(true)}
      />
      <PickPlace
        on={on}
        open={asking}
        placesOnly
        onPick={({ spot }) => {
          setAsking(false);
          if (spot.place !== undefined) set({ place: spot.place });
        }}
        onClose={() => setAsking(false)}
      />
    </>
  );
}

function Graded({ form, set, wrong }: FieldsProps) {
  return (
    <Band heading={t("off-list.grade")}>
      <div class="form" id={idOf("grade")}>
        <ReplyGrid
          kind="choice"
          label={t("off-list.grade")}
          replies={[...GRADES].reverse().map((id) => ({ id, words: t(`mark.${id}`), chosen: id === form.grade }))}
          onChoose={(id) => set({ grade: GRADES.find((one) => one === id) ?? "" })}
        />
        {wrong.includes("grade") && (
          <p class="problem" role="status">
            {t("off-list.grade.needed")}
          </p>
        )}
        <Field
          id={idOf("reason")}
          kind="area"
          label={t("off-list.reason")}
          value={form.reason}
          onInput={(reason) => set({ reason })}
          required
          {...(wrong.includes("reason") ? { problem: t("off-list.reason.needed") } : {})}
        />
        <Switch
          id="off-list-stand"
          label={t("off-list.stand")}
          says={t("off-list.stand.says")}
          on={form.mustStand}
          onChange={(mustStand) => set({ mustStand })}
          words={{ on: t("app.yes"), off: t("app.no") }}
        />
      </div>
    </Band>
  );
}

function Needs({ form, set, wrong }: FieldsProps) {
  return (
    <div class="form">
      <Field
        id="off-list-job"
        kind="area"
        label={t("off-list.job")}
        value={form.job}
        onInput={(job) => set({ job })}
        maxLength={500}
      />
      <Field
        id={idOf("hours")}
        kind="number"
        label={t("off-list.hours")}
        value={form.hours}
        onInput={(hours) => set({ hours })}
        {...(wrong.includes("hours") ? { problem: t("off-list.hours.odd") } : {})}
      />
    </div>
  );
}

function FormBody({ on, start }: { readonly on: OnDesk; readonly start: OffListForm }) {
  const { journal, remembered, router } = useApp();
  const [form, setForm] = useState(start);
  const [tried, setTried] = useState(false);
  const typed = typedKey(on.stream);
  const set = (part: Partial<OffListForm>): void => {
    const next = { ...form, ...part };
    setForm(next);
    keepTyped(remembered, typed, JSON.stringify(next));
  };
  const up = to("findings", { visit: on.param });
  const leaveAfter = (keeping: Promise<boolean>): void => {
    const hence = router.fromHere();
    void keeping.then((kept) => {
      if (!kept) return;
      keepTyped(remembered, typed, "");
      hence.up(up);
    });
  };
  const keep = (): void => {
    setTried(true);
    const found = findingIn(form);
    goTo(missingIn(form)[0]);
    if (found) leaveAfter(offList(journal, on.stream, form.name, found));
  };
  const wrong = tried ? missingIn(form) : [];
  const fields = { form, set, wrong };
  return (
    <Plain back={t("finding.back")} href={up} title={t("off-list.title")}>
      <p class="remark">{t("off-list.says")}</p>
      <Seen on={on} {...fields} />
      <FindingPictures on={on} fault={offListId(form.name)} place={form.place} />
      <Graded {...fields} />
      <Needs {...fields} />
      {on.visit.closed ? (
        <Notice kind="plain" title={t("round.closed")} />
      ) : (
        <div class="acts">
          <NextAction words={t("off-list.keep")} onPress={keep} />
          {on.visit.found.has(form.name) && (
            <Tool
              words={t("off-list.take-back")}
              onPress={() => leaveAfter(offList(journal, on.stream, form.name, null))}
            />
          )}
        </div>
      )}
    </Plain>
  );
}

const typedKey = (stream: string): string => `${stream} off-list`;

/** What was typed before the page went away, where it is of this finding; else what stands, or a new one. */
function OffListBody({ on, params }: { readonly on: OnDesk; readonly params: ParamsOf<"off-list"> }) {
  const { phone, remembered } = useApp();
  const [start] = useState(() => {
    const typed = formTyped(typedBefore(remembered, typedKey(on.stream)));
    const stands = formOf(on.visit, params.finding);
    if (params.finding !== NEW) return typed?.name === params.finding ? typed : stands;
    const goesOn = typed !== undefined && !on.visit.found.has(typed.name);
    const fresh = goesOn ? typed : emptyForm(phone.nonce(), params.place);
    const form = fresh.words === "" ? { ...fresh, place: params.place } : fresh;
    // Its name is written down before the camera opens: a picture kept under it must find its finding again.
    keepTyped(remembered, typedKey(on.stream), JSON.stringify(form));
    return form;
  });
  return start ? <FormBody on={on} start={start} /> : <MissingScreen />;
}

export const OffListScreen = ({ params }: { readonly params: ParamsOf<"off-list"> }) => (
  <OnVisit param={params.visit}>
    {(on) => <OffListBody key={`${params.place} ${params.finding}`} on={on} params={params} />}
  </OnVisit>
);
