/** A whole work list: its faults in urgency order, then jobs, access, choice, estimate and dates in one plan. */
import {
  compareKeys,
  type Likelihood,
  planWork,
  type UrgencyKey,
  type WorkInput,
  type WorkJob,
} from "../../core/plan/index.js";
import { type Grade, type Problem, worse } from "../../core/terms/index.js";
import { tellPlanFile } from "../plan-told.js";
import { type At, type Fields, inside, list, optional, type Shape, text, type ValueOf, whole } from "./shape.js";
import { inOrder, onlyOnce, urgencyIn } from "./urgency.js";
import { calendar, fault, howMany, job, opening, rates, supplier } from "./whole-shape.js";

/** Whether a file is a whole work list: faults, and jobs in a list. */
export const isWorkList = (given: Fields): boolean => Array.isArray(given["faults"]) || isJobs(given);
const isJobs = (given: Fields): boolean => Array.isArray(given["jobs"]) && Array.isArray(given["access"]);

type Fault = ValueOf<typeof fault>;
type Job = ValueOf<typeof job>;

/** The plan of the list; what is faulty is told and left out, the rest is planned. */
export function workListAnswer(given: Fields, at: At): Fields {
  const read = <T>(key: string, shape: Shape<T>): T | undefined => shape.read(given[key], inside(at, key))?.value;
  const each = <T extends { readonly id: string }>(key: string, shape: Shape<T>): readonly T[] =>
    onlyOnce(soundOf(given[key], inside(at, key), shape), inside(at, key));
  const faults = each("faults", fault);
  const jobs = each("jobs", job);
  const openings = soundOf(given["access"], inside(at, "access"), opening);
  const days = read("calendar", optional(calendar));
  const [people, lifts] = [read("people", optional(howMany, 1)), read("lifts", optional(howMany, 1))];
  const terms = read("rates", optional(rates));
  const suppliers = soundOf(given["suppliers"], inside(at, "suppliers"), supplier);
  const today = days?.today ?? read("today", text);
  const budget = read("budget", optional(whole));
  tellUnknown(faults, jobs, at);
  const order = inOrder(faults);
  if (today === undefined) return { order };
  const input: WorkInput = {
    today,
    jobs: jobs.map((of) => workJob(of, faults)).sort((a, b) => compareKeys(a.key, b.key).sign),
    openings,
    suppliers,
    ...(days?.begins === undefined ? {} : { begins: days.begins }),
    ...(budget === undefined ? {} : { budget }),
    ...(terms === undefined ? {} : { terms }),
    ...(days === undefined || people === undefined || lifts === undefined
      ? {}
      : { calendar: { zone: days.zone, week: days.week, closed: days.closed, people, lifts } }),
  };
  const plan = planWork(input);
  at.problems.push(...plan.problems.map((one) => ({ ...one, where: {} })));
  return { order, ...plan, problems: plan.problems.map(said), remarks: plan.remarks.map(said) };
}

const said = (one: Problem) => ({ code: one.code, says: tellPlanFile({ ...one, where: {} }) });

/** The sound entries of a list; nothing where there is none. */
function soundOf<T>(value: unknown, at: At, shape: Shape<T>): readonly T[] {
  const anyOf: Shape<unknown> = { read: (entry) => ({ value: entry }) };
  const entries = optional(list(anyOf), []).read(value, at)?.value ?? [];
  return entries.flatMap((entry, i) => {
    const read = shape.read(entry, inside(at, i));
    return read === undefined ? [] : [read.value];
  });
}

/** Jobs that a fault names and the list does not hold. */
function tellUnknown(faults: readonly Fault[], jobs: readonly Job[], at: At): void {
  const known = jobs.map(({ id }) => id);
  for (const { id, jobs: asked } of faults)
    for (const one of asked)
      if (!known.includes(one))
        at.problems.push({
          code: "plan-file.no-job",
          where: { path: inside(at, "faults").path },
          params: { id, found: one, expected: known },
        });
}

/** A job nobody's fault asks for waits with what is watched. */
const UNASKED: { readonly grade: Grade; readonly likelihood: Likelihood } = { grade: "advisory", likelihood: "E" };

/** A job with the key of its most urgent fault and the worst grade of all it answers. */
function workJob(of: Job, faults: readonly Fault[]): WorkJob {
  const answered = faults.filter(({ jobs }) => jobs.includes(of.id));
  const keys = answered.map((one) => urgencyIn(one).key).sort((a, b) => compareKeys(a, b).sign);
  const { own, minutes, ...rest } = of;
  return {
    ...rest,
    minutes: own ?? minutes,
    key: keys[0] ?? unasked(of.id),
    grade: answered.reduce<Grade>((worst, { grade }) => worse(worst, grade) ?? worst, UNASKED.grade),
  };
}

function unasked(id: string): UrgencyKey {
  const none = { what: undefined, dueKm: undefined, nextVisitKm: undefined };
  const rest = { consequence: 4, immobilise: false, exposure: 0, close: false, limitPassed: false, order: 0 } as const;
  return urgencyIn({ id, ...none, ...rest, ...UNASKED }).key;
}
