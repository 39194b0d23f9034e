/**
 * A planned formula in signs a person reads: with names, or with this visit's numbers. Of two ways only the one that
 * holds is written. Decides nothing.
 */
import type { PlanNode } from "../../core/expr/run.js";
import type { TradeFunction } from "../../core/trade/index.js";
import { canonicalUnit, isQuantity } from "../../core/units/index.js";
import { t } from "../texts/working.js";
import { atPlace, derivedName, fieldName, pointName } from "./knowledge.js";
import { figureText } from "./worked-figures.js";
import { comesTo, type Derived, type Question } from "./working-values.js";

export interface Told {
  readonly question: Question;
  readonly derived: Derived;
}
/** How the parts that are no sign are written. */
type Say = (node: PlanNode) => string | undefined;

const SIGNS: Readonly<Record<string, readonly [sign: string, binds: number]>> = {
  "+": ["+", 1],
  "-": ["−", 1],
  "*": ["×", 2],
  "/": ["÷", 2],
};
const ATOM = 4;

/** The formula by the names of what goes in. */
export const inNames = (told: Told, code: PlanNode): string => written(told, code, (node) => named(told, node));

/** The formula with the numbers of this visit, each in the unit it is worked with. */
export const inNumbers = (told: Told, code: PlanNode): string =>
  // A function alone is written with what it was handed: its own figure is the result.
  written(told, code, (node) => (isSign(node) || isCallOf(told, code, node) ? undefined : numberText(told, node)));

/** Every function called, outermost first, each with what its arguments came to. */
export function callsIn(
  told: Told,
  code: PlanNode,
): readonly { readonly fn: TradeFunction; readonly given: readonly string[] }[] {
  if (typeof code !== "object") return [];
  if (code[0] === "?:") return callsIn(told, wayOf(told, code));
  if (code[0] !== "call") return partsOf(code).flatMap((part) => callsIn(told, part));
  const fn = told.question.functions[code[1]];
  const own = fn && {
    fn,
    given: code[2].map((part, index) => {
      const values = isList(part) ? part[1] : [part];
      return `${fn.arguments[index]?.says ?? ""}: ${values.map((one) => numberText(told, one)).join(", ")}`;
    }),
  };
  const inner = code[2].flatMap((part) => callsIn(told, part));
  const once = inner.filter((one, index) => inner.findIndex(({ fn: { name } }) => name === one.fn.name) === index);
  return own ? [own, ...once.filter((one) => one.fn !== own.fn)] : once;
}

const isSign = (node: PlanNode): boolean =>
  typeof node === "object" && (Object.hasOwn(SIGNS, node[0]) || node[0] === "neg");
/** Whether a part is the one function the formula is, or one of the lists it is handed. */
function isCallOf(told: Told, code: PlanNode, node: PlanNode): boolean {
  const whole = typeof code === "object" && code[0] === "?:" ? wayOf(told, code) : code;
  if (typeof whole !== "object" || whole[0] !== "call") return false;
  return node === whole || (isList(node) && whole[2].includes(node));
}
const isList = (node: PlanNode): node is Extract<PlanNode, readonly ["list", ...unknown[]]> =>
  typeof node === "object" && node[0] === "list";

function partsOf(code: Exclude<PlanNode, boolean | number | string>): readonly PlanNode[] {
  if (code[0] === "list") return code[1];
  if (code[0] === "neg" || code[0] === "amount") return [code[1]];
  return code[0] === "+" || code[0] === "-" || code[0] === "*" || code[0] === "/" ? [code[1], code[2]] : [];
}

/** Of two ways the one that holds; where that is not known, the first. */
const wayOf = ({ question, derived }: Told, code: Extract<PlanNode, readonly ["?:", ...unknown[]]>): PlanNode =>
  comesTo(question, derived, code[1]) === false ? code[3] : code[2];

function written(told: Told, code: PlanNode, say: Say, least = 0): string {
  if (typeof code === "object" && code[0] === "?:") return written(told, wayOf(told, code), say, least);
  const said = say(code);
  if (said !== undefined) return said;
  if (typeof code !== "object") return String(code);
  if (code[0] === "neg") return `−${written(told, code[1], say, ATOM)}`;
  if (code[0] === "list") return code[1].map((part) => written(told, part, say)).join(", ");
  if (code[0] === "call") {
    const name = told.question.functions[code[1]]?.says ?? code[1];
    return `${name} (${code[2].map((part) => written(told, part, say)).join("; ")})`;
  }
  if (code[0] !== "+" && code[0] !== "-" && code[0] !== "*" && code[0] !== "/") return "…";
  const [sign, binds] = SIGNS[code[0]] ?? ["", ATOM];
  const text = `${written(told, code[1], say, binds)} ${sign} ${written(told, code[2], say, binds + 1)}`;
  return binds < least ? `(${text})` : text;
}

/** The name of what is read; a fixed figure as it stands. */
function named({ question, derived }: Told, node: PlanNode): string | undefined {
  if (typeof node === "number") return figureText(node, "");
  if (typeof node !== "object") return String(node);
  const { known } = question;
  switch (node[0]) {
    case "num":
    case "count": {
      const [, point, field, at, last] = node;
      const place = placeOf(question, derived.place, at);
      const listed = known.points.get(point);
      const isFirst = listed && Object.keys(listed.point.fields)[0] === field;
      const own = listed && !isFirst ? `, ${fieldName(listed.text, field)}` : "";
      const name = field === "" ? derivedName(known, point) : `${pointName(known, point)}${own}`;
      const elsewhere = at === 0 || place === undefined ? "" : atPlace(known, place);
      return last === undefined ? `${name}${elsewhere}` : t("working.last", { what: `${name}${elsewhere}` });
    }
    case "fact":
      return known.words.facts[node[1].replaceAll("_", "-")]?.name ?? node[1];
    case "since":
      return t("working.since");
    case "amount":
      return typeof node[1] === "number" ? figureText(node[1], node[2]) : named({ question, derived }, node[1]);
    default:
      return undefined;
  }
}

/** A part's figure with its unit; a word as the function knows it. */
function numberText({ question, derived }: Told, node: PlanNode): string {
  const value = comesTo(question, derived, node);
  if (typeof value === "number") return figureText(value, unitIn(question, node));
  return value === undefined ? "…" : String(value);
}

function placeOf(question: Question, here: string, at: unknown): string | undefined {
  if (!Array.isArray(at)) return here;
  const from = placeOf(question, here, at[0]);
  return from === undefined ? undefined : question.world.related(String(at[1]), from)[0];
}

/** The canonical unit a part is worked with; none for a plain number. */
function unitIn(question: Question, node: PlanNode): string {
  if (typeof node !== "object") return "";
  const of = (quantity: string): string => (isQuantity(quantity) ? canonicalUnit(quantity) : "");
  switch (node[0]) {
    case "num": {
      const info = question.world.site.model.refOf({ point: node[1], field: node[2] });
      if (info.is === "derived") return of(info.derived.derived.quantity);
      return info.is === "field" && "quantity" in info.field.field ? of(info.field.field.quantity) : "";
    }
    case "amount":
      return node[2];
    case "call":
      return of(question.functions[node[1]]?.gives ?? "");
    case "neg":
      return unitIn(question, node[1]);
    case "-":
    case "+": {
      const [a, b] = [unitIn(question, node[1]), unitIn(question, node[2])];
      return node[0] === "-" && a === "Cel" && b === "Cel" ? "K" : a;
    }
    case "*":
      return unitIn(question, node[1]) || unitIn(question, node[2]);
    case "/": {
      const [a, b] = [unitIn(question, node[1]), unitIn(question, node[2])];
      return a === b ? "" : a;
    }
    default:
      return "";
  }
}
