/**
 * Handing the car back: what stands against it and where that is put right, who looks a second time, what is due after
 * some way. Handed back it says so, and can be taken back.
 */
import { useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { heardIn } from "../state/heard.js";
import { laterJudged } from "../state/later-visits.js";
import { odometerText } from "../state/odometer.js";
import { type AgainstLine, type DueLine, type LookLine, type ReleaseView, releaseView } from "../state/release-view.js";
import { to } from "../state/routes.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/release.js";
import { Plain } from "./frame.js";
import { lazy, Nothing, OpeningScreen } from "./lazy.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { PlanUndo } from "./plan-undo.js";

const sheets = () => import("./release-sheets.js");
const HandBackSheet = lazy(() => sheets().then((file) => file.HandBackSheet), Nothing);
const TakeBackSheet = lazy(() => sheets().then((file) => file.TakeBackSheet), Nothing);
const LookSheet = lazy(() => sheets().then((file) => file.LookSheet), Nothing);
const DueSheet = lazy(() => sheets().then((file) => file.DueSheet), Nothing);

type Over =
  | { readonly is: "driven" | "not-driven" | "back" }
  | { readonly is: "look"; readonly line: LookLine }
  | { readonly is: "due"; readonly line: DueLine };

const BANDS = ["danger", "refuses", "told"] as const;

interface Drawn {
  readonly view: ReleaseView;
  readonly open: (over: Over) => void;
}

function Stands({ view, open }: Drawn) {
  const lookAt = (line: AgainstLine): LookLine | undefined =>
    line.look === undefined ? undefined : view.looks.find(({ id }) => id === line.look);
  return (
    <>
      {BANDS.map((weight) => {
        // What was told when it was handed back stands above already.
        if (weight === "told" && view.released) return null;
        const lines = view.against.filter((one) => one.weight === weight);
        if (lines.length === 0) return null;
        return (
          <Band key={weight} heading={t(`release.${weight}`)} aside={String(lines.length)}>
            {lines.map((line) => {
              const look = lookAt(line);
              return (
                <ListRow
                  key={line.id}
                  title={line.title}
                  second={line.second}
                  {...(look
                    ? { onPress: () => open({ is: "look", line: look }), aside: t("release.look") }
                    : { href: line.href })}
                />
              );
            })}
          </Band>
        );
      })}
    </>
  );
}

function HandedBack({ view, open }: Drawn) {
  const { released } = view;
  if (!released) return null;
  const { who, on, how, odometer, told } = released;
  const since = view.against.filter(({ weight }) => weight !== "told").length;
  return (
    <>
      <Pool as="section" label={t("release.says.released")}>
        <h2>{t("release.says.released")}</h2>
        <p>{t("release.stands", { who, date: plainDay(on), how: t(`release.how.${how}`) })}</p>
        {odometer && <p class="small n">{t("release.stands.at", { at: odometerText(odometer) })}</p>}
        {told.map((line) => (
          <p key={line} class="small">
            {line}
          </p>
        ))}
      </Pool>
      {how === "driven" && since > 0 && <Notice kind="plain" title={t("release.since", { n: since })} />}
      <div class="acts">
        <Tool words={t("release.back")} onPress={() => open({ is: "back" })} />
      </div>
    </>
  );
}

function Acts({ view, open }: Drawn) {
  if (view.released) return null;
  return (
    <>
      <p class="remark" role="status">
        {t(view.mayBeDriven ? "release.clear" : view.mayBeMoved ? "release.refused" : "release.stays")}
      </p>
      <div class="acts">
        {view.mayBeDriven && <NextAction words={t("release.do")} onPress={() => open({ is: "driven" })} />}
        {!view.mayBeDriven && view.mayBeMoved && (
          <Tool words={t("release.do.not-driven")} onPress={() => open({ is: "not-driven" })} />
        )}
      </div>
    </>
  );
}

function Looks({ view, open }: Drawn) {
  const looked = view.looks.filter(({ isLooked }) => isLooked);
  return (
    <>
      {looked.length > 0 && (
        <Band heading={t("release.looks")}>
          <p class="remark small">{t("release.looks.says")}</p>
          {looked.map((line) => (
            <ListRow
              key={line.id}
              title={line.title}
              second={line.second}
              aside={t("release.look")}
              onPress={() => open({ is: "look", line })}
            />
          ))}
        </Band>
      )}
      {view.due.length > 0 && (
        <Band heading={t("release.due")}>
          <p class="remark small">{t("release.due.says")}</p>
          {view.due.map((line) => (
            <ListRow
              key={line.id}
              title={line.title}
              second={line.second}
              {...(line.isDone ? {} : { aside: t("release.due.do"), onPress: () => open({ is: "due", line }) })}
            />
          ))}
        </Band>
      )}
    </>
  );
}

const UNDO = {
  "plan.release": t("undo.plan.release"),
  "second-look": t("undo.second-look"),
  "recheck.done": t("undo.recheck.done"),
  "complaint.answered": t("undo.complaint.answered"),
};

function Body({ on, view }: { readonly on: OnPlan; readonly view: ReleaseView }) {
  const [over, setOver] = useState<Over>();
  const close = (): void => setOver(undefined);
  const drawn = { view, open: setOver };
  return (
    <>
      {!view.released && view.against.length === 0 && (
        <EmptyState title={t("release.says.clear")} says={t("release.looks.says")} />
      )}
      <HandedBack {...drawn} />
      <Stands {...drawn} />
      <Acts {...drawn} />
      <Looks {...drawn} />
      <PlanUndo on={on} words={UNDO} />
      {(over?.is === "driven" || over?.is === "not-driven") && (
        <HandBackSheet on={on} view={view} how={over.is} onClose={close} />
      )}
      {over?.is === "back" && <TakeBackSheet on={on} onClose={close} />}
      {over?.is === "look" && <LookSheet on={on} line={over.line} onClose={close} />}
      {over?.is === "due" && <DueSheet on={on} line={over.line} onClose={close} />}
    </>
  );
}

function Page({ on }: { readonly on: OnPlan }) {
  const app = useApp();
  const earlier = on.desk.earlier.value;
  const heard = heardIn(app.journal, on.visit, earlier);
  const later = laterJudged(app, on.visit);
  if (!heard || !later) return <OpeningScreen />;
  const view = releaseView({ ...on, today: on.input.today }, heard, earlier, later);
  const n = view.against.filter(({ weight }) => weight !== "told").length;
  const second = view.released
    ? t("release.says.released")
    : n === 0
      ? t("release.says.clear")
      : t("release.says.refused", { n });
  return (
    <Plain back={t("work.title")} href={to("work", { visit: on.param })} title={t("release.title")} second={second}>
      <Body on={on} view={view} />
    </Plain>
  );
}

export const PlanRelease = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>{(on) => <Page on={on} />}</Waiting>
);
