/** One picture as it is kept, and taking it back. */
import { Tool } from "../parts/button.js";
import { EmptyState } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { capital, placeName, pointName } from "../state/knowledge.js";
import { type ParamsOf, to } from "../state/routes.js";
import { undo } from "../state/visit-acts.js";
import { clock, day, t } from "../texts/index.js";
import { MissingScreen, Plain } from "./frame.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { useKeptBytes } from "./point-pictures.js";

function PictureBody({ on, nonce }: { readonly on: OnDesk; readonly nonce: string }) {
  const { journal, router } = useApp();
  const kept = on.visit.pictures.find(({ id }) => id.endsWith(`/${nonce}`));
  const src = useKeptBytes(kept?.value.unreadable ? undefined : kept?.value.blob);
  if (!kept) return <MissingScreen />;
  const { point = "", place = "", state = "", unreadable } = kept.value;
  const back = to("point", { visit: on.param, point, place, state });
  const takeBack = (): void => {
    void undo(journal, on.stream, { ids: [kept.id] }).then((done) => done && router.up(back));
  };
  const alt = t("photo.alt", { point: pointName(on.known, point), place: placeName(on.known, place) });
  return (
    <Plain
      back={pointName(on.known, point)}
      href={back}
      title={t("photo.view")}
      second={`${capital(placeName(on.known, place))}, ${day(kept.at.wall)}, ${clock(kept.at.wall)}`}
    >
      {src !== undefined && <img class="whole-picture" src={src} alt={alt} />}
      {unreadable && <EmptyState title={t("photo.original")} says={kept.value.name ?? ""} />}
      {!on.visit.closed && (
        <div class="acts">
          <Tool words={t("photo.remove")} onPress={takeBack} />
        </div>
      )}
    </Plain>
  );
}

export const Picture = ({ params }: { readonly params: ParamsOf<"picture"> }) => (
  <OnVisit param={params.visit}>{(on) => <PictureBody on={on} nonce={params.picture} />}</OnVisit>
);
