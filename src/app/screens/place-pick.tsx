/** Picking a place of the car from a list that is searched by word. Knows no plan. */
import { useState } from "preact/hooks";
import { Field } from "../parts/field.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { placesNamed } from "../state/off-list-view.js";
import { t } from "../texts/index.js";
import type { OnDesk } from "./on-visit.js";

const SHOWN = 5;

export function PlacePick({
  on,
  chosen,
  onChoose,
}: {
  readonly on: OnDesk;
  readonly chosen: string;
  readonly onChoose: (place: string) => void;
}) {
  const [typed, setTyped] = useState("");
  const found = placesNamed(on.known, on.tree, typed, chosen);
  const more = found.length - SHOWN;
  return (
    <>
      <Field
        id="off-list-place"
        kind="search"
        label={t("off-list.place")}
        help={t("off-list.place.search")}
        value={typed}
        onInput={setTyped}
      />
      <ReplyGrid
        kind="choice"
        columns={1}
        label={t("off-list.place")}
        replies={found.slice(0, SHOWN).map(({ id, words }) => ({ id, words, chosen: id === chosen }))}
        onChoose={(id) => {
          onChoose(id);
          setTyped("");
        }}
      />
      <p class="remark small" role="status">
        {found.length === 0 ? t("off-list.place.none") : more > 0 ? t("off-list.place.more", { n: more }) : ""}
      </p>
    </>
  );
}
