/** Cases: their replies can be given, they expect what their rule concludes, every rule fires once and misses once. Runs none. */
import { GRADES } from "../../terms/index.js";
import { type CaseReply, readCaseReply, type Typed } from "../case-replies.js";
import { canonicalText } from "../edition.js";
import { nearest } from "../nearest.js";
import type { Rule, SheetCase } from "../schema-types.js";
import type { Path } from "../source.js";
import type { Checking } from "./known.js";

export function checkCases(c: Checking): void {
  const { part } = c.look;
  const rules = new Map(part.rules.map((r) => [r.id, r]));
  const gates = part.gates.map((g) => g.id);
  part.cases.forEach((one, i) => {
    const path = ["cases", i];
    const rule = rules.get(one.fires);
    if (!rule && !gates.includes(one.fires)) {
      const expected = nearest(one.fires, [...rules.keys(), ...gates]);
      c.report.problem("unknown-rule", [...path, "fires"], { found: one.fires, expected });
    }
    checkReplies(one, path, c);
    checkExpected(one, rule, [...path, "expect"], c);
  });
  part.rules.forEach((rule, i) => {
    const own = part.cases.filter((one) => one.fires === rule.id);
    const misses = own.some((one) => one["near-miss"] ?? one["near-miss-facts"]);
    if (own.length === 0) c.report.problem("no-firing-case", ["rules", i, "id"], { rule: rule.id });
    else if (!misses) c.report.problem("no-near-miss", ["rules", i, "id"], { rule: rule.id });
  });
}

function checkReplies(one: SheetCase, path: Path, c: Checking): void {
  const given = read(one.replies, [...path, "replies"], c);
  for (const [i, visit] of (one.earlier ?? []).entries()) read(visit.replies, [...path, "earlier", i, "replies"], c);
  checkFacts(one.facts ?? {}, [...path, "facts"], c);
  checkFacts(one["near-miss-facts"] ?? {}, [...path, "near-miss-facts"], c);
  const missed = read(one["near-miss"] ?? {}, [...path, "near-miss"], c);
  const facts = Object.keys(one["near-miss-facts"] ?? {});
  // A reply that could not be read is told where the case gives it.
  const allRead = given.length === Object.keys(one.replies).length;
  const count = Object.keys(one["near-miss"] ?? {}).length + facts.length;
  if ((one["near-miss"] || one["near-miss-facts"]) && count !== 1)
    c.report.problem("near-miss-one", [...path, "near-miss"], { count });
  for (const { name, reply } of missed) {
    const at = [...path, "near-miss", name];
    const before = given.find((g) => canonicalText(g.reply.key) === canonicalText(reply.key));
    if (reply.value.type === "non-answer") c.report.problem("near-miss-unknown", at, { found: reply.value.nonAnswer });
    else if (!before && allRead) c.report.problem("near-miss-new", at, { key: name }, "key");
    else if (before && canonicalText(before.reply.value) === canonicalText(reply.value))
      c.report.problem("near-miss-same", at, { key: name });
  }
  for (const fact of facts) {
    const at = [...path, "near-miss-facts", fact];
    if (one.facts?.[fact] === undefined) c.report.problem("near-miss-new", at, { key: fact }, "key");
    else if (one.facts[fact] === one["near-miss-facts"]?.[fact]) c.report.problem("near-miss-same", at, { key: fact });
  }
}

function read(replies: Readonly<Record<string, Typed>>, path: Path, c: Checking) {
  return Object.entries(replies).flatMap(
    ([name, typed]): readonly { readonly name: string; readonly reply: CaseReply }[] => {
      const reply = readCaseReply(name, typed, c.look, [...path, name], c.report.spotOf);
      if (!reply.ok) c.report.add(reply.problems);
      return reply.ok ? [{ name, reply: reply.value }] : [];
    },
  );
}

function checkFacts(facts: Readonly<Record<string, string | number | boolean>>, path: Path, c: Checking): void {
  for (const [name, value] of Object.entries(facts)) {
    const at = [...path, name];
    if (!c.known.fact(name, at)) continue;
    const fact = c.look.common.facts.find((f) => f.id === name);
    const words = fact?.kind === "word" ? (fact.words ?? []) : undefined;
    if (words && !words.includes(String(value)))
      c.report.problem("unknown-word", at, { found: String(value), expected: nearest(String(value), words) });
    if (fact?.kind === "yes" && typeof value !== "boolean")
      c.report.problem("wrong-value", at, { found: String(value), expected: ["true", "false"] });
  }
}

const GATE_STATES: readonly string[] = ["tripped", "cleared", "not cleared"];

function checkExpected(one: SheetCase, rule: Rule | undefined, path: Path, c: Checking): void {
  for (const [key, value] of Object.entries(one.expect)) {
    const at = [...path, key];
    if (key === "at") c.known.place(value, at);
    else if (key.startsWith("gate.")) oneOf(value, GATE_STATES, at, c);
    else {
      const [fault = "", place = "car"] = key.split("@");
      c.known.fault(fault, at);
      c.known.place(place, at);
      oneOf(value, GRADES, at, c);
    }
  }
  if (!rule && !one.fires.startsWith("gate.")) return;
  const keys = Object.keys(one.expect);
  const wanted = rule ? (rule.fault ?? "at") : one.fires;
  if (!keys.some((key) => key.split("@")[0] === wanted))
    c.report.problem("case-expects-other", path, {
      rule: one.fires,
      expected: wanted === "at" ? "“at: PLACE”" : `“${wanted}”`,
    });
}

function oneOf(found: string, expected: readonly string[], path: Path, c: Checking): void {
  if (!expected.includes(found)) c.report.problem("wrong-value", path, { found, expected });
}
