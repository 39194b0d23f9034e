/** What access planning takes and gives. Ids are opaque: one state or job at one place is one id. */
import type { Problem } from "../../terms/index.js";
import type { Three } from "../terms.js";

/** Something that must be open or off before a job can begin: `wheel-off@fl`. */
export interface AccessState {
  readonly id: string;
  /** What must be open before this can be. */
  readonly parents: readonly string[];
  readonly setUp: Three;
  readonly putBack: Three;
}

/** A job as it is planned: its own minutes once everything it needs is open. */
export interface AccessJob {
  readonly id: string;
  /** Own minutes; left out when nobody has said how long it takes. */
  readonly own?: Three | undefined;
  /** What must be open whichever way is taken. */
  readonly access: readonly string[];
  /** Either/or access: each a list of states; one of them is enough. */
  readonly ways?: readonly (readonly string[])[] | undefined;
}

/** A state that can be opened: paid once in a visit however many jobs use it. */
export interface OpenState {
  readonly id: string;
  readonly parents: readonly OpenState[];
  /** Set-up and put-back together. */
  readonly minutes: Three;
  /** How many states deep it lies; 0 needs nothing first. */
  readonly depth: number;
  /** Place in the opening order of the whole car: always after its parents. */
  readonly at: number;
}

/** A job with everything it needs open, parents first. */
export interface ReachedJob {
  readonly id: string;
  readonly own: Three;
  readonly needs: readonly OpenState[];
  /** Everything each way would open, parents first; one entry without a choice. `needs` is one of them. */
  readonly ways: readonly Way[];
}

export interface Way {
  /** Which of the job's `ways` this is; 0 without a choice. */
  readonly way: number;
  readonly needs: readonly OpenState[];
}

/** Access worked out; what was faulty is told and left out. */
export interface Access {
  /** In opening order: parents first. */
  readonly states: readonly OpenState[];
  /** In the order given. */
  readonly jobs: readonly ReachedJob[];
  /** Jobs that cannot be planned: their minutes or their access are not known. */
  readonly setAside: readonly string[];
  readonly problems: readonly Problem[];
}
