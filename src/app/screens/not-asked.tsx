/** In the round: the point of this address is not asked in this visit, or not any more. */
import { EmptyState } from "../parts/notice.js";
import { to } from "../state/routes.js";
import { t } from "../texts/viewing.js";
import { SpokenTitle, Top } from "./frame.js";
import type { OnDesk } from "./on-visit.js";

export function NotAsked({ on }: { readonly on: OnDesk }) {
  return (
    <>
      <Top back={t("round.back")} href={to("visit", { visit: on.param })} />
      <main>
        <SpokenTitle title={t("round.title")} />
        <EmptyState
          title={t("round.nothing")}
          says={t("round.nothing.says")}
          action={{ words: t("round.all-places"), href: to("where", { visit: on.param }) }}
        />
      </main>
    </>
  );
}
