/** A job in its plan, below what the sheet says of it: its parts, its time, whether it is done, and how far it is. */
import { useState } from "preact/hooks";
import type { JobStepName } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";

import { useApp } from "../state/app.js";
import { type JobPlanView, jobPlanView, WANTED } from "../state/job-plan-view.js";
import { agreedWord } from "../state/owners-word.js";
import { standsWords } from "../state/part-way.js";
import { planMinutes, planWanted } from "../state/plan-acts.js";
import { partsOf } from "../state/plan-part-view.js";
import { t as owner } from "../texts/owners-word.js";
import { t } from "../texts/plan-parts.js";
import { Asked } from "./asked.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnPlan, WithPlan } from "./on-plan.js";
import type { OnDesk } from "./on-visit.js";
import { UndoRow } from "./undo.js";

const AddPart = lazy(() => import("./part-add.js").then((file) => file.AddPart), Nothing);
const sheets = () => import("./job-plan-sheets.js");
const MinutesSheet = lazy(() => sheets().then((file) => file.MinutesSheet), Nothing);
const JobStepSheet = lazy(() => sheets().then((file) => file.JobStepSheet), Nothing);

interface JobProps {
  readonly job: string;
  readonly place: string;
  /** What the sheet says of its parts: had together, never used again. */
  readonly sheetParts: readonly { readonly id: string; readonly second?: string }[];
}
interface OfJob extends JobProps {
  readonly on: OnPlan;
  readonly view: JobPlanView;
}

function Parts({ on, job, place, sheetParts }: OfJob) {
  const [isAdding, setAdding] = useState(false);
  const id = `${job}@${place}`;
  const parts = partsOf(on, id);
  const saysOf = (part: string): readonly string[] =>
    sheetParts.flatMap(({ id: one, second }) => (one === part && second !== undefined ? [second] : []));
  return (
    <Band heading={t("work.parts")}>
      {parts.map((part) => (
        <ListRow
          key={part.id}
          title={part.title}
          second={[...saysOf(part.at.part), standsWords(part.stands)].join(" · ")}
          href={part.href}
        />
      ))}
      {on.who !== "buyer" && (
        <div class="acts">
          <Tool words={t("all-parts.add")} onPress={() => setAdding(true)} />
        </div>
      )}
      {isAdding && <AddPart on={on} job={id} onClose={() => setAdding(false)} />}
    </Band>
  );
}

function Time({ on, job, place, view }: OfJob) {
  const { journal } = useApp();
  const [isOpen, setOpen] = useState(false);
  return (
    <Band heading={t("job-plan.time")} aside={view.basis}>
      <ListRow title={view.time} second={view.adds} aside={t("job-plan.time.change")} onPress={() => setOpen(true)} />
      {view.isByHand && (
        <div class="acts">
          <Tool
            words={t("job-plan.time.back")}
            onPress={() => void planMinutes(journal, on.stream, { job, place, minutes: null })}
          />
        </div>
      )}
      {isOpen && <MinutesSheet on={on} job={job} place={place} minutes={view.minutes} onClose={() => setOpen(false)} />}
    </Band>
  );
}

function Wanted({ on, job, place, view }: OfJob) {
  const { journal } = useApp();
  const word = agreedWord(on.said, `${job}@${place}`)?.value.word;
  if (word === "no") return <p class="remark">{owner("owner.decides.out")}</p>;
  if (word === "yes-now") return <p class="remark">{owner("owner.decides.in")}</p>;
  if (view.isMust) return <p class="remark">{t("job-plan.must")}</p>;
  const choose = (id: string): void => {
    const word = WANTED.find((one) => one === id);
    if (word) void planWanted(journal, on.stream, { job, place, wanted: word === "plan" ? null : word });
  };
  return (
    <div class="form">
      <Asked
        label={t("job-plan.wanted")}
        choices={WANTED.map((id) => ({ id, words: t(`job-plan.wanted.${id}`) }))}
        chosen={view.wanted}
        onChoose={choose}
      />
      {view.isIn && <p class="small">{view.isIn}</p>}
    </div>
  );
}

/** What may be told of a job next, the likeliest first. */
const NEXT: Readonly<Record<JobStepName | "none", readonly JobStepName[]>> = {
  none: ["begun", "waiting", "done"],
  begun: ["done", "waiting"],
  waiting: ["begun", "done", "waiting"],
  done: ["measured-again"],
  "measured-again": [],
};
const DO = {
  begun: "job-plan.begin",
  waiting: "job-plan.wait",
  done: "job-plan.finish",
  "measured-again": "job-plan.measure",
} as const;

function HowFar({ on, job, place, view }: OfJob) {
  const [step, setStep] = useState<JobStepName>();
  const [first, ...others] = NEXT[view.stands?.stands ?? "none"];
  return (
    <Band heading={t("job-plan.is")}>
      <p class="remark">{view.standsSays}</p>
      {first && (
        <div class="acts">
          <NextAction words={t(DO[first])} onPress={() => setStep(first)} />
          {others.map((one) => (
            <Tool key={one} words={t(DO[one])} onPress={() => setStep(one)} />
          ))}
        </div>
      )}
      {step && (
        <JobStepSheet key={step} on={on} job={job} place={place} step={step} onClose={() => setStep(undefined)} />
      )}
    </Band>
  );
}

function Drawn({ on, job, place, sheetParts }: JobProps & { readonly on: OnPlan }) {
  const view = jobPlanView(on, `${job}@${place}`);
  if (!view) return null;
  const of = { on, job, place, sheetParts, view };
  return (
    <>
      <Parts {...of} />
      <Time {...of} />
      <Wanted {...of} />
      {on.who !== "buyer" && <HowFar {...of} />}
      <UndoRow on={on} />
    </>
  );
}

export const JobPlan = ({ on, ...job }: JobProps & { readonly on: OnDesk }) => (
  <WithPlan on={on}>{(planned) => <Drawn on={planned} {...job} />}</WithPlan>
);
