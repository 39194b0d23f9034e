/** What is due again, in the words of each screen that leads there: the round, all places, a visit's page, what now. */
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { capital, pointName } from "../state/knowledge.js";
import { dueSays } from "../state/looks-words.js";
import type { RoundView } from "../state/round-view.js";
import { to } from "../state/routes.js";
import { setWay } from "../state/set-way.js";
import { wayOf } from "../state/way.js";
import { t } from "../texts/looks.js";
import type { OnDesk } from "./on-visit.js";
import { type DueHere, dueNamed, useDue } from "./use-due.js";

type DueRow = DueHere["points"][number];

const hrefOf = ({ param }: OnDesk, { at: { state, place, point } }: DueRow): string =>
  to("point", { visit: param, state, place, point });

/** The next one open after a point, on the way the round goes; round again to the first. */
function nextAfter(open: readonly DueRow[], asked: OnDesk["assessment"]["asked"], view: RoundView): DueRow | undefined {
  const others = open.filter(({ at }) => at.place !== view.stop.place);
  const { state, place, point } = view.open.at;
  const here = asked.findIndex((one) => one.state === state && one.place === place && one.point === point);
  return others.find(({ at }) => asked.indexOf(at) > here) ?? others[0];
}

/** Under the open point: what is due at this place, and where it is next. Stands below, so that no reply moves. */
export function RoundDue({ on, view }: { readonly on: OnDesk; readonly view: RoundView }) {
  const { router } = useApp();
  const due = useDue(on);
  if (!due) return null;
  const { now, points, open } = due;
  const here = points.filter(({ at }) => at.place === view.stop.place);
  const next = nextAfter(open, on.assessment.asked, view);
  if (here.length === 0 && !next) return null;
  return (
    <Band heading={t("due.heading")} aside={open.length > 0 ? t("due.open", { n: open.length }) : t("due.done")}>
      {here.map((one) => {
        const isOpened = one.at.point === view.open.at.point;
        return (
          <ListRow
            key={one.at.point}
            folded
            title={pointName(on.known, one.at.point)}
            second={dueSays(now.looks, one.due, on.who)}
            aside={one.done ? t("due.done") : isOpened ? t("due.here") : ""}
            {...(isOpened ? { here: true } : { onPress: () => router.swap(hrefOf(on, one)) })}
          />
        );
      })}
      {next && (
        <ListRow
          folded
          title={t("due.next", { point: capital(dueNamed(on, next)) })}
          onPress={() => router.swap(hrefOf(on, next))}
        />
      )}
    </Band>
  );
}

/** Among all places: every point due again, done or not. */
export function DueList({ on }: { readonly on: OnDesk }) {
  const due = useDue(on);
  if (!due) return null;
  return (
    <Band heading={t("due.heading")} aside={t("due.open", { n: due.open.length })}>
      {due.points.map((one) => (
        <ListRow
          key={`${one.at.place} ${one.at.point}`}
          folded
          title={capital(dueNamed(on, one))}
          second={dueSays(due.now.looks, one.due, on.who)}
          aside={one.done ? t("due.done") : ""}
          href={hrefOf(on, one)}
        />
      ))}
    </Band>
  );
}

/** On a visit's page: the round that takes first what is due. */
export function DueFirst({ on }: { readonly on: OnDesk }) {
  const { router, remembered } = useApp();
  const due = useDue(on);
  const [first] = due?.open ?? [];
  if (!due) return null;
  if (!first) return <p class="remark">{t("due.all")}</p>;
  const way = wayOf(remembered, on.visit);
  const begin = (): void => {
    setWay(remembered, on.stream, { ...way, order: "due" });
    router.go(hrefOf(on, first));
  };
  return (
    <ListRow
      title={t(way.order === "due" ? "due.go-on" : "due.begin")}
      second={t("due.begin-says", { open: due.open.length, n: due.points.length, point: dueNamed(on, first) })}
      onPress={begin}
    />
  );
}

/** What now: how many are left, leading to the first. */
export function DueOpen({ on }: { readonly on: OnDesk }) {
  const due = useDue(on);
  const [first] = due?.open ?? [];
  if (!due || !first) return null;
  return (
    <Band>
      <ListRow
        title={t("due.waits", { n: due.open.length })}
        second={t("due.next", { point: dueNamed(on, first) })}
        href={hrefOf(on, first)}
      />
    </Band>
  );
}
