// Whole visits through the command line: a visit file in, what must come out of the shipped sheets beside it.
import { readdir, readFile } from "node:fs/promises";
import { beforeAll, expect, test } from "vitest";
import { type Checklists, loadChecklists } from "../../src/build/load-checklists.js";
import { assessFile } from "../../src/cli/assess.js";
import type { printed } from "../../src/cli/assess-print.js";

type Printed = ReturnType<typeof printed>;

/** Lists are exact; `settle`, `open`, `gates`, `coverage` and what is keyed by a finding must be among what is printed. */
interface Expected {
  readonly exit: 0 | 1 | 2;
  /** `rule@place grade`, in order. */
  readonly findings: readonly string[];
  readonly faults: readonly string[];
  /** `job@place class`. */
  readonly jobs?: readonly string[];
  readonly cautions?: readonly string[];
  readonly gates?: Readonly<Record<string, string>>;
  /** `point@place`. */
  readonly open?: readonly string[];
  /** `point@place rule`. */
  readonly settle?: readonly string[];
  readonly settleFirst?: string;
  readonly notSettle?: readonly string[];
  readonly coverage?: Readonly<Record<string, object>>;
  readonly faultRules?: Readonly<Record<string, readonly string[]>>;
  readonly restsOn?: Readonly<Record<string, readonly string[]>>;
  /** `value unit date` of earlier replies it rests on. */
  readonly lastTime?: Readonly<Record<string, readonly string[]>>;
  readonly differ?: Readonly<Record<string, readonly string[]>>;
  readonly close?: readonly string[];
  readonly limit?: Readonly<Record<string, object>>;
  /** Paths of what was set aside. */
  readonly problems?: readonly string[];
}
interface Golden {
  readonly about: string;
  readonly visit: object;
  readonly expect: Expected;
}

const here = new URL(".", import.meta.url);
const files = (await readdir(here)).filter((name) => name.endsWith(".json")).sort();
let lists: Checklists;
beforeAll(async () => {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  lists = result.value;
}, 240_000);

test("cases A, B, F and H of the trade notes and five of our own are here", () => {
  expect(files).toEqual(expect.arrayContaining(["case-a.json", "case-b.json", "case-f.json", "case-h.json", "fork.json", "left-unknown.json", "makers-figure.json", "not-fitted.json", "too-close.json"]));
});

test.each(files)("%s", async (name) => {
  const golden = JSON.parse(await readFile(new URL(name, here), "utf8")) as Golden;
  const said: string[] = [];
  const out: string[] = [];
  const exit = assessFile(lists, golden.visit, name, { out: (text) => out.push(text), err: (text) => said.push(text) });
  const got = JSON.parse(out.join("")) as Printed;
  const wanted = golden.expect;
  expect(exit).toBe(wanted.exit);
  expect(got.findings.map((f) => `${f.rule}@${f.place} ${f.grade}`)).toEqual(wanted.findings);
  expect(got.faults.map((f) => `${f.fault}@${f.place} ${f.grade}`)).toEqual(wanted.faults);
  if (wanted.jobs) expect(got.jobs.map((j) => `${j.job}@${j.place} ${j.byWhen.class}`)).toEqual(wanted.jobs);
  if (wanted.cautions) expect(got.cautions.map((c) => c.caution)).toEqual(wanted.cautions);
  expect(Object.fromEntries(got.gates.map((g) => [g.gate, g.state]))).toMatchObject(wanted.gates ?? {});
  expect(got.open.map((o) => `${o.point}@${o.place}`)).toEqual(expect.arrayContaining([...(wanted.open ?? [])]));
  const settle = got.settle.flatMap((s) => s.decides.map((rule) => `${s.point}@${s.place} ${rule}`));
  expect(settle).toEqual(expect.arrayContaining([...(wanted.settle ?? [])]));
  if (wanted.settleFirst) expect(`${got.settle[0]?.point}@${got.settle[0]?.place}`).toBe(wanted.settleFirst);
  for (const at of wanted.notSettle ?? []) expect(got.settle.map((s) => `${s.point}@${s.place}`)).not.toContain(at);
  expect(got.coverage).toMatchObject(wanted.coverage ?? {});
  for (const [at, rules] of Object.entries(wanted.faultRules ?? {})) expect(got.faults.find((f) => `${f.fault}@${f.place}` === at)?.rules).toEqual(rules);
  for (const [at, points] of Object.entries(wanted.restsOn ?? {}))
    expect(findingAt(got, at)?.because.flatMap((b) => (b.kind === "reply" ? [`${b.key.point}@${b.key.place}`] : []))).toEqual(points);
  for (const [at, told] of Object.entries(wanted.lastTime ?? {}))
    expect(findingAt(got, at)?.because.flatMap((b) => (b.kind === "earlier" && b.value.type === "reading" ? [`${b.value.values} ${b.value.unit} ${b.at}`] : []))).toEqual(told);
  for (const [at, ids] of Object.entries(wanted.differ ?? {})) expect(findingAt(got, at)?.differ).toEqual(ids);
  expect(got.findings.filter((f) => f.close).map((f) => `${f.rule}@${f.place}`)).toEqual(wanted.close ?? []);
  for (const [at, limit] of Object.entries(wanted.limit ?? {})) expect(findingAt(got, at)?.because.find((b) => b.kind === "limit")).toMatchObject(limit);
  expect(got.problems.map((p) => p.path)).toEqual(wanted.problems ?? []);
  expect(said).toHaveLength((wanted.problems ?? []).length);
  for (const f of got.findings) expect([f.rule, f.says]).not.toEqual([f.rule, ""]);
});

const findingAt = (got: Printed, at: string) => got.findings.find((f) => `${f.rule}@${f.place}` === at);
