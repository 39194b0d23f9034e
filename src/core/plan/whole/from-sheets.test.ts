// From what is due and what the sheets say to work that can be planned: openings at this car's places, order, parts.
import { expect, test } from "vitest";
import type { JobDue } from "../../assess/contract.js";
import { type Places, type SheetJob, workFromSheets } from "./from-sheets.js";

const due = (job: string, place: string): JobDue => ({
  job,
  place,
  grade: "major",
  faults: [],
  rank: 6,
  byWhen: { class: 2 },
  key: { gate: 1, due: 2, rank: 6, grade: "major", left: null, position: 1, id: `${job}@${place}` },
  why: [],
  includes: [],
});
const CORNERS = ["FL", "FR", "RL", "RR"];
/** Four corners on two axles; `tube` lies in the rear left corner, `sill` in none. */
const PLACES: Places = {
  around: (place, kind) => {
    const corner = place === "tube" ? "RL" : CORNERS.find((one) => one === place);
    if (kind === "car") return "car";
    if (kind === "corner") return corner;
    return kind === "axle" ? (place.startsWith("axle") ? place : corner && `axle-${corner[0]}`) : undefined;
  },
  ofKind: (kind) => (kind === "corner" ? CORNERS : []),
  within: (outer, inner) =>
    outer === inner || outer === "car" || (outer.startsWith("axle") && inner.startsWith(outer.slice(5))),
};
const ACCESS = [
  { id: "lift", place: "car", setUp: [3, 5, 10], putBack: [3, 5, 8] },
  { id: "wheel-off", place: "corner", needs: ["lift"], setUp: [3, 5, 8], putBack: [4, 6, 10] },
  { id: "hub-off", place: "corner", needs: ["wheel-off"], setUp: [10, 20, 40], putBack: [15, 25, 40] },
] as const;
const JOBS = new Map<string, SheetJob>(
  (
    [
      { id: "bearing", access: ["hub-off"], minutes: [60, 80, 120], parts: [{ part: "races", set: "matched" }] },
      { id: "pads", access: ["wheel-off"], minutes: [20, 30, 45] },
      { id: "geometry", access: ["lift"], minutes: [30, 45, 60], follows: ["bearing", "weld"] },
      { id: "weld", access: [], minutes: [60, 90, 200] },
      { id: "joint", access: ["wheel-off"], minutes: [30, 40, 60], follows: ["weld"] },
    ] satisfies readonly SheetJob[]
  ).map((job) => [job.id, job]),
);
const plan = (...jobs: readonly JobDue[]) => workFromSheets(jobs, JOBS, ACCESS, PLACES);

test("an opening stands at this car's place, with what must be open first, each once", () => {
  const { work, openings } = plan(due("bearing", "FR"), due("pads", "FR"));
  expect(work.map(({ access }) => access)).toEqual([["hub-off@FR"], ["wheel-off@FR"]]);
  expect(openings.map(({ id, parents }) => [id, ...parents])).toEqual([
    ["hub-off@FR", "wheel-off@FR"],
    ["wheel-off@FR", "lift@car"],
    ["lift@car"],
  ]);
});

test("a job on an axle opens both its corners", () => {
  expect(plan(due("pads", "axle-F")).work[0]?.access).toEqual(["wheel-off@FL", "wheel-off@FR"]);
});

test("what comes first is named where the work meets on the car, and nowhere else", () => {
  const { work } = plan(due("weld", "tube"), due("joint", "RL"), due("joint", "FR"), due("geometry", "car"));
  expect(work.map(({ follows }) => follows)).toEqual([[], ["weld@tube"], [], ["weld@tube"]]);
});

test("a rule's order holds at the place it was said of", () => {
  const orders = [{ before: "pads", after: "bearing", place: "FR", rule: "r" }];
  const jobs = [due("pads", "FR"), due("pads", "FL"), due("bearing", "FR"), due("bearing", "FL")];
  const { work } = workFromSheets(jobs, JOBS, ACCESS, PLACES, orders);
  expect(work.map(({ follows }) => follows)).toEqual([[], [], ["pads@FR"], []]);
});

test("a job no sheet knows has no minutes, no access and no parts; nothing is made up for it", () => {
  expect(plan(due("own.1", "car")).work[0]).toEqual({
    id: "own.1@car",
    due: due("own.1", "car"),
    kind: "own.1",
    access: [],
    follows: [],
    parts: [],
  });
});

test("an access tree that runs in a circle ends, and is left to the access graph to tell", () => {
  const round = [
    { id: "a", place: "car", needs: ["b"], setUp: [1, 1, 1], putBack: [1, 1, 1] },
    { id: "b", place: "car", needs: ["a"], setUp: [1, 1, 1], putBack: [1, 1, 1] },
  ] as const;
  const jobs = new Map<string, SheetJob>([["x", { id: "x", access: ["a"], minutes: [1, 1, 1] }]]);
  const { openings } = workFromSheets([due("x", "car")], jobs, round, PLACES);
  expect(openings.map(({ id, parents }) => [id, ...parents]).sort()).toEqual([
    ["a@car", "b@car"],
    ["b@car", "a@car"],
  ]);
});

test("what a job cannot do without afterwards comes once, behind the most urgent; not where it is due anyway", () => {
  const jobs = new Map<string, SheetJob>([
    ["hose", { id: "hose", access: [], minutes: [1, 1, 1], "ends-in": ["bleed"] }],
    ["bleed", { id: "bleed", place: "car", access: [], minutes: [30, 45, 70], "included-in": ["fluid"] }],
    ["fluid", { id: "fluid", place: "car", access: [], minutes: [40, 60, 90] }],
  ]);
  const list = (...all: readonly JobDue[]) => workFromSheets(all, jobs, ACCESS, PLACES).work;
  const both = list(due("hose", "FL"), due("hose", "RR"));
  expect(both.map(({ id }) => id)).toEqual(["hose@FL", "bleed@car", "hose@RR"]);
  expect(both[1]?.due).toMatchObject({ rank: 6, why: [{ code: "brought-along" }] });
  expect(list(due("hose", "FL"), due("fluid", "car")).map(({ id }) => id)).toEqual(["hose@FL", "fluid@car"]);
  expect(list(due("bleed", "car"), due("hose", "FL")).map(({ id }) => id)).toEqual(["bleed@car", "hose@FL"]);
});
