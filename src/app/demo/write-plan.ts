/**
 * The plan after the visit under way, written as the app itself writes one: the first estimate is what planning gave
 * with what was known that evening, later entries are of the day the demo is brought in. Knows no figure of the story.
 */
import { freezeEstimate, type IsoDate, type Planner } from "../../core/plan/index.js";
import {
  type Act,
  type Draft,
  draftAddition,
  draftAnswer,
  draftBudget,
  draftDecision,
  draftEstimate,
  draftIntake,
  draftJobStep,
  draftLeftLoose,
  draftMinutes,
  draftPart,
  draftPartStep,
  draftPlanBegun,
  draftPlanUse,
  draftRelease,
  draftScope,
  draftSigned,
  foldHouse,
  jobKey,
  type PlanState,
} from "../../core/record/index.js";
import { DAY_MS } from "../../core/terms/index.js";
import { pricesOf, shownPrice } from "../state/decision-prices.js";
import { withExamples } from "../state/example-house.js";
import type { Knowledge } from "../state/knowledge.js";
import { type Judged, layWork, workInput } from "../state/plan-input.js";
import { dayOf } from "../state/today.js";
import { DEMO_PLAN, DEMO_SECOND, DEMO_SECOND_PLAN, DEMO_THIRD, PEOPLE } from "./names.js";
import type { Scribe } from "./scribe.js";
import { SECOND } from "./second.js";
import { handedBack, knockAnswered } from "./second-plan.js";
import { THIRD } from "./third.js";
import { DECISIONS, SIGNATURE } from "./third-decisions.js";
import {
  BEARING_PART,
  BUDGET,
  bearingFigures,
  CALIPER_HOURS,
  hubAsWell,
  INTAKE,
  leftLoose,
  SCOPE,
  SECURED,
  wetAnswered,
} from "./third-plan.js";

/** The work due after the visit under way, and the jobs somebody put there in words of their own. */
export interface WorkDue extends Judged {
  readonly ownJobs: NonNullable<Knowledge["ownJobs"]>;
}

const HOUR_MS = 3_600_000;
/** From the order of the part to the day it is promised for. */
const PROMISED_IN_DAYS = 12;
/** What the owner puts off is put off until then. */
const DECIDED_WITHIN_DAYS = 60;
const [SUNDAY, SATURDAY] = [0, 6];

/** Nobody promises a part for a Saturday or a Sunday. */
function promisedAfter(wall: number): IsoDate {
  const at = wall + PROMISED_IN_DAYS * DAY_MS;
  const weekday = new Date(at).getUTCDay();
  return dayOf(weekday === SATURDAY ? at + 2 * DAY_MS : weekday === SUNDAY ? at + DAY_MS : at);
}

/** Writes the plan; `now` is the moment the demo is brought in. */
export async function writePlan(scribe: Scribe, due: WorkDue, planner: Planner, now: number): Promise<void> {
  const { ines, jorin, ottilie } = PEOPLE;
  const plan = (): PlanState => scribe.plan(DEMO_PLAN);
  const say = (by: string, make: (act: Act, said: PlanState) => readonly Draft[]): void =>
    scribe.say(by, (act) => make(act, plan()));

  const evening = now - THIRD.daysAgo * DAY_MS + HOUR_MS;
  const visited = dayOf(evening);
  scribe.at(evening);
  say(ines.id, (act, said) => draftPlanBegun(act, said, DEMO_THIRD));
  say(ines.id, (act, said) => Object.entries(INTAKE).map(([item, says]) => draftIntake(act, said, item, says)));
  say(ines.id, (act, said) => [draftScope(act, said, SCOPE), draftPlanUse(act, said, "normal")]);
  say(ines.id, (act, said) => [draftBudget(act, said, BUDGET)]);
  // With the example rates and days: the demo is planned with them as long as the house has said none.
  const house = withExamples(foldHouse([]));
  const input = workInput(layWork(due), due, plan(), house, visited);
  const planned = await planner.plan(input);
  const first = planned?.estimate && freezeEstimate(planned.estimate, visited);
  if (first?.ok) say(ines.id, (act, said) => [draftEstimate(act, said, { estimate: first.value, on: visited })]);

  const told = {
    on: visited,
    later: dayOf(evening + DECIDED_WITHIN_DAYS * DAY_MS),
    read: new Date(evening).toISOString(),
  };
  say(ines.id, (act, said) =>
    DECISIONS.map(({ at, said: word }) => {
      const price = shownPrice(pricesOf({ input, plan: planned }, [jobKey(at)]));
      const estimate = said.estimates[0]?.id;
      const more = { ...(price ? { price } : {}), ...(estimate === undefined ? {} : { estimate }) };
      return draftDecision(act, said, at, { ...word(told), ...more });
    }),
  );
  say(ines.id, (act, said) => {
    const decisions = [...said.decisions.values()].flat().map(({ id }) => id);
    return [draftSigned(act, said, { decisions, who: ottilie.name, on: visited, drawn: SIGNATURE })];
  });

  const today = now - 2 * HOUR_MS;
  const on = dayOf(today);
  scribe.at(today);
  say(jorin.id, (act, said) => [draftPart(act, said, BEARING_PART, bearingFigures(on))]);
  say(jorin.id, (act, said) => [
    draftPartStep(act, said, { ...BEARING_PART, step: "ordered", on }),
    draftPartStep(act, said, { ...BEARING_PART, step: "promised", on, promised: promisedAfter(today) }),
  ]);
  say(ines.id, (act, said) => [draftMinutes(act, said, CALIPER_HOURS)]);
  say(ines.id, (act, said) => [draftLeftLoose(act, said, leftLoose(on))]);
  say(ines.id, (act, said) => [draftAddition(act, said, hubAsWell(on))]);
  const [, wet] = scribe.visit(DEMO_THIRD).complaints;
  if (wet) say(ines.id, (act, said) => [draftAnswer(act, said, wet.id, wetAnswered(on))]);
  say(jorin.id, (act, said) => [draftJobStep(act, said, { ...SECURED, step: "done", on, minutes: 15 })]);
}

/** A year ago: the knock was not heard, and the car was handed back with what was to be told. */
export function writeHandBack(scribe: Scribe, now: number): void {
  const { ines } = PEOPLE;
  const plan = (): PlanState => scribe.plan(DEMO_SECOND_PLAN);
  const evening = now - SECOND.daysAgo * DAY_MS + HOUR_MS;
  const on = dayOf(evening);
  scribe.at(evening);
  scribe.say(ines.id, (act) => draftPlanBegun(act, plan(), DEMO_SECOND));
  const [knock] = scribe.visit(DEMO_SECOND).complaints;
  if (knock) scribe.say(ines.id, (act) => [draftAnswer(act, plan(), knock.id, knockAnswered(on))]);
  scribe.say(ines.id, (act) => [draftRelease(act, plan(), handedBack(on))]);
}
