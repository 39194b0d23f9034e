/** The pages of a visit's plan by the last word of their address; each comes when it is first opened. */
import type { ComponentType } from "preact";
import type { ParamsOf } from "../state/routes.js";
import { MissingScreen } from "./frame.js";
import { lazy } from "./lazy.js";

type Page = ComponentType<{ readonly visit: string }>;

/** Tests walk this table beside that of the addresses. */
export const PLAN_PAGES: Readonly<Record<string, Page>> = {
  budget: lazy(() => import("./plan-budget.js").then((file) => file.PlanBudget)),
  estimate: lazy(() => import("./plan-estimate.js").then((file) => file.PlanEstimate)),
  scope: lazy(() => import("./plan-scope.js").then((file) => file.PlanScope)),
  intake: lazy(() => import("./plan-intake.js").then((file) => file.PlanIntake)),
  decisions: lazy(() => import("./plan-decisions.js").then((file) => file.PlanDecisions)),
  dates: lazy(() => import("./plan-dates.js").then((file) => file.PlanDates)),
  parts: lazy(() => import("./plan-parts.js").then((file) => file.PlanParts)),
  release: lazy(() => import("./plan-release.js").then((file) => file.PlanRelease)),
  note: lazy(() => import("./plan-note.js").then((file) => file.PlanNote)),
  "left-loose": lazy(() => import("./plan-loose.js").then((file) => file.PlanLoose)),
};

export function Planning({ params: { visit, page } }: { readonly params: ParamsOf<"plan"> }) {
  const Shown = Object.hasOwn(PLAN_PAGES, page) ? PLAN_PAGES[page] : undefined;
  return Shown ? <Shown visit={visit} /> : <MissingScreen />;
}
