/**
 * The work list: what it comes to, the way to the pages of the plan, the jobs as far as the money reaches, by urgency
 * or as they are done, and what would pay while it is apart.
 */
import { type Signal, useSignal } from "@preact/signals";
import { isMandatory } from "../../core/plan/index.js";
import { NextAction } from "../parts/button.js";
import { Fold } from "../parts/fold.js";
import { JobRow } from "../parts/job-row.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { RangeScale } from "../parts/range-scale.js";
import { UnitSwitch } from "../parts/switch.js";
import { Title } from "../parts/title.js";
import { ReachLine, WorkBundle } from "../parts/work-bundle.js";
import { carTitle } from "../state/car-view.js";
import { briefWord } from "../state/decision-words.js";
import { planLinks } from "../state/plan-links.js";
import { planProblem, spanText } from "../state/plan-words.js";
import {
  type DrawnPart,
  doingReasons,
  drawnBundles,
  moneyRange,
  offerLines,
  type PlanLine,
  plannedList,
  reachOf,
} from "../state/plan-work-view.js";
import { type ParamsOf, paramOf, to } from "../state/routes.js";
import { jobView, workLines } from "../state/work-view.js";
import { t as onward } from "../texts/hand-over-to.js";
import { t as owner } from "../texts/owners-word.js";
import { t } from "../texts/plan-work.js";
import { Covered } from "./covered.js";
import { Top } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnPlan, WithPlan } from "./on-plan.js";
import { OnVisit } from "./on-visit.js";
import { Sections } from "./sections.js";
import { Sentences } from "./sentences.js";
import { WorstCaution } from "./worst-caution.js";

const PlanUseBand = lazy(() => import("./plan-use.js").then((file) => file.PlanUseBand), Nothing);
const ScopeNotice = lazy(() => import("./plan-stop.js").then((file) => file.ScopeNotice), Nothing);

const ORDERS = ["urgency", "doing"] as const;
type Order = (typeof ORDERS)[number];

interface RowProps {
  readonly on: OnPlan;
  readonly line: PlanLine;
  readonly why?: string | undefined;
  /** With what it adds to what is open anyway. */
  readonly isApart?: boolean;
}

function Row({ on, line, why, isApart = false }: RowProps) {
  return (
    <JobRow
      number={line.number}
      title={line.title}
      mark={line.mark}
      markWord={t(`mark.${line.mark}`)}
      byWhen={line.byWhen}
      hours={line.hours}
      cost={line.cost}
      word={briefWord(on.said, line.id)}
      apart={isApart ? line.apart : undefined}
      href={line.href}
      open={why !== undefined}
      why={why}
    />
  );
}

interface LinesProps {
  readonly on: OnPlan;
  readonly lines: readonly PlanLine[];
}

/** What all of it comes to: money once the rates are said, else hours. */
function Sum({ on }: { readonly on: OnPlan }) {
  const { plan, input, currency } = on;
  const money = moneyRange(plan, input.budget, currency);
  if (money) return <RangeScale {...money} />;
  if (!plan || plan.chosen.length === 0) return null;
  const [low, likely, high] = plan.minutes.map((minutes) => spanText([minutes, minutes, minutes])) as [
    string,
    string,
    string,
  ];
  return (
    <Band heading={t("plan.hours")} aside={t("plan.figure", { n: likely })}>
      <p class="remark">{t("plan.hours.says", { likely, low, high })}</p>
    </Band>
  );
}

/** On the list still, so that nobody takes it for done or forgotten; what can't wait says so. */
function Declined({ on, lines }: LinesProps) {
  if (lines.length === 0) return null;
  // Of all that is due, hours said or not: one without them is in no plan, and can't wait all the same.
  const must = new Set(on.input.jobs.filter((job) => isMandatory({ ...job, wanted: undefined })).map(({ id }) => id));
  return (
    <Band heading={owner("owner.declined")}>
      {lines.map((line) => (
        <Row
          key={line.id}
          on={on}
          line={line}
          why={must.has(line.id) ? owner("owner.declined.must", { when: line.byWhen }) : undefined}
        />
      ))}
    </Band>
  );
}

function Done({ on, lines }: LinesProps) {
  if (lines.length === 0) return null;
  return (
    <Band heading={t("plan.done")}>
      {lines.map((line) => (
        <Row key={line.id} on={on} line={line} />
      ))}
    </Band>
  );
}

function ByUrgency({ on }: { readonly on: OnPlan }) {
  const jobs = on.due;
  const { lit, shade, declined, done } = plannedList(on.telling, jobs, on.plan, on.currency, on.input);
  const reach = reachOf(on.plan, on.input.budget, on.currency);
  const [first, ...rest] = lit;
  const why = first && jobView(on.telling, on.tree, jobs, first, on.desk.above)?.why[0];
  return (
    <>
      {first && (
        <Pool as="section" label={first.title} bare>
          <Row on={on} line={first} why={why ?? ""} />
          {reach && rest.map((line) => <Row key={line.id} on={on} line={line} />)}
        </Pool>
      )}
      {reach ? <ReachLine {...reach} /> : rest.map((line) => <Row key={line.id} on={on} line={line} />)}
      {shade.length > 0 && (
        <Band heading={t("plan.shade")}>
          {shade.map((line) => (
            <Row key={line.id} on={on} line={line} />
          ))}
        </Band>
      )}
      <Declined on={on} lines={declined} />
      <Done on={on} lines={done} />
    </>
  );
}

/** Brackets deeper than this have no room at 320 px: what is opened further in stands in the third. */
const DEEPEST = 3;

interface PartsProps {
  readonly on: OnPlan;
  readonly parts: readonly DrawnPart[];
  readonly reasons: ReadonlyMap<string, string>;
  readonly level: 1 | 2 | 3;
}

function Parts({ on, parts, reasons, level }: PartsProps) {
  return (
    <>
      {parts.map((part) =>
        part.kind === "job" ? (
          <Row key={part.line.id} on={on} line={part.line} isApart why={reasons.get(part.line.id) || undefined} />
        ) : (
          <WorkBundle key={part.id} title={part.title} aside={part.aside} shared={part.shared} level={level}>
            <Parts
              on={on}
              parts={part.parts}
              reasons={reasons}
              level={level < DEEPEST ? ((level + 1) as 2 | 3) : DEEPEST}
            />
          </WorkBundle>
        ),
      )}
    </>
  );
}

function AsItIsDone({ on }: { readonly on: OnPlan }) {
  const { lit, shade, declined, done } = plannedList(on.telling, on.due, on.plan, on.currency, on.input);
  const lines = new Map(lit.map((line) => [line.id, line]));
  const aside = lit.filter(({ id }) => on.plan?.setAside.includes(id));
  return (
    <>
      <Parts
        on={on}
        parts={drawnBundles(on.telling, on.plan?.bundles ?? [], lines)}
        reasons={doingReasons(on.telling, on.said, on.plan)}
        level={1}
      />
      {[...aside, ...shade].length > 0 && (
        <Band heading={t("plan.shade")}>
          {[...aside, ...shade].map((line) => (
            <Row key={line.id} on={on} line={line} />
          ))}
        </Band>
      )}
      <Declined on={on} lines={declined} />
      <Done on={on} lines={done} />
    </>
  );
}

function Offers({ on }: { readonly on: OnPlan }) {
  const offers = offerLines(on.telling, on.plan, on.currency);
  if (offers.length === 0) return null;
  return (
    <Band heading={t("plan.offers")}>
      {offers.map(({ id, title, says, href }) => (
        <ListRow key={id} title={title} second={says} href={href} />
      ))}
    </Band>
  );
}

/** Folded above the list: sixty jobs down nobody would look for them. */
function Links({ on }: { readonly on: OnPlan }) {
  const links = planLinks(on);
  return (
    <Fold title={t("plan.more")} count={links.length} open={false}>
      {links.map(({ id, title, second, href }) => (
        <ListRow key={id} title={title} second={second} href={href} />
      ))}
    </Fold>
  );
}

/** What planning could not use, with what to do. */
function Problems({ on }: { readonly on: OnPlan }) {
  const { plan, telling, said } = on;
  const lines = [...new Set((plan?.problems ?? []).map((one) => planProblem(telling, said, one)))];
  return <Sentences heading={t("plan.problems")} lines={lines} />;
}

function List({ on, order }: { readonly on: OnPlan; readonly order: Signal<Order> }) {
  return (
    <>
      {on.said.scope.length > 0 && <ScopeNotice on={on} />}
      <Sum on={on} />
      <Links on={on} />
      <div class="form">
        <UnitSwitch
          label={t("plan.order")}
          choices={ORDERS.map((id) => ({ id, words: t(`plan.order.${id}`) }))}
          chosen={order.value}
          onChoose={(id) => {
            order.value = ORDERS.find((one) => one === id) ?? order.value;
          }}
        />
      </div>
      {order.value === "urgency" ? <ByUrgency on={on} /> : <AsItIsDone on={on} />}
      {on.isPlanning && (
        <p class="remark small" role="status">
          {t("plan.planning")}
        </p>
      )}
      <p class="remark small">{t("plan.own")}</p>
      <Offers on={on} />
      <Problems on={on} />
      <PlanUseBand on={on} />
    </>
  );
}

/** What all of it ends in: somebody who was not there reads it. */
const OnToHandOver = ({ on }: { readonly on: OnPlan }) => (
  <div class="acts">
    <NextAction words={onward("hand-over.to")} href={to("hand-over", { visit: on.param })} onward />
  </div>
);

function WorkBody({ on }: { readonly on: OnPlan }) {
  const order = useSignal<Order>("urgency");
  const isEmpty = workLines(on.telling, on.due).length === 0;
  return (
    <>
      <Top back={carTitle(on.car)} href={to("car", { car: paramOf(on.car.stream) })} />
      <main>
        <Title title={t("work.title")} {...(isEmpty ? {} : { second: t(`plan.order.${order.value}.says`) })} />
        <WorstCaution known={on.known} due={on.assessment.cautions} told={on.visit.told} visit={on.param} />
        {isEmpty ? <EmptyState title={t("work.none")} says={t("work.none.says")} /> : <List on={on} order={order} />}
        <OnToHandOver on={on} />
      </main>
      <Sections visit={on.param} here="work" />
    </>
  );
}

export const Work = ({ params }: { readonly params: ParamsOf<"work"> }) => (
  <OnVisit param={params.visit}>
    {(on) => (
      <Covered on={on} title={t("work.title")} section="work">
        <WithPlan on={on}>{(planned) => <WorkBody on={planned} />}</WithPlan>
      </Covered>
    )}
  </OnVisit>
);
