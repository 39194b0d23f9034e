/** Pictures shot first and not sorted yet: choose one or several, say where they belong, take that back. */
import { signal } from "@preact/signals";
import { useState } from "preact/hooks";
import { type IdText, undoable } from "../../core/record/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import type { PictureOfList, WhereLine } from "../state/pictures-view.js";
import { undo } from "../state/reply-acts.js";
import { sortPictures } from "../state/visit-acts.js";
import { t } from "../texts/media.js";
import { Thumbs } from "./kept-picture.js";
import type { OnDesk } from "./on-visit.js";
import { PickPlace } from "./pick-place.js";

/** What was sorted last, offered to be taken back. */
const lastSorted = signal<{ visit: string; ids: readonly IdText[]; says: string } | undefined>(undefined);

/** The sorting done last in this visit, with the way back. */
export function LastSorted({ on }: { readonly on: OnDesk }) {
  const { journal } = useApp();
  const last = lastSorted.value;
  if (last?.visit !== on.stream) return null;
  const takeBack = (): void => {
    lastSorted.value = undefined;
    void undo(journal, on.stream, last);
  };
  return <ListRow folded title={last.says} aside={t("round.undo")} onPress={takeBack} />;
}

export function Unsorted({ on, pictures }: { readonly on: OnDesk; readonly pictures: readonly PictureOfList[] }) {
  const { journal } = useApp();
  const [chosen, setChosen] = useState<ReadonlySet<IdText>>(new Set());
  const [asking, setAsking] = useState(false);
  const here = pictures.filter(({ id }) => chosen.has(id)).map(({ id }) => id);
  const press = (id: IdText): void => {
    const after = new Set(chosen);
    if (!after.delete(id)) after.add(id);
    setChosen(after);
  };
  const sort = async ({ title, second, spot }: WhereLine): Promise<void> => {
    setAsking(false);
    if (!(await sortPictures(journal, on.stream, here, spot))) return;
    setChosen(new Set());
    const opened = journal.keptVisit(on.stream).peek();
    const writer = journal.writer.peek();
    const [step] = opened.is === "open" && writer !== undefined ? undoable(opened.state, writer) : [];
    const where = second === undefined ? title : `${title}, ${second}`;
    if (step)
      lastSorted.value = { visit: on.stream, ids: step.ids, says: t("pictures.sorted", { n: here.length, where }) };
  };
  const all = here.length === pictures.length;
  return (
    <Band heading={t("pictures.unsorted")} aside={String(pictures.length)}>
      {!on.visit.closed && <p class="remark">{t("pictures.unsorted.says")}</p>}
      <div class="form">
        <Thumbs
          pictures={pictures}
          one={({ id }, index) => ({
            alt: t("pictures.choose", { n: index + 1 }),
            ...(on.visit.closed ? {} : { onPress: () => press(id), chosen: chosen.has(id) }),
          })}
        />
      </div>
      {!on.visit.closed && (
        <div class="acts">
          {here.length > 0 && (
            <NextAction
              words={t("pictures.sort")}
              says={t("pictures.sort.says", { n: here.length })}
              onPress={() => setAsking(true)}
            />
          )}
          <Tool
            words={all ? t("pictures.choose-none") : t("pictures.choose-all")}
            onPress={() => setChosen(all ? new Set() : new Set(pictures.map(({ id }) => id)))}
          />
        </div>
      )}
      <PickPlace on={on} open={asking} onPick={(line) => void sort(line)} onClose={() => setAsking(false)} />
    </Band>
  );
}
