import { expect, test } from "vitest";
import type { CarSummary, VisitSummary } from "../../core/record/index.js";
import { carsView } from "./cars-view.js";

const car = (stream: string, wall: number, demo = false): CarSummary => ({
  of: "car",
  stream,
  demo,
  entries: 1,
  last: { wall, count: 0 },
  trouble: false,
  names: [stream.slice(4)],
  facts: {},
  sameCars: [],
  sameOccasions: [],
});
const visit = (stream: string, of: string, on: string, wall: number, closed = false): VisitSummary => ({
  of: "visit",
  stream,
  demo: false,
  entries: 1,
  last: { wall, count: 0 },
  trouble: false,
  car: of,
  on,
  purpose: "workshop",
  who: "technician",
  closed,
  replies: 3,
  differ: 0,
  pictures: 0,
});

test("the car last touched lies in the light, a car's visit counting as touching it", () => {
  const view = carsView([car("car:a", 5), car("car:b", 1), visit("visit:1", "car:b", "2026-11-25T09:00:00Z", 9)]);
  expect(view.lit).toMatchObject({ name: "b", open: { stream: "visit:1" }, looked: true });
  expect(view.lit?.second).toBe("Visit open since 25 Nov 2026");
  expect(view.own.map(({ name }) => name)).toEqual(["b", "a"]);
});

test("visits left open on other cars are listed to go on with", () => {
  const view = carsView([
    car("car:a", 9),
    car("car:b", 1),
    visit("visit:1", "car:b", "2026-11-20T09:00:00Z", 2),
    visit("visit:2", "car:b", "2025-11-20T09:00:00Z", 2, true),
  ]);
  expect(view.leftOpen.map((one) => one.visit.stream)).toEqual(["visit:1"]);
});

test("the demo never lies in the light while there is a car of one's own, and is listed apart", () => {
  const view = carsView([car("car:demo-x", 99, true), car("car:own", 1)]);
  expect([view.lit?.name, view.own.length, view.demo.length]).toEqual(["own", 1, 1]);
  expect(carsView([car("car:demo-x", 99, true)]).lit?.demo).toBe(true);
});

test("a car never looked at says so; one with visits says how many and when last", () => {
  const never = carsView([car("car:a", 1)]).lit;
  expect([never?.second, never?.looked]).toEqual(["Not looked at yet", false]);
  const twice = carsView([
    car("car:a", 1),
    visit("visit:1", "car:a", "2025-11-20T09:00:00Z", 2, true),
    visit("visit:2", "car:a", "2026-03-02T09:00:00Z", 3, true),
  ]).lit;
  expect(twice?.second).toBe("2 visits, last Mar 2026");
});
