/** Below the open point: the last reply to take back, the folded points, entering several in one step, all places. */
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { gateBefore } from "../state/gates.js";
import type { RoundView } from "../state/round-view.js";
import { to } from "../state/routes.js";
import { restOfPlace, sameElsewhere } from "../state/sweep.js";
import { t } from "../texts/round.js";
import { lookingAt, type OnDesk } from "./on-visit.js";
import type { RoundOver } from "./round-sheets.js";
import type { Answering } from "./use-answering.js";

export function FoldedPoints({
  on,
  view,
  answering,
  open,
}: {
  readonly on: OnDesk;
  readonly view: RoundView;
  readonly answering: Answering;
  readonly open: (over: RoundOver) => void;
}) {
  const { router } = useApp();
  const { last } = answering;
  const looking = lookingAt(on);
  const carState = on.known.states.get(view.stop.state);
  const isGated = carState !== undefined && gateBefore(on.assessment, on.visit.notes, carState) !== undefined;
  // Several replies in one step are for what was looked at; behind a gate nothing was.
  const mayEnter = on.visit.closed === undefined && !isGated;
  const rest = mayEnter && restOfPlace(looking, view.stop).enters.length > 1;
  const same = mayEnter && sameElsewhere(looking, view.open.at).length > 0;
  return (
    <div class="folded-points">
      {last && (
        <ListRow
          folded
          title={t("round.kept-last", { point: last.point, reply: last.says })}
          aside={t("round.undo")}
          onPress={last.takeBack}
        />
      )}
      {same && <ListRow folded title={t("round.same")} onPress={() => open("same")} />}
      {view.folded.map((row) => (
        <ListRow
          key={row.number}
          folded
          lead={String(row.number)}
          title={row.name}
          aside={row.says}
          onPress={() =>
            router.swap(to("point", { visit: on.param, state: row.at.state, place: row.at.place, point: row.at.point }))
          }
        />
      ))}
      {rest && <ListRow folded title={t("round.rest")} onPress={() => open("rest")} />}
      <ListRow folded title={t("round.all-places")} href={to("where", { visit: on.param })} />
    </div>
  );
}
