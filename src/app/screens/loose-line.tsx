/** Told wherever somebody may set off with the car: what is still loose or drained must be cleared first. */
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { looseCount } from "../state/loose-count.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-loose.js";

export function LooseLine({ visit, stream }: { readonly visit: string; readonly stream: string }) {
  const plan = useApp().journal.plan(stream).value;
  const n = plan.is === "open" ? looseCount(plan.state) : 0;
  if (n === 0) return null;
  return (
    <Notice
      kind="plain"
      title={t("loose.before", { n })}
      action={{ words: t("loose.title"), href: to("plan", { visit, page: "left-loose" }) }}
    />
  );
}
