/**
 * From any parsed value to a sheet (or the shared files) of the right shape, or to problems that say what stood
 * there and what was expected. Knows shapes only: whether the names mean anything is checked beside it.
 */
import type * as z from "zod/mini";
import { fail, ok, type Problem, problem, type Result } from "../terms/index.js";
import { Common, Sheet } from "./schema.js";
import type { Path, SpotOf } from "./source.js";

type Schema = z.ZodMiniType;
type Issue = z.core.$ZodIssue;
type UnionIssue = z.core.$ZodIssueInvalidUnion;

/** One sheet with its texts; problems name file, line and column through `spotOf`. */
export const parseSheet = (value: unknown, spotOf: SpotOf): Result<Sheet> => parse(Sheet, value, spotOf);

/** The shared files with their texts. */
export const parseCommon = (value: unknown, spotOf: SpotOf): Result<Common> => parse(Common, value, spotOf);

function parse<T>(schema: z.ZodMiniType<T>, value: unknown, spotOf: SpotOf): Result<T> {
  const parsed = schema.safeParse(value);
  if (parsed.success) return ok(parsed.data);
  return fail(...tellIssues(parsed.error.issues, { schema, value, path: [], spotOf }));
}

/** Where issues are told from: the schema and value their paths start at. */
interface Base {
  readonly schema: Schema;
  readonly value: unknown;
  readonly path: Path;
  readonly spotOf: SpotOf;
}

function tellIssues(issues: readonly Issue[], base: Base): readonly Problem[] {
  return issues.flatMap((issue) => {
    const inner = issue.path.filter((part) => typeof part !== "symbol");
    const here: Base = {
      schema: inner.reduce(stepInto, base.schema),
      value: inner.reduce(valueAt, base.value),
      path: [...base.path, ...inner],
      spotOf: base.spotOf,
    };
    return tellIssue(issue, here);
  });
}

function tellIssue(issue: Issue, here: Base): readonly Problem[] {
  const at = here.spotOf(here.path);
  const last = here.path.at(-1) ?? "";
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) =>
        problem("unknown-key", here.spotOf([...here.path, key], "key"), { key, expected: keysOf(here.schema) }),
      );
    case "invalid_union":
      return tellUnion(issue, here);
    case "invalid_key":
      return [problem("bad-form", at, { found: String(last), expected: formOf(innerPattern(issue)) })];
    case "invalid_format":
      return [
        problem("bad-form", at, { found: show(here.value), expected: formOf("pattern" in issue ? issue.pattern : "") }),
      ];
    case "too_small":
      return here.value === ""
        ? [problem("empty-text", at, { key: String(last) })]
        : [problem("too-few", at, { key: String(last), least: Number(issue.minimum) })];
    case "too_big":
      return [problem("too-many", at, { key: String(last), most: Number(issue.maximum) })];
    default:
      return [wrongValue(issue, here)];
  }
}

function wrongValue(issue: Issue, here: Base): Problem {
  const at = here.spotOf(here.path);
  const expected = issue.code === "invalid_value" ? issue.values.map(String) : [typeName(issue)];
  if (here.value === undefined) return problem("missing-key", at, { key: String(here.path.at(-1) ?? ""), expected });
  if (here.value === null) return problem("null-word", at, { expected });
  return problem("wrong-value", at, { found: show(here.value), expected });
}

/** Of several allowed shapes the one that was most nearly meant; two that fit equally badly give all their choices. */
function tellUnion(issue: UnionIssue, here: Base): readonly Problem[] {
  const options = optionsOf(here.schema);
  const scored = issue.errors.map((errors, i) => ({ errors, schema: options[i], score: farness(errors) }));
  const best = Math.min(...scored.map((s) => s.score));
  const nearest = scored.filter((s) => s.score === best);
  if (best >= FAR) {
    const expected = [
      ...new Set(scored.flatMap((s) => s.errors.filter((e) => e.path.length === 0).flatMap(expectedOf))),
    ];
    if (here.value === undefined || here.value === null || expected.length > 0)
      return [wrongValue({ code: "invalid_value", values: expected, path: [], message: "" }, here)];
  }
  const chosen = nearest[0];
  return chosen?.schema === undefined ? [] : tellIssues(chosen.errors, { ...here, schema: chosen.schema });
}

const FAR = 100;
function farness(errors: readonly Issue[]): number {
  return errors.reduce((sum, e) => {
    if (e.path.length === 0 && (e.code === "invalid_type" || e.code === "invalid_value")) return sum + FAR;
    return sum + (e.code === "unrecognized_keys" ? 5 * e.keys.length : 1);
  }, 0);
}
const expectedOf = (issue: Issue): readonly string[] =>
  issue.code === "invalid_value" ? issue.values.map(String) : issue.code === "invalid_type" ? [typeName(issue)] : [];

const NAMES: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  tuple: "a list",
  object: "a mapping",
  record: "a mapping",
};
const typeName = (issue: Issue): string =>
  issue.code === "invalid_type" ? (NAMES[issue.expected] ?? issue.expected) : "another value";

/** What a pattern asks for, in words; the schema has these forms and no other. */
function formOf(pattern: string | undefined): string {
  if (pattern?.includes("[._-]")) return "small letters first, then letters and digits parted by “.”, “-” or “_”";
  if (pattern?.includes("[A-Za-z]")) return "letters and digits parted by “-”";
  return "small letters and digits parted by “-”";
}
const innerPattern = (issue: z.core.$ZodIssueInvalidKey): string | undefined => {
  const first = issue.issues[0];
  return first?.code === "invalid_format" ? first.pattern : undefined;
};

/** A value as it is told in a message: short, quoted when text. */
function show(value: unknown): string {
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object" && value !== null) return "a mapping";
  const text = typeof value === "string" ? value : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

const valueAt = (value: unknown, part: string | number): unknown =>
  typeof value === "object" && value !== null ? Reflect.get(value, part) : undefined;

type Def = z.core.$ZodTypeDef;
/** Narrows a schema definition by the type it says it is. */
const is = <D extends Def>(def: Def, type: D["type"]): def is D => def.type === type;
type ObjectDef = z.core.$ZodObjectDef<Readonly<Record<string, Schema>>>;

/** The schema one step inside; the schema itself where there is none to step into. */
function stepInto(schema: Schema, part: string | number): Schema {
  const def = unwrap(schema)._zod.def;
  if (is<ObjectDef>(def, "object")) return def.shape[part] ?? schema;
  if (is<z.core.$ZodArrayDef<Schema>>(def, "array")) return def.element;
  if (is<z.core.$ZodRecordDef<z.core.$ZodRecordKey, Schema>>(def, "record")) return def.valueType;
  if (is<z.core.$ZodTupleDef<readonly Schema[]>>(def, "tuple")) return def.items[Number(part)] ?? schema;
  return schema;
}
function unwrap(schema: Schema): Schema {
  const def = schema._zod.def;
  return is<z.core.$ZodOptionalDef<Schema>>(def, "optional") ? unwrap(def.innerType) : schema;
}
function optionsOf(schema: Schema): readonly Schema[] {
  const def = unwrap(schema)._zod.def;
  return is<z.core.$ZodUnionDef<readonly Schema[]>>(def, "union") ? def.options : [];
}
function keysOf(schema: Schema): readonly string[] {
  const def = unwrap(schema)._zod.def;
  return is<ObjectDef>(def, "object") ? Object.keys(def.shape) : [];
}
