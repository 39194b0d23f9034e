/** Conditions and rules of a sheet under work: read into rows, checked as they are typed, proved by their cases. */
import type { CaseRan } from "../../core/assess/cases.js";
import type { Engine } from "../../core/assess/engine.js";
import { compile, type Declarations, readCondition, tellExpression, type Use } from "../../core/expr/author.js";
import { lookupFor, partOfSheet, planAgain } from "../../core/sheet/author.js";
import { type Sheet, type SheetCase, withBrought } from "../../core/sheet/run.js";
import type { CelTold, ProvingGround, SheetTools } from "../state/sheet-tools.js";

/** Another sheet is a matter of what is open beside this one, and no fault of the text. */
const NOT_OPEN = "expr.sheet-not-loaded";

function checkCondition(cel: string, declared: Declarations, use: Use): readonly CelTold[] {
  const made = compile(cel, declared, use);
  if (made.ok) return [];
  return made.problems
    .filter(({ code }) => code !== NOT_OPEN)
    .map((one) => ({
      says: tellExpression(one) ?? one.code,
      offset: Number(one.params["offset"] ?? 0),
      length: Number(one.params["length"] ?? 0),
    }));
}

/** Sheets at hand that this one speaks of: the rest need not be planned for it. */
function namedIn(sheet: Sheet, others: readonly Sheet[]): readonly Sheet[] {
  const text = JSON.stringify([sheet.points, sheet.limits, sheet.derived, sheet.rules, sheet.gates, sheet.cases]);
  return others.filter(({ id }) => id !== sheet.id && text.includes(`${id}.`));
}

const engines = new WeakMap<Sheet, Promise<ReadyToTry>>();
interface ReadyToTry {
  readonly engine: Engine;
  readonly sheets: readonly string[];
}

async function plan({ sheet, common, others }: ProvingGround): Promise<ReadyToTry> {
  const { TRADE_SIGNATURES } = await import("../state/trade-work.js");
  const beside = namedIn(sheet, others).map((bare) => ({ edition: bare.label, bare }));
  const own = { edition: sheet.label, bare: sheet };
  const again = (sheets: typeof beside) =>
    planAgain({ edition: "", bare: common }, sheets, { functions: TRADE_SIGNATURES });
  const whole = again([own, ...beside]);
  const made = whole.ok ? whole : again([own]);
  if (!made.ok) throw new Error("A sheet that was checked could not be planned");
  const { common: shared, sheets } = made.value;
  const { ready } = await import("../state/judging.js");
  return { engine: await ready({ common: shared, sheets }), sheets: sheets.map(({ sheet: { id } }) => id) };
}

function engineOf(ground: ProvingGround): Promise<ReadyToTry> {
  const made = engines.get(ground.sheet) ?? plan(ground);
  engines.set(ground.sheet, made);
  return made;
}

async function proveCases(ground: ProvingGround, cases: readonly SheetCase[]): Promise<readonly CaseRan[]> {
  const { engine, sheets } = await engineOf(ground);
  const { proving, runCase } = await import("../state/proving.js");
  const beside = ground.others.filter(({ id }) => sheets.includes(id));
  const look = lookupFor(partOfSheet(ground.sheet), withBrought(ground.common, beside), beside.map(partOfSheet));
  const ran = proving(engine, look, sheets);
  return cases.map((one) => runCase(one, ran));
}

export const ruleTools: Pick<SheetTools, "readCondition" | "checkCondition" | "engineOf" | "proveCases"> = {
  readCondition,
  checkCondition,
  engineOf,
  proveCases,
};
