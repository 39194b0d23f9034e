/**
 * Answers what is asked about a sheet under work: checked, planned, its cases run. The same in the worker and, where none
 * runs, on the page. Between requests it holds the last sheet and what that stands beside.
 */
import type { Sheet } from "../../core/sheet/run.js";
import type { CheckGround, ProvingGround } from "../state/sheet-tools.js";
import { checkWork } from "./check-work.js";
import { planWork, proveCases, provingOf } from "./prove-work.js";
import type { SheetAnswer, SheetAsked, SheetCame, SheetRequest } from "./sheet-messages.js";

/** `goesOn` is told while the answer is not there yet, as often as there is something to tell. */
export type SheetAnswering = (request: SheetRequest, goesOn?: () => void) => Promise<SheetAnswer>;

export function sheetAnswering(): SheetAnswering {
  let sheet: Sheet | undefined;
  let on: CheckGround | undefined;
  const plans = onceForSheet(planWork);
  const provings = onceForSheet((ground) => provingOf(ground, plans(ground)));

  const come = async (asked: SheetAsked, ground: ProvingGround, goesOn: () => void): Promise<SheetCame> => {
    switch (asked.do) {
      case "check":
        return { check: checkWork(ground.sheet, ground.on.bare, ground.on.others, ground.on.before) };
      case "plan":
        return { plan: plans(ground) };
      case "prove":
        return { prove: proveCases(await provings(ground), asked.cases, goesOn) };
    }
  };

  return async ({ id, asked, ...sent }, goesOn = () => undefined) => {
    sheet = sent.sheet ?? sheet;
    on = sent.on ?? on;
    if (!sheet || !on) return { id, broke: "asked about no sheet" };
    try {
      return { id, came: await come(asked, { sheet, on }, goesOn) };
    } catch (error) {
      return { id, broke: String(error) };
    }
  };
}

/** Makes it anew for another sheet only. */
function onceForSheet<Made>(make: (ground: ProvingGround) => Made): (ground: ProvingGround) => Made {
  let last: { readonly sheet: Sheet; readonly made: Made } | undefined;
  return (ground) => {
    if (last?.sheet !== ground.sheet) last = { sheet: ground.sheet, made: make(ground) };
    return last.made;
  };
}
