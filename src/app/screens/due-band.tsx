/** What is due again, in the words of each screen that leads there: the round, all places, a visit's page, what now. */
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { capital, pointName } from "../state/knowledge.js";
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

/** The next one to be tried after a point, on the way the round goes; round again to the first. */
function nextAfter(open: readonly DueRow[], asked: OnDesk["assessment"]["asked"], view: RoundView): DueRow | undefined {
  const others = open.filter(({ at }) => at.place !== view.stop.place);
  const untried = others.filter(({ unable }) => !unable);
  const { state, place, point } = view.open.at;
  const here = asked.findIndex((one) => one.state === state && one.place === place && one.point === point);
  return untried.find(({ at }) => asked.indexOf(at) > here) ?? others[0];
}

const standSays = ({ done, unable }: DueRow): string => (done ? t("due.done") : unable ? t("due.unable") : "");

/** What this round does not ask of it, and what could not be read. */
const Beyond = ({ due: { beyond, unread } }: { readonly due: Pick<DueHere, "beyond" | "unread"> }) => (
  <>
    {[...(beyond === undefined ? [] : [beyond]), ...unread].map((text) => (
      <p key={text} class="remark">
        {text}
      </p>
    ))}
  </>
);

/** Under the open point: what is due at this place, and where it is next. Stands below, so that no reply moves. */
export function RoundDue({ on, view }: { readonly on: OnDesk; readonly view: RoundView }) {
  const { router } = useApp();
  const due = useDue(on);
  if (!due) return null;
  const { points, open, isAll } = due;
  const here = points.filter(({ at }) => at.place === view.stop.place);
  const next = nextAfter(open, on.assessment.asked, view);
  if (here.length === 0 && !next && isAll) return null;
  return (
    <Band
      heading={t("due.heading")}
      aside={open.length > 0 ? t("due.open", { n: open.length }) : isAll ? t("due.done") : ""}
    >
      {here.map((one) => {
        const isOpened = one.at.point === view.open.at.point;
        return (
          <ListRow
            key={one.at.point}
            folded
            title={pointName(on.known, one.at.point)}
            second={due.says(one)}
            aside={standSays(one) || (isOpened ? t("due.here") : "")}
            {...(isOpened ? { here: true } : { onPress: () => router.swap(hrefOf(on, one)) })}
          />
        );
      })}
      {next && (
        <ListRow
          folded
          title={t("due.next", { point: capital(dueNamed(on, next)) })}
          aside={standSays(next)}
          onPress={() => router.swap(hrefOf(on, next))}
        />
      )}
      <Beyond due={due} />
    </Band>
  );
}

/** Among all places: every point due again, done or not. */
export function DueList({ on }: { readonly on: OnDesk }) {
  const due = useDue(on);
  if (!due) return null;
  return (
    <Band heading={t("due.heading")} aside={due.points.length > 0 ? t("due.open", { n: due.open.length }) : ""}>
      {due.points.map((one) => (
        <ListRow
          key={`${one.at.place} ${one.at.point}`}
          folded
          title={capital(dueNamed(on, one))}
          second={due.says(one)}
          aside={standSays(one)}
          href={hrefOf(on, one)}
        />
      ))}
      <Beyond due={due} />
    </Band>
  );
}

/** On a visit's page: the round that takes first what is due. `told`: what could not be read is told above it. */
export function DueFirst({ on, told }: { readonly on: OnDesk; readonly told: readonly string[] }) {
  const { router, remembered } = useApp();
  const due = useDue(on);
  if (!due) return null;
  const { points, open, isAll } = due;
  const [first] = open;
  const beyond = <Beyond due={{ ...due, unread: due.unread.filter((text) => !told.includes(text)) }} />;
  if (!first)
    return (
      <>
        {points.length > 0 && <p class="remark">{t(isAll ? "due.all" : "due.asked")}</p>}
        {beyond}
      </>
    );
  const way = wayOf(remembered, on.visit);
  const unable = open.filter((one) => one.unable).length;
  const begin = (): void => {
    setWay(remembered, on.stream, { ...way, order: "due" });
    router.go(hrefOf(on, first));
  };
  return (
    <>
      <ListRow
        title={t(way.order === "due" ? "due.go-on" : "due.begin")}
        second={[
          t("due.begin-says", { open: open.length, n: points.length, point: dueNamed(on, first) }),
          ...(unable > 0 ? [t("due.unable-n", { n: unable })] : []),
        ].join(" ")}
        onPress={begin}
      />
      {beyond}
    </>
  );
}

/** What now: how many are left, leading to the first. */
export function DueOpen({ on }: { readonly on: OnDesk }) {
  const due = useDue(on);
  if (!due) return null;
  const [first] = due.open;
  if (!first && due.isAll) return null;
  return (
    <Band>
      {first && (
        <ListRow
          title={t("due.waits", { n: due.open.length })}
          second={t("due.next", { point: dueNamed(on, first) })}
          aside={standSays(first)}
          href={hrefOf(on, first)}
        />
      )}
      <Beyond due={due} />
    </Band>
  );
}
