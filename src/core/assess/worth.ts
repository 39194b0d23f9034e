/**
 * What a point is worth to someone with little time: how grave a thing it can decide, what work that would lead to, how
 * long a look takes. Read off the sheets' own rules, jobs and access; knows no visit, no car and no order.
 */
import { type Plan, readsOf } from "../expr/run.js";
import {
  type BuiltCommon,
  type BuiltSheet,
  type EngineIn,
  engineIn,
  type Point,
  type Rule,
  withBrought,
} from "../sheet/run.js";
import { levelOf } from "../terms/index.js";
import { DRIVE_AWAY } from "../terms/run.js";
import type { Engine } from "./engine.js";
import type { RefInfo } from "./model.js";

export interface Worth {
  /** Car states whose gate stays shut until it is known: without it nobody starts the car, drives it or names a price. */
  readonly opens: readonly string[];
  /** 1 where it opens any. */
  readonly awaited: number;
  /** Level of the worst grade of any rule whose condition looks at the point, raised where a rule may raise it; 0 where none does. */
  readonly decides: number;
  /** Level of the worst grade of a rule that looks at nothing else. */
  readonly alone: number;
  /** Likely minutes of the dearest job those rules of the worst grade lead to, with what must be apart for it. */
  readonly work: number;
  /** Seconds a look at it takes, without the way there. */
  readonly look: number;
  /** A reply to it can stop the engine being run or the car being driven, also where nothing waits for it. */
  readonly stops?: true | undefined;
}

/** Seconds, estimated by ourselves: nobody has published how long a look takes. */
const SECONDS = { point: 15, words: 5, yes: 5, count: 10, dateCode: 15, reading: 20, picture: 15, sound: 20 };

/** Hot is what it was driven to before: nothing starts for it. */
const STARTED: ReadonlySet<EngineIn | undefined> = new Set(["running", "driving"] as const);

type Linked = Pick<Engine, "model">;

/** The worth of every point of these sheets, by its id. */
export function worthOf(
  { model }: Linked,
  common: BuiltCommon,
  sheets: readonly BuiltSheet[],
): ReadonlyMap<string, Worth> {
  const plans: Readonly<Record<string, Plan>> = Object.assign({}, common.plans, ...sheets.map((one) => one.plans));
  const minutes = jobMinutes(common, sheets);
  const found = new Map(model.points.map(({ id }) => [id, { decides: 0, alone: 0, work: 0 }]));
  const pointsOf = (plan: Plan): readonly string[] =>
    readsOf(plan).refs.flatMap((ref) => pointsBehind({ model }, plans, model.refOf(ref)));
  const raisable = new Set(model.rules.map(({ rule }) => raisedBy(rule)));
  const workOf = ({ jobs = [] }: Rule): number => Math.max(0, ...jobs.map((job) => minutes.get(job) ?? 0));
  const gravest = gravestOf(model.rules, workOf);
  for (const { rule, worst, limitOf } of model.rules) {
    const plan = plans[`rules/${rule.id}/when`];
    const raises = gravest.get(raisedBy(rule) ?? "");
    if (plan === undefined || (rule.effect !== "finding" && raises === undefined)) continue;
    const points = new Set(pointsOf(plan));
    if (limitOf) for (const point of pointsBehind({ model }, plans, limitOf)) points.add(point);
    const work = raises ? raises.work : workOf(rule);
    // What raises it is known only after it was found: a point not looked at could have shown it raised.
    const isRaised = raises !== undefined || (rule.fault !== undefined && raisable.has(rule.fault));
    const most = isRaised ? Math.min((raises?.worst ?? worst) + 1, WORST) : worst;
    for (const point of points) {
      const row = found.get(point);
      if (row === undefined) continue;
      row.work = most > row.decides ? work : most === row.decides ? Math.max(row.work, work) : row.work;
      row.decides = Math.max(row.decides, most);
      if (points.size === 1 && raises === undefined) row.alone = Math.max(row.alone, worst);
    }
  }
  const bare = sheets.map(({ sheet }) => sheet);
  // What a gate stands before when the engine is to run or the car to move by itself.
  const started = new Set(
    withBrought(common.common, bare)
      .states.flatMap((state) => (STARTED.has(engineIn(state)) ? [state.id] : []))
      .concat(DRIVE_AWAY),
  );
  const running = new Set(model.gates.filter(({ guards }) => started.has(guards)).map(({ id }) => id));
  // File by file: several may add conditions to one gate.
  const stopping = new Set(
    [common, ...sheets].flatMap((file) =>
      Object.entries(file.plans).flatMap(([path, plan]) => {
        const [list, gate = "", which] = path.split("/");
        return list === "gates" && which === "trips" && running.has(gate) ? pointsOf(plan) : [];
      }),
    ),
  );
  // A gate before an act of the hand (lifting, touching) waits until somebody is about to do it: it comes by itself.
  const gates = model.gates.filter(({ starts, guards }) => starts === "not-cleared" && model.stateOrder.has(guards));
  return new Map(
    model.points.map(({ id, point }) => {
      const row = found.get(id) ?? { decides: 0, alone: 0, work: 0 };
      const opens = [...new Set(gates.filter(({ set }) => set.includes(id)).map(({ guards }) => guards))];
      const worth: Worth = { ...row, opens, awaited: Math.min(1, opens.length), look: lookSeconds(point) };
      return [id, stopping.has(id) ? { ...worth, stops: true } : worth];
    }),
  );
}

/** The fault a rule raises, where it is one that raises. */
const raisedBy = ({ effect }: Rule): string | undefined =>
  typeof effect === "object" && "raise" in effect ? effect.raise : undefined;

interface Grave {
  readonly worst: number;
  readonly work: number;
}

/** By fault: the worst grade any rule finds it with, unraised, and the work that leads to. */
function gravestOf(rules: Linked["model"]["rules"], workOf: (rule: Rule) => number): ReadonlyMap<string, Grave> {
  const by = new Map<string, Grave>();
  for (const { rule, worst } of rules) {
    if (rule.effect !== "finding" || rule.fault === undefined) continue;
    const [there, work] = [by.get(rule.fault), workOf(rule)];
    if (!there || worst > there.worst) by.set(rule.fault, { worst, work });
    else if (worst === there.worst) by.set(rule.fault, { worst, work: Math.max(there.work, work) });
  }
  return by;
}

/** No raise goes beyond it. */
const WORST = levelOf("dangerous");

/** A grade grave enough to walk away from a car: major or dangerous. */
export const WALK_AWAY: number = levelOf("major");

/** The points a name stands for in the end: a value worked out stands for every point it is worked out from. */
function pointsBehind(
  { model }: Linked,
  plans: Readonly<Record<string, Plan>>,
  ref: RefInfo,
  seen: ReadonlySet<string> = new Set(),
): readonly string[] {
  if (ref.is === "field") return [ref.point.id];
  if (ref.is === "stranger" || seen.has(ref.name)) return [];
  const path = new Set([...seen, ref.name]);
  const formula = plans[`derived/${ref.derived.derived.id}/formula`];
  const from = [
    ...(formula ? readsOf(formula).refs.map((one) => model.refOf(one)) : []),
    ...ref.derived.prefer.flatMap((name) => model.named(name) ?? []),
  ];
  return from.flatMap((one) => pointsBehind({ model }, plans, one, path));
}

/** Likely minutes of every job, with setting up and putting back all that must be open for it. */
function jobMinutes(common: BuiltCommon, sheets: readonly BuiltSheet[]): ReadonlyMap<string, number> {
  const access = new Map(common.common.access.map((one) => [one.id, one]));
  const opened = (id: string, all: Set<string>): Set<string> => {
    if (all.has(id)) return all;
    all.add(id);
    for (const need of access.get(id)?.needs ?? []) opened(need, all);
    return all;
  };
  return new Map(
    sheets.flatMap(({ sheet }) =>
      sheet.jobs.map((job) => {
        const open = job.access.reduce((all, id) => opened(id, all), new Set<string>());
        const there = [...open]
          .map((id) => access.get(id))
          .flatMap((one) => (one ? [one.setUp[1], one.putBack[1]] : []));
        return [job.id, there.reduce((sum, one) => sum + one, job.minutes[1])] as const;
      }),
    ),
  );
}

/** Reading the question and looking, then each answer; a stopwatch runs as long as it says. */
function lookSeconds({ fields, needs = [] }: Point): number {
  const answers = Object.values(fields).map((field) => {
    if ("words" in field) return SECONDS.words;
    if ("yes" in field) return SECONDS.yes;
    if ("count" in field) return SECONDS.count;
    if ("dateCode" in field) return SECONDS.dateCode;
    const watch = typeof field.stopwatch === "number" ? field.stopwatch : 0;
    return field.optional === true && watch === 0 ? 0 : watch + SECONDS.reading * (field.shots ?? 1);
  });
  const shown = needs.map((need) => (need === "picture" ? SECONDS.picture : need === "sound" ? SECONDS.sound : 0));
  return [...answers, ...shown].reduce<number>((sum, one) => sum + one, SECONDS.point);
}
