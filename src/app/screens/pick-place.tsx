/** Choosing where something belongs: places one was at last first, any place or point found by a word. */
import { useState } from "preact/hooks";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import { type WhereLine, whereView } from "../state/pictures-view.js";
import { t } from "../texts/media.js";
import type { OnDesk } from "./on-visit.js";

/** Rows drawn; more words find the rest. */
const SHOWN = 60;

interface PickPlaceProps {
  readonly on: OnDesk;
  readonly open: boolean;
  /** Places only. */
  readonly placesOnly?: boolean;
  readonly onPick: (line: WhereLine) => void;
  readonly onClose: () => void;
}

function Lines({ lines, onPick }: { readonly lines: readonly WhereLine[]; readonly onPick: PickPlaceProps["onPick"] }) {
  return (
    <>
      {lines.slice(0, SHOWN).map((line) => (
        <ListRow
          key={line.id}
          folded
          title={line.title}
          {...(line.second === undefined ? {} : { second: line.second })}
          onPress={() => onPick(line)}
        />
      ))}
      {lines.length > SHOWN && <p class="remark">{t("pick-place.more", { n: lines.length - SHOWN })}</p>}
    </>
  );
}

export function PickPlace({ on, open, placesOnly = false, onPick, onClose }: PickPlaceProps) {
  const [typed, setTyped] = useState("");
  const asked = placesOnly ? [] : on.assessment.asked;
  const view = whereView(on.known, on.tree, on.visit, asked, typed);
  const heading = typed.trim() === "" ? t("pick-place.all") : t("pick-place.found");
  return (
    <Sheet open={open} title={t("pick-place.title")} closeWords={t("app.close")} onClose={onClose} form="full">
      <Field id="pick-place" kind="search" label={t("pick-place.search")} value={typed} onInput={setTyped} />
      {view.recent.length > 0 && (
        <Band heading={t("pick-place.recent")}>
          <Lines lines={view.recent} onPick={onPick} />
        </Band>
      )}
      <Band heading={heading} aside={String(view.lines.length)}>
        <Lines lines={view.lines} onPick={onPick} />
        {view.lines.length === 0 && <p class="remark">{t("pick-place.nothing")}</p>}
      </Band>
    </Sheet>
  );
}
