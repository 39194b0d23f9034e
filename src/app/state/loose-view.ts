/** What was left loose, drained, off or unplugged, and what was cleared since. Pure. */
import { progressOf } from "../../core/plan/index.js";
import type { PlanState } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/plan-loose.js";
import { capital, type Knowledge, placeName } from "./knowledge.js";

export interface LooseLine {
  readonly id: string;
  readonly title: string;
  readonly second: string;
}

export interface LooseView {
  readonly open: readonly LooseLine[];
  readonly cleared: readonly LooseLine[];
}

export function looseView(known: Knowledge, said: PlanState, today: IsoDate): LooseView {
  const progress = progressOf(said, today);
  const open = progress.ok ? progress.value.loose : [];
  return {
    open: open.map(({ loose, what, words, place = "car", on }) => ({
      id: loose,
      title: words.join(" / "),
      second: capital(
        t("loose.since", { what: t(`loose.what.${what}`), place: placeName(known, place), date: dayWords(on) }),
      ),
    })),
    cleared: [...said.cleared].flatMap(([loose, told]) => {
      const title = said.loose.get(loose)?.at(-1)?.value.words;
      const at = told.at(-1)?.value;
      return title === undefined || !at ? [] : [{ id: loose, title, second: `${dayWords(at.on)}: ${at.words}` }];
    }),
  };
}
