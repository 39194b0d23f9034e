/** Of a new visit that is a seasonal check: which it is. Chosen here the round does not ask it again. */
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import type { VisitForm } from "../state/new-visit.js";
import { asksSeason, SEASONS } from "../state/season.js";
import { t } from "../texts/season.js";

interface SeasonWhichProps {
  readonly form: VisitForm;
  /** Those the visit opens with. */
  readonly sheets: readonly { readonly id: string }[];
  readonly set: (part: Partial<VisitForm>) => void;
}

export function SeasonWhich({ form, sheets, set }: SeasonWhichProps) {
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
