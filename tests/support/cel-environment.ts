/**
 * The declarations of conditions as an environment of the CEL library itself: a second opinion on what is a
 * well-typed condition. Knows CEL's types only; words and three values are ours.
 */
import { Environment } from "@marcbachmann/cel-js";
import type { Declarations, NameType } from "../../src/core/expr/author.js";
import { QUANTITIES } from "../../src/core/units/index.js";

const placeType = (kind: string): string => `at_${kind}`;
const never = (): never => {
  throw new Error("Only types are asked here.");
};

function celType(type: NameType | { readonly is: string; readonly quantity?: string }): string {
  if (type.is === "reading" && "quantity" in type && type.quantity) return type.quantity;
  if (type.is === "words") return "list<string>";
  if (type.is === "yes") return "bool";
  return type.is === "count" ? "double" : "string";
}

/** Names of points and relations as seen from a place of a kind: `whl` → its points, `opposite` → a place. */
function fieldsOf(declared: Declarations, kind: string): Map<string, Map<string, string> | string> {
  const fields = new Map<string, Map<string, string> | string>();
  const around = [kind, ...(declared.kinds[kind] ?? [])];
  for (const [name, named] of Object.entries(declared.names)) {
    if (!around.includes(named.kind)) continue;
    const [sheet = "", point = ""] = name.split(".");
    const points = fields.get(sheet);
    const own = points instanceof Map ? points : new Map<string, string>();
    fields.set(sheet, own.set(point, celType(named.type)));
  }
  for (const { name, from, to, many } of declared.relations)
    if (from === kind) fields.set(name, many ? `list<${placeType(to)}>` : placeType(to));
  return fields;
}

function withTypes(declared: Declarations): Environment {
  const environment = new Environment({ enableOptionalTypes: false });
  for (const quantity of QUANTITIES) environment.registerType(quantity, class {});
  environment.registerType("grade", class {});
  for (const kind of Object.keys(declared.kinds)) {
    const fields: Record<string, string> = {};
    for (const [name, of] of fieldsOf(declared, kind)) {
      if (typeof of === "string") fields[name] = of;
      else {
        environment.registerType(`${placeType(kind)}_${name}`, { ctor: class {}, fields: Object.fromEntries(of) });
        fields[name] = `${placeType(kind)}_${name}`;
      }
    }
    environment.registerType(placeType(kind), { ctor: class {}, fields });
  }
  const facts = Object.entries(declared.facts).map(([name, type]) => [name, celType(type)]);
  return environment
    .registerType("car_facts", { ctor: class {}, fields: Object.fromEntries(facts) })
    .registerVariable("car", "car_facts");
}

function withOperators(environment: Environment): Environment {
  const operator = (signature: string) => environment.registerOperator(signature, never);
  const additive = QUANTITIES.filter((quantity) => quantity !== "temperature");
  for (const sign of ["+", "-", "*", "/"]) {
    operator(`double ${sign} int: double`);
    operator(`int ${sign} double: double`);
  }
  for (const quantity of [...QUANTITIES, "grade"])
    for (const sign of ["<", "<=", ">", ">="]) operator(`${quantity} ${sign} ${quantity}: bool`);
  for (const quantity of additive) {
    operator(`${quantity} + ${quantity}: ${quantity}`);
    operator(`${quantity} - ${quantity}: ${quantity}`);
    operator(`-${quantity}: ${quantity}`);
    operator(`${quantity} / ${quantity}: double`);
    operator(`${quantity} == string: bool`);
    operator(`${quantity} in list<string>: bool`);
    for (const number of ["double", "int"]) {
      operator(`${number} * ${quantity}: ${quantity}`);
      operator(`${quantity} * ${number}: ${quantity}`);
      operator(`${quantity} / ${number}: ${quantity}`);
    }
  }
  operator("grade == grade: bool");
  operator("temperature - temperature: temperature_difference");
  operator("temperature + temperature_difference: temperature");
  operator("temperature - temperature_difference: temperature");
  operator("temperature_difference + temperature: temperature");
  operator("double in list<int>: bool");
  return environment;
}

/** The environment of conditions that stand at a kind of place. */
export function celEnvironment(declared: Declarations, scope: string): Environment {
  const environment = withOperators(withTypes(declared));
  const fn = (signature: string) => environment.registerFunction(signature, never);
  for (const grade of ["advisory", "minor", "major", "dangerous"]) environment.registerVariable(grade, "grade");
  environment.registerVariable("here", placeType(scope));
  for (const [name, of] of fieldsOf(declared, scope))
    environment.registerVariable(name, typeof of === "string" ? of : `${placeType(scope)}_${name}`);
  for (const quantity of QUANTITIES) {
    fn(`band(${quantity}): grade`);
    fn(`clearly_more(${quantity}, ${quantity}): bool`);
    fn(`median(${quantity}): ${quantity}`);
  }
  for (const type of [...QUANTITIES, "string", "bool", "double", "list<string>"]) {
    fn(`unanswered(${type}): bool`);
    fn(`last(${type}): ${type}`);
    fn(`since_last_km(${type}): double`);
  }
  for (let many = 1; many <= 8; many++)
    fn(`at_least(int, ${Array.from({ length: many }, () => "bool").join(", ")}): bool`);
  fn("found(string): bool");
  for (const kind of Object.keys(declared.kinds)) fn(`found(string, ${placeType(kind)}): bool`);
  // An amount takes the quantity its place wants, which no CEL signature can say.
  fn("amount(double, string): dyn");
  fn("amount(int, string): dyn");
  const celType = (kind: string) =>
    kind === "yes" ? "bool" : kind === "number" ? "double" : kind === "word" ? "string" : kind;
  for (const [name, { arguments: args, gives }] of Object.entries(declared.functions)) {
    // Where several figures may stand, one may stand too.
    const ways = args.map(({ kind, atLeast }) =>
      kind === "number"
        ? ["double", "int"]
        : atLeast === undefined
          ? [celType(kind)]
          : [`list<${celType(kind)}>`, celType(kind)],
    );
    const all = ways.reduce<readonly (readonly string[])[]>(
      (before, next) => before.flatMap((types) => next.map((type) => [...types, type])),
      [[]],
    );
    for (const types of all) fn(`${name}(${types.join(", ")}): ${celType(gives)}`);
  }
  return environment;
}

/**
 * A condition as the environment can type it: `places("corner")` has a type that hangs on its text, which no CEL
 * signature can say, so it becomes a function of that kind.
 */
export function placesByKind(environment: Environment, text: string, declared: Declarations): string {
  return Object.keys(declared.kinds).reduce((written, kind) => {
    const name = `places_${kind}`;
    if (!environment.getDefinitions().functions.some((known) => known.name === name))
      environment.registerFunction(`${name}(): list<${placeType(kind)}>`, never);
    return written.replaceAll(`places("${kind}")`, `${name}()`);
  }, text);
}
