import { expect, test } from "vitest";
import { TRADE_TABLE } from "../core/trade/index.js";
import { main } from "./main.js";

async function called(...args: readonly string[]) {
  const [out, err]: [string[], string[]] = [[], []];
  const exit = await main(["calc", ...args], { out: (text) => out.push(text), err: (text) => err.push(text) });
  return { exit, data: out.length > 0 ? (JSON.parse(out.join("\n")) as unknown) : undefined, err: err.join("\n") };
}

test("a reckoning prints value, unit and source", async () => {
  const { exit, data, err } = await called("brake_imbalance(2000 N, 1500 N)");
  expect({ exit, err }).toEqual({ exit: 0, err: "" });
  expect(data).toMatchObject({ value: 25, unit: "%", source: expect.stringContaining("2010/48/EU") });
});

test("words and yes or no have no unit", async () => {
  expect((await called("condenses(20, 65, 13)")).data).toMatchObject({ value: true, unit: null });
});

test("what can't be worked out is a problem in words, and nothing else", async () => {
  const { exit, data, err } = await called("round_tube_area(48.3, 30)");
  expect(exit).toBe(1);
  expect(data).toEqual({ problem: "round_tube_area: wall leaves no hole; it must be under 24.15." });
  expect(err).toContain("no hole");
});

test("the list names every function with arguments, units, result and source", async () => {
  const { exit, data } = await called("--list");
  expect(exit).toBe(0);
  const all = data as readonly { name: string; arguments: readonly unknown[]; source: string }[];
  expect(all.map(({ name }) => name)).toEqual([...TRADE_TABLE.keys()]);
  expect(all.find(({ name }) => name === "dew_point")).toMatchObject({
    arguments: [
      { name: "air", unit: "Cel", range: "at least -40, at most 60" },
      { name: "humidity", unit: "%", range: "over 0, at most 100" },
    ],
    gives: "temperature",
    unit: "Cel",
  });
  for (const one of all) expect(one.source.length).toBeGreaterThan(5);
});

test("called without a reckoning, or with two, it tells how", async () => {
  for (const args of [[], ["dew_point(1, 2)", "dew_point(1, 2)"]]) {
    const { exit, data, err } = await called(...args);
    expect({ exit, data }).toEqual({ exit: 2, data: undefined });
    expect(err).toContain("calc --list");
  }
});
