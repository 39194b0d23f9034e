/** What the camera screen says of its aim: what a picture will show, where, and the way back. Pure. */
import type { Audience } from "../../core/terms/index.js";
import { t } from "../texts/media.js";
import type { Telling } from "./because.js";
import { capital, faultSays, type Knowledge, placeName, pointName, stateName } from "./knowledge.js";
import type { CameraAim } from "./picture-spot.js";
import { to } from "./routes.js";

const placeOf = ({ from }: CameraAim): string =>
  from.at === "point" ? from.point.place : from.at === "visit" ? "" : from.place;

/** What the pictures will belong to. */
export function aimTitle(known: Knowledge, who: Audience, aim: CameraAim): string {
  const { pin, from } = aim;
  if (pin === "tray") return t("camera.pin.tray");
  if (pin === "point" && from.at === "point") return capital(pointName(known, from.point.point));
  if (pin === "fault" && from.at === "fault") return faultSays(known, from.fault, [], who).says;
  return capital(placeName(known, placeOf(aim)));
}

/** Where that is. */
export function aimSays(known: Knowledge, aim: CameraAim): string {
  const place = placeOf(aim);
  if (aim.pin === "tray" || aim.pin === "place" || place === "") return t("camera.title");
  const where = capital(placeName(known, place));
  return aim.from.at === "point" ? `${where}, ${stateName(known, aim.from.point.state)}` : where;
}

/** To where the camera was opened. */
export function backFrom(
  { known, visit, who }: Pick<Telling, "known" | "visit" | "who">,
  { from }: CameraAim,
): { readonly words: string; readonly href: string } {
  if (from.at === "point")
    return { words: capital(pointName(known, from.point.point)), href: to("point", { visit, ...from.point }) };
  if (from.at === "fault")
    return {
      words: faultSays(known, from.fault, [], who).says,
      href: to("finding", { visit, fault: from.fault, place: from.place }),
    };
  return from.at === "place"
    ? { words: t("pictures.back"), href: to("pictures", { visit }) }
    : { words: t("pictures.visit"), href: to("visit", { visit }) };
}
