/** What to do after a look, for an owner. What weighs it is fetched while the plan is laid out. */
import type { ParamsOf } from "../state/routes.js";
import { lazy } from "./lazy.js";
import { OnPlan } from "./on-plan.js";

const WhatNowBody = lazy(() => import("./what-now-body.js").then((file) => file.WhatNowBody));

export const WhatNow = ({ params }: { readonly params: ParamsOf<"what-now"> }) => (
  <OnPlan param={params.visit}>{(on) => <WhatNowBody on={on} />}</OnPlan>
);
