/** The time of a job said by hand, and its steps told: begun, waits until a day, done, measured again. */
import { useState } from "preact/hooks";
import type { JobStepName } from "../../core/record/index.js";
import type { Three } from "../../core/terms/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import type { ThreeTexts } from "../parts/props-planning.js";
import { Sheet } from "../parts/sheet.js";
import { ThreeEntry } from "../parts/three-entry.js";
import { useApp } from "../state/app.js";
import { typedCount } from "../state/part-figures.js";
import { jobStep, planMinutes } from "../state/plan-acts.js";
import { jobTitle } from "../state/plan-words.js";
import { t } from "../texts/plan-parts.js";
import type { OnPlan } from "./on-plan.js";
import { isOdd, StepDay } from "./step-day.js";
import { threeWords } from "./three-words.js";

interface OverJob {
  readonly on: OnPlan;
  readonly job: string;
  readonly place: string;
  readonly onClose: () => void;
}

const HOUR = 60;
const hoursTyped = (minutes: number | undefined): string =>
  minutes === undefined ? "" : `${Math.floor(minutes / HOUR)}:${String(minutes % HOUR).padStart(2, "0")}`;

export function MinutesSheet({ on, job, place, minutes, onClose }: OverJob & { readonly minutes: Three | undefined }) {
  const { journal } = useApp();
  const [values, setValues] = useState<ThreeTexts>([
    hoursTyped(minutes?.[0]),
    hoursTyped(minutes?.[1]),
    hoursTyped(minutes?.[2]),
  ]);
  return (
    <Sheet open title={t("job-plan.time")} closeWords={t("app.cancel")} onClose={onClose}>
      <ThreeEntry
        label={t("job-plan.time.of", { job: jobTitle(on.telling, `${job}@${place}`) })}
        kind={{ of: "minutes" }}
        values={values}
        onValues={setValues}
        onKeep={(figures) => {
          void planMinutes(journal, on.stream, { job, place, minutes: figures });
          onClose();
        }}
        unit="h"
        words={{ ...threeWords(), unreadable: t("one-part.unreadable-time") }}
      />
    </Sheet>
  );
}

const TITLES = {
  begun: "job-plan.begin",
  waiting: "job-plan.wait",
  done: "job-plan.finish",
  "measured-again": "job-plan.measure",
} as const;
/** Ten weeks of work in one job is a slip. */
const MOST_MINUTES = 9999;

export function JobStepSheet({ on, job, place, step, onClose }: OverJob & { readonly step: JobStepName }) {
  const { journal } = useApp();
  const [day, setDay] = useState(on.input.today);
  const [next, setNext] = useState("");
  const [took, setTook] = useState("");
  const [words, setWords] = useState("");
  const minutes = step === "done" ? typedCount(took, 0, MOST_MINUTES) : undefined;
  const isOddDay = isOdd(day, on.input.today, false) || (step === "waiting" && isOdd(next, on.input.today, true));
  const isWhole = day !== "" && minutes !== null && (step !== "waiting" || next !== "") && !isOddDay;
  const press = (): void => {
    if (!isWhole) return;
    const said = words.trim();
    void jobStep(journal, on.stream, {
      job,
      place,
      step,
      on: day,
      ...(step === "waiting" ? { next } : {}),
      ...(typeof minutes === "number" ? { minutes } : {}),
      ...(said === "" ? {} : { words: said }),
    });
    onClose();
  };
  return (
    <Sheet
      open
      title={t(TITLES[step])}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={press} disabled={!isWhole} />}
    >
      {step === "waiting" && (
        <StepDay
          id="job-next"
          label={t("job-plan.wait.until")}
          day={next}
          onDay={setNext}
          today={on.input.today}
          ahead
        />
      )}
      {step === "done" && (
        <Field
          id="job-minutes"
          kind="number"
          label={t("job-plan.finish.minutes")}
          value={took}
          onInput={setTook}
          {...(minutes === null ? { problem: t("job-plan.finish.odd") } : {})}
        />
      )}
      <StepDay id="job-on" label={t("job-plan.on")} day={day} onDay={setDay} today={on.input.today} />
      <Field
        id="job-words"
        kind="area"
        label={t(step === "waiting" ? "job-plan.wait.for" : "part-do.words")}
        value={words}
        onInput={setWords}
      />
    </Sheet>
  );
}
