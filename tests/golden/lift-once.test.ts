/** A full round over all sheets at once: every car state is entered once, and the car goes up once before it is stripped. */
import { expect, test } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { buildPlaces, walk } from "../../src/core/sheet/run.js";

test("with all sheets open the walk enters every car state once and lifts the car once", async () => {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error("the sheets do not load");
  const { whole, sheets } = result.value;
  const { states, places } = whole.common;
  const points = sheets.flatMap(({ built }) => built.sheet.points);
  const steps = walk(points, states, buildPlaces(places).tree);
  const entered = steps.filter((step, at) => steps[at - 1]?.state !== step.state).map(({ state }) => state);
  expect(sheets.length).toBeGreaterThanOrEqual(5);
  expect(new Set(entered).size).toBe(entered.length);
  // Stripping is by agreement and of another day: what comes before it asks for one lift.
  const isUp = entered
    .filter((state) => state !== "w11-strip")
    .map((id) => states.find((state) => state.id === id)?.lifted === true);
  expect(isUp.filter((up, at) => up && isUp[at - 1] !== true)).toHaveLength(1);
  // Within a car state no place is come back to: nobody runs round the car twice.
  const stops = steps
    .map(({ state, place }) => `${state} ${place}`)
    .filter((stop, at, all) => all[at - 1] !== stop);
  expect(new Set(stops).size).toBe(stops.length);
});
