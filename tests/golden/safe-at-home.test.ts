/**
 * Safe at home: over all sheets, whatever an owner answers and however it comes out (fine, tell the workshop, don't
 * drive), nothing is asked that needs a jack, takes something apart or opens a fuel or brake part; the rest says why it
 * is left to the workshop.
 */
import { beforeAll, expect, test } from "vitest";
import { type Checklists, loadChecklists } from "../../src/build/load-checklists.js";
import { caseReplies } from "../../src/cli/run-cases.js";
import { isAskedHere } from "../../src/app/state/stops.js";
import { type Assessment, type AssessInput, prepare, reassess, type Session, start } from "../../src/core/assess/index.js";
import type { Point, PointText } from "../../src/core/sheet/run.js";
import { unsafeAtHome } from "../support/safe-at-home.js";

let lists: Checklists;
let known: ReadonlyMap<string, { readonly point: Point; readonly text: PointText }>;
let untouched: Session;

const OWNER: Omit<AssessInput, "sheets"> = {
  at: "2026-06-01T10:00:00Z",
  who: "owner",
  car: { facts: {}, limits: [] },
  complaints: [],
  replies: [],
  earlier: [],
  exposure: 0,
};

beforeAll(async () => {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error("the sheets do not load");
  lists = result.value;
  known = new Map(
    lists.sheets.flatMap(({ sheet }) =>
      sheet.points.map((point) => {
        const text = sheet.texts["en"]?.points[point.id];
        if (!text) throw new Error(`${point.id} has no words`);
        return [point.id, { point, text }] as const;
      }),
    ),
  );
  const built = lists.sheets.map((one) => one.built);
  untouched = start(prepare(lists.common, built), { ...OWNER, sheets: built.map(({ sheet }) => sheet.id) });
}, 240_000);

const stateOf = () => new Map(lists.wholeWithTexts.states.map((one) => [one.id, one]));

/** What is wrong with asking this point in this car state: the same however often it comes up. */
const judged = new Map<string, readonly string[]>();
function offencesOf(id: string, state: string): readonly string[] {
  const there = judged.get(`${id} ${state}`);
  if (there) return there;
  const of = known.get(id);
  const why = of ? unsafeAtHome(of.point, of.text, state, lists.wholeWithTexts).map((one) => `${id}: ${one}`) : [id];
  judged.set(`${id} ${state}`, why);
  return why;
}

/** Every point asked of the owner now, with what is wrong about it. */
function offences({ asked }: Assessment): readonly string[] {
  const at = { states: stateOf(), points: known } as unknown as Parameters<typeof isAskedHere>[0];
  return asked
    .filter((one) => isAskedHere(at, "owner", one))
    .flatMap(({ point, state, with: along }) => [point, ...along].flatMap((id) => offencesOf(id, state)));
}

const EVERY = 20;

type Outcome = "fine" | "tell the workshop" | "don't drive";
function outcomeOf({ faults, gates }: Assessment): Outcome {
  if (faults.some(({ grade, mustStand }) => grade === "dangerous" || mustStand)) return "don't drive";
  if (gates.some(({ guards, state }) => guards === "drive-away" && state === "tripped")) return "don't drive";
  return faults.some(({ grade }) => grade !== "advisory") ? "tell the workshop" : "fine";
}

test("before anything is answered an owner is asked only what is safe at home", () => {
  expect([...new Set(offences(untouched.assessment))]).toEqual([]);
});

test("every point that may ever be asked of an owner is safe in each car state an owner meets it in", () => {
  const found: string[] = [];
  for (const { point, text } of known.values()) {
    if (!point.who.includes("owner")) continue;
    const onGround = point.states.filter((state) => stateOf().get(state)?.lifted === false);
    if (onGround.length === 0) found.push(`${point.id}: only with the car off the ground`);
    for (const state of onGround)
      found.push(...unsafeAtHome(point, text, state, lists.wholeWithTexts).map((why) => `${point.id}: ${why}`));
  }
  expect(found).toEqual([]);
});

test("whatever comes out, fine, tell the workshop or don't drive, what is asked next is safe at home", () => {
  const met = new Map<Outcome, number>();
  const found = new Set<string>();
  // Every point an owner may meet is gone through above; here a part of the cases stands for the ways it may come out.
  for (const { replies, facts } of caseReplies(lists).filter((_, at) => at % EVERY === 0)) {
    const { assessment } = reassess(untouched, { ...untouched.input, car: { facts, limits: [] }, replies });
    const outcome = outcomeOf(assessment);
    met.set(outcome, (met.get(outcome) ?? 0) + 1);
    for (const one of offences(assessment)) found.add(`${outcome}: ${one}`);
  }
  expect([...found]).toEqual([]);
  for (const outcome of ["fine", "tell the workshop", "don't drive"] as const)
    expect(met.get(outcome), outcome).toBeGreaterThan(2);
});

test("a point that asks more of its person says that it is left to the workshop, and why", () => {
  for (const { point, text } of known.values())
    if (!point.who.includes("owner")) expect(text.leave?.length ?? 0, point.id).toBeGreaterThan(2);
});

test.each([
  ["Jack the car up and look behind the wheel.", /raises/],
  ["With the wheel off, look at the hose.", /raises/],
  ["Lie under the sill with a torch.", /under/],
  ["Undo the two screws of the cover.", /apart/],
  ["Pull the rubber boot back.", /apart/],
  ["Wipe the cap, then lift it.", /opens/],
  ["Start the engine and watch the gauge.", /sniffing/],
])("it finds out what is not safe: %s", (how, why) => {
  const point: Point = { id: "any.point", place: "car", states: ["w1-cold"], fields: {}, who: ["owner"], tool: "torch" };
  const said = (words: string) => unsafeAtHome(point, { name: "any", ask: { owner: "What do you see?" }, how: words }, "w1-cold", lists.wholeWithTexts);
  expect(said(how).join()).toMatch(why);
  expect(said("Look from beside with a torch.")).toEqual([]);
});

test("it finds out a lifted car, a tool nobody has at home, and a hot wheel that is touched", () => {
  const point: Point = { id: "any.point", place: "car", states: ["w7-hang"], fields: {}, who: ["owner"], tool: "dial" };
  const text: PointText = { name: "any", ask: { owner: "What do you feel?" }, how: "Hand on the hub." };
  const why = unsafeAtHome(point, text, "w7-hang", lists.wholeWithTexts).join();
  expect(why).toContain("off the ground");
  expect(why).toContain("dial");
  expect(unsafeAtHome(point, text, "w5-hot", lists.wholeWithTexts).join()).toContain("hot");
});
