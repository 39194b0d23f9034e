/** What few new visits ask: of a seasonal check which it is, and whether the round begins with what is due again. */
import type { CarState } from "../../core/record/index.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import type { VisitForm } from "../state/new-visit.js";
import { asksSeason, SEASONS } from "../state/season.js";
import { t } from "../texts/season.js";
import { lazy, Nothing } from "./lazy.js";

const DueBegin = lazy(() => import("./due-begin.js").then((file) => file.DueBegin), Nothing);

export interface NewVisitMoreProps {
  readonly car: CarState;
  readonly form: VisitForm;
  /** Those the visit opens with. */
  readonly sheets: readonly { readonly id: string }[];
  readonly set: (part: Partial<VisitForm>) => void;
  /** Called with the visit this form opened, while its page is still to come. */
  readonly opened: { current: ((visit: string) => void) | undefined };
}

export const NewVisitMore = (props: NewVisitMoreProps) => (
  <>
    {props.form.purpose === "season" && <SeasonWhich {...props} />}
    <DueBegin {...props} />
  </>
);

/** Chosen here the round does not ask it again. */
function SeasonWhich({ form, sheets, set }: NewVisitMoreProps) {
  if (!asksSeason(sheets)) return null;
  return (
    <Band heading={t("season.which")}>
      <div class="form">
        <ReplyGrid
          kind="choice"
          columns={1}
          label={t("season.which")}
          replies={SEASONS.map((id) => ({
            id,
            words: t(`season.${id}`),
            says: t(`season.${id}.says`),
            chosen: form.season === id,
          }))}
          onChoose={(season) => set({ season })}
        />
      </div>
    </Band>
  );
}
