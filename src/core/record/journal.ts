/**
 * The record as lines of text: one header line, then one entry a line as JSON. Reads whole or not at all.
 * Refuses to know files.
 */
import { fail, ok, type Problem, problem, type Result } from "../terms/index.js";
import { ALL_KINDS } from "./all-kinds.js";
import { checkedLogged, faultsOf } from "./check-logged.js";
import type { Entry, Logged } from "./contract.js";
import { isStub } from "./identity.js";
import { merge } from "./merge.js";
import { isPlainObject } from "./shape.js";

/** What the first line says: `{"format":"leadlamp-journal/1"}`. */
export const JOURNAL_FORMAT = "leadlamp-journal/1";
const FORMAT = /^leadlamp-journal\/(\d{1,6})$/;
const VERSION = 1;
/** Problems told of one file; own choice, enough to see what is wrong with it. */
const PROBLEMS_AT_MOST = 100;
/** Longest line read, in UTF-16 units; own choice: an erasure of a whole large visit stays below. */
const LINE_AT_MOST = 8_000_000;

/** A log as text, in order of stream, writer, seq; each entry once. */
export function writeJournal(entries: Iterable<Logged>): string {
  const lines = [JSON.stringify({ format: JOURNAL_FORMAT })];
  for (const logged of merge(entries).entries) lines.push(lineOf(logged));
  return `${lines.join("\n")}\n`;
}

const encoder = new TextEncoder();

/** How many bytes its journal has; undefined where `readJournal` would refuse a line of it, or it has more than `atMost`. */
export function journalSize(entries: Iterable<Logged>, atMost: number, lineAtMost = LINE_AT_MOST): number | undefined {
  let bytes = JSON.stringify({ format: JOURNAL_FORMAT }).length + 1;
  for (const logged of merge(entries).entries) {
    const line = lineOf(logged);
    bytes += encoder.encode(line).byteLength + 1;
    if (line.length > lineAtMost || bytes > atMost) return undefined;
  }
  return bytes;
}

/** One entry as a line, keys in a fixed order. */
export function lineOf(logged: Logged): string {
  const { stream, writer, seq, nonce, at } = logged;
  const identity = { stream, writer, seq, nonce, at: { wall: at.wall, count: at.count } };
  return JSON.stringify(isStub(logged) ? identity : { ...identity, ...saidIn(logged) });
}

function saidIn({ by, act, kind, v, body }: Entry): object {
  return { by, ...(act === undefined ? {} : { act }), kind, v, body };
}

/**
 * Reads a journal. Every bad line is named; one is enough to refuse the whole. Codes: record.no-format,
 * record.newer-format {version}, record.not-json, record.line-too-long, record.blank-line, and those of `faultsOf`;
 * where.line counts from 1. Entries of unknown kind or newer version are no fault.
 */
export function readJournal(text: string): Result<readonly Logged[]> {
  const lines = text.replace(/^\uFEFF/, "").split("\n");
  if (lines.at(-1) === "") lines.pop();
  const header = headerFault(lines[0] ?? "");
  if (header) return fail(header);
  const entries: Logged[] = [];
  const problems: Problem[] = [];
  for (let i = 1; i < lines.length && problems.length < PROBLEMS_AT_MOST; i++) {
    const read = readLine(lines[i] ?? "", i + 1);
    if (read.ok) entries.push(read.value);
    else problems.push(...read.problems);
  }
  return problems.length > 0 ? fail(...problems) : ok(entries);
}

function headerFault(line: string): Problem | undefined {
  const parsed = parse(line);
  const format: unknown = isPlainObject(parsed) ? parsed["format"] : undefined;
  const version = typeof format === "string" ? FORMAT.exec(format)?.[1] : undefined;
  if (version === undefined) return problem("record.no-format", { line: 1 }, { expected: JOURNAL_FORMAT });
  return Number(version) > VERSION
    ? problem("record.newer-format", { line: 1 }, { version: Number(version) })
    : undefined;
}

function readLine(line: string, number: number): Result<Logged> {
  const where = { line: number };
  if (line.trim() === "") return fail(problem("record.blank-line", where));
  if (line.length > LINE_AT_MOST) return fail(problem("record.line-too-long", where, { atMost: LINE_AT_MOST }));
  const parsed = parse(line);
  if (parsed === undefined) return fail(problem("record.not-json", where));
  const problems = faultsOf(parsed, where, ALL_KINDS);
  return problems.length > 0 ? fail(...problems) : ok(checkedLogged(parsed));
}

/** Undefined when the text is no JSON, which never stands for undefined itself. */
function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
