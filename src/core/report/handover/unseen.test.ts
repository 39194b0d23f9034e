// What was not looked at: by name where much hangs on it, counted elsewhere, and every point in exactly one row.
import fc from "fast-check";
import { expect, test } from "vitest";
import { soundVisit, WORDS } from "../../../../tests/support/handover-visit.js";
import { handover } from "./build.js";
import { unseenCsv } from "./csv.js";
import type { NotSeen } from "./input.js";
import { handoverPages } from "./pages.js";
import { toText } from "./text.js";
import { isOfWeight, unseenOf } from "./unseen.js";

const unseen = (more: Partial<NotSeen> = {}): NotSeen => ({
  point: "brk.hose",
  place: "FL",
  title: "Brake hose",
  where: "Front left",
  state: "Cold, on its wheels",
  is: "not-looked",
  sheet: "Brakes",
  kind: "Wheels",
  couldDecide: "minor",
  ...more,
});
const textOf = (notSeen: readonly NotSeen[], reader: "owner" | "buyer" = "owner"): string =>
  toText(handoverPages(handover(soundVisit({ for: reader, notSeen })), WORDS), WORDS);

const anything: fc.Arbitrary<readonly NotSeen[]> = fc
  .array(
    fc.record({
      point: fc.constantFrom("brk.hose", "brk.pad", "corr.look"),
      place: fc.constantFrom("FL", "FR", "car"),
      state: fc.constantFrom("cold", "hanging"),
      is: fc.constantFrom("not-looked" as const, "cannot-reach" as const),
      reason: fc.option(fc.constantFrom("no-time" as const, "no-lift" as const), { nil: undefined }),
      sheet: fc.option(fc.constantFrom("Brakes", "Rust"), { nil: undefined }),
      kind: fc.option(fc.constant("Wheels"), { nil: undefined }),
      couldDecide: fc.option(fc.constantFrom("nothing" as const, "minor" as const, "dangerous" as const), {
        nil: undefined,
      }),
      awaited: fc.option(fc.constant(true as const), { nil: undefined }),
    }),
    { maxLength: 12 },
  )
  .map((all) => all.map((one) => unseen({ ...one, title: one.point, where: one.place })));

test("[HO44] every point nobody looked at stands in exactly one row, and the table holds each by itself", () => {
  fc.assert(
    fc.property(anything, (notSeen) => {
      const { named, rest } = unseenOf(notSeen);
      const told = [...named.flatMap(({ at }) => at), ...rest.flatMap(({ all }) => all)];
      expect(told).toHaveLength(notSeen.length);
      expect(new Set(told)).toEqual(new Set(notSeen));
      expect(named.every(({ at }) => at.every(isOfWeight))).toBe(true);
      for (const { all } of rest)
        expect(all.every((one) => one.couldDecide !== "dangerous" && !one.awaited)).toBe(true);
      const rows = unseenCsv(handover(soundVisit({ notSeen })), WORDS)
        .trimEnd()
        .split("\r\n");
      expect(rows).toHaveLength(notSeen.length + 1);
    }),
    { seed: 20261130, numRuns: 200 },
  );
});

test("[HO44] by name stands what could have shown a danger, what is waited for, and what nobody has worked out", () => {
  expect(isOfWeight(unseen({ couldDecide: "dangerous" }))).toBe(true);
  expect(isOfWeight(unseen({ couldDecide: "major" }))).toBe(false);
  expect(isOfWeight(unseen({ couldDecide: "major", awaited: true }))).toBe(true);
  expect(isOfWeight(unseen({ couldDecide: undefined }))).toBe(true);
  expect(isOfWeight(unseen({ couldDecide: "nothing" }))).toBe(false);
});

test("[HO44] a point by name has all its places and car states in one row; many places are told by their kinds", () => {
  const corners = ["FL", "FR", "RL", "RR"].map((place) =>
    unseen({ place, where: place, couldDecide: "dangerous", reason: "no-time", nonAnswer: "not-reached" }),
  );
  const hanging = corners.map((one) => ({ ...one, state: "Hanging" }));
  const text = textOf([...corners, ...hanging]);
  expect(text.match(/- Brake hose/g)).toHaveLength(1);
  expect(text).toContain("- Brake hose, FL; FR; RL; RR");
  expect(text).toContain("Cold, on its wheels; Hanging");
  expect(text).toContain("8 points in all.");
  const tubes = Array.from({ length: 48 }, (_, i) =>
    unseen({ place: `t${i}`, where: `Tube ${i}`, kind: i < 40 ? "Tubes" : "Joints", couldDecide: "dangerous" }),
  );
  expect(textOf(tubes)).toContain("- Brake hose, 48 places. Tubes: 40; Joints: 8");
});

test("[HO44] what is only counted says how many of which sheet, at what, why, and the worst it could have shown", () => {
  const text = textOf([
    unseen({ reason: "no-time", nonAnswer: "not-reached" }),
    unseen({ point: "brk.pad", reason: "no-time", nonAnswer: "not-reached", couldDecide: "major" }),
    unseen({ place: "car", where: "", kind: undefined, reason: "no-time", nonAnswer: "not-reached" }),
    unseen({ sheet: "Tyres" }),
  ]);
  expect(text).toContain("- Brakes, 3");
  expect(text).toContain("Wheels: 2; The car: 1");
  expect(text).toMatch(/no time\. Could have shown something major\./);
  expect(text).toContain("- Tyres, 1");
  expect(text).not.toContain("Brake hose");
});

test("[HO44] of what could have shown a danger it is said at which places up to twelve, of the rest up to four", () => {
  const at = (count: number, more: Partial<NotSeen>) =>
    textOf(Array.from({ length: count }, (_, i) => unseen({ place: `t${i}`, where: `Tube ${i}`, ...more })));
  expect(at(5, { couldDecide: "dangerous" })).toContain("- Brake hose, Tube 0; Tube 1; Tube 2; Tube 3; Tube 4");
  expect(at(12, { couldDecide: "dangerous" })).toContain("Tube 11");
  expect(at(13, { couldDecide: "dangerous" })).toContain("- Brake hose, 13 places. Wheels: 13");
  expect(at(4, { awaited: true })).toContain("- Brake hose, Tube 0; Tube 1; Tube 2; Tube 3");
  expect(at(5, { awaited: true })).toContain("- Brake hose, 5 places. Wheels: 5");
});

test("[HO33] that everything was looked at is said only where nothing is left, whatever the rest could have shown", () => {
  const left = textOf([unseen({ couldDecide: "nothing" })], "buyer");
  expect(left).toContain("None of what was not looked at could have shown a fault by itself.");
  expect(left).not.toContain("Everything asked was looked at.");
  expect(textOf([], "buyer")).toContain("Everything asked was looked at.");
  expect(textOf([unseen()], "buyer")).toContain("the gravest stand by name and the others as counts");
});

test("[HO33] a buyer reads how much of each sheet could have shown what, gravest first", () => {
  const text = textOf(
    [
      unseen({ couldDecide: "minor" }),
      unseen({ couldDecide: "dangerous", sheet: "Tyres" }),
      unseen({ couldDecide: "nothing" }),
      unseen({ couldDecide: "dangerous" }),
    ],
    "buyer",
  );
  const lines = text.split("\n").filter((line) => line.startsWith("- Could have shown"));
  expect(lines).toEqual([
    "- Could have shown something dangerous: 2 points. Tyres: 1; Brakes: 1.",
    "- Could have shown something minor: 1 point. Brakes: 1.",
  ]);
});
