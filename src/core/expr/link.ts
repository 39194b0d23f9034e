/** Makes closures with three values out of a plan. Knows no CEL, no sheet, no visit: it asks a Scope. */
import { fail, keyText, ok, problem, type Result } from "../terms/index.js";
import { CALCULATE, COMPARE, calculates, clearlyMore, compares, grades } from "./figures.js";
import { atLeast, chosen, joined, not, quantified } from "./logic.js";
import { asked, figure, listOf, type PlaceOf, placeOf, type Run, text } from "./places-of.js";
import {
  DEEPEST_NODES,
  DEEPEST_QUANTIFIERS,
  PLAN_VERSION,
  type PlaceNode,
  type Plan,
  type PlanNode,
  replyOf,
} from "./plan.js";
import { type Evaluate, type Ref, Unknown, type Value } from "./scope.js";
import { strict, union } from "./settle.js";

/** Trade functions by name: canonical units in, canonical unit (or yes/no) out; NaN when it has no answer. */
export type Trade = Readonly<Record<string, (...args: readonly Value[]) => number | boolean>>;

/** Thrown and caught inside this file only. */
class Damaged extends Error {
  constructor(
    readonly code: string,
    readonly found: string,
  ) {
    super(code);
  }
}

/**
 * A plan as a closure. Fails (never throws) on a plan of another version (`expr.plan-version`: make it again
 * from its text), a damaged one (`expr.plan-broken`) or a trade function this build lacks (`expr.no-function`).
 */
export function link(plan: Plan, trade: Trade = {}): Result<Evaluate> {
  const refuse = (code: string, found: string) => fail(problem(code, {}, { found }));
  if (plan.v !== PLAN_VERSION) return refuse("expr.plan-version", String(plan.v));
  try {
    const run = linker(plan, trade)(plan.code, 0, 0);
    return ok((scope, here) => run(scope, [here]));
  } catch (error) {
    if (error instanceof Damaged) return refuse(error.code, error.found);
    // A node of a shape no plan has: it comes from a file that was changed by hand.
    if (error instanceof TypeError || error instanceof RangeError) return refuse("expr.plan-broken", error.message);
    throw error;
  }
}

/** What a reply must be to be used as the node says; "" takes a word or a number. */
const IS = { word: "string", words: "object", count: "number", yes: "boolean", result: "" } as const;

/** The replies under a node: what to take again when its result is no number. */
function sourcesOf(part: unknown): readonly (readonly [Ref, PlaceOf])[] {
  if (!Array.isArray(part)) return [];
  if (part[0] === "fact") return [[{ point: "car", field: String(part[1]) }, () => "car"]];
  const reply = replyOf(part);
  // Nodes that read a reply carry a place; the author door writes them.
  return reply === undefined ? part.flatMap(sourcesOf) : [[reply, placeOf(reply.place as PlaceNode)]];
}

function linker(plan: Plan, trade: Trade): (node: PlanNode, depth: number, bound: number) => Run {
  let count = 0;

  /** Not known although every reply was there: reported, and what it came from is to be looked at again. */
  const stuck = (code: string, node: PlanNode, index: number): Run => {
    const sources = sourcesOf(node);
    const [offset = 0, length = 0] = plan.spans.slice(2 * index, 2 * index + 2);
    return (scope, at) => {
      scope.report?.(problem(code, {}, { offset, length, place: at[0] ?? "" }));
      const parts = sources.map(([{ point, field }, where]) => {
        const place = where(scope, at) ?? "";
        const key = `${keyText({ point, field, place, state: "" })}!closer`;
        return scope.again?.({ point, field }, place) ?? new Set([key]);
      });
      return new Unknown(union(parts));
    };
  };

  /** The run's value where `fits`, else stuck. */
  const checked = (fits: (value: Value) => boolean, run: Run, failed: Run): Run => {
    return (scope, at) => {
      const value = run(scope, at);
      return value instanceof Unknown || fits(value) ? value : failed(scope, at);
    };
  };

  return function make(node: PlanNode, depth: number, bound: number): Run {
    const index = count++;
    if (typeof node === "boolean" || typeof node === "number" || typeof node === "string") return () => node;
    if (depth > DEEPEST_NODES) throw new Damaged("expr.plan-broken", node[0]);
    const next = (part: PlanNode): Run => make(part, depth + 1, bound);
    const finite = (run: Run): Run =>
      checked(
        (value) => value === true || value === false || Number.isFinite(value),
        run,
        stuck("expr.not-finite", node, index),
      );
    const reply = (is: string, run: Run): Run =>
      checked((value) => is === "" || typeof value === is, run, stuck("expr.other-reply", node, index));

    switch (node[0]) {
      case "word":
      case "words":
      case "count":
      case "yes":
      case "result":
        return reply(
          IS[node[0]],
          asked(node[1], node[2], node[3], (scope, ref, place) => scope.read(ref, place)),
        );
      case "num":
        return finite(
          asked(node[1], node[2], node[3], (scope, ref, place) => {
            const read = scope.measured(ref, place);
            return read instanceof Unknown ? read : read.value;
          }),
        );
      case "fact":
        return reply(text(node[2]), (scope) => scope.fact(node[1]));
      case "!":
        return not(next(node[1]));
      case "neg":
        return calculates(CALCULATE["-"], () => 0, next(node[1]));
      case "&&":
      case "||":
        return joined(node[1].map(next), node[0] === "||");
      case "at_least":
        return atLeast(figure(node[1]), node[2].map(next));
      case "exists":
      case "all":
        if (bound >= DEEPEST_QUANTIFIERS) throw new Damaged("expr.plan-broken", node[0]);
        return quantified(listOf(node[1]), make(node[2], depth + 1, bound + 1), node[0] === "exists");
      case "?:":
        return chosen(next(node[1]), next(node[2]), next(node[3]));
      case "==":
      case "!=":
      case "<":
      case "<=":
      case ">":
      case ">=":
        return compares(COMPARE[node[0]], next(node[1]), next(node[2]));
      case "+":
      case "-":
      case "*":
      case "/":
        return finite(calculates(CALCULATE[node[0]], next(node[1]), next(node[2])));
      case "in": {
        const words: readonly Value[] = node[2].map((word) => word);
        return compares(
          (value) => words.includes(value),
          next(node[1]),
          () => true,
        );
      }
      case "among": {
        const word = text(node[1]);
        return compares(
          (value) => Array.isArray(value) && value.includes(word),
          next(node[2]),
          () => true,
        );
      }
      case "grade": {
        const compare = Object.hasOwn(COMPARE, node[1]) ? COMPARE[node[1]] : undefined;
        if (compare === undefined) throw new Damaged("expr.plan-broken", node[1]);
        return grades(compare, node[2], node[3]);
      }
      case "more":
        return clearlyMore(node[1], node[2], stuck("expr.not-finite", node, index));
      case "unanswered":
        return asked(node[1], node[2], node[3], (scope, ref, place) => scope.unanswered(ref, place));
      case "found":
        return asked(text(node[1]), "", node[2], (scope, ref, place) => scope.found(ref.point, place));
      case "call": {
        const work = Object.hasOwn(trade, node[1]) ? trade[node[1]] : undefined;
        if (work === undefined) throw new Damaged("expr.no-function", node[1]);
        const kids = node[2].map(next);
        return finite((scope, at) => {
          const values = kids.map((kid) => kid(scope, at));
          return strict(...values) ?? work(...values.filter((value): value is Value => !(value instanceof Unknown)));
        });
      }
      default:
        throw new Damaged("expr.plan-broken", String(node[0]));
    }
  };
}
