/** Above and below the open point: the plan to find one's way, and the thumb zone. */
import { CarPlan } from "../parts/car-plan.js";
import { ListRow } from "../parts/list-row.js";
import { ThumbZone } from "../parts/thumb-zone.js";
import { useApp } from "../state/app.js";
import { placesAtAGlance } from "../state/glance.js";
import type { RoundView } from "../state/round-view.js";
import { to } from "../state/routes.js";
import type { PointAt } from "../state/standing.js";
import { whereToGoOn } from "../state/stops.js";
import { t } from "../texts/round.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnDesk } from "./on-visit.js";
import type { RoundOver } from "./round-sheets.js";
import type { Answering } from "./use-answering.js";

const LastTime = lazy(() => import("./last-time.js").then((file) => file.LastTime), Nothing);

/** The plan with the side one stands at below; pressing a place goes there, in this car state where it is asked. */
export function Plan({ on, view, at }: { readonly on: OnDesk; readonly view: RoundView; readonly at: PointAt }) {
  const { router } = useApp();
  const plan = on.known.states.get(at.state)?.plan ?? "body";
  if (plan === "none") return null;
  const side = on.tree.sideOf(at.place) === "right" ? "right" : "left";
  const inState = view.stops.filter((stop) => stop.state === at.state && stop.place !== "car");
  const shown = inState.length > 0 ? inState : view.stops;
  const places = placesAtAGlance(on.known, on.tree, shown, on.assessment, at.place, on.quiet);
  const goTo = (place: string): void => {
    const stops = shown.filter((one) => one.place === place);
    const first = whereToGoOn(on.known, stops, on.visit.replies, undefined);
    if (first) router.swap(to("point", { visit: on.param, ...first }));
  };
  return (
    <CarPlan
      plan={plan}
      side={side}
      places={places}
      front={t("round.front")}
      label={t("round.plan", { side: t(`round.side.${side}`) })}
      listWords={t("round.places")}
      onPlace={goTo}
    />
  );
}

interface ThumbsProps {
  readonly on: OnDesk;
  readonly view: RoundView;
  readonly isGated: boolean;
  readonly last: Answering["last"];
  readonly open: (over: RoundOver) => void;
}

export function Thumbs({ on, view, isGated, last, open }: ThumbsProps) {
  const { router } = useApp();
  const {
    next,
    open: { at },
  } = view;
  const goOn = isGated
    ? { words: t("round.elsewhere"), href: to("where", { visit: on.param }) }
    : next
      ? { words: next.words, says: next.says, onPress: () => router.swap(to("point", { visit: on.param, ...next.at })) }
      : on.visit.opened?.value.purpose === "season"
        ? { words: t("round.what-now"), href: to("what-now", { visit: on.param }) }
        : { words: t("round.finish"), href: to("findings", { visit: on.param }) };
  const closed = on.visit.closed !== undefined;
  const shoot = to("camera", { visit: on.param, aim: ["point", at.state, at.place, at.point].join("~") });
  return (
    <div class="foot">
      {last && (
        <section aria-label={t("round.last")}>
          <ListRow
            folded
            title={t("round.kept-last", { point: last.point, reply: last.says })}
            aside={t("round.undo")}
            onPress={last.takeBack}
          />
          <LastTime on={on} at={last.at} />
        </section>
      )}
      <ThumbZone
        label={t("round.title")}
        tools={[
          { id: "photo", words: t("round.photo"), icon: "photo", href: shoot, disabled: closed },
          { id: "sound", words: t("round.sound"), icon: "sound", onPress: () => open("sound"), disabled: closed },
        ]}
        next={{ ...goOn, onward: true }}
      />
    </div>
  );
}
