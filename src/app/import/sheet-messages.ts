/** What goes to the worker of the sheet editor and comes back. Types only. */
import type { CaseRan } from "../../core/assess/cases.js";
import type { Sheet, SheetCase } from "../../core/sheet/run.js";
import type { CheckGround, WorkChecked, WorkPlanned } from "../state/sheet-tools.js";

export type SheetAsked =
  | { readonly do: "check" }
  | { readonly do: "plan" }
  | { readonly do: "prove"; readonly cases: readonly SheetCase[] };

export interface SheetRequest {
  readonly id: number;
  readonly asked: SheetAsked;
  /** Only where they are others than in the request before: a sheet is a few hundred kilobytes, the ground a few thousand. */
  readonly sheet?: Sheet;
  readonly on?: CheckGround;
}

/** What came of a request, under the name of what was asked. */
export interface SheetCame {
  readonly check?: WorkChecked;
  readonly plan?: WorkPlanned;
  readonly prove?: readonly CaseRan[];
}
export type SheetAnswer =
  | { readonly id: number; readonly came: SheetCame }
  | { readonly id: number; readonly broke: string };
/** Said now and then by a worker that has not done yet. */
export interface SheetGoesOn {
  readonly id: number;
  readonly goesOn: true;
}
