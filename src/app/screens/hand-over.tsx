/** Handing over a visit. What makes and draws it is fetched while the plan is laid out. */
import type { ParamsOf } from "../state/routes.js";
import { lazy } from "./lazy.js";
import { OnPlan } from "./on-plan.js";

const HandOverBody = lazy(() => import("./hand-over-body.js").then((file) => file.HandOverBody));

export const HandOver = ({ params }: { readonly params: ParamsOf<"hand-over"> }) => (
  <OnPlan param={params.visit}>{(on) => <HandOverBody on={on} />}</OnPlan>
);
