/** Earlier pictures of the same spot of a car: the same point and place, or the same finding, of visits before. Pure. */
import {
  figureOf,
  foldPictures,
  type IdText,
  lookedOn,
  type NamedMark,
  pictureKey,
  type VisitState,
} from "../../core/record/index.js";
import { odometerText } from "./odometer.js";
import { isUnsorted, type PictureSpot } from "./picture-spot.js";
import { takenAt } from "./pictures-view.js";

export type KeptPicture = VisitState["pictures"][number];

export interface ComparedPicture {
  readonly id: IdText;
  readonly picture: KeptPicture["value"];
  /** Wall clock of when it was taken. */
  readonly taken: number;
  readonly odometer?: string;
  readonly marks: readonly NamedMark[];
}

const isSameSpot = (a: PictureSpot, b: PictureSpot): boolean =>
  !isUnsorted(a) && a.point === b.point && a.place === b.place && a.fault === b.fault;

export function compared(visit: VisitState, { id, value, at }: KeptPicture): ComparedPicture {
  const odometer = visit.odometer.at(-1)?.value;
  const marks = foldPictures(visit.ledger.log.values()).marks.get(pictureKey(value.blob)) ?? [];
  return {
    id,
    picture: value,
    taken: (takenAt(visit, id) ?? at).wall,
    ...(odometer && figureOf(odometer) !== undefined ? { odometer: odometerText(odometer) } : {}),
    marks,
  };
}

/** Of visits before, oldest first; pictures this phone can't open are among them. */
export const earlierOf = (earlier: readonly VisitState[], spot: PictureSpot): readonly ComparedPicture[] =>
  [...earlier]
    .sort((a, b) => (lookedOn(a) < lookedOn(b) ? -1 : 1))
    .flatMap((visit) =>
      visit.pictures.filter(({ value }) => isSameSpot(value, spot)).map((one) => compared(visit, one)),
    );

/** The last one that can be laid over the camera. */
export const lastReadable = (earlier: readonly ComparedPicture[]): ComparedPicture | undefined =>
  earlier.findLast(({ picture }) => !picture.unreadable);
