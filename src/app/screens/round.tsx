/** Round the car: one open point in the light, the plan above it, what lies folded below, the thumb zone. */
import { useEffect, useState } from "preact/hooks";
import { Notice } from "../parts/notice.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import { gateBefore } from "../state/gates.js";
import { roundView } from "../state/round-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { type PointAt, pointText } from "../state/standing.js";
import { stopsOf, whereToGoOn } from "../state/stops.js";
import { isViewing } from "../state/way.js";
import { recallPoint, refreshPoint, rememberPoint } from "../state/where-one-was.js";
import { t } from "../texts/round.js";
import { Top } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { lookingAt, type OnDesk, OnVisit } from "./on-visit.js";
import { FoldedPoints } from "./round-folded.js";
import { Plan, Thumbs } from "./round-frame.js";
import { OpenPointPool } from "./round-point.js";
import type { RoundOver } from "./round-sheets.js";
import { type Answering, useAnswering } from "./use-answering.js";

/** What few rounds need at once comes when it is needed; all of it is on the phone. */
const RoundSheets = lazy(() => import("./round-sheets.js").then((file) => file.RoundSheets), Nothing);
const StopClock = lazy(() => import("./stop-clock.js").then((file) => file.StopClockBand), Nothing);
const GateStands = lazy(() => import("./gate-stands.js").then((file) => file.GateStands), Nothing);
const AtHand = lazy(() => import("./gate-stands.js").then((file) => file.AtHand), Nothing);

const NotAsked = lazy(() => import("./not-asked.js").then((file) => file.NotAsked));
const BelowPoint = lazy(() => import("./viewing.js").then((file) => file.BelowPoint), Nothing);
const Viewing = lazy(() => import("./viewing.js").then((file) => file.Viewing), Nothing);

function AtPoint({ on, at }: { readonly on: OnDesk; readonly at: PointAt }) {
  const { remembered, store } = useApp();
  const [over, setOver] = useState<RoundOver>();
  const answering: Answering = useAnswering(on, at);
  useEffect(
    () => void store.keepSetting(...rememberPoint(remembered, on.stream, at, on.visit.replies)),
    [on.stream, at.state, at.place, at.point],
  );
  const view = roundView(lookingAt(on), at);
  if (!view) return <NotAsked on={on} />;
  const carState = on.known.states.get(at.state);
  const gate = carState && gateBefore(on.assessment, on.visit.notes, carState, at.point);
  const viewed = isViewing(on.visit);
  return (
    <>
      <Top back={t("round.back")} href={to("visit", { visit: on.param })} middle={viewed && <Viewing on={on} />} />
      <main>
        <Title
          title={view.place}
          second={view.state}
          figure={{ count: String(view.number), rest: t("round.of", { n: view.of }) }}
          ticks={view.ticks}
        />
        {view.begins && <p class="remark begins">{view.begins}</p>}
        {carState?.within && <StopClock visit={on.stream} within={carState.within} />}
        {on.assessment.gates.some((one) => one.state === "tripped") && <AtHand on={on} />}
        <Plan on={on} view={view} at={at} />
        {on.visit.closed && <Notice kind="plain" title={t("round.closed")} />}
        {gate ? (
          <GateStands on={on} gate={gate} />
        ) : (
          <OpenPointPool on={on} view={view} answering={answering} open={setOver} />
        )}
        {(viewed || on.desk.earlier.value[0]) && <BelowPoint on={on} view={view} />}
        <FoldedPoints on={on} view={view} open={setOver} />
      </main>
      <Thumbs on={on} view={view} isGated={gate !== undefined} last={answering.last} open={setOver} />
      {over && <RoundSheets on={on} view={view} answering={answering} over={over} onClose={() => setOver(undefined)} />}
    </>
  );
}

/** The round without a point in its address goes on where one was. */
function GoOn({ on }: { readonly on: OnDesk }) {
  const { router, remembered, store } = useApp();
  const [fresh, setFresh] = useState(false);
  const stops = stopsOf(on.known, on.who, on.assessment, on.visit.replies);
  const at = whereToGoOn(on.known, stops, on.visit.replies, recallPoint(remembered, on.stream, on.visit.replies));
  const href = at && fresh && to("point", { visit: on.param, ...at });
  useEffect(() => void refreshPoint(remembered, store, on.stream).then(() => setFresh(true)), []);
  useEffect(() => {
    if (href) router.swap(href);
  }, [href, router]);
  return at ? null : <NotAsked on={on} />;
}

export const Round = ({ params }: { readonly params: ParamsOf<"round"> }) => (
  <OnVisit param={params.visit} unjudged={(empty) => empty.asked.length > 0}>
    {(on) => <GoOn on={on} />}
  </OnVisit>
);

/** Each point starts anew: no sheet, timer or half-typed text is carried from one to the next. */
export function Point({ params }: { readonly params: ParamsOf<"point"> }) {
  const { state, place, point } = params;
  return (
    <OnVisit
      param={params.visit}
      unjudged={({ asked }) => asked.some((one) => pointText(one) === pointText({ state, place, point }))}
    >
      {(on) => <AtPoint key={`${state} ${place} ${point}`} on={on} at={{ state, place, point }} />}
    </OnVisit>
  );
}
