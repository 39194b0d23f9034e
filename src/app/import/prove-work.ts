/** A sheet under work planned with the sheets it speaks of, and its cases run. Knows nothing of who asks. */
import { lookupFor, partOfSheet, planAgain } from "../../core/sheet/author.js";
import { type Sheet, type SheetCase, withBrought } from "../../core/sheet/run.js";
import { ready } from "../state/judging.js";
import { type Proving, proving, runCase } from "../state/proving.js";
import type { ProvingGround, WorkPlanned } from "../state/sheet-tools.js";
import { TRADE_SIGNATURES } from "../state/trade-work.js";

/** Sheets at hand that this one speaks of: the rest need not be planned for it. */
function namedIn(sheet: Sheet, others: readonly Sheet[]): readonly Sheet[] {
  const text = JSON.stringify([sheet.points, sheet.limits, sheet.derived, sheet.rules, sheet.gates, sheet.cases]);
  return others.filter(({ id }) => id !== sheet.id && text.includes(`${id}.`));
}

/** Plans the conditions anew: where the sheets it speaks of do not stand beside it as it is now, its own alone. */
export function planWork({ sheet, on }: ProvingGround): WorkPlanned {
  const beside = namedIn(sheet, on.others).map((bare) => ({ edition: bare.label, bare }));
  const own = { edition: sheet.label, bare: sheet };
  const common = { edition: "", bare: withBrought(on.bare, [sheet]) };
  const again = (sheets: typeof beside) => planAgain(common, sheets, { functions: TRADE_SIGNATURES });
  const whole = again([own, ...beside]);
  const made = whole.ok ? whole : again([own]);
  if (!made.ok) throw new Error("A sheet that was checked could not be planned");
  return made.value;
}

/** Makes a sheet that was planned ready for its cases: once for all of them. */
export async function provingOf({ sheet, on }: ProvingGround, planned: WorkPlanned): Promise<Proving> {
  const sheets = planned.sheets.map(({ sheet: { id } }) => id);
  const beside = on.others.filter(({ id }) => id !== sheet.id && sheets.includes(id));
  const look = lookupFor(partOfSheet(sheet), withBrought(on.bare, [sheet, ...beside]), beside.map(partOfSheet));
  return proving(await ready(planned), look, sheets);
}

/** `goesOn` is told after each case: a large sheet has hundreds. */
export const proveCases = (ran: Proving, cases: readonly SheetCase[], goesOn: () => void) =>
  cases.map((one) => {
    const came = runCase(one, ran);
    goesOn();
    return came;
  });
