/** Finding a point by word, in all sheets of the visit: the round opens there. */
import { useMemo, useState } from "preact/hooks";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { type FoundPoint, findPoints } from "../state/find-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { keepTyped, typedBefore } from "../state/settings.js";
import { t } from "../texts/index.js";
import { Plain } from "./frame.js";
import { lookingAt, type OnDesk, OnVisit } from "./on-visit.js";

/** Points shown at once; one more word finds the rest. */
const MOST_POINTS = 25;
/** Places shown of one point before all of them are asked for. */
const MOST_SPOTS = 4;

function Found({ on, found, alone }: { readonly on: OnDesk; readonly found: FoundPoint; readonly alone: boolean }) {
  const [all, setAll] = useState(false);
  const shown = all || alone ? found.spots : found.spots.slice(0, MOST_SPOTS);
  const more = found.spots.length - shown.length;
  return (
    <Band heading={found.name} aside={found.sheet}>
      {shown.map(({ at, place, state, says }) => (
        <ListRow
          key={`${at.state} ${at.place}`}
          folded
          title={place}
          second={state}
          aside={says}
          href={to("point", { visit: on.param, ...at })}
        />
      ))}
      {more > 0 && <ListRow folded title={t("find.more", { n: more })} onPress={() => setAll(true)} />}
    </Band>
  );
}

function FindBody({ on }: { readonly on: OnDesk }) {
  const { remembered } = useApp();
  const key = `find ${on.stream}`;
  const [typed, setTyped] = useState(() => typedBefore(remembered, key));
  const found = useMemo(() => findPoints(lookingAt(on), typed), [on.assessment, on.visit, typed]);
  const type = (text: string): void => {
    setTyped(text);
    keepTyped(remembered, key, text);
  };
  return (
    <Plain back={t("round.title")} href={to("round", { visit: on.param })} title={t("find.title")}>
      <div class="form">
        <Field id="find" kind="search" label={t("find.label")} help={t("find.help")} value={typed} onInput={type} />
      </div>
      <p class="remark" role="status">
        {typed.trim() === "" ? "" : t("find.found", { n: found.length })}
      </p>
      {found.slice(0, MOST_POINTS).map((one) => (
        <Found key={one.point} on={on} found={one} alone={found.length === 1} />
      ))}
      {found.length > MOST_POINTS && <p class="remark">{t("find.narrow")}</p>}
    </Plain>
  );
}

export const Find = ({ params }: { readonly params: ParamsOf<"find"> }) => (
  <OnVisit param={params.visit}>{(on) => <FindBody on={on} />}</OnVisit>
);
