/** What was heard at a point, drawn on one scale: this side, the other side and last time, with what it can't tell. */
import { useState } from "preact/hooks";
import { Disclosure } from "../parts/disclosure.js";
import { Field } from "../parts/field.js";
import { LinesView } from "../parts/lines-view.js";
import { EmptyState } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { type HeardOne, heardView, toHear } from "../state/heard-view.js";
import { capital, placeName, pointName } from "../state/knowledge.js";
import { type ParamsOf, to } from "../state/routes.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { type TurningForm, turning, turningTyped } from "../state/turning.js";
import { t } from "../texts/heard.js";
import { MissingScreen, Plain } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { useHeard } from "./use-heard.js";

interface BoxesProps {
  readonly form: TurningForm;
  readonly unread: readonly (keyof TurningForm)[];
  readonly set: (part: Partial<TurningForm>) => void;
}

function Boxes({ form, unread, set }: BoxesProps) {
  const box = (name: Exclude<keyof TurningForm, "ring">, label: string, unit?: string, help?: string) => (
    <Field
      id={`turning-${name}`}
      kind={name === "tyre" ? "text" : "number"}
      label={label}
      value={form[name]}
      onInput={(text) => set({ [name]: text })}
      unit={unit}
      help={help}
      problem={unread.includes(name) ? t("heard.unread") : undefined}
    />
  );
  return (
    <div class="form">
      {box("ten", t("heard.ten"), t("heard.unit.s"))}
      {box("speed", t("heard.speed"), t("heard.unit.kmh"))}
      {box("tyre", t("heard.tyre"), undefined, t("heard.tyre.help"))}
      {box("balls", t("heard.balls"))}
      {box("ball", t("heard.ball"), t("heard.unit.mm"))}
      {box("pitch", t("heard.pitch-diameter"), t("heard.unit.mm"))}
      {box("angle", t("heard.angle"), t("heard.unit.deg"))}
      <Field
        id="turning-ring"
        kind="select"
        label={t("heard.ring")}
        value={form.ring}
        onInput={(ring) => set({ ring: ring === "inner" ? "inner" : "outer" })}
        options={(["outer", "inner"] as const).map((value) => ({ value, words: t(`heard.ring.${value}`) }))}
      />
    </div>
  );
}

const Lines = ({ lines }: { readonly lines: readonly string[] }) =>
  lines.map((line) => (
    <p key={line} class="remark n">
      {line}
    </p>
  ));

function Drawn({ ones, address }: { readonly ones: readonly HeardOne[]; readonly address: string }) {
  const { remembered } = useApp();
  const [form, setForm] = useState(() => turningTyped(typedBefore(remembered, address)));
  const set = (part: Partial<TurningForm>): void => {
    const next = { ...form, ...part };
    setForm(next);
    keepTyped(remembered, address, JSON.stringify(next));
  };
  const { marks, unread } = turning(form);
  const view = heardView(ones, marks);
  return (
    <>
      {view.silent.length > 0 && <Lines lines={view.silent} />}
      {view.pitch.traces.length > 0 && (
        <>
          <Pool as="section" label={t("heard.pitch")}>
            <h2>{t("heard.pitch")}</h2>
            <p class="small">{t("heard.pitch.says")}</p>
            <LinesView lines={view.pitch} axis={t("heard.pitch.axis")} />
            <Lines lines={view.lines} />
          </Pool>
          <Band heading={t("heard.beat")}>
            <p class="remark">{t("heard.beat.says")}</p>
            <LinesView lines={view.beat} axis={t("heard.beat.axis")} />
          </Band>
        </>
      )}
      <Disclosure class="row" inside={() => <Boxes form={form} unread={unread} set={set} />}>
        {t("heard.turning")}
      </Disclosure>
      {marks.length === 0 ? <p class="remark">{t("heard.turning.says")}</p> : <Lines lines={view.marks} />}
      <Band heading={t("heard.honest")}>
        <Lines lines={[t("heard.honest.hint"), t("heard.honest.alike"), t("heard.honest.deep")]} />
      </Band>
    </>
  );
}

function HeardHere({ on, params }: { readonly on: OnDesk; readonly params: ParamsOf<"sound"> }) {
  const { state, place, point } = params;
  const wanted = toHear(on.tree, on.visit, on.desk.earlier.value, { state, place, point });
  const heard = useHeard(wanted);
  const known = on.known.points.get(point);
  if (!known) return <MissingScreen />;
  return (
    <Plain
      back={t("heard.point")}
      href={to("point", { visit: on.param, state, place, point })}
      title={t("heard.title")}
      second={`${capital(placeName(on.known, place))}: ${pointName(on.known, point)}`}
    >
      {wanted.length === 0 && <EmptyState title={t("heard.nothing")} says={t("heard.nothing.says")} />}
      {wanted.length > 0 && heard === undefined && (
        <p class="remark" role="status">
          {t("heard.listening")}
        </p>
      )}
      {wanted.length > 0 && heard && <Drawn ones={heard} address={`turning ${on.param} ${place}`} />}
    </Plain>
  );
}

export function HeardScreen({ params }: { readonly params: ParamsOf<"sound"> }) {
  return <OnVisit param={params.visit}>{(on) => <HeardHere key={params.place} on={on} params={params} />}</OnVisit>;
}
