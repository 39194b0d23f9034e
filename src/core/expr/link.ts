/** Makes closures with three values out of a plan. Knows no CEL, no sheet, no visit: it asks a Scope. */
import { fail, keyText, ok, type Problem, problem, type Result } from "../terms/index.js";
import { CALCULATE, COMPARE, calculates, clearlyMore, compares, grades, isWord, tests } from "./figures.js";
import { atLeast, chosen, joined, middle, not, quantified } from "./logic.js";
import { type At, asked, figure, listOf, placeOf, type Run, refOf, text } from "./places-of.js";
import {
  DEEPEST_NODES,
  DEEPEST_QUANTIFIERS,
  isListed,
  PLAN_VERSION,
  type PlaceNode,
  type Plan,
  type PlanNode,
  replyOf,
} from "./plan.js";
import { type Evaluate, NOT_APPLICABLE, type Outcome, type Ref, type Scope, Unknown, type Value } from "./scope.js";
import { strict, union } from "./settle.js";

/** What a trade function is handed for one argument. */
export type TradeGiven = number | string | readonly number[];
/**
 * Trade functions by name: canonical units in, canonical unit (or a word, or yes/no) out. What they are handed out of
 * their range they refuse, with why: that is told and the result not known.
 */
export type Trade = Readonly<Record<string, (given: readonly TradeGiven[]) => Result<number | string | boolean>>>;

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

/** Point, field and place of every reply and fact under a node. */
function sourcesOf(part: unknown): readonly (readonly [point: string, field: string, place: unknown])[] {
  if (!Array.isArray(part)) return [];
  if (part[0] === "fact") return [["car", String(part[1]), undefined]];
  const reply = replyOf(part);
  return reply === undefined ? part.flatMap(sourcesOf) : [[reply.point, reply.field, reply.place]];
}

function linker(plan: Plan, trade: Trade): (node: PlanNode, depth: number, bound: number) => Run {
  let count = 0;

  return function make(node: PlanNode, depth: number, bound: number): Run {
    const index = count++;
    if (typeof node === "boolean" || typeof node === "number" || typeof node === "string") return () => node;
    if (depth > DEEPEST_NODES) throw new Damaged("expr.plan-broken", node[0]);
    const next = (part: PlanNode): Run => make(part, depth + 1, bound);
    /** One argument of a call; the list of its figures is a node of its own. */
    const given = (part: PlanNode): Run | readonly Run[] => {
      if (!isListed(part)) return next(part);
      count++;
      return part[1].map(next);
    };

    /** Not known although every reply was there: reported, and what it came from is to be looked at again. */
    const stuck =
      (code: string): Run =>
      (scope, at) =>
        stuckOn([problem(code)], scope, at);
    const stuckOn = (why: readonly Problem[], scope: Scope, at: At): Unknown => {
      const [offset = 0, length = 0] = plan.spans.slice(2 * index, 2 * index + 2);
      for (const { code, params } of why)
        scope.report?.(problem(code, {}, { ...params, offset, length, place: at[0] ?? "" }));
      const keys = sourcesOf(node).map(([point, field, of]) => {
        // Nodes that read a reply carry a place; those of facts none.
        const place = of === undefined ? "car" : (placeOf(of as PlaceNode)(scope, at) ?? "");
        const key = `${keyText({ point, field, place, state: "" })}!closer`;
        return scope.again?.({ point, field }, place) ?? new Set([key]);
      });
      return new Unknown(union(keys));
    };

    switch (node[0]) {
      case "word":
      case "words":
      case "count":
      case "yes":
      case "result": {
        const is = IS[node[0]];
        const other = stuck("expr.other-reply");
        const fits = (value: Outcome): boolean => value instanceof Unknown || is === "" || typeof value === is;
        const ref = refOf(node[1], node[2], node[4]);
        const where = node[3] === 0 ? undefined : placeOf(node[3]);
        return (scope, at) => {
          const place = where === undefined ? at[0] : where(scope, at);
          const value = place === undefined ? NOT_APPLICABLE : scope.read(ref, place);
          return fits(value) ? value : other(scope, at);
        };
      }
      case "num": {
        const failed = stuck("expr.not-finite");
        const measured = (scope: Scope, ref: Ref, place: string, at: At): Outcome => {
          const read = scope.measured(ref, place);
          if (read instanceof Unknown) return read;
          return Number.isFinite(read.value) ? read.value : failed(scope, at);
        };
        return asked(node[1], node[2], node[3], measured, node[4]);
      }
      case "fact": {
        const [name, is, other] = [text(node[1]), text(node[2]), stuck("expr.other-reply")];
        return (scope, at) => {
          const value = scope.fact(name);
          return value instanceof Unknown || typeof value === is ? value : other(scope, at);
        };
      }
      case "!":
        return not(next(node[1]));
      case "neg":
        return calculates(CALCULATE["-"], () => 0, next(node[1]), stuck("expr.not-finite"));
      case "&&":
      case "||":
        return joined(node[1].map(next), node[0] === "||");
      case "at_least":
        return atLeast(figure(node[1]), node[2].map(next));
      case "exists":
      case "all":
        if (bound >= DEEPEST_QUANTIFIERS) throw new Damaged("expr.plan-broken", node[0]);
        return quantified(listOf(node[1]), make(node[2], depth + 1, bound + 1), node[0] === "exists");
      case "median":
        if (bound >= DEEPEST_QUANTIFIERS) throw new Damaged("expr.plan-broken", node[0]);
        return middle(listOf(node[1]), make(node[2], depth + 1, bound + 1));
      case "?:":
        return chosen(next(node[1]), next(node[2]), next(node[3]));
      case "==":
      case "!=":
      case "<":
      case "<=":
      case ">":
      case ">=": {
        const [left, right] = [next(node[1]), next(node[2])];
        const word = node[2];
        // The commonest test of all: a reply beside a word.
        if (typeof word === "string" && node[0] === "==") return isWord(left, word);
        return compares(COMPARE[node[0]], left, right);
      }
      case "+":
      case "-":
      case "*":
      case "/":
        return calculates(CALCULATE[node[0]], next(node[1]), next(node[2]), stuck("expr.not-finite"));
      case "in": {
        const words: readonly Value[] = node[2].map((word) => word);
        return tests((value) => words.includes(value), next(node[1]));
      }
      case "among": {
        const word = text(node[1]);
        return tests((value) => Array.isArray(value) && value.includes(word), next(node[2]));
      }
      case "grade": {
        const compare = Object.hasOwn(COMPARE, node[1]) ? COMPARE[node[1]] : undefined;
        if (compare === undefined) throw new Damaged("expr.plan-broken", node[1]);
        return grades(compare, node[2], node[3]);
      }
      case "more":
        return clearlyMore(node[1], node[2], stuck("expr.not-finite"));
      case "unanswered":
        return asked(node[1], node[2], node[3], (scope, ref, place) => scope.unanswered(ref, place));
      case "since":
        return asked(node[1], node[2], node[3], (scope, ref, place) => scope.sinceLast(ref, place));
      case "found":
        return asked(node[1], "", node[2], (scope, ref, place) => scope.found(ref.point, place));
      case "call":
        return called(node[1], node[2].map(given), trade, stuckOn);
      case "amount":
        return next(node[1]);
      default:
        throw new Damaged("expr.plan-broken", String(node[0]));
    }
  };
}

function called(
  name: string,
  args: readonly (Run | readonly Run[])[],
  trade: Trade,
  failed: (why: readonly Problem[], scope: Scope, at: At) => Unknown,
): Run {
  const work = Object.hasOwn(trade, name) ? trade[name] : undefined;
  if (work === undefined) throw new Damaged("expr.no-function", name);
  return (scope, at) => {
    let open: Unknown | undefined;
    const known = (run: Run): Value => {
      const value = run(scope, at);
      if (!(value instanceof Unknown)) return value;
      open = open === undefined ? value : strict(open, value);
      return Number.NaN;
    };
    const given = args.map((arg) => (typeof arg === "function" ? known(arg) : arg.map((one) => Number(known(one)))));
    if (open !== undefined) return open;
    // The author door hands each argument the kind it takes; a list holds figures only.
    const result = work(given as readonly TradeGiven[]);
    if (!result.ok) return failed(result.problems, scope, at);
    const { value } = result;
    return typeof value !== "number" || Number.isFinite(value)
      ? value
      : failed([problem("expr.not-finite")], scope, at);
  };
}
