/** What a hand-over is put together from: one visit, judged and planned, and who it is for. Types only. */
import type { Assessment, JobDue } from "../../core/assess/contract.js";
import type { Worth } from "../../core/assess/index.js";
import type { ComplaintStands, IsoDate, WorkInput, WorkPlan } from "../../core/plan/index.js";
import type { CarState, HouseState, PlanState, VisitState } from "../../core/record/index.js";
import type { LookTold, TrendTold } from "../../core/report/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import type { Audience } from "../../core/terms/index.js";
import type { Telling } from "./because.js";
import type { Currency } from "./money-words.js";

export interface HandoverGround {
  /** In the voice of `for`. */
  readonly telling: Telling;
  readonly for: Audience;
  readonly madeAt: string;
  readonly today: IsoDate;
  readonly engine: string;
  readonly visit: VisitState;
  /** Earlier visits of the same car, oldest first. */
  readonly earlier: readonly VisitState[];
  readonly car: CarState;
  readonly tree: PlaceTree;
  readonly assessment: Assessment;
  /** What a look at a point could have decided; undefined while nobody has worked that out: it then counts as the worst. */
  readonly worth: ReadonlyMap<string, Pick<Worth, "decides" | "stops">> | undefined;
  /** Complaints of this visit and those carried on; undefined while a plan is still being read. */
  readonly heard: readonly ComplaintStands[] | undefined;
  /** In urgency order. */
  readonly due: readonly JobDue[];
  readonly said: PlanState;
  readonly house: HouseState | undefined;
  readonly input: WorkInput;
  readonly plan: WorkPlan | undefined;
  readonly currency: Currency | undefined;
  /** What is wearing; undefined while the visits are still being compared. */
  readonly trends: readonly TrendTold[] | undefined;
  /** When to look again, in the words of a reader; likewise. */
  readonly looks?: ((reader: Audience) => readonly LookTold[]) | undefined;
  /** Earlier visits that could not be read; likewise. */
  readonly visitsUnread?: number | undefined;
}
