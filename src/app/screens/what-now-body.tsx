/** What now: may it be driven as far as this look tells, what was found, and four things to finish with, in their order. */
import { useEffect, useState } from "preact/hooks";
import { COPY_MADE, type CopyMade, readCopyMade } from "../../core/record/index.js";
import { isSettled, reasonText, say } from "../../core/report/index.js";
import { NextAction } from "../parts/button.js";
import { FindingRow } from "../parts/finding-row.js";
import { ListRow } from "../parts/list-row.js";
import { Band, Pool } from "../parts/pool.js";
import { Title } from "../parts/title.js";
import { useApp } from "../state/app.js";
import type { MadeHandover } from "../state/handover-made.js";
import { paramOf, to } from "../state/routes.js";
import { seasonOf } from "../state/season.js";
import { rememberSteps, STEPS, type StepName, type StepsDone, stepsDone, stepsStand } from "../state/what-now.js";
import { workshopMessage } from "../state/workshop-message.js";
import { t } from "../texts/season.js";
import { Top } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnPlan } from "./on-plan.js";
import { useLoaded } from "./use-loaded.js";
import { type Trends, useMade } from "./use-made.js";

const DueOpen = lazy(() => import("./due-band.js").then((file) => file.DueOpen), Nothing);
const HandOverWearing = lazy(() => import("./hand-over-wearing.js").then((file) => file.HandOverWearing), Nothing);
const LooksAfter = lazy(() => import("./looks-after.js").then((file) => file.LooksAfter), Nothing);
const StepSheet = lazy(() => import("./what-now-steps.js").then((file) => file.StepSheet), Nothing);

/** Findings named before the rest is left to their own screen, and reasons before it is left to the hand-over. */
const MOST_FOUND = 5;
const MOST_REASONS = 4;

function Verdict({ on, made: { model, words } }: { readonly on: OnPlan; readonly made: MadeHandover }) {
  const { is, owner, reasons } = model.first.verdict;
  const texts = reasons.map((reason) => reasonText(words, reason));
  const rest = texts.length - MOST_REASONS;
  return (
    <Pool as="section" label={say(words, "verdict.title")}>
      <div class="question">
        <h2>{say(words, `owner.${owner}`)}</h2>
        {owner !== "dont-drive" && <p>{say(words, `verdict.${is}`)}</p>}
      </div>
      <ul class="reasons">
        {texts.slice(0, MOST_REASONS).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {rest > 0 && (
        <a class="plain-link" href={to("hand-over", { visit: on.param })}>
          {t("what-now.reasons", { n: rest })}
        </a>
      )}
    </Pool>
  );
}

function Found({ on, made: { model, words } }: { readonly on: OnPlan; readonly made: MadeHandover }) {
  const standing = model.findings.filter((one) => !isSettled(one));
  return (
    <Band heading={t("what-now.found")} aside={standing.length > 0 ? String(standing.length) : ""}>
      {standing.length === 0 && <ListRow title={t("what-now.found.none")} />}
      {standing.slice(0, MOST_FOUND).map(({ fault, place, letter, title, where, grade }) => (
        <FindingRow
          key={letter}
          mark={grade}
          markWord={say(words, `mark.${grade}`)}
          title={title}
          second={where}
          aside={letter}
          href={to("finding", { visit: on.param, fault, place })}
        />
      ))}
      {standing.length > 0 && <ListRow title={t("what-now.found.more")} href={to("findings", { visit: on.param })} />}
    </Band>
  );
}

/** How the steps stand, and what remembers that one was done. */
function useSteps({ visit, stream }: OnPlan) {
  const { remembered, store, phone } = useApp();
  const [done, setDone] = useState<StepsDone>(() => stepsDone(remembered, stream));
  const [handed, setHanded] = useState<CopyMade>();
  const kept = useLoaded(() => store.setting(COPY_MADE), COPY_MADE);
  const copy = handed ?? readCopyMade(kept?.ok ? kept.value : undefined);
  const put = (part: StepsDone): void => {
    const now = { ...stepsDone(remembered, stream), ...part };
    rememberSteps(remembered, stream, now);
    setDone(now);
  };
  return {
    done,
    stand: stepsStand(visit, done, copy),
    put,
    did: (step: Exclude<StepName, "copy">) => put({ [step]: phone.now() }),
    copied: (now: CopyMade) => {
      setHanded(now);
      void store.keepSetting(COPY_MADE, now);
    },
  };
}
export type Steps = ReturnType<typeof useSteps>;

const SAYS = { open: "what-now.open", done: "what-now.step-done", "before-last": "what-now.before-last" } as const;

export function WhatNowBody({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const [trends, setTrends] = useState<Trends>();
  const [step, setStep] = useState<StepName>();
  const [, made] = useMade(on, "owner", trends);
  const steps = useSteps(on);
  useEffect(() => void journal.refresh(), [journal]);
  const season = seasonOf(on.visit.replies);
  const message = workshopMessage(made, { season, noted: on.visit.notes.map(({ value }) => value.text) });
  const hasDates = season === "put-away" || made.model.dates.some(({ on: day }) => day !== undefined);
  const names = STEPS.filter((name) => name !== "dates" || hasDates);
  const isDone = (name: StepName): boolean => steps.stand[name] === "done";
  const next = names.find((name) => !isDone(name));
  const says: Readonly<Record<StepName, string>> = {
    message: t(made.model.first.verdict.owner === "fine" ? "what-now.message.needless" : "what-now.message.says"),
    file: t("what-now.file.says"),
    dates: t(season === "put-away" ? "what-now.dates.says" : "what-now.dates.due"),
    copy: t("what-now.copy.says"),
  };
  return (
    <>
      <Top back={t("what-now.back")} href={to("round", { visit: on.param })} />
      <main>
        <Title
          title={t("what-now.title")}
          second={season === undefined ? t("purpose.season") : t(`season.${season}`)}
          figure={{ count: String(names.filter(isDone).length), rest: t("what-now.done", { n: names.length }) }}
          ticks={names.map((name) => (isDone(name) ? "done" : name === next ? "here" : "open"))}
        />
        <HandOverWearing car={on.car} visit={on.visit} onTold={setTrends} />
        <Verdict on={on} made={made} />
        <Found on={on} made={made} />
        <DueOpen on={on} />
        {trends?.again && <LooksAfter looks={trends.again} car={paramOf(on.car.stream)} />}
        <Band heading={t("what-now.steps")}>
          {names.map((name, index) => (
            <ListRow
              key={name}
              lead={String(index + 1)}
              title={t(`what-now.${name}`)}
              second={says[name]}
              aside={t(SAYS[steps.stand[name]])}
              onPress={() => setStep(name)}
            />
          ))}
          <p class="remark">{next === undefined ? t("what-now.all") : t("what-now.phone")}</p>
        </Band>
        <div class="acts">
          {next === undefined ? (
            <NextAction words={t("what-now.to-car")} href={to("car", { car: paramOf(on.car.stream) })} onward />
          ) : (
            <NextAction
              words={t("what-now.next", { step: t(`what-now.${next}`) })}
              onPress={() => setStep(next)}
              onward
            />
          )}
        </div>
      </main>
      {step && (
        <StepSheet
          step={step}
          on={on}
          made={made}
          message={message}
          season={season}
          steps={steps}
          onClose={() => setStep(undefined)}
        />
      )}
    </>
  );
}
