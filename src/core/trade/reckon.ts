/**
 * Reads one reckoning as a person types it, `brake_efficiency([2100 N, 2050 N], 1120 kg)`, and works it out: figures
 * with a unit or in the canonical one, fractions, words, lists, calls inside calls. Takes one call, nothing around it.
 */
import { nearest } from "../terms/author.js";
import { fail, ok, type Problem, type Result } from "../terms/index.js";
import { canonicalUnit, type Quantity, readTyped } from "../units/index.js";
import { calculate, refusal, wrongCount } from "./calculate.js";
import { type Argument, type Given, type Gives, isList, isWordArgument, type TradeFunction } from "./contract.js";
import { TRADE_TABLE } from "./table.js";

/** A worked-out reckoning and the function at its outside. */
export interface Reckoned {
  readonly value: Gives;
  readonly of: TradeFunction;
}

const EXAMPLE = "brake_imbalance(2000 N, 1500 N)";
/** Calls inside calls stop here. */
const DEEPEST = 8;

/** A piece between the brackets: a call, a list or a plain text. */
type Piece =
  | { readonly is: "call"; readonly name: string; readonly parts: readonly Piece[] }
  | { readonly is: "list"; readonly parts: readonly Piece[] }
  | { readonly is: "text"; readonly text: string };

/** Thrown and caught inside this file: where the text stops making sense. */
class Unreadable extends Error {
  constructor(readonly rest: string) {
    super(rest);
  }
}

/**
 * Works a text out. Problems (messages.ts): `trade.syntax`, `trade.unknown`, those of `calculate`, and those of units
 * for a figure that can't be read.
 */
export function reckon(text: string): Result<Reckoned> {
  let call: Piece;
  try {
    const read = reader(text);
    call = read.piece(0);
    read.end();
  } catch (error) {
    if (error instanceof Unreadable)
      return fail(refusal("syntax", { typed: text.slice(0, 120), rest: error.rest.slice(0, 40), example: EXAMPLE }));
    throw error;
  }
  if (call.is !== "call")
    return fail(refusal("syntax", { typed: text.slice(0, 120), rest: text.slice(0, 40), example: EXAMPLE }));
  return worked(call);
}

function reader(text: string) {
  let at = 0;
  const skip = (): void => {
    while (/\s/.test(text[at] ?? "")) at++;
  };
  const stop = (): never => {
    throw new Unreadable(text.slice(at));
  };
  const parts = (close: string, depth: number): readonly Piece[] => {
    const found: Piece[] = [];
    at++;
    skip();
    if (text[at] === close) {
      at++;
      return found;
    }
    for (;;) {
      found.push(piece(depth + 1));
      skip();
      if (text[at] === ",") at++;
      else if (text[at] === close) {
        at++;
        return found;
      } else return stop();
    }
  };
  const piece = (depth: number): Piece => {
    if (depth > DEEPEST) return stop();
    skip();
    const name = /^[a-z][a-z0-9_]*(?=\s*\()/.exec(text.slice(at))?.[0];
    if (name !== undefined) {
      at += name.length;
      skip();
      return { is: "call", name, parts: parts(")", depth) };
    }
    if (text[at] === "[") return { is: "list", parts: parts("]", depth) };
    const quoted = /^"([^"]*)"|^'([^']*)'/.exec(text.slice(at));
    if (quoted) {
      at += quoted[0].length;
      return { is: "text", text: quoted[1] ?? quoted[2] ?? "" };
    }
    const plain = /^[^,()[\]"]+/.exec(text.slice(at))?.[0];
    if (plain === undefined) return stop();
    at += plain.length;
    return { is: "text", text: plain.trim() };
  };
  return {
    piece,
    end: () => {
      skip();
      if (at < text.length) stop();
    },
  };
}

function worked(call: Extract<Piece, { is: "call" }>): Result<Reckoned> {
  const fn = TRADE_TABLE.get(call.name);
  if (!fn) return fail(refusal("unknown", { name: call.name, expected: nearest(call.name, TRADE_TABLE.keys()) }));
  const miscounted = wrongCount(fn, call.parts.length);
  if (miscounted) return fail(miscounted);
  const given: Given[] = [];
  const problems: Problem[] = [];
  for (const [index, part] of call.parts.entries()) {
    const argument = fn.arguments[index];
    if (!argument) break;
    const value = valueFor(fn, argument, part);
    if (value.ok) given.push(value.value);
    else problems.push(...value.problems);
  }
  if (problems.length > 0) return fail(...problems);
  const result = calculate(fn, given);
  return result.ok ? ok({ value: result.value, of: fn }) : result;
}

/** What one piece gives for one argument. */
function valueFor(fn: TradeFunction, argument: Argument, part: Piece): Result<Given> {
  if (part.is === "list") {
    const values = part.parts.map((one) => single(fn, argument, one));
    const faults = values.flatMap((one) => (one.ok ? [] : one.problems));
    if (faults.length > 0) return fail(...faults);
    return ok(values.flatMap((one) => (one.ok && typeof one.value === "number" ? [one.value] : [])));
  }
  const value = single(fn, argument, part);
  if (!value.ok) return value;
  // One figure where several may stand is a list of one.
  return ok(isList(argument) && typeof value.value === "number" ? [value.value] : value.value);
}

function single(fn: TradeFunction, argument: Argument, part: Piece): Result<number | string> {
  const told = { of: fn.name, argument: argument.name };
  if (part.is === "list") return fail(refusal("kind", { ...told, expected: argument.kind }));
  if (part.is === "call") {
    const inner = worked(part);
    if (!inner.ok) return inner;
    const { value, of } = inner.value;
    if (of.gives !== argument.kind || typeof value === "boolean")
      return fail(refusal("kind", { ...told, expected: argument.kind }));
    return ok(value);
  }
  if (isWordArgument(argument)) return ok(part.text);
  const quantity: Quantity = argument.kind === "number" ? "ratio" : argument.kind;
  const read = readTyped(part.text, { quantity, unit: canonicalUnit(quantity) });
  if (!read.ok) return fail(...read.problems.map((one) => ({ ...one, params: { ...told, ...one.params } })));
  return ok(read.value.canonical);
}
