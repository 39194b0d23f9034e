/** What a picture shows, in words: the point and its place, or the place. */
import { capital, type Knowledge, placeName, pointName } from "../state/knowledge.js";
import type { PictureSpot } from "../state/picture-spot.js";
import { t } from "../texts/media.js";

export function pictureWhere(known: Knowledge, { point, place }: PictureSpot): string {
  if (place === undefined) return t("photo.unsorted");
  const where = capital(placeName(known, place));
  return point === undefined ? where : `${capital(pointName(known, point))}, ${placeName(known, place)}`;
}
