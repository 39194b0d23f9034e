/** A plan back as CEL text in one settled form: what the checker understood. Knows no layout and no comment. */

import { gradeOf } from "../terms/index.js";
import type { Declarations } from "./declarations.js";
import type { GradeNode, Last, ListNode, PlaceNode, Plan, PlanNode, ScaledNode } from "./plan.js";

/** How strongly a sign binds; an operand that binds less stands in brackets. */
const BINDS: Readonly<Record<string, number>> = {
  "?:": 1,
  "||": 2,
  "&&": 3,
  "==": 4,
  "!=": 4,
  "<": 5,
  "<=": 5,
  ">": 5,
  ">=": 5,
  in: 5,
  among: 5,
  grade: 5,
  "+": 6,
  "-": 6,
  "*": 7,
  "/": 7,
  "!": 8,
  neg: 8,
};
const ATOM = 9;

/** CEL text that compiles to the same nodes under the same declarations. */
export function print(plan: Plan, declared: Declarations): string {
  const spelled = new Map(
    Object.entries(declared.names).map(([name, { ref }]) => [`${ref.point} ${ref.field}`, name] as const),
  );
  const variables = freeNames(declared);

  const nameOf = (point: unknown, field: unknown, place: PlaceNode): string => {
    const name = spelled.get(`${point} ${field}`);
    if (name === undefined) throw new Error(`No name is declared for ${point} ${field}.`);
    const front = placeText(place);
    return front === "" ? name : `${front}.${name}`;
  };
  const placeText = (place: PlaceNode): string => {
    if (typeof place === "number") return place === 0 ? "" : (variables[place - 1] ?? "");
    const front = placeText(place[0]);
    return front === "" ? place[1] : `${front}.${place[1]}`;
  };
  const listText = (list: ListNode): string => {
    if (list[0] === "kind") return `places(${quoted(list[1])})`;
    const front = placeText(list[1]);
    return front === "" ? list[2] : `${front}.${list[2]}`;
  };
  const gradeText = (grade: GradeNode): string =>
    typeof grade === "number" ? String(gradeOf(grade as 1)) : `band(${nameOf(grade[1], grade[2], grade[3])})`;
  const readText = (point: string, field: string, place: PlaceNode, last: Last | undefined): string =>
    last === undefined ? nameOf(point, field, place) : `last(${nameOf(point, field, place)})`;
  const scaledText = ([factor, point, field, place, last]: ScaledNode): string =>
    factor === 1
      ? readText(point, field, place, last)
      : `${numberText(factor)} * ${readText(point, field, place, last)}`;

  const within = (node: PlanNode, least: number, bound: number): string => {
    const text = write(node, bound);
    return bindingOf(node) < least ? `(${text})` : text;
  };
  const write = (node: PlanNode, bound: number): string => {
    if (typeof node === "number") return numberText(node);
    if (typeof node === "string") return quoted(node);
    if (typeof node === "boolean") return String(node);
    const list = (nodes: readonly PlanNode[]) => nodes.map((part) => within(part, 1, bound)).join(", ");
    switch (node[0]) {
      case "word":
      case "words":
      case "count":
      case "yes":
      case "result":
      case "num":
        return readText(node[1], node[2], node[3], node[4]);
      case "fact":
        return `car.${node[1]}`;
      case "!":
        return `!${within(node[1], 8, bound)}`;
      case "neg":
        return `-${within(node[1], 8, bound)}`;
      case "&&":
      case "||":
        return node[1].map((part) => within(part, (BINDS[node[0]] ?? 0) + 1, bound)).join(` ${node[0]} `);
      case "?:":
        return `${within(node[1], 2, bound)} ? ${within(node[2], 1, bound)} : ${within(node[3], 1, bound)}`;
      case "in":
        return `${within(node[1], 5, bound)} in [${node[2].map((word) => write(word, bound)).join(", ")}]`;
      case "among":
        return `${quoted(node[1])} in ${within(node[2], 6, bound)}`;
      case "grade":
        return `${gradeText(node[2])} ${node[1]} ${gradeText(node[3])}`;
      case "more":
        return `clearly_more(${scaledText(node[1])}, ${scaledText(node[2])})`;
      case "exists":
      case "all":
        return `${listText(node[1])}.${node[0]}(${variables[bound]}, ${write(node[2], bound + 1)})`;
      case "median":
        return `median(${nameOf(node[2][1], node[2][2], 0)})`;
      case "at_least":
        return `at_least(${node[1]}, ${list(node[2])})`;
      case "unanswered":
        return `unanswered(${nameOf(node[1], node[2], node[3])})`;
      case "since":
        return `since_last_km(${nameOf(node[1], node[2], node[3])})`;
      case "found": {
        const place = placeText(node[2]);
        return place === "" ? `found(${quoted(node[1])})` : `found(${quoted(node[1])}, ${place})`;
      }
      case "list":
        return `[${list(node[1])}]`;
      case "call":
        return `${node[1]}(${list(node[2])})`;
      case "amount":
        return `amount(${within(node[1], 1, bound)}, ${quoted(node[2])})`;
      default: {
        const binds = BINDS[node[0]] ?? 0;
        return `${within(node[1], binds, bound)} ${node[0]} ${within(node[2], binds + 1, bound)}`;
      }
    }
  };
  return write(plan.code, 0);
}

/** A negative number is a minus and a number, and binds so. */
const bindingOf = (node: PlanNode): number =>
  typeof node === "object" ? (BINDS[node[0]] ?? ATOM) : typeof node === "number" && node < 0 ? 8 : ATOM;

const quoted = (text: string): string => JSON.stringify(text);
const numberText = (value: number): string =>
  Number.isInteger(value) && Math.abs(value) < 1e15 ? value.toFixed(1) : String(value);

/** Letters for the places of quantifiers that mean nothing else. */
function freeNames(declared: Declarations): readonly string[] {
  const taken = new Set([
    ...Object.keys(declared.names).map((name) => name.split(".")[0]),
    ...declared.relations.map(({ name }) => name),
    ...declared.sheets,
    ...(declared.otherSheets ?? []),
  ]);
  return [..."cdefghjkmnpqstuvwxyz"].filter((letter) => !taken.has(letter));
}
