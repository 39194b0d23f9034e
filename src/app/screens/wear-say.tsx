/** Says of one reading that the part was renewed before it, that it is doubtful, or that it is the same part. */
import { wearKey } from "../../core/record/index.js";
import type { Seen } from "../../core/trend/index.js";
import { ListRow } from "../parts/list-row.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { paramOf, to } from "../state/routes.js";
import { sayWear } from "../state/wearing-acts.js";
import type { Wearing } from "../state/wearing-view.js";
import { dateOf, readingText } from "../state/wearing-words.js";
import { t } from "../texts/wearing.js";
import type { WearingNow } from "./use-wearing.js";

interface SayWearProps {
  readonly one: Wearing;
  readonly now: WearingNow;
  readonly seen: Seen;
  readonly onClose: () => void;
}

const SAYS = ["renewed", "doubtful", "same"] as const;

export function SayWear({ one, now, seen, onClose }: SayWearProps) {
  const { journal } = useApp();
  const { of, field, place } = one;
  const chosen = now.plans.get(seen.visit)?.wear.get(wearKey({ of, field, place }))?.at(-1)?.value;
  const ordered = [...one.series.runs.flat(), ...one.series.doubtful].sort((a, b) => a.day - b.day);
  const before = ordered[ordered.indexOf(seen) - 1];
  const say = (visit: string, says: (typeof SAYS)[number] | null): void => {
    void sayWear(journal, visit, { of, field, place }, says);
    onClose();
  };
  const offered = SAYS.filter((id) => id === "doubtful" || before !== undefined);
  return (
    <Sheet open title={t("wear.say.title", { date: dateOf(seen.day) })} closeWords={t("app.cancel")} onClose={onClose}>
      <p class="remark n">{readingText(seen, one.unit)}</p>
      <ReplyGrid
        kind="choice"
        label={t("wear.say.more")}
        replies={offered.map((id) => ({ id, words: t(`wear.say.${id}`), chosen: id === chosen }))}
        onChoose={(id) => {
          const says = SAYS.find((it) => it === id);
          if (says) say(seen.visit, says === chosen ? null : says);
        }}
      />
      {before && <ListRow title={t("wear.say.before")} onPress={() => say(before.visit, "doubtful")} />}
      {chosen && <ListRow title={t("wear.say.back")} onPress={() => say(seen.visit, null)} />}
      <ListRow title={t("wear.say.visit")} href={to("visit", { visit: paramOf(seen.visit) })} />
    </Sheet>
  );
}
