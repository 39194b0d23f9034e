/** All places and car states in walking order: go anywhere at any time. */
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { settleHref, settleText } from "../state/because.js";
import { gateBefore } from "../state/gates.js";
import { capital, placeName, stateName } from "../state/knowledge.js";
import { type ParamsOf, to } from "../state/routes.js";
import { type Stop, stopsOf, whereToGoOn } from "../state/stops.js";
import { wayRound } from "../state/way-round.js";
import { recallPoint } from "../state/where-one-was.js";
import { t } from "../texts/index.js";
import { Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

const DueList = lazy(() => import("./due-band.js").then((file) => file.DueList), Nothing);

function StateBand({
  on,
  state,
  stops,
  here,
}: {
  readonly on: OnDesk;
  readonly state: string;
  readonly stops: readonly Stop[];
  readonly here: string;
}) {
  const carState = on.known.states.get(state);
  const gate = carState && gateBefore(on.assessment, on.visit.notes, carState, "");
  return (
    <Band heading={stateName(on.known, state)}>
      {gate && (
        <ListRow
          folded
          title={t("where.gate", { gate: on.known.words.gates[gate.gate]?.name ?? gate.gate })}
          href={to("gate", { visit: on.param, gate: gate.gate })}
        />
      )}
      {stops.map((stop) => {
        const first = whereToGoOn(on.known, [stop], on.visit.replies, undefined);
        return (
          <ListRow
            key={stop.place}
            folded
            title={capital(placeName(on.known, stop.place))}
            aside={t("round.place-says", { done: stop.done, all: stop.asked.length })}
            here={here === `${state} ${stop.place}`}
            {...(first ? { href: to("point", { visit: on.param, ...first }) } : {})}
          />
        );
      })}
    </Band>
  );
}

/** The complaint may suggest every corner; the first few say what it is about. */
const MOST_LIKELY = 6;

function WhereBody({ on }: { readonly on: OnDesk }) {
  const { remembered } = useApp();
  const stops = wayRound(on, stopsOf(on.known, on.who, on.assessment, on.visit.replies));
  const likely = on.assessment.suggested.slice(0, MOST_LIKELY);
  const states = [...new Set(stops.map((stop) => stop.state))];
  const at = recallPoint(remembered, on.stream, on.visit.replies);
  return (
    <Plain
      back={t("round.title")}
      href={to("round", { visit: on.param })}
      title={t("where.title")}
      second={t("where.says")}
    >
      <ListRow folded title={t("round.find")} href={to("find", { visit: on.param })} />
      {likely.length > 0 && (
        <Band heading={t("where.likely")}>
          {likely.map((one) => (
            <ListRow
              key={`${one.point} ${one.place}`}
              folded
              title={settleText(on.telling, one)}
              {...settleHref(on.telling, one)}
            />
          ))}
        </Band>
      )}
      {on.desk.earlier.value.length > 0 && <DueList on={on} />}
      {states.map((state) => (
        <StateBand
          key={state}
          on={on}
          state={state}
          stops={stops.filter((stop) => stop.state === state)}
          here={at ? `${at.state} ${at.place}` : ""}
        />
      ))}
      {on.visit.opened?.value.purpose === "season" && (
        <Band>
          <ListRow title={t("round.what-now")} href={to("what-now", { visit: on.param })} />
        </Band>
      )}
    </Plain>
  );
}

export const Where = ({ params }: { readonly params: ParamsOf<"where"> }) => (
  <OnVisit param={params.visit}>{(on) => <WhereBody on={on} />}</OnVisit>
);
