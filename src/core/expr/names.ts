/** Resolves dotted names: places and relations in front, then a point, a derived value, a car fact or a grade. */

import { nearest } from "../terms/author.js";
import { GRADES, levelOf } from "../terms/index.js";
import type { FactType, Named, NameType } from "./declarations.js";
import { type Checking, faulty, type Piece, piece, type Range, refuse, type Type, tell } from "./pieces.js";
import type { PlaceNode, PlanNode } from "./plan.js";
import type { ASTNode } from "./syntax.js";

interface Segment extends Range {
  readonly name: string;
}

/** The parts of `a.b.c`; undefined where it does not begin with a name. */
function segmentsOf(node: ASTNode): readonly Segment[] | undefined {
  if (node.op === "id") return [{ name: node.args, start: node.start, end: node.end }];
  if (node.op !== ".") return undefined;
  const [of, name] = node.args;
  const front = segmentsOf(of);
  return front && [...front, { name, start: node.end - name.length, end: node.end }];
}

const GRADE_NAMES: readonly string[] = GRADES;
const known = <T>(table: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/** Types a name with everything before it. */
export function checkName(checking: Checking, node: ASTNode): Piece {
  const segments = segmentsOf(node);
  const first = segments?.[0];
  if (segments === undefined || first === undefined) return refuse(checking, node, "expr.refused", { what: "." });
  const { bound, use } = checking;
  const level = bound.findIndex(({ name }) => name === first.name) + 1;
  if (level === 0 && first.name === "car") return carFact(checking, node, segments.slice(1));
  const isGrade = level === 0 && segments.length === 1 && GRADE_NAMES.includes(first.name);
  if (isGrade) {
    const grade = levelOf(GRADES.find((name) => name === first.name) ?? null);
    return piece(node, { is: "grade", grade }, grade);
  }
  if (level > 0) return from(checking, node, level, bound[level - 1]?.kind ?? "", segments.slice(1));
  return from(checking, node, 0, use.scope, first.name === "here" ? segments.slice(1) : segments);
}

/** Follows relations from a place, then looks up what is left as a name there. */
function from(
  checking: Checking,
  node: ASTNode,
  start: PlaceNode,
  startKind: string,
  segments: readonly Segment[],
): Piece {
  let [place, kind] = [start, startKind];
  for (const [index, segment] of segments.entries()) {
    const named = checking.declared.relations.filter(({ name }) => name === segment.name);
    if (named.length === 0) return pointAt(checking, node, place, kind, segments.slice(index));
    const relation = named.find((one) => one.from === kind);
    if (relation === undefined) {
      tell(checking, segment, "expr.no-relation", { kind, expected: [...new Set(named.map((one) => one.from))] });
      return faulty(node);
    }
    if (relation.many) {
      const list = ["rel", place, relation.name] as const;
      if (index === segments.length - 1) return piece(node, { is: "list", list, kind: relation.to }, false);
      tell(checking, segment, "expr.list-not-place");
      return faulty(node);
    }
    [place, kind] = [[place, relation.name], relation.to];
  }
  return piece(node, { is: "place", place, kind }, false);
}

function pointAt(checking: Checking, node: ASTNode, place: PlaceNode, kind: string, rest: readonly Segment[]): Piece {
  const { declared } = checking;
  const spelled = rest.map(({ name }) => name).join(".");
  const named = known(declared.names, spelled);
  if (named === undefined) return unknownName(checking, node, kind, rest, spelled);
  const around = known(declared.kinds, kind) ?? [];
  if (named.kind !== kind && !around.includes(named.kind)) {
    tell(checking, rangeOf(rest, node), "expr.place-not-around", { kind, of: named.kind, text: spelled });
    return faulty(node);
  }
  return piece(node, typeOf(named.type), codeOf(named, place));
}

const rangeOf = (rest: readonly Segment[], node: Range): Range => ({
  start: rest[0]?.start ?? node.start,
  end: rest.at(-1)?.end ?? node.end,
});

function unknownName(
  checking: Checking,
  node: ASTNode,
  kind: string,
  rest: readonly Segment[],
  spelled: string,
): Piece {
  const { declared, bound } = checking;
  if (rest[0]?.name === "last" && rest.length > 1) {
    tell(checking, rest[0], "expr.last-call", { says: spelled.slice("last.".length) });
    return faulty(node);
  }
  const [front = "", second = ""] = rest.map(({ name }) => name);
  const loaded = (sheet: string) => declared.sheets.includes(sheet);
  const behind = spelled.slice(front.length + 1);
  // A slip in a loaded name must not pass as a name of a sheet that is not there.
  const slip =
    rest.length < 2 ||
    loaded(front) ||
    loaded(second) ||
    declared.sheets.some((sheet) => `${sheet}.${behind}` in declared.names);
  const other = declared.otherSheets?.includes(front) ?? true;
  if (!slip && other) {
    tell(checking, rangeOf(rest, node), "expr.sheet-not-loaded", { sheet: front, text: spelled });
    return faulty(node);
  }
  const relations = declared.relations.filter((one) => one.from === kind).map((one) => one.name);
  const places = ["here", "car", ...relations, ...bound.map(({ name }) => name)];
  const isPlace = loaded(second) || rest.length < 2;
  const names = Object.keys(declared.names);
  // Whoever wrote a sheet's name right means something of that sheet; or the very name stands under another sheet's.
  const ofSheet = names.filter((name) => name.startsWith(`${front}.`));
  const elsewhere = nearest(
    spelled,
    names.filter((name) => name.endsWith(spelled.slice(front.length))),
    1,
  );
  const expected = isPlace
    ? nearest(loaded(second) ? front : spelled, [...places, ...(rest.length < 2 ? names : [])])
    : ofSheet.length > 0
      ? [...elsewhere, ...nearest(spelled, ofSheet)]
      : nearest(spelled, names);
  const range = loaded(second) ? (rest[0] ?? node) : rangeOf(rest, node);
  tell(checking, range, "expr.unknown-name", { text: loaded(second) ? front : spelled, expected });
  return faulty(node);
}

function typeOf(type: NameType | FactType): Type {
  switch (type.is) {
    case "word":
    case "words":
      return { is: type.is, words: type.words };
    case "reading":
      return { is: "reading", quantity: type.quantity, results: "results" in type ? (type.results ?? []) : [] };
    case "count":
      return { is: "number" };
    default:
      return { is: type.is };
  }
}

function codeOf({ ref: { point, field }, type }: Named, place: PlaceNode): PlanNode {
  if (type.is === "reading") return ["num", point, field, place];
  return [type.is === "date-code" ? "word" : type.is, point, field, place];
}

const FACT_IS = { word: "string", count: "number", yes: "boolean", reading: "number" } as const;

function carFact(checking: Checking, node: ASTNode, rest: readonly Segment[]): Piece {
  const name = rest.map((segment) => segment.name).join(".");
  const { facts } = checking.declared;
  const fact = known(facts, name);
  if (fact !== undefined) return piece(node, typeOf(fact), ["fact", name, FACT_IS[fact.is]]);
  tell(checking, rangeOf(rest, node), "expr.unknown-fact", { text: name, expected: nearest(name, Object.keys(facts)) });
  return faulty(node);
}

/** Whether a new name would hide one that means something already. */
export function isTaken({ declared, bound }: Checking, name: string): boolean {
  return (
    ["here", "car", ...GRADE_NAMES].includes(name) ||
    declared.sheets.includes(name) ||
    declared.otherSheets?.includes(name) === true ||
    declared.relations.some((relation) => relation.name === name) ||
    Object.keys(declared.names).some((spelled) => spelled === name || spelled.startsWith(`${name}.`)) ||
    bound.some((place) => place.name === name)
  );
}
