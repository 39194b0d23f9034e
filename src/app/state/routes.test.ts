import { expect, test } from "vitest";
import { above, hrefOf, ROUTES, readAddress, to } from "./routes.js";

/** One example value per parameter, with characters an address must carry safely. */
const SAMPLE: Readonly<Record<string, string>> = {
  car: "c/1",
  visit: "v ü",
  state: "w7-hang",
  place: "FR",
  point: "whl.rock_braked",
  field: "play",
  limit: "lim.float-taper",
  fault: "whl.race",
  job: "job.whl.bearing",
  gate: "gate.no-road",
  picture: "a%2Fb",
  sheet: "whl",
  finding: "f1",
  of: "disc_spread",
  page: "budget",
  part: "wheel-bearing",
  series: "whl.float~play",
  list: "points",
  item: "whl.float",
  aim: "point~w8-off~RR~whl.float",
};

test("every address of the table reads back as itself", () => {
  for (const [name, path] of Object.entries(ROUTES)) {
    const params = Object.fromEntries([...path.matchAll(/:([a-z]+)/g)].map(([, key]) => [key, SAMPLE[key as string]]));
    expect(readAddress(hrefOf({ name, params } as Parameters<typeof hrefOf>[0]))).toEqual({ name, params });
  }
});

test("no two addresses of the table can be mistaken for one another", () => {
  const shapes = Object.values(ROUTES).map((path) => path.replace(/:[a-z]+/g, ":"));
  expect(new Set(shapes).size).toBe(shapes.length);
});

test("an empty hash is the car list; an unknown or undecodable address is nothing", () => {
  expect(readAddress("")).toEqual({ name: "cars", params: {} });
  expect(readAddress("#/")).toEqual({ name: "cars", params: {} });
  expect(readAddress("#/nowhere/at/all")).toBeUndefined();
  expect(readAddress("#/car/%E0%A4%A")).toBeUndefined();
  expect(readAddress("#/car/")).toBeUndefined();
});

test("the way up from every screen ends at the car list", () => {
  for (const path of Object.values(ROUTES)) {
    let here = readAddress(`#${path.replace(/:([a-z]+)/g, (_, key: string) => encodeURIComponent(SAMPLE[key] ?? ""))}`);
    for (let steps = 0; here && here.name !== "cars"; steps++) {
      expect(steps).toBeLessThan(7);
      here = readAddress(above(here));
    }
    expect(here?.name).toBe("cars");
  }
});

test("the way up from a visit is its car list, from a reading its point", () => {
  const reading = readAddress(
    to("reading", { visit: "v", state: "w8-off", place: "FR", point: "whl.float", field: "play" }),
  );
  expect(reading && above(reading)).toBe("#/visit/v/round/w8-off/FR/whl.float");
});
