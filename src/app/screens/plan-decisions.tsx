/**
 * The phone handed to the owner: job after job in urgency order with its price, four words each; what was said yes to;
 * the signature at the end. No tool of whoever plans stands here.
 */
import { useState } from "preact/hooks";
import type { DecisionWord } from "../../core/record/index.js";
import { signatureDrawing } from "../../core/report/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { DrawingView } from "../parts/drawing-view.js";
import { GradeMark } from "../parts/grade-mark.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band, Pool } from "../parts/pool.js";
import { decisionForm, ownWord } from "../state/decision-form.js";
import { openingOf, pricesOf } from "../state/decision-prices.js";
import { standingText, toldText } from "../state/decision-words.js";
import { allDecisions, type DecisionFacts, questionsOf, undecided, unsigned } from "../state/decisions-view.js";
import { jobTitle } from "../state/plan-words.js";
import { to } from "../state/routes.js";
import { workLines } from "../state/work-view.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/decisions.js";
import { DecideChoices } from "./decide-choices.js";
import { openingText, rangeText } from "./decide-price.js";
import { DecidedSum } from "./decided-sum.js";
import { Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { UndoRow } from "./undo.js";
import { forOwner, useDeciding } from "./use-deciding.js";
import { WhoDecides } from "./who-decides.js";

const DecideSheet = lazy(() => import("./decide-sheet.js").then((file) => file.DecideSheet), Nothing);
const AnswerSheet = lazy(() => import("./answer-sheet.js").then((file) => file.AnswerSheet), Nothing);
const AllYesSheet = lazy(() => import("./all-yes-sheet.js").then((file) => file.AllYesSheet), Nothing);
const SignSheet = lazy(() => import("./sign-sheet.js").then((file) => file.SignSheet), Nothing);

/** What lies over the page: one job with or without its word, an answer, yes to all, the signature. */
type Over =
  | { readonly is: "job"; readonly id: string; readonly word?: DecisionWord }
  | { readonly is: "answer"; readonly id: string }
  | { readonly is: "all" | "sign" };

interface OnePageProps {
  readonly on: OnPlan;
  readonly open: (over: Over) => void;
}

/** The job that is next to be decided, in the light. */
function Next({
  on,
  open,
  left,
  onLater,
}: OnePageProps & { readonly left: readonly DecisionFacts[]; readonly onLater: () => void }) {
  const { deciding, saidOf, keep } = useDeciding(on);
  const [next] = left;
  if (!next) return <EmptyState title={t("decisions.all-decided")} says={t("decisions.all-decided.says")} />;
  const line = workLines(forOwner(on.telling), on.due).find(({ id }) => id === next.id);
  const own = ownWord(next.standing, deciding.who);
  const opening = openingText(openingOf(on, [next.id]), on.currency, "decisions.price.opening");
  const choose = (word: DecisionWord): void => {
    const whole =
      word === "yes-now" && next.standing.length === 0 ? saidOf(next.id, decisionForm(word, own)) : undefined;
    if (whole) void keep(next.id, whole);
    else open({ is: "job", id: next.id, word });
  };
  return (
    <Pool as="section" label={line?.title ?? next.id}>
      <p class="small n">{t("decisions.next", { n: 1, of: left.length })}</p>
      <h2>{line?.title}</h2>
      {line && (
        <p class="job-by small n">
          <GradeMark mark={line.mark} size={18} />
          <span>{`${t(`mark.${line.mark}`)}, ${line.byWhen}`}</span>
        </p>
      )}
      <p class="n">{rangeText(pricesOf(on, [next.id]), on.currency)}</p>
      {opening !== undefined && <p class="small n">{opening}</p>}
      {next.differ && <p class="small">{standingText(next.standing)}</p>}
      <DecideChoices stands={own} onChoose={choose} disabled={deciding.who.trim() === ""} />
      {left.length > 1 && (
        <div class="acts">
          <Tool words={t("decisions.later")} onPress={onLater} />
        </div>
      )}
    </Pool>
  );
}

function Listed({ on, open, facts }: OnePageProps & { readonly facts: readonly DecisionFacts[] }) {
  return (
    <Band heading={t("decisions.list")}>
      {facts.map(({ id, standing }) => (
        <ListRow
          key={id}
          title={jobTitle(forOwner(on.telling), id)}
          second={standingText(standing)}
          aside={t("decisions.change")}
          onPress={() => open({ is: "job", id })}
        />
      ))}
    </Band>
  );
}

function Questions({ on, open, facts }: OnePageProps & { readonly facts: readonly DecisionFacts[] }) {
  const asked = questionsOf(facts);
  if (asked.length === 0) return null;
  return (
    <Band heading={t("decisions.questions")}>
      {asked.map(({ id, standing, answer }) => {
        const question = standing.findLast(({ value }) => value.word === "tell-me-more")?.value;
        const told = answer
          ? t("owner.answer", { day: plainDay(answer.on), words: answer.words })
          : question && `${t("owner.no-answer")} · ${toldText(question)}`;
        return (
          <ListRow
            key={id}
            title={`${question?.what ?? ""}`}
            second={[jobTitle(forOwner(on.telling), id), told].join(" · ")}
            aside={t("decisions.answer")}
            onPress={() => open({ is: "answer", id })}
          />
        );
      })}
    </Band>
  );
}

/** Every signature given, with how much of it still is for what stands. */
function Signed({ on }: { readonly on: OnPlan }) {
  const { signed, decisions } = on.said;
  if (signed.length === 0) return null;
  const standing = new Set([...decisions.values()].flat().map(({ id }) => id));
  return (
    <Band heading={t("decisions.signed")}>
      {signed.map(({ id, value }) => {
        const still = value.decisions.filter((one) => standing.has(one)).length;
        const who = t(value.drawn ? "owner.signed.drawn" : "owner.signed.typed", {
          who: value.who,
          day: plainDay(value.on),
        });
        return (
          <div key={id} class="remark">
            {value.drawn && <DrawingView class="signature" drawing={signatureDrawing(value.drawn)} />}
            <p class="n">{who}</p>
            <p class="small n">
              {still === value.decisions.length
                ? t("decisions.signed.n", { n: still })
                : t("decisions.signed.part", { n: still, of: value.decisions.length })}
            </p>
          </div>
        );
      })}
    </Band>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const { deciding, setDeciding } = useDeciding(on);
  const [over, setOver] = useState<Over>();
  const [later, setLater] = useState<readonly string[]>([]);
  const facts = allDecisions(on);
  if (facts.length === 0) return <EmptyState title={t("decisions.none")} says={t("decisions.none.says")} />;
  const open = undecided(facts, on.input);
  // Left for later, a job comes again behind the others.
  const left = [
    ...open.filter(({ id }) => !later.includes(id)),
    ...later.flatMap((id) => open.find((one) => one.id === id) ?? []),
  ];
  const close = (): void => setOver(undefined);
  const toSign = unsigned(facts, deciding.who).flatMap((word) => {
    const job = facts.find(({ standing }) => standing.includes(word))?.id;
    return job === undefined ? [] : [{ job, word }];
  });
  const answered = over?.is === "answer" ? facts.find(({ id }) => id === over.id) : undefined;
  const fresh = open.filter(({ word }) => word === undefined);
  return (
    <>
      <WhoDecides deciding={deciding} onChange={setDeciding} today={on.input.today} />
      <Next
        on={on}
        open={setOver}
        left={left}
        onLater={() => {
          const [first] = left;
          if (first) setLater([...later.filter((id) => id !== first.id), first.id]);
        }}
      />
      {fresh.length > 1 && (
        <div class="acts">
          <Tool
            words={t("decisions.all-yes")}
            disabled={deciding.who.trim() === ""}
            onPress={() => setOver({ is: "all" })}
          />
        </div>
      )}
      <DecidedSum on={on} facts={facts} />
      {toSign.length > 0 && (
        <NextAction words={t("decisions.sign", { n: toSign.length })} onPress={() => setOver({ is: "sign" })} />
      )}
      <Signed on={on} />
      <Questions on={on} open={setOver} facts={facts} />
      <Listed on={on} open={setOver} facts={facts} />
      <UndoRow on={on} />
      {over?.is === "job" && <DecideSheet key={over.id} on={on} id={over.id} word={over.word} onClose={close} />}
      {over?.is === "all" && <AllYesSheet on={on} ids={fresh.map(({ id }) => id)} onClose={close} />}
      {over?.is === "sign" && <SignSheet on={on} who={deciding.who} words={toSign} onClose={close} />}
      {answered && <AnswerSheet on={on} facts={answered} onClose={close} />}
    </>
  );
}

export const PlanDecisions = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain
        back={t("work.title")}
        href={to("work", { visit })}
        title={t("decisions.title")}
        second={t("decisions.second")}
      >
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
