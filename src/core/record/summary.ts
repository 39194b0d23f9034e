/** One line per stream for the list of cars and visits. Refuses to judge. */
import type { Audience } from "../terms/index.js";
import type { Bodies, FactValue, Odometer, Stamp } from "./contract.js";

interface SummaryOfAny {
  readonly stream: string;
  readonly demo: boolean;
  readonly entries: number;
  readonly last: Stamp;
  /** Forks, unknown entries or gaps to be shown. */
  readonly trouble: boolean;
}
export interface CarSummary extends SummaryOfAny {
  readonly of: "car";
  /** Several when people differ. */
  readonly names: readonly string[];
  readonly facts: Readonly<Record<string, FactValue>>;
  readonly sameCars: readonly string[];
  readonly sameOccasions: readonly (readonly string[])[];
}
export interface VisitSummary extends SummaryOfAny {
  readonly of: "visit";
  readonly car: string;
  readonly on: string;
  readonly purpose: Bodies["visit.opened"]["purpose"];
  readonly who: Audience;
  readonly odometer?: Odometer;
  readonly closed: boolean;
  /** Keys with a standing reply, and how many of them differ. */
  readonly replies: number;
  readonly differ: number;
  readonly pictures: number;
}
/** `unopened`: nothing opened it yet, or its opening was undone. `erased`: nothing but stubs is left. */
export interface OtherSummary extends SummaryOfAny {
  readonly of: "house" | "unopened" | "erased";
}
export type Summary = CarSummary | VisitSummary | OtherSummary;
