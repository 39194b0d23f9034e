/**
 * The best order that is found: by urgency, by lateness, the order of an earlier plan, orders drawn with a fixed seed,
 * each moved late and placed again; for a small plan every order. Says only what it has proven.
 */
import { exact } from "./exact.js";
import { latestStarts, lowerBound, type Net, type Placing, topological } from "./net.js";
import { asLate, place } from "./place.js";

export interface SearchSetting {
  readonly before?: readonly number[];
  readonly seed: number;
  readonly passes: number;
  readonly nodeCap: number;
  readonly goOn: () => boolean;
}
export interface Found {
  readonly placing: Placing;
  readonly bound: number;
  readonly proven: boolean;
  readonly stopped: boolean;
}

/** Up to so many tasks every order is looked at. */
const SMALL = 15;

/** Searches. The same net and setting give the same plan; of equal plans the first tried stands, so urgency leads. */
export function search(net: Net, setting: SearchSetting): Found {
  const bound = lowerBound(net);
  const indexes = net.tasks.map((_, i) => i);
  const late = latestStarts(net, topological(net), bound);
  const by = (...keys: readonly ((i: number) => number)[]): number[] =>
    [...indexes].sort((a, b) => keys.reduce((sign, key) => sign || key(a) - key(b), 0) || compareIds(net, a, b));
  const lateness = (i: number): number => (late[i] ?? 0) + (net.tasks[i]?.duration ?? 0);
  const urgent = by((i) => net.tasks[i]?.due ?? 0, lateness);

  let best = place(net, urgent);
  const keep = (placing: Placing): void => {
    if (placing.finish < best.finish) best = placing;
  };
  const met = (): boolean => best.finish <= bound;
  let stopped = false;
  const isOver = (): boolean => {
    stopped ||= !met() && !setting.goOn();
    return stopped || met();
  };
  const attempt = (list: readonly number[]): void => {
    const first = place(net, list);
    keep(first);
    keep(placedAgain(net, first));
  };
  if (setting.before !== undefined && !met()) attempt(withRest(setting.before, urgent));
  if (!met()) attempt(urgent);
  if (!met()) attempt(by(lateness));
  const chance = drawn(setting.seed);
  for (let pass = 0; pass < setting.passes && !isOver(); pass += 1) {
    const base = rankIn(pass % 2 === 0 ? urgent : best.order);
    const spread = indexes.length * (0.1 + 0.9 * chance());
    const shaken = new Map(indexes.map((i) => [i, (base.get(i) ?? 0) + spread * chance()]));
    attempt(by((i) => shaken.get(i) ?? 0));
  }
  if (isOver() || indexes.length > SMALL) return { placing: best, bound, proven: met(), stopped };
  const end = exact(net, best.finish, bound, setting.nodeCap, setting.goOn);
  if (end.order !== undefined) keep(place(net, end.order));
  // What ended early did so at its cap or because it was told to stop; only the second is a stop.
  stopped = !end.ended && end.nodes <= setting.nodeCap;
  return { placing: best, bound, proven: end.ended || met(), stopped };
}

/** Placed as late as it goes within its finish, then early again in that order: often shorter, never longer for long. */
function placedAgain(net: Net, placing: Placing): Placing {
  const late = asLate(net, placing);
  return place(
    net,
    [...placing.order].sort((a, b) => (late[a] ?? 0) - (late[b] ?? 0)),
  );
}

const withRest = (before: readonly number[], all: readonly number[]): readonly number[] => {
  const known = new Set(before);
  return [...before, ...all.filter((i) => !known.has(i))];
};
const rankIn = (list: readonly number[]): ReadonlyMap<number, number> => new Map(list.map((i, rank) => [i, rank]));

function compareIds({ tasks }: Net, a: number, b: number): number {
  const [x, y] = [tasks[a]?.id ?? "", tasks[b]?.id ?? ""];
  return x < y ? -1 : x > y ? 1 : a - b;
}

/** Numbers from 0 to below 1 that look drawn by lot and are the same for the same seed (an xorshift of 32 bits). */
function drawn(seed: number): () => number {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
}
