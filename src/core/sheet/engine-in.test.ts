// [VO5] What the engine does in a car state: by the sheet's own word, whatever the state is called.
import { expect, test } from "vitest";
import { engineIn } from "./engine-in.js";

test("a sheet's own car state says it itself; one that says nothing stands cold", () => {
  expect(engineIn({ id: "z1-idling", engine: "running" })).toBe("running");
  expect(engineIn({ id: "z1-idling" })).toBeUndefined();
});

test("the car states of sheets written before it could be said go on meaning it, and a sheet's word wins", () => {
  expect(["w3-running", "w4-road", "w5-soak"].map((id) => engineIn({ id }))).toEqual(["running", "driving", "hot"]);
  expect(engineIn({ id: "w4-road", engine: "running" })).toBe("running");
});
