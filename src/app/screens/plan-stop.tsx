/** At the head of the work list: stop and ask, before more is taken apart than was agreed. */
import { Notice } from "../parts/notice.js";
import { scopeTold, spentOf } from "../state/plan-scope-view.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-scope.js";
import type { OnPlan } from "./on-plan.js";

export function ScopeNotice({ on }: { readonly on: OnPlan }) {
  const told = scopeTold(spentOf(on.input, on.said));
  if (!told) return null;
  const action = { words: t("scope.notice.open"), href: to("plan", { visit: on.param, page: "scope" }) };
  return <Notice kind="plain" title={told.title} says={told.says} {...(on.who === "buyer" ? {} : { action })} />;
}
