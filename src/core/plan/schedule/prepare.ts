/**
 * From activities, parts and opening times to tasks on the line of working minutes, each with the reasons why it may
 * not start earlier. Searches nothing.
 */
import type { Problem } from "../../terms/index.js";
import type { Spell } from "./blocks.js";
import type { LocalMinute, WorkAxis } from "./calendar.js";
import type { Activity, Gate, Hold, ScheduleInput } from "./contract.js";
import { DAY_MINUTES, type DayNumber, dayNumber } from "./days.js";
import type { Later } from "./elapsed.js";
import { latestStarts, type Net, type Task, topological } from "./net.js";
import type { Coming } from "./parts.js";
import { asLate, place } from "./place.js";
import { peopleOf, soundOf } from "./sound.js";

/** A working minute before which a task may not start, and the cause told of it. */
export interface Wait {
  readonly at: number;
  readonly day: DayNumber;
  readonly hold: Extract<Hold, { cause: "day" | "part" }>;
}

export interface Prepared {
  readonly net: Net;
  readonly spells: readonly (Spell & { readonly kept: Gate })[];
  /** By task. */
  readonly waits: readonly (readonly Wait[])[];
  readonly leftOut: readonly string[];
  readonly problems: readonly Problem[];
}

/** What a plan stands on and a re-run shares. */
export interface Ground {
  readonly input: ScheduleInput;
  readonly axis: WorkAxis;
  readonly later: Later;
  /** When the car is there. */
  readonly begins: LocalMinute;
  readonly coming: readonly Coming[];
}

/** Tasks of all that can be planned. `without`: jobs without a date; `here`: a part taken to be in hand. */
export function prepare(ground: Ground, without: ReadonlySet<string>, here?: string): Prepared {
  const { activities, spells, leftOut, problems } = soundOf(ground.input, without);
  const index = new Map(activities.map(({ id }, i) => [id, i]));
  const toolNames = [...new Set(activities.flatMap(({ tool }) => tool ?? []))];
  const spellAt = (id: string): number => spells.findIndex(({ members }) => members.has(id));
  const waits: (readonly Wait[])[] = activities.map((activity) => waitsOf(ground, activity, here));
  const indexes = (ids: readonly string[]): readonly number[] => ids.flatMap((id) => index.get(id) ?? []);
  const succs: number[][] = activities.map(() => []);
  activities.forEach(({ preds }, i) => {
    for (const pred of indexes(preds)) succs[pred]?.push(i);
  });
  const tasks = activities.map((activity, i): Task => {
    const block = spellAt(activity.id);
    return {
      id: activity.id,
      duration: activity.minutes,
      people: peopleOf(activity),
      lift: activity.lift === true && block === -1,
      tool: activity.tool === undefined ? -1 : toolNames.indexOf(activity.tool),
      release: Math.max(0, ...(waits[i] ?? []).map(({ at }) => at)),
      preds: indexes(activity.preds),
      succs: succs[i] ?? [],
      block,
      due: activity.due ?? 0,
      wall: activity.wall ?? 0,
      ...waiting(ground, activity.wall ?? 0),
    };
  });
  const { people, lifts } = ground.input.calendar;
  const blocks = spells.map(({ open, close }) => ({ open: index.get(open) ?? -1, close: index.get(close) ?? -1 }));
  const net: Net = { tasks, blocks, people, lifts, tools: toolNames.length };
  const gated = spells.map((spell, block) => {
    const members = tasks.flatMap((task, i) => (task.block === block ? i : []));
    const parts = members.flatMap((i) => (waits[i] ?? []).filter(({ hold }) => hold.cause === "part"));
    const kept = keptGate(ground, spell, parts);
    const opens = blocks[block]?.open ?? -1;
    const gates = gateWaits(net, members, opens, kept, parts, spell.id);
    waits[opens] = [...(waits[opens] ?? []), ...gates];
    const release = Math.max(0, ...(waits[opens] ?? []).map(({ at }) => at));
    tasks[opens] = { ...(tasks[opens] as Task), release };
    return { ...spell, kept };
  });
  return { net, spells: gated, waits, leftOut, problems };
}

function waitsOf({ axis, coming }: Ground, { id, release }: Activity, here: string | undefined): readonly Wait[] {
  const on = (day: DayNumber, hold: Wait["hold"]): Wait => ({ at: axis.worked(day * DAY_MINUTES), day, hold });
  const day = release === undefined ? undefined : dayNumber(release);
  const parts = coming.flatMap(({ need, day: comes, told }) =>
    need.job !== id || need.id === here || comes === undefined || told === undefined
      ? []
      : on(comes, { job: id, cause: "part", ...told }),
  );
  if (day === undefined || release === undefined) return parts;
  return [on(day, { job: id, cause: "day", date: release }), ...parts];
}

/** Just in time only where the day of every part that is still to come is confirmed. */
function keptGate({ coming }: Ground, { gate, members }: Spell, parts: readonly Wait[]): Gate {
  if (gate !== "just-in-time") return gate;
  const waited = new Set(parts.flatMap(({ hold }) => (hold.cause === "part" ? hold.part : [])));
  const isSure = coming.every(({ need, confirmed }) => confirmed || !members.has(need.job) || !waited.has(need.id));
  return isSure ? gate : "parts-in-hand";
}

function gateWaits(
  net: Net,
  members: readonly number[],
  opens: number,
  gate: Gate,
  parts: readonly Wait[],
  block: string,
): readonly Wait[] {
  if (gate === "at-once" || parts.length === 0) return [];
  const told = parts.map((wait): Wait => ({ ...wait, hold: { ...wait.hold, block } as Wait["hold"] }));
  if (gate === "parts-in-hand") return told;
  // As late as the block, by itself, may be opened without ending later.
  const inside = part(net, members);
  const order = topological(inside);
  const late = latestStarts(inside, order, 0);
  const list = [...order].sort((a, b) => (late[a] ?? 0) - (late[b] ?? 0));
  const at = asLate(inside, place(inside, list))[members.indexOf(opens)] ?? 0;
  const last = told.reduce((a, b) => (b.at > a.at ? b : a));
  return [{ ...last, at }];
}

/** Some tasks by themselves, with everybody for them. */
function part(net: Net, members: readonly number[]): Net {
  const at = (indexes: readonly number[]): readonly number[] =>
    indexes.map((i) => members.indexOf(i)).filter((i) => i !== -1);
  const tasks = members.map((i): Task => {
    const task = net.tasks[i] as Task;
    return { ...task, preds: at(task.preds), succs: at(task.succs), block: -1 };
  });
  return { ...net, tasks, blocks: [] };
}

function waiting({ axis, later }: Ground, wall: number): Pick<Task, "ready" | "latest"> {
  if (wall === 0) return { ready: (finish) => finish, latest: (start) => start };
  const ready = (finish: number): number => axis.worked(later(axis.endsAt(finish), wall));
  const latest = (start: number): number => {
    let [low, high] = [Math.min(-1, start), start];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (ready(middle) <= start) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  return { ready, latest };
}
