/** One picture as it is kept, and taking it back. */
import { foldPictures, pictureKey } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { EmptyState } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { earlierOf } from "../state/earlier-pictures.js";
import { capital, placeName, pointName } from "../state/knowledge.js";
import { marksSentence, marksView } from "../state/marks-view.js";
import type { PictureSpot } from "../state/picture-spot.js";
import { takenAt } from "../state/pictures-view.js";
import { undo } from "../state/reply-acts.js";
import { type ParamsOf, to } from "../state/routes.js";
import { t as marks } from "../texts/marks.js";
import { clock, day, t } from "../texts/media.js";
import { MissingScreen, Plain } from "./frame.js";
import { MarkedPicture } from "./marked-picture.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

/** What it shows, and the screen it belongs to. */
function placeOfPicture(on: OnDesk, { point, place, state, fault }: PictureSpot) {
  const visit = on.param;
  const where = place === undefined ? t("photo.unsorted") : capital(placeName(on.known, place));
  if (point !== undefined && place !== undefined && state !== undefined)
    return { words: capital(pointName(on.known, point)), href: to("point", { visit, point, place, state }), where };
  if (fault !== undefined && place !== undefined)
    return { words: t("pictures.finding"), href: to("finding", { visit, fault, place }), where };
  return { words: t("pictures.back"), href: to("pictures", { visit }), where };
}

function PictureBody({ on, nonce }: { readonly on: OnDesk; readonly nonce: string }) {
  const { journal, router } = useApp();
  const kept = on.visit.pictures.find(({ id }) => id.endsWith(`/${nonce}`));
  if (!kept) return <MissingScreen />;
  const { unreadable } = kept.value;
  const drawn = foldPictures(on.visit.ledger.log.values()).marks.get(pictureKey(kept.value.blob)) ?? [];
  const view = marksView(drawn, kept.value);
  const here = { visit: on.param, picture: nonce };
  const { words, href: back, where } = placeOfPicture(on, kept.value);
  const taken = (takenAt(on.visit, kept.id) ?? kept.at).wall;
  const takeBack = (): void => {
    const hence = router.fromHere();
    void undo(journal, on.stream, { ids: [kept.id] }).then((done) => done && hence.up(back));
  };
  return (
    <Plain back={words} href={back} title={t("photo.view")} second={`${where}, ${day(taken)}, ${clock(taken)}`}>
      {!unreadable && <MarkedPicture picture={kept.value} alt={where} marks={view.drawn} label={marksSentence(view)} />}
      {view.lines.map(({ mark, number, says }) => (
        <p class="remark" key={mark}>
          {number}: {says}
        </p>
      ))}
      {unreadable && <EmptyState title={t("photo.original")} says={kept.value.name ?? ""} />}
      <div class="acts">
        {!unreadable && <Tool words={marks("marks.open")} href={to("marks", here)} />}
        {earlierOf(on.desk.earlier.value, kept.value).length > 0 && (
          <Tool words={marks("beside.open")} href={to("beside", here)} />
        )}
        {!on.visit.closed && <Tool words={t("photo.remove")} onPress={takeBack} />}
      </div>
    </Plain>
  );
}

export const Picture = ({ params }: { readonly params: ParamsOf<"picture"> }) => (
  <OnVisit param={params.visit}>{(on) => <PictureBody on={on} nonce={params.picture} />}</OnVisit>
);
