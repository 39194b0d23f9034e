/** All pictures of a visit: those shot first and not sorted yet, then by place. Of hundreds only what is near is drawn. */
import { useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { pictureLineOf } from "../state/picture-line.js";
import { cameraHref } from "../state/picture-spot.js";
import { type PictureGroup, picturesView } from "../state/pictures-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { t } from "../texts/media.js";
import { Plain } from "./frame.js";
import { pictureHref, Thumbs } from "./kept-picture.js";
import { LineProgress } from "./line-progress.js";
import { type OnDesk, OnVisit } from "./on-visit.js";
import { PickPlace } from "./pick-place.js";
import { LastSorted, Unsorted } from "./unsorted.js";

function OfPlace({ on, group }: { readonly on: OnDesk; readonly group: PictureGroup }) {
  const alt = t("photo.of-place", { place: group.name });
  return (
    <Band heading={group.name} aside={String(group.pictures.length)}>
      <div class="form">
        <Thumbs
          pictures={group.pictures}
          one={({ id }, index) => ({ alt: `${alt} ${index + 1}`, href: pictureHref(on.param, id) })}
        />
      </div>
      {!on.visit.closed && (
        <ListRow
          folded
          title={t("pictures.add-here")}
          href={cameraHref(on.param, { at: "place", place: group.place })}
        />
      )}
    </Band>
  );
}

function PicturesBody({ on }: { readonly on: OnDesk }) {
  const app = useApp();
  const [choosing, setChoosing] = useState(false);
  const view = picturesView(on.known, on.tree, on.visit.pictures);
  const line = pictureLineOf(app);
  const shoot = cameraHref(on.param, { at: "visit" });
  return (
    <Plain
      back={t("pictures.visit")}
      href={to("visit", { visit: on.param })}
      title={t("pictures.title")}
      second={t("pictures.second", { n: view.count, unsorted: view.unsorted.length })}
    >
      <LineProgress line={line} />
      <LastSorted on={on} />
      {view.unsorted.length > 0 && <Unsorted on={on} pictures={view.unsorted} />}
      {view.count === 0 && <EmptyState title={t("pictures.none")} says={t("pictures.none.says")} />}
      {!on.visit.closed && (
        <div class="acts">
          {view.unsorted.length === 0 ? (
            <NextAction words={t("pictures.shoot")} href={shoot} />
          ) : (
            <Tool words={t("pictures.shoot")} href={shoot} />
          )}
          <Tool words={t("pictures.of-place")} onPress={() => setChoosing(true)} />
        </div>
      )}
      {view.groups.map((group) => (
        <OfPlace key={group.place} on={on} group={group} />
      ))}
      <PickPlace
        on={on}
        open={choosing}
        placesOnly
        onPick={({ spot }) => app.router.go(cameraHref(on.param, { at: "place", place: spot.place ?? "car" }))}
        onClose={() => setChoosing(false)}
      />
    </Plain>
  );
}

export const Pictures = ({ params }: { readonly params: ParamsOf<"pictures"> }) => (
  <OnVisit param={params.visit}>{(on) => <PicturesBody on={on} />}</OnVisit>
);
