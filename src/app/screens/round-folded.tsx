/** Below the open point: the folded points, entering several in one step, all places. */
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { mayEnterSeveral } from "../state/gates.js";
import type { RoundView } from "../state/round-view.js";
import { to } from "../state/routes.js";
import { restOfPlace, sameElsewhere } from "../state/sweep.js";
import { t } from "../texts/round.js";
import { lookingAt, type OnDesk } from "./on-visit.js";
import type { RoundOver } from "./round-sheets.js";

export function FoldedPoints({
  on,
  view,
  open,
}: {
  readonly on: OnDesk;
  readonly view: RoundView;
  readonly open: (over: RoundOver) => void;
}) {
  const { router } = useApp();
  const looking = lookingAt(on);
  const carState = on.known.states.get(view.stop.state);
  const mayEnter = carState !== undefined && mayEnterSeveral(on.assessment, on.visit, carState);
  // What is told is no looking: it is answered point by point.
  const rest = mayEnter && carState.order !== 0 && restOfPlace(looking, view.stop).enters.length > 1;
  const isJoint = carState?.order !== 0 && on.tree.kindOf(view.stop.place) === "joint";
  const same = mayEnter && sameElsewhere(looking, view.open.at).length > 0;
  return (
    <div class="folded-points">
      {!on.visit.closed && <ListRow folded title={t("round.add-note")} onPress={() => open("note")} />}
      {same && <ListRow folded title={t(isJoint ? "round.same.joint" : "round.same")} onPress={() => open("same")} />}
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
      {view.also.map(({ at, name }) => (
        <ListRow
          key={at.point}
          folded
          title={t("round.also", { point: name })}
          onPress={() => router.swap(to("point", { visit: on.param, ...at }))}
        />
      ))}
      {rest && <ListRow folded title={t("round.rest")} onPress={() => open("rest")} />}
      <ListRow folded title={t("round.find")} href={to("find", { visit: on.param })} />
      {!on.visit.closed && (
        <ListRow
          folded
          title={t("off-list.add")}
          href={to("off-list", { visit: on.param, place: view.stop.place, finding: "new" })}
        />
      )}
      <ListRow folded title={t("round.all-places")} href={to("where", { visit: on.param })} />
    </div>
  );
}
