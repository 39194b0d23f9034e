/**
 * One trade function as it is filled in: boxes as typed, what still lacks, the answer or why there is none. Pure.
 */
import {
  type Argument,
  calculate,
  type Given,
  type Gives,
  isList,
  isWordArgument,
  type TradeFunction,
  tellSource,
  tellTrade,
} from "../../core/trade/index.js";
import { canonicalUnit, fromCanonical, type Quantity, readTyped } from "../../core/units/index.js";
import { t } from "../texts/bench.js";
import { decimalComma } from "../texts/figures.js";
import { unitShown } from "../texts/units.js";
import { capital } from "./knowledge.js";
import { tradeUnits } from "./trade-units.js";
import { figureText } from "./worked-figures.js";

/** What stands in the boxes of one argument; a list has one box a figure. */
export interface Box {
  readonly texts: readonly string[];
  /** UCUM code; "" where the argument has none. */
  readonly unit: string;
}
export interface ReckoningForm {
  readonly boxes: Readonly<Record<string, Box>>;
  readonly resultUnit: string;
}

/** The units an argument or a result may stand in, the one it is calculated in first; none for words and bare numbers. */
export function unitsFor(kind: TradeFunction["gives"]): readonly string[] {
  if (kind === "number" || kind === "word" || kind === "yes") return [];
  const canonical = canonicalUnit(kind);
  return [canonical, ...tradeUnits(kind).filter((unit) => unit !== canonical)];
}

export const emptyReckoning = (fn: TradeFunction): ReckoningForm => ({
  boxes: Object.fromEntries(
    fn.arguments.map((argument) => [
      argument.name,
      {
        texts: Array.from({ length: isList(argument) ? argument.atLeast : 1 }, () => ""),
        unit: unitsFor(argument.kind)[0] ?? "",
      },
    ]),
  ),
  resultUnit: unitsFor(fn.gives)[0] ?? "",
});

/** A form typed before the page went away; an empty one for anything else that stands in its place. */
export function reckoningTyped(fn: TradeFunction, text: string): ReckoningForm {
  const empty = emptyReckoning(fn);
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return empty;
  }
  const field = (from: unknown, name: string): unknown =>
    typeof from === "object" && from !== null ? Object.entries(from).find(([key]) => key === name)?.[1] : undefined;
  const unitIn = (found: unknown, kind: TradeFunction["gives"], otherwise: string): string =>
    unitsFor(kind).find((unit) => unit === found) ?? otherwise;
  const boxes = fn.arguments.map((argument): readonly [string, Box] => {
    const found = field(field(kept, "boxes"), argument.name);
    const texts = field(found, "texts");
    const box = empty.boxes[argument.name] ?? { texts: [""], unit: "" };
    const isRight = Array.isArray(texts) && texts.length >= box.texts.length && texts.every(isText);
    return [
      argument.name,
      { texts: isRight ? texts : box.texts, unit: unitIn(field(found, "unit"), argument.kind, box.unit) },
    ];
  });
  return {
    boxes: Object.fromEntries(boxes),
    resultUnit: unitIn(field(kept, "resultUnit"), fn.gives, empty.resultUnit),
  };
}
const isText = (one: unknown): one is string => typeof one === "string";

/** What the boxes come to. `at` an argument: what is wrong with its box. */
export type Reckoning =
  | { readonly is: "open"; readonly left: number; readonly at: ReadonlyMap<string, string> }
  | { readonly is: "refused"; readonly says: string; readonly at: ReadonlyMap<string, string> }
  | { readonly is: "answer"; readonly says: string; readonly at: ReadonlyMap<string, string> };

const quantityOf = (kind: Argument["kind"]): Quantity => (kind === "number" || kind === "word" ? "ratio" : kind);

/** The typed texts of an argument that count: of a list, boxes left empty beyond the least number do not. */
function textsOf(argument: Argument, box: Box): readonly string[] {
  const least = isList(argument) ? argument.atLeast : 1;
  const filled = box.texts.filter((text) => text.trim() !== "");
  return filled.length >= least ? filled : box.texts.slice(0, least);
}

/** A figure as typed; one typed with its own unit keeps it. */
const readBox = ({ kind }: Argument, box: Box | undefined, text: string) => {
  const quantity = quantityOf(kind);
  const unit = box?.unit || canonicalUnit(quantity);
  return readTyped(text, { quantity, unit, decimalComma: decimalComma.value });
};

/** Works the form out; while a box is empty or wrong there is no answer. */
export function reckoning(fn: TradeFunction, form: ReckoningForm): Reckoning {
  const given: Given[] = [];
  const at = new Map<string, string>();
  let left = 0;
  for (const argument of fn.arguments) {
    const box = form.boxes[argument.name];
    const texts = box ? textsOf(argument, box) : [""];
    const empty = texts.filter((text) => text.trim() === "").length;
    left += empty;
    const values = texts.flatMap((text): readonly (string | number)[] => {
      if (text.trim() === "") return [];
      if (isWordArgument(argument)) return [text.trim()];
      const read = readBox(argument, box, text);
      if (read.ok) return [read.value.canonical];
      at.set(argument.name, read.problems.map(tellTrade).join(" "));
      return [];
    });
    if (isList(argument)) given.push(values.filter((value) => typeof value === "number"));
    else given.push(values[0] ?? "");
  }
  if (left > 0 || at.size > 0) return { is: "open", left, at };
  const result = calculate(fn, given);
  if (result.ok) return { is: "answer", says: answerText(fn, result.value, form.resultUnit), at };
  return refused(fn, form, result.problems);
}

type Problems = Extract<ReturnType<typeof calculate>, { readonly ok: false }>["problems"];

/** Each refusal at its box where it names one, in the box's own unit; the rest in one sentence. */
function refused(fn: TradeFunction, form: ReckoningForm, problems: Problems): Reckoning {
  const at = new Map<string, string>();
  const whole: string[] = [];
  for (const one of problems) {
    const argument = fn.arguments.find(({ name }) => name === one.params["argument"]);
    const unit = argument && form.boxes[argument.name]?.unit;
    if (argument && one.code === "trade.range" && !isWordArgument(argument)) {
      const shown = (value: number): string => inUnit(value, argument.kind, unit ?? "");
      at.set(
        argument.name,
        t("bench.range", { found: shown(Number(one.params["found"])), range: rangeSays(argument, shown) }),
      );
    } else whole.push(tellTrade({ ...one, params: namedIn(fn, argument, one.params) }));
  }
  return { is: "refused", says: whole.join(" ") || t("bench.see-box"), at };
}

/** A problem's params in the trade's words, its figures with the unit they are reckoned in. */
function namedIn(
  fn: TradeFunction,
  argument: Argument | undefined,
  params: Problems[0]["params"],
): Problems[0]["params"] {
  if (!argument) return { ...params, of: fn.says };
  const figures = Object.entries(params).map(([name, value]) => [
    name,
    typeof value === "number" && argument.kind !== "word"
      ? inUnit(value, argument.kind, unitsFor(argument.kind)[0] ?? "")
      : value,
  ]);
  return { ...Object.fromEntries(figures), of: fn.says, argument: argument.says };
}

type Edges = Pick<Exclude<Argument, { readonly kind: "word" }>, "over" | "from" | "to" | "under">;

function rangeSays({ over, from, to, under }: Edges, shown: (value: number) => string): string {
  const lower =
    over !== undefined
      ? t("bench.over", { n: shown(over) })
      : from !== undefined
        ? t("bench.from", { n: shown(from) })
        : undefined;
  const upper =
    under !== undefined
      ? t("bench.under", { n: shown(under) })
      : to !== undefined
        ? t("bench.to", { n: shown(to) })
        : undefined;
  return lower !== undefined && upper !== undefined ? t("bench.and", { lower, upper }) : (lower ?? upper ?? "");
}

/** A canonical figure in a unit, with the unit. */
function inUnit(value: number, kind: TradeFunction["gives"], unit: string): string {
  const isBare = kind === "number" || kind === "word" || kind === "yes" || unit === "";
  return isBare ? figureText(value, "") : figureText(fromCanonical(value, unit, kind), unit);
}

function answerText(fn: TradeFunction, value: Gives, unit: string): string {
  if (typeof value === "boolean") return value ? t("app.yes") : t("app.no");
  if (typeof value === "string") return wordShown(value);
  return inUnit(value, fn.gives, unit);
}

/** `rack-several-joints` as it is shown. */
export const wordShown = (word: string): string => capital(word.replaceAll("-", " "));

/** The sum as a note: what it came to, from which figures, by which formula, from where. */
export function reckoningNote(fn: TradeFunction, form: ReckoningForm, answer: string): string {
  const given = fn.arguments.map((argument) => {
    const box = form.boxes[argument.name];
    const shown = (box ? textsOf(argument, box) : []).map((text) => {
      if (isWordArgument(argument)) return wordShown(text);
      const read = readBox(argument, box, text);
      return read.ok ? [read.value.text, unitShown(read.value.unit)].filter(Boolean).join(" ") : text;
    });
    return `${argument.says} ${shown.join("; ")}`;
  });
  return t("bench.note", {
    says: fn.says,
    answer,
    given: given.join(", "),
    formula: fn.formula,
    source: tellSource(fn.source),
  });
}
