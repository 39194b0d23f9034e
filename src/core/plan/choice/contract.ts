/** What choosing within a budget is asked and what it answers. Knows no rank, no car and no currency. */

/** Something opened or taken out to get at the work: paid once, however many jobs use it. */
export interface ChoiceState {
  readonly id: string;
  /** Set-up and put-back together, whole minor units. */
  readonly cost: number;
  /** States that must be open before this one. */
  readonly parents: readonly string[];
}

/** A job that may be chosen, or must be. */
export interface ChoiceJob {
  readonly id: string;
  /** What doing it is worth, whole and not negative; see `tieredValues`. */
  readonly value: number;
  /** The job alone, without opening anything, whole minor units. */
  readonly cost: number;
  /** States that must be open. */
  readonly access: readonly string[];
  /** Always done, whatever the budget. */
  readonly mandatory?: boolean;
  /** Jobs that must be done too if this one is. */
  readonly needs?: readonly string[];
  /** At most one job of this group is done: either way in, or two ways to mend the same. */
  readonly oneOf?: string;
  /** The jobs of this set are all done or none: both dampers of an axle. */
  readonly together?: string;
}

export interface ChoiceProblem {
  /** Whole minor units. */
  readonly budget: number;
  readonly states: readonly ChoiceState[];
  readonly jobs: readonly ChoiceJob[];
  /** Steps after which the search ends with the best it has found. */
  readonly nodeCap?: number;
}

/** Asked now and then while searching; `false` ends it with the best found so far. */
export type GoOn = () => boolean;

/** A set of jobs with exactly the states it needs. Ids by code unit. */
export interface ChosenSet {
  readonly value: number;
  readonly cost: number;
  readonly chosen: readonly string[];
  readonly open: readonly string[];
}

export interface ChoiceResult extends ChosenSet {
  /** No plan within the budget is worth more than this; equals `value` when proven. */
  readonly bound: number;
  /** No plan within the budget is worth more, and none worth as much costs less. */
  readonly proven: boolean;
  /** By how much the mandatory jobs alone exceed the budget. */
  readonly overBy?: number;
  readonly nodes: number;
}

export interface NextStep {
  /** The cheapest plan found that is worth more; absent when none was. */
  readonly plan?: ChosenSet;
  /** How much more budget `plan` needs. */
  readonly more?: number;
  readonly added: readonly string[];
  /** Jobs of the present plan that give way. */
  readonly leftOut: readonly string[];
  /** No plan below this cost is worth more than the present one; absent when no plan at any cost is. */
  readonly atLeast?: number;
  /** With a plan: none worth more costs less. Without: nothing at any cost is worth more. */
  readonly proven: boolean;
  readonly nodes: number;
}
