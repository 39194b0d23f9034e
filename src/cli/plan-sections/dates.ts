/** Dates: the critical path, shortest plans for people and lifts, when parts come, and the car stranded on the lift. */
import {
  type Activity,
  arrivesOn,
  criticalPath,
  type Gate,
  type LocalTime,
  type Schedule,
  schedule,
} from "../../core/plan/index.js";
import { DAY_MS } from "../../core/terms/index.js";
import { caseOf, eachOf, firstOf, has, type Section, tellAll, tidy, underName } from "./section.js";
import { type At, asFields, fields, list, name, notNegative, one, optional, text, whole, word } from "./shape.js";

const cpmCase = caseOf(
  fields({
    acts: list(fields({ id: name, dur: whole, pred: optional(list(name), []), release: optional(whole, 0) })),
  }),
  ({ acts }, at, raw) => {
    const path = criticalPath(acts.map(({ id, dur, pred, release }) => ({ id, duration: dur, preds: pred, release })));
    if (!path.ok) {
      tellAll(path.problems, at);
      return undefined;
    }
    const { finish, critical, rows } = path.value;
    const table = rows.map(({ id, es, ef, ls, lf, total, free }) => [
      id,
      { ES: es, EF: ef, LS: ls, LF: lf, TF: total, FF: free },
    ]);
    return { acts: raw["acts"], expected: { T: finish, critical, table: Object.fromEntries(table) } };
  },
);
const isCpm = (value: unknown): boolean => has(firstOf(value, "acts"), "id", "dur");

export const cpm: Section = {
  name: "cpm",
  isSection: (value) => Array.isArray(value) && isCpm(value[0]),
  answer: (value, at) => eachOf(value, at, cpmCase),
  isCase: isCpm,
  answerCase: cpmCase,
};

/** A shop that never shuts, in which each unit of a case is a day: so that a release in whole units is a date. */
const DAY = 1440;
const FIRST = Date.UTC(2026, 0, 5) / DAY_MS;
const date = (day: number): string => new Date((FIRST + day) * DAY_MS).toISOString().slice(0, 10);
const unitsOf = ({ date: on, minute }: LocalTime): number => Date.parse(on) / DAY_MS - FIRST + minute / DAY;
const ground = (people: number, lifts: number) => ({
  today: date(0),
  from: { date: date(0), minute: 0 },
  calendar: { zone: "Etc/UTC", week: Array.from({ length: 7 }, () => [[0, DAY] as const]), closed: [], people, lifts },
});

const smallCase = caseOf(
  fields({
    cap: one("how many people, and how many lifts", (value): readonly [number, number] | undefined => {
      const [people, lifts = 0]: readonly unknown[] = Array.isArray(value) ? value : [];
      return Number.isSafeInteger(people) && Number.isSafeInteger(lifts) ? [Number(people), Number(lifts)] : undefined;
    }),
    acts: list(
      fields({ dur: whole, pred: optional(list(whole), []), req: list(whole, 1), release: optional(whole, 0) }),
    ),
  }),
  ({ cap, acts }, at, raw) => {
    const many = acts.findIndex(({ req }) => (req[1] ?? 0) > 1);
    if (many >= 0) {
      word(0, 1).read(acts[many]?.req[1], { ...at, path: `${at.path}.acts[${many}].req[1]` });
      return undefined;
    }
    const activities = acts.map(({ dur, pred, req, release }, i): Activity => {
      const [people = 1, lift = 0] = req;
      const id = `acts[${i}]`;
      const preds = pred.map((before) => `acts[${before}]`);
      const act = { id, minutes: dur * DAY, preds, people, lift: lift === 1 };
      return release === 0 ? act : { ...act, release: date(release) };
    });
    const plan = schedule({ ...ground(...cap), activities });
    tellAll(plan.ok ? plan.value.problems : plan.problems, at);
    if (!plan.ok || plan.value.leftOut.length > 0 || plan.value.finish === undefined) return undefined;
    return { cap, acts: raw["acts"], optimum: unitsOf(plan.value.finish), proven: plan.value.proven };
  },
);
const isSmall = (value: unknown): boolean => has(value, "cap", "acts");

export const smallPlans: Section = {
  name: "rcpsp_small",
  isSection: (value) => isSmall(firstOf(value, "cases")),
  answer: underName("cases", smallCase),
  isCase: isSmall,
  answerCase: smallCase,
};

/** Results of public benchmarks: nothing can be worked out without their instances. */
export const benchmarks: Section = {
  name: "rcpsp_reference",
  isSection: (value) => has(firstOf(value, "instances"), "optimum"),
  answer: (_, at) => {
    at.problems.push({ code: "plan-file.no-instances", where: { path: at.path }, params: {} });
    return null;
  },
};

const MONDAY_TO_FRIDAY = [1, 2, 3, 4, 5];
const leadCase = caseOf(
  fields({
    ordered: text,
    leadDays: whole,
    closed: optional(list(list(text, 2)), []),
    carriageDays: optional(whole, 0),
    week: optional(list(whole), MONDAY_TO_FRIDAY),
  }),
  ({ ordered, leadDays, closed, carriageDays, week }, at, raw) => {
    const shut = closed.map(([from = "", to = ""]) => ({ from, to }));
    const arrives = arrivesOn({ id: "supplier", week, closed: shut, leadDays, carriageDays }, ordered);
    if (!arrives.ok) {
      tellAll(arrives.problems, at);
      return undefined;
    }
    const said = Object.fromEntries(["carriageDays", "week"].flatMap((key) => (key in raw ? [[key, raw[key]]] : [])));
    return { ordered, leadDays, closed, ...said, arrives: arrives.value };
  },
);
const isLead = (value: unknown): boolean => has(value, "ordered", "leadDays");

export const leadTime: Section = {
  name: "lead_time",
  isSection: (value) => isLead(firstOf(value, "cases")),
  answer: underName("cases", leadCase),
  isCase: isLead,
  answerCase: leadCase,
};

const hour = optional(notNegative);
/** Hours: gearbox out 6, fit 1, in 6, the part at hour 72. */
const USUAL = { partAt: 72, out: 6, fit: 1, in: 6 };
const GATES = { early: "at-once", kitFirst: "parts-in-hand", justInTime: "just-in-time" } as const;

const stranded = caseOf(fields({ partAt: optional(whole), out: hour, fit: hour, in: hour }), (given, at, raw) => {
  const hours = Object.fromEntries(
    Object.entries(USUAL).map(([key, usual]) => [key, given[key as keyof typeof USUAL] ?? usual]),
  ) as typeof USUAL;
  const said = Object.fromEntries(Object.keys(USUAL).flatMap((key) => (key in raw ? [[key, raw[key]]] : [])));
  const rows = Object.entries(GATES).map(([key, gate]) => {
    const told = heldBy(hours, gate, at);
    const onlyWhen = asFields(raw[key])?.["onlyWhen"];
    return [key, told && { ...told, ...(typeof onlyWhen === "string" ? { onlyWhen } : {}) }] as const;
  });
  return rows.some(([, told]) => told === undefined) ? undefined : { ...said, ...Object.fromEntries(rows) };
});

/** One car on one lift, out and in again round a part that is sure to come at that hour. */
function heldBy(hours: typeof USUAL, gate: Gate, at: At) {
  const minutes = (of: number): number => Math.round(of * DAY);
  const plan = schedule({
    ...ground(1, 1),
    activities: [
      { id: "out", minutes: minutes(hours.out), preds: [] },
      { id: "fit", minutes: minutes(hours.fit), preds: [] },
      { id: "in", minutes: minutes(hours.in), preds: [] },
    ],
    blocks: [{ id: "block", open: "out", jobs: ["fit"], close: "in", gate }],
    parts: [{ id: "part", job: "fit", comes: date(hours.partAt), confirmed: true }],
  });
  if (gate === "at-once" || !plan.ok) tellAll(plan.ok ? plan.value.problems : plan.problems, at);
  return plan.ok ? lifted(plan.value) : undefined;
}

function lifted({ finish, lifts: [use] }: Schedule) {
  if (finish === undefined || use === undefined) return undefined;
  return {
    start: tidy(unitsOf(use.from)),
    finish: tidy(unitsOf(finish)),
    liftHeld: tidy(use.held / DAY),
    liftIdle: tidy(use.idle / DAY),
  };
}

export const stranding: Section = {
  name: "stranding",
  isSection: (value) => Object.keys(GATES).some((key) => has(value, key)) || has(value, "partAt"),
  answer: stranded,
};
