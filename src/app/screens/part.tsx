/** One part of one job: where it is, when it comes, what is to be done about it next, what is known of it. */
import { useState } from "preact/hooks";
import type { PartStepName } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { StepLine } from "../parts/step-line.js";
import { useApp } from "../state/app.js";
import { moneyText } from "../state/money-words.js";
import { expectedWords, historyOf, nextSteps, standsWords, wayOf, wrongWords } from "../state/part-way.js";
import { planPart } from "../state/plan-acts.js";
import { type PlannedPart, partnersOf, partsOf, refusedAlone } from "../state/plan-part-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/plan-parts.js";
import { MissingScreen, Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { UndoRow } from "./undo.js";

const StepSheet = lazy(() => import("./part-steps.js").then((file) => file.StepSheet), Nothing);
const FiguresSheet = lazy(() => import("./part-sheets.js").then((file) => file.FiguresSheet), Nothing);

const DO = {
  ordered: "part-do.order",
  promised: "part-do.promise",
  chased: "part-do.chase",
  arrived: "part-do.arrive",
  checked: "part-do.check",
  fitted: "part-do.fit",
  "sent-back": "part-do.send-back",
} as const satisfies Readonly<Record<PartStepName, string>>;

interface OfPart {
  readonly on: OnPlan;
  readonly part: PlannedPart;
}

/** By when it must be ordered, as the dates have it. */
function OrderBy({ on, part }: OfPart) {
  const order = on.plan?.schedule?.orders.find((one) => one.part === part.id);
  if (!order || (part.stands !== undefined && part.stands.stands !== "sent-back")) return null;
  const [date, needed] = [dayWords(order.orderBy), dayWords(order.neededOn)];
  return <p class="remark">{t(order.late ? "part-is.late" : "part-is.order-by", { date, needed })}</p>;
}

/** That it can't be had alone, or with what it is had, or why alone after all. */
function Paired({ on, part }: OfPart) {
  const { journal, phone } = useApp();
  const { listed, unlisted } = partnersOf(on, part);
  if (listed.length + unlisted.length === 0) return null;
  const counterpart = [...listed.map(({ name }) => name), ...unlisted].join(", ");
  const isRefused = part.stands === undefined && refusedAlone(on, [part]).length > 0;
  const add = (name: string): void => {
    const at = { ...part.at, part: `own.${phone.nonce()}` };
    void planPart(journal, on.stream, at, { name, count: part.work.count, counterpart: part.at.part }).then(
      () =>
        void planPart(journal, on.stream, part.at, { ...part.figures, count: part.work.count, counterpart: at.part }),
    );
  };
  const why = part.work.aloneBecause;
  return (
    <>
      <p class="remark">
        {why !== undefined
          ? t("one-part.pair.alone", { why })
          : t(isRefused ? "one-part.pair.refused" : "one-part.pair.with", { counterpart })}
      </p>
      {unlisted.map((name) => (
        <div key={name} class="acts">
          <Tool
            words={t("one-part.pair.list", { counterpart: name })}
            says={t("one-part.pair.unlisted", { counterpart: name })}
            onPress={() => add(name)}
          />
        </div>
      ))}
    </>
  );
}

function Way({ on, part, onStep }: OfPart & { readonly onStep: (step: PartStepName) => void }) {
  const [first, ...others] = nextSteps(part.stands);
  const failed = part.stands?.stands === "failed" ? part.stands.failed : [];
  return (
    <>
      <StepLine label={t("part-way", { part: part.name })} steps={wayOf(part)} />
      {failed.length > 0 ? (
        <Notice kind="error" title={t("part-failed")} says={t("part-failed.says", { what: wrongWords(failed) })} />
      ) : (
        <p class="remark">{standsWords(part.stands)}</p>
      )}
      {expectedWords(part, on.input.today).map((line) => (
        <p key={line} class="remark">
          {line}
        </p>
      ))}
      <OrderBy on={on} part={part} />
      <Paired on={on} part={part} />
      {on.who !== "buyer" && first && (
        <div class="acts">
          <NextAction
            words={t(first === "ordered" && part.stands !== undefined ? "part-do.order.new" : DO[first])}
            onPress={() => onStep(first)}
          />
          {others.map((step) => (
            <Tool key={step} words={t(DO[step])} onPress={() => onStep(step)} />
          ))}
        </div>
      )}
    </>
  );
}

function Figures({ on, part }: OfPart) {
  const [over, setOver] = useState<"what" | "price" | "from" | "pair">();
  const { work, supplier } = part;
  const { currency } = on;
  const money = (minor: number): string => (currency ? moneyText(minor, currency) : "");
  const { listed, unlisted } = partnersOf(on, part);
  const lead = work.leadDays ?? supplier?.leadDays;
  const price = work.price && currency ? `${work.price.map(money).join(" – ")}` : t("one-part.price.none");
  const asked = work.pricedOn
    ? t("one-part.price.asked", { date: dayWords(work.pricedOn) })
    : work.price
      ? t("one-part.price.undated")
      : undefined;
  const extra = [
    ...(work.deposit !== undefined && currency ? [`${t("one-part.deposit")}: ${money(work.deposit)}`] : []),
    ...(work.carriage !== undefined && currency ? [`${t("one-part.carriage")}: ${money(work.carriage)}`] : []),
  ];
  return (
    <Band>
      <ListRow
        title={part.name}
        second={t("one-part.count.n", { n: work.count })}
        {...(part.isOwn ? { aside: t("one-part.drop.says") } : {})}
        onPress={() => setOver("what")}
      />
      <ListRow
        title={t("one-part.price")}
        second={[price, ...(asked === undefined ? [] : [asked])].join(", ")}
        onPress={() => setOver("price")}
      />
      <ListRow
        title={t("one-part.from")}
        second={[
          supplier?.name ?? t("one-part.from.none"),
          lead === undefined ? t("one-part.lead.none") : t("one-part.lead.n", { n: lead }),
          ...extra,
        ].join(", ")}
        onPress={() => setOver("from")}
      />
      <ListRow
        title={t("one-part.pair")}
        second={[...listed.map(({ name }) => name), ...unlisted].join(", ") || t("one-part.pair.none")}
        onPress={() => setOver("pair")}
      />
      {over && <FiguresSheet sheet={over} on={on} part={part} onClose={() => setOver(undefined)} />}
    </Band>
  );
}

function Body({ on, part }: OfPart) {
  const { journal, router } = useApp();
  const [step, setStep] = useState<PartStepName>();
  const history = historyOf(part);
  const up = to("job", { visit: on.param, job: part.at.job, place: part.at.place });
  const drop = (): void => {
    const hence = router.fromHere();
    void planPart(journal, on.stream, part.at, null).then((kept) => kept && hence.up(up));
  };
  return (
    <Plain back={t("work.job")} href={up} title={part.title} second={part.jobTitle}>
      <Way on={on} part={part} onStep={setStep} />
      <Figures on={on} part={part} />
      {history.length > 0 && (
        <Band heading={t("part-way.history")}>
          {history.map(({ id, title, words }) => (
            <ListRow key={id} title={title} {...(words === undefined ? {} : { second: words })} />
          ))}
        </Band>
      )}
      <UndoRow on={on} />
      {part.isOwn && part.steps.length === 0 && (
        <div class="acts">
          <Tool words={t("one-part.drop")} onPress={drop} />
        </div>
      )}
      {step && <StepSheet key={step} on={on} part={part} step={step} onClose={() => setStep(undefined)} />}
    </Plain>
  );
}

export const PartScreen = ({ params }: { readonly params: ParamsOf<"part"> }) => (
  <Waiting param={params.visit}>
    {(on) => {
      const part = partsOf(on, `${params.job}@${params.place}`).find(({ at }) => at.part === params.part);
      return part ? <Body key={part.id} on={on} part={part} /> : <MissingScreen />;
    }}
  </Waiting>
);
