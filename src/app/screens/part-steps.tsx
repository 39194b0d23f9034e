/** The steps of a part, told: ordered together with its counterpart, promised, asked after, here, checked, fitted. */
import { useState } from "preact/hooks";
import type { PartChecks, PartStepName } from "../../core/record/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";

import { useApp } from "../state/app.js";
import { mendedFigures } from "../state/part-figures.js";
import { partSteps, planPart } from "../state/plan-acts.js";
import { expectedOf, type PlannedPart, partnersOf, refusedAlone } from "../state/plan-part-view.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/plan-parts.js";
import { Asked } from "./asked.js";
import type { OnPlan } from "./on-plan.js";
import { isOdd, StepDay } from "./step-day.js";

interface OverStep {
  readonly on: OnPlan;
  readonly part: PlannedPart;
  readonly onClose: () => void;
}

/** Ordered with all it is had with, unless a reason is given for having it alone. */
function OrderSheet({ on, part, onClose }: OverStep) {
  const { journal } = useApp();
  const [day, setDay] = useState(on.input.today);
  const [why, setWhy] = useState(part.work.aloneBecause ?? "");
  const open = partnersOf(on, part).listed.filter(
    ({ stands }) => stands === undefined || stands.stands === "sent-back",
  );
  const [isAlone, setAlone] = useState(part.work.aloneBecause !== undefined);
  const reason = why.trim();
  const ordered = isAlone ? [part] : [part, ...open];
  const refused = refusedAlone(on, ordered, isAlone && reason !== "" ? reason : undefined);
  const counterpart = refused.flatMap(({ counterparts }) => counterparts).join(", ");
  const expected = day === "" ? undefined : expectedOf(part, day);
  const press = (): void => {
    if (day === "" || refused.length > 0) return;
    const steps = ordered.map(({ at }) => ({ ...at, step: "ordered" as const, on: day }));
    if (isAlone && reason !== part.work.aloneBecause)
      void planPart(journal, on.stream, part.at, mendedFigures(part, { aloneBecause: reason }));
    void partSteps(journal, on.stream, steps);
    onClose();
  };
  return (
    <Sheet
      open
      title={t("part-do.order")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={
        <NextAction
          words={t("part-do.order.keep")}
          onPress={press}
          disabled={day === "" || isOdd(day, on.input.today, false) || refused.length > 0}
        />
      }
    >
      <StepDay id="ordered-on" label={t("part-do.order.on")} day={day} onDay={setDay} today={on.input.today} />
      {expected && <p>{`${t("part-is.expected", { date: dayWords(expected.comes), n: expected.leadDays })}.`}</p>}
      {open.length > 0 && (
        <Asked
          label={t("part-do.order.both")}
          choices={[
            { id: "both", words: open.map(({ name }) => name).join(", ") },
            { id: "alone", words: t("part-do.alone") },
          ]}
          chosen={isAlone ? "alone" : "both"}
          onChoose={(id) => setAlone(id === "alone")}
        />
      )}
      {(isAlone || refused.length > 0) && (
        <Field
          id="alone-because"
          kind="area"
          label={t("part-do.order.alone", { counterpart: counterpart || open.map(({ name }) => name).join(", ") })}
          value={why}
          onInput={(text) => {
            setAlone(true);
            setWhy(text);
          }}
          {...(refused.length > 0 ? { problem: t("one-part.pair.refused", { counterpart }) } : {})}
        />
      )}
    </Sheet>
  );
}

const CHECKS = ["right", "counterpart", "count", "condition"] as const;
type Answers = { readonly [Check in keyof PartChecks]?: boolean | undefined };

/** Four questions, each answered: nothing is taken to be right because nobody looked. */
function CheckSheet({ on, part, onClose }: OverStep) {
  const { journal } = useApp();
  const [answers, setAnswers] = useState<Answers>({});
  const [words, setWords] = useState("");
  const { listed, unlisted } = partnersOf(on, part);
  const counterpart = [...listed.map(({ name }) => name), ...unlisted].join(", ");
  const asked = CHECKS.filter((check) => check !== "counterpart" || counterpart !== "");
  const { right, count, condition, counterpart: matches } = answers;
  const isWhole = asked.every((check) => answers[check] !== undefined);
  const press = (): void => {
    if (!isWhole || right === undefined || count === undefined || condition === undefined) return;
    const checks: PartChecks = { right, count, condition, ...(matches === undefined ? {} : { counterpart: matches }) };
    const said = words.trim();
    const step = { ...part.at, step: "checked" as const, on: on.input.today, checks };
    void partSteps(journal, on.stream, [said === "" ? step : { ...step, words: said }]);
    onClose();
  };
  return (
    <Sheet
      open
      title={t("part-do.check")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("app.keep")} onPress={press} disabled={!isWhole} />}
    >
      <p>{t("part-do.check.says")}</p>
      {asked.map((check) => (
        <Asked
          key={check}
          label={check === "counterpart" ? t("part-check.counterpart", { counterpart }) : t(`part-check.${check}`)}
          choices={[
            { id: "yes", words: t("app.yes") },
            { id: "no", words: t("app.no") },
          ]}
          chosen={answers[check] === undefined ? "" : answers[check] ? "yes" : "no"}
          onChoose={(id) => setAnswers({ ...answers, [check]: id === "yes" })}
        />
      ))}
      <Field id="checked-words" kind="area" label={t("part-do.words")} value={words} onInput={setWords} />
    </Sheet>
  );
}

type DayStep = Exclude<PartStepName, "ordered" | "checked">;
const AHEAD: Partial<Record<DayStep, "promised" | "next">> = { promised: "promised", chased: "next" };

function DaySheet({ on, part, onClose, step }: OverStep & { readonly step: DayStep }) {
  const { journal } = useApp();
  const [day, setDay] = useState(on.input.today);
  const [ahead, setAhead] = useState("");
  const [words, setWords] = useState("");
  const field = AHEAD[step];
  const today = on.input.today;
  const isOddDay = isOdd(day, today, false) || (field !== undefined && isOdd(ahead, today, true));
  const isWhole = day !== "" && (field === undefined || ahead !== "") && !isOddDay;
  const press = (): void => {
    if (!isWhole) return;
    const said = words.trim();
    void partSteps(journal, on.stream, [
      {
        ...part.at,
        step,
        on: day,
        ...(field === undefined ? {} : { [field]: ahead }),
        ...(said === "" ? {} : { words: said }),
      },
    ]);
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
      {field !== undefined && (
        <StepDay
          id="step-ahead"
          label={t(field === "promised" ? "part-do.promise.day" : "part-do.chase.next")}
          day={ahead}
          onDay={setAhead}
          today={on.input.today}
          ahead
        />
      )}
      <StepDay id="step-on" label={t("part-do.on")} day={day} onDay={setDay} today={on.input.today} />
      <Field id="step-words" kind="area" label={t("part-do.words")} value={words} onInput={setWords} />
    </Sheet>
  );
}

const TITLES = {
  promised: "part-do.promise",
  chased: "part-do.chase",
  arrived: "part-do.arrive",
  fitted: "part-do.fit",
  "sent-back": "part-do.send-back",
} as const;

export function StepSheet({ step, ...over }: OverStep & { readonly step: PartStepName }) {
  if (step === "ordered") return <OrderSheet {...over} />;
  return step === "checked" ? <CheckSheet {...over} /> : <DaySheet {...over} step={step} />;
}
