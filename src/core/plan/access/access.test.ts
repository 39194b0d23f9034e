// Access at the car: what is faulty is told and left out, shared access is paid once, and either/or is chosen together.
import { expect, test } from "vitest";
import {
  type AccessJob,
  type AccessState,
  accessOf,
  type BundlePart,
  bundlesOf,
  equalSplit,
  hours,
  marginal,
  minutesOf,
  type Offer,
  opportunity,
  PLAN_MESSAGES,
  settleWays,
  tellPlan,
} from "../index.js";

const state = (id: string, minutes: number, ...parents: string[]): AccessState => ({
  id,
  parents,
  setUp: [minutes, minutes, minutes],
  putBack: [0, 0, 0],
});
const job = (id: string, own: number, ...access: string[]): AccessJob => ({ id, own: [own, own, own], access });
const eitherOr = (id: string, own: number, ...ways: string[][]): AccessJob => ({ ...job(id, own), ways });

const STATES = [
  state("lift", 10),
  state("wheel", 20, "lift"),
  state("hub", 100, "wheel"),
  state("covers", 30, "lift"),
  state("carpets", 60),
  state("engine", 700, "lift"),
  state("gearbox", 400, "lift"),
];

test("PA1: what is faulty is named and set aside, what is not is still planned", () => {
  const got = accessOf(
    [
      ...STATES,
      state("a", 5, "b"),
      state("b", 5, "c"),
      state("c", 5, "a"),
      state("behind", 5, "a"),
      state("nowhere", 5, "roof"),
      { ...state("wrong", 5), setUp: [5, 4, 9] },
      state("lift", 99),
    ],
    [
      job("bearing", 70, "hub"),
      job("round", 10, "b"),
      job("hidden", 10, "behind"),
      job("typing", 10, "whele"),
      { id: "unknown", access: ["lift"] },
      { ...job("minus", 10), own: [-1, 4, 9] },
      job("bearing", 1),
    ],
  );
  expect(got.jobs.map(({ id }) => id)).toEqual(["bearing"]);
  expect(hours(got.jobs)).toEqual([200, 200, 200]);
  expect(got.setAside).toEqual(["round", "hidden", "typing", "unknown", "minus"]);
  const told = got.problems.map(tellPlan).join("\n");
  expect(told).toContain("round and round: a → c → b → a");
  expect(told).toContain("nowhere needs roof open first, which is not known");
  expect(told).toContain("wrong: 5, 4, 9 minutes");
  expect(told).toContain("hidden needs behind, which can't be planned");
  expect(told).toContain("typing needs whele, which can't be planned");
  expect(told).toContain("unknown has no minutes");
  expect(told).toContain("minus: -1, 4, 9 minutes");
  expect(told).toContain("lift stands twice");
  expect(told).toContain("bearing stands twice");
  for (const { code } of got.problems) expect(PLAN_MESSAGES[code], code).toBeDefined();
});

test("PA2: no jobs take no time; a job among those done adds nothing; low, likely and high are summed apart", () => {
  const { jobs } = accessOf(
    [{ id: "lift", parents: [], setUp: [3, 5, 10], putBack: [3, 5, 8] }],
    [
      { id: "a", own: [1, 2, 3], access: ["lift"] },
      { id: "b", own: [10, 20, 40], access: ["lift", "lift"] },
    ],
  );
  const [a, b] = jobs;
  if (a === undefined || b === undefined) throw new Error("a job is missing");
  expect(hours([])).toEqual([0, 0, 0]);
  expect(hours([a, b])).toEqual([17, 32, 61]);
  expect(hours([a, b, a])).toEqual([17, 32, 61]);
  expect(marginal(a, [b]).added).toEqual([1, 2, 3]);
  expect(marginal(a, [a, b]).added).toEqual([0, 0, 0]);
});

test("PA3: odd minutes go one each to the largest remainders, and low never passes high", () => {
  const { jobs } = accessOf(
    [{ id: "lift", parents: [], setUp: [4, 5, 10], putBack: [0, 0, 0] }],
    ["c", "a", "b"].map((id) => ({ id, own: [0, 0, 0] as const, access: ["lift"] })),
  );
  expect(equalSplit(jobs)).toEqual([
    { job: "c", minutes: [1, 1, 3] },
    { job: "a", minutes: [2, 2, 4] },
    { job: "b", minutes: [1, 2, 3] },
  ]);
});

const shape = (parts: readonly BundlePart[]): unknown =>
  parts.map((p) => (p.kind === "job" ? p.job : { [p.states.map((s) => s.state).join("+")]: shape(p.parts) }));

test("PA4: jobs stand under what they share, the most urgent first; what only one opens stays on its line", () => {
  const { jobs } = accessOf(STATES, [
    job("lamp", 10),
    job("disc", 25, "wheel"),
    job("bearing", 70, "hub"),
    job("tube", 420, "covers", "carpets"),
    job("mount", 240, "carpets", "covers"),
    job("pads", 40, "wheel"),
  ]);
  const forest = bundlesOf(jobs);
  expect(shape(forest)).toEqual([
    "lamp",
    { lift: [{ wheel: ["disc", "bearing", "pads"] }, { "carpets+covers": ["tube", "mount"] }] },
  ]);
  const lift = forest[1];
  expect(lift).toMatchObject({ kind: "bundle", first: "disc", minutes: [1015, 1015, 1015] });
  expect(forest.map((part) => minutesOf(part)[1]).reduce((a, b) => a + b)).toBe(hours(jobs)[1]);
  expect(JSON.stringify(forest)).toContain('"job":"bearing","own":[70,70,70],"alone":[{"state":"hub"');
});

test("PA4: a job that shares one thing here and another there stands once and names the other", () => {
  const { jobs } = accessOf(STATES, [
    job("disc", 25, "wheel"),
    job("both", 70, "wheel", "carpets"),
    job("floor", 40, "carpets"),
  ]);
  const forest = bundlesOf(jobs);
  expect(shape(forest)).toEqual([{ "lift+wheel": ["disc"] }, { carpets: ["both", "floor"] }]);
  expect(JSON.stringify(forest)).toContain('"job":"both","own":[70,70,70],"alone":[],"also":["lift","wheel"]');
});

test("PA5: the way in is chosen for the whole visit, not for the job alone", () => {
  const jobs = [eitherOr("clutch", 60, ["gearbox"], ["engine"]), job("gasket", 90, "engine")];
  const { jobs: reached } = accessOf(STATES, jobs);
  const alone = settleWays(reached.slice(0, 1));
  expect(alone).toMatchObject({ proven: true, chosen: [{ job: "clutch", way: 0, otherAdds: 300, forOthers: false }] });
  const both = settleWays(reached);
  expect(both.chosen).toEqual([{ job: "clutch", way: 1, otherAdds: 400, forOthers: true }]);
  expect(hours(both.jobs)).toEqual([860, 860, 860]);
});

test("PA5: beyond a dozen choices the ways are taken one by one, and it is said", () => {
  const many = Array.from({ length: 13 }, (_, i) => eitherOr(`j${10 + i}`, 1, ["gearbox"], ["engine"]));
  const got = settleWays(accessOf(STATES, [job("gasket", 90, "engine"), ...many]).jobs);
  expect(got.proven).toBe(false);
  expect(new Set(got.chosen.map(({ way }) => way))).toEqual(new Set([1]));
  expect(settleWays(accessOf(STATES, many.slice(1)).jobs).proven).toBe(true);
});

test("PA5: a way that can't be planned is not weighed; without any the job is set aside", () => {
  const got = accessOf(STATES, [eitherOr("a", 1, ["roof"], ["engine"]), eitherOr("b", 1, ["roof"], ["floor"])]);
  expect(got.setAside).toEqual(["b"]);
  expect(settleWays(got.jobs)).toMatchObject({ chosen: [], jobs: [{ id: "a", ways: [{ way: 1 }] }] });
  expect(tellPlan(got.problems[0] ?? { code: "", where: {}, params: {} })).toContain("a: way 1 needs roof");
});

const offer = (more: Partial<Offer>): Offer => {
  const { jobs } = accessOf(STATES, [job("clutch", 60, "gearbox"), job("seal", 35, "gearbox")]);
  const [clutch, seal] = jobs;
  if (clutch === undefined || seal === undefined) throw new Error("a job is missing");
  return { job: "seal", marginal: marginal(seal, [clutch]), ...more };
};
const why = (more: Partial<Offer>) => {
  const got = opportunity(offer(more));
  return got.ok ? got.value.why : got.problems.map(tellPlan).join();
};

test("PA6: while it is apart, a job is offered for its date or its money, and not on figures nobody has", () => {
  expect(why({})).toBe("not-known");
  expect(why({ rate: 9000 })).toBe("not-known");
  expect(why({ rate: 9000, partPrice: 1800 })).toBe("not-known");
  expect(why({ rate: 9000, partPrice: 1800, lifeLeft: 50 })).toBe("saves-more");
  expect(why({ rate: 9000, lifeLeft: 0 })).toBe("saves-more");
  expect(why({ rate: 9000, partPrice: 0 })).toBe("saves-more");
  expect(why({ rate: 0, partPrice: 0 })).toBe("saves-less");
  expect(why({ due: { km: 9000 }, opensNext: { km: 40_000 } })).toBe("due-first");
  expect(why({ due: { km: 40_000, date: "2026-03-01" }, opensNext: { km: 40_000, date: "2026-03-02" } })).toBe(
    "due-first",
  );
  expect(why({ due: { km: 9000 }, opensNext: { date: "2026-03-02" } })).toBe("not-known");
  expect(why({ due: { km: 9000 } })).toBe("not-known");
});

test("PA6: equal is not more: 410 minutes at 90.00 an hour against exactly 615.00", () => {
  expect(why({ rate: 9000, partPrice: 61_500, lifeLeft: 100 })).toBe("saves-less");
  expect(why({ rate: 9000, partPrice: 61_499, lifeLeft: 100 })).toBe("saves-more");
});

test("PA6: half of its access shared is enough, a minute less is not", () => {
  const ratio = (own: number) => {
    const [a, b] = accessOf([state("nose", 100)], [job("a", 1, "nose"), job("b", own, "nose")]).jobs;
    if (a === undefined || b === undefined) throw new Error("a job is missing");
    return why({ marginal: marginal(b, [a]), due: { km: 1 }, opensNext: { km: 2 } });
  };
  expect([ratio(100), ratio(101)]).toEqual(["due-first", "little-shared"]);
});

test("PA6: a figure that can't be is told, never reckoned with", () => {
  expect(why({ rate: -1 })).toContain("the labour rate is -1");
  expect(why({ partPrice: 0.5 })).toContain("the part's price is 0.5");
  expect(why({ lifeLeft: 101 })).toContain("life left is 101");
});
