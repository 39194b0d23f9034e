import { expect, test } from "vitest";
import { nextLabel } from "./sheet-keep.js";

test("the label counts up with every edition; one the person wrote anew stays as it is", () => {
  expect(nextLabel("Hubs 1", "Hubs 1")).toBe("Hubs 2");
  expect(nextLabel("Hubs 9", "Hubs 9")).toBe("Hubs 10");
  expect(nextLabel("Hubs", "Hubs")).toBe("Hubs 2");
  expect(nextLabel("Hubs 1", "My hubs")).toBe("My hubs");
});
