/**
 * How a value worked out came about: its formula in names, the same with this visit's numbers put in, every function of
 * the trade it calls with what that was handed, and where each comes from. Concludes nothing; knows no screen.
 */
import type { Session } from "../../core/assess/index.js";
import type { BuiltSheet } from "../../core/sheet/run.js";
import type { TradeFunction } from "../../core/trade/index.js";
import { t } from "../texts/working.js";
import type { Judging } from "./desk.js";
import { atPlace, capital, derivedName, type Knowledge } from "./knowledge.js";
import { valueText } from "./worked-figures.js";
import { callsIn, inNames, inNumbers } from "./working-text.js";
import { asked, type Derived, type Question } from "./working-values.js";

/** One function called: what it says, its formula, what it was handed, where it comes from. */
export interface WorkedCall {
  readonly id: string;
  readonly says: string;
  readonly formula: string;
  readonly given: readonly string[];
  readonly source: string;
}
export interface Working {
  /** Value, ±U and unit; or why there is none. */
  readonly result: string;
  readonly isKnown: boolean;
  /** Taken from another value as it stands. */
  readonly taken?: string;
  readonly names?: string;
  readonly numbers?: string;
  readonly calls: readonly WorkedCall[];
  /** Where a formula without a function comes from. */
  readonly source?: string;
}

/** A judgement with the sheets it was made by. */
export interface Ground {
  readonly core: Judging;
  readonly session: Session;
  readonly sheets: readonly BuiltSheet[];
}

/** What telling needs: the judgement, the words, the functions of the trade by name with what tells their refusals. */
export interface WorkingNeeds {
  readonly ground: Ground;
  readonly known: Knowledge;
  readonly trade: {
    readonly TRADE_SIGNATURES: Readonly<Record<string, TradeFunction>>;
    readonly TRADE_WORK: Question["trade"];
    readonly tellTrade: Question["tellTrade"];
    readonly tellSource: (source: TradeFunction["source"]) => string;
  };
}

/** The working of one derived value at one place; undefined where this visit has no such value there. */
export function workingOf(needs: WorkingNeeds, id: string, place: string): Working | undefined {
  const { trade } = needs;
  const question = questionOf(needs);
  const derived = asked(question, id, place);
  if (derived === undefined) return undefined;
  const result = resultOf(needs, derived);
  const isKnown = derived.measured !== undefined;
  if (derived.plan === undefined)
    return {
      result,
      isKnown,
      calls: [],
      ...(derived.used === undefined
        ? {}
        : { taken: t("working.taken", { of: nameOfUsed(needs.known, derived.used) }) }),
    };
  const { code } = derived.plan;
  const told = { question, derived };
  const calls = callsIn(told, code).map(
    ({ fn, given }, index): WorkedCall => ({
      id: `${index} ${fn.name}`,
      says: fn.says,
      formula: fn.formula,
      given: isKnown ? given : [],
      source: sourceText(trade, fn),
    }),
  );
  return {
    result,
    isKnown,
    names: inNames(told, code),
    ...(isKnown && !derived.differ ? { numbers: `${inNumbers(told, code)} = ${resultOf(needs, derived)}` } : {}),
    calls,
    ...(calls.length === 0 ? { source: t("working.own-formula") } : {}),
  };
}

/** Values worked out from the reply to one point at one place, those that only ask another question left out. */
export function workedOver(
  needs: WorkingNeeds,
  point: string,
  place: string,
): readonly { readonly id: string; readonly place: string; readonly name: string; readonly result: string }[] {
  const question = questionOf(needs);
  return needs.ground.sheets
    .flatMap(({ sheet, plans }) =>
      sheet.derived.filter((one) => {
        const code = plans[`derived/${one.id}/formula`]?.code;
        return Array.isArray(code) && code[0] !== "num" && code[0] !== "count";
      }),
    )
    .flatMap((one) =>
      question.world.site.tree.ofKind(one.place).flatMap((at) => {
        const derived = asked(question, one.id, at);
        if (!derived?.from.some((slot) => slot.point === point && slot.place === place)) return [];
        if (derived.measured === undefined && derived.problems.length === 0) return [];
        const elsewhere = at === place ? "" : atPlace(needs.known, at);
        const name = `${derivedName(needs.known, one.id)}${elsewhere}`;
        return [{ id: one.id, place: at, name, result: resultOf(needs, derived) }];
      }),
    );
}

const questionOf = ({ ground, known, trade }: WorkingNeeds): Question => ({
  world: ground.core.worldOf(ground.session),
  link: ground.core.link,
  sheets: ground.sheets,
  known,
  functions: trade.TRADE_SIGNATURES,
  trade: trade.TRADE_WORK,
  tellTrade: trade.tellTrade,
});

const nameOfUsed = (known: Knowledge, name: string): string =>
  known.points.get(name)?.text.name ?? derivedName(known, name);

function resultOf({ trade }: WorkingNeeds, derived: Derived): string {
  const { measured, problems } = derived;
  if (measured) return valueText(measured.value, measured.uncertainty, derived.unit);
  const [problem] = problems;
  const why = problem?.code.startsWith("trade.") ? trade.tellTrade(problem) : t("working.no-number");
  return problem ? t("working.none", { why }) : t("working.not-yet");
}

/** Document and clause, how far it was seen, and that it is published; else what it rests on instead. */
function sourceText({ tellSource }: WorkingNeeds["trade"], { source }: TradeFunction): string {
  const said = `${capital(tellSource(source))}.`;
  return source.basis === "published" ? `${said} ${t("working.published")}` : said;
}
