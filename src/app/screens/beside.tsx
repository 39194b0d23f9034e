/** A picture beside the earlier ones of the same spot, with their marks: all in a row, or in one frame in turn. */
import { useState } from "preact/hooks";
import { foldPictures, pictureKey } from "../../core/record/index.js";
import { NextAction } from "../parts/button.js";
import { EmptyState } from "../parts/notice.js";
import { Switch } from "../parts/switch.js";
import { type ComparedPicture, compared, earlierOf } from "../state/earlier-pictures.js";
import { marksSentence, marksView } from "../state/marks-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { day, t } from "../texts/marks.js";
import { MissingScreen, Plain } from "./frame.js";
import { MarkedPicture } from "./marked-picture.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { pictureWhere } from "./picture-where.js";

const onDay = ({ taken, odometer }: ComparedPicture): string =>
  odometer === undefined ? day(taken) : t("beside.on", { day: day(taken), odometer });

function Figure({
  one,
  where,
  second,
}: {
  readonly one: ComparedPicture;
  readonly where: string;
  readonly second: string;
}) {
  const view = marksView(one.marks, one.picture);
  return (
    <figure class="beside-one">
      {one.picture.unreadable ? (
        <p class="remark">{t("beside.unreadable")}</p>
      ) : (
        <MarkedPicture
          picture={one.picture}
          alt={`${where}, ${day(one.taken)}`}
          marks={view.drawn}
          label={marksSentence(view)}
        />
      )}
      <figcaption>
        <span class="row-title">{onDay(one)}</span>
        {second && <span class="small"> {second}</span>}
        {view.lines.map(({ mark, number, says }) => (
          <span class="small n" key={mark}>
            {number}: {says}
          </span>
        ))}
      </figcaption>
    </figure>
  );
}

function BesideBody({ on, nonce }: { readonly on: OnDesk; readonly nonce: string }) {
  const [together, setTogether] = useState(false);
  const [turn, setTurn] = useState(0);
  const kept = on.visit.pictures.find(({ id }) => id.endsWith(`/${nonce}`));
  if (!kept) return <MissingScreen />;
  const where = pictureWhere(on.known, kept.value);
  const earlier = earlierOf(on.desk.earlier.value, kept.value);
  const own = compared(on.visit, kept);
  const all = [...earlier, own];
  const after = foldPictures(on.visit.ledger.log.values()).after.get(pictureKey(kept.value.blob))?.at(-1)?.value;
  const second = (one: ComparedPicture): string =>
    one === own ? t("beside.this") : one.id === after ? t("beside.after") : "";
  // The newest first in one frame: a press shows what it was before.
  const shown = all[all.length - 1 - (turn % all.length)] ?? own;
  const figure = (one: ComparedPicture) => <Figure key={one.id} one={one} where={where} second={second(one)} />;
  return (
    <Plain
      back={t("photo.view")}
      href={to("picture", { visit: on.param, picture: nonce })}
      title={t("beside.title")}
      second={where}
    >
      {earlier.length === 0 && <EmptyState title={t("beside.none")} says={t("beside.none.says")} />}
      {earlier.length > 0 && (
        <Switch
          id="same-frame"
          label={t("beside.same-frame")}
          on={together}
          onChange={setTogether}
          words={{ on: t("beside.on-switch"), off: t("beside.off-switch") }}
        />
      )}
      <div class={together ? "beside together" : "beside"} aria-live={together ? "polite" : undefined}>
        {together ? figure(shown) : all.map(figure)}
      </div>
      {together && (
        <div class="acts">
          <NextAction words={t("beside.other")} onPress={() => setTurn(turn + 1)} />
        </div>
      )}
    </Plain>
  );
}

export const Beside = ({ params }: { readonly params: ParamsOf<"beside"> }) => (
  <OnVisit param={params.visit}>{(on) => <BesideBody on={on} nonce={params.picture} />}</OnVisit>
);
